/** Stirring moves copies apart and leaves what the cloud says: its mean and its covariance. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { logNormalDensity, normalQuantile } from './normal.ts';
import { begin, effectiveNumber, meanOf, type Setup, type StateModel, step } from './particle-filter.ts';
import { covarianceOf, stir, varianceOfOneMore } from './stir.ts';
import { newStream, nextNormal } from './streams.ts';

const count = 4000;

/** Two numbers that hang together, a third that follows from them. */
function rowsOf(seed: number): Float64Array {
  const stream = newStream(seed, 0, 0, 0);
  const rows = new Float64Array(count * 3);
  for (let i = 0; i < count; i += 1) {
    const a = 2 + nextNormal(stream);
    const b = 0.6 * a + 0.8 * nextNormal(stream);
    rows.set([a, b, a - 2 * b], i * 3);
  }
  return rows;
}

function moments(rows: Float64Array): { readonly mean: number[]; readonly covariance: number[] } {
  const mean = [0, 1, 2].map((i) => rows.filter((_, at) => at % 3 === i).reduce((x, y) => x + y, 0) / count);
  const covariance = [0, 1, 2].flatMap((i) =>
    [0, 1, 2].map((j) => {
      let sum = 0;
      for (let row = 0; row < rows.length; row += 3) sum += (rows[row + i]! - mean[i]!) * (rows[row + j]! - mean[j]!);
      return sum / count;
    }),
  );
  return { mean, covariance };
}

for (const kept of [0.98, 0.85, 0.5, 0]) {
  test(`N22 stirred with ${kept} kept, mean and covariance stay; what follows from others still follows`, () => {
    const rows = rowsOf(3);
    const before = moments(rows);
    stir(rows, 3, { kept, times: 1 }, newStream(8, 0, 0, 0));
    const after = moments(rows);
    // Four standard errors of a mean, and of a covariance, of so many rows.
    before.mean.forEach((mean, i) => assert.ok(Math.abs(after.mean[i]! - mean) < (4 * 2) / Math.sqrt(count)));
    before.covariance.forEach((one, i) => assert.ok(Math.abs(after.covariance[i]! - one) < (4 * 5) / Math.sqrt(count)));
    for (let row = 0; row < rows.length; row += 3) assert.ok(Math.abs(rows[row + 2]! - rows[row]! + 2 * rows[row + 1]!) < 1e-9);
  });
}

test('N22 with all kept nothing moves', () => {
  const rows = rowsOf(4);
  stir(rows, 3, { kept: 1, times: 1 }, newStream(8, 0, 0, 0));
  const was = rowsOf(4);
  rows.forEach((one, at) => assert.ok(Math.abs(one - was[at]!) < 1e-12));
});

test('N22 few rows with a covariance that is lent get it by its share, and keep their mean', () => {
  const copies = new Float64Array(count * 3).fill(5);
  const lender = rowsOf(6);
  stir(copies, 3, { kept: 0.85, times: 2, lent: { covariance: covarianceOf(lender, 3), share: 0.75 } }, newStream(8, 0, 0, 0));
  const before = moments(lender);
  const after = moments(copies);
  after.mean.forEach((mean) => assert.ok(Math.abs(mean - 5) < 1e-9));
  before.covariance.forEach((one, i) => assert.ok(Math.abs(after.covariance[i]! - 0.75 * one) < (4 * 5) / Math.sqrt(count)));
});

interface Still {
  readonly noise: number;
}

/** A number that stands still, of which nothing is known: normal with spread 1. */
const still: StateModel<Still, { level: number }> = {
  size: 1,
  initial: (_c, _day, values, at, stream) => (values[at] = nextNormal(stream)),
  step: () => 0,
  observations: {
    level: {
      density: (c, values, at, seen) => logNormalDensity(seen, values[at]!, c.noise),
      draw: (c, values, at, stream) => values[at]! + c.noise * nextNormal(stream),
    },
  },
};

test('N23 what is sharp is taken in by parts: the cloud keeps many ancestors, and its mean, spread and evidence are the exact ones', () => {
  const noise = 0.004;
  const seen = 1.2;
  const plain: Setup<Still, { level: number }> = { model: still, constants: { noise }, resampleBelow: 1 };
  const byParts: Setup<Still, { level: number }> = {
    ...plain,
    byParts: {
      leastShare: 0.4,
      stir: (_c, cloud, _from, part, seed) => {
        const values = cloud.values.slice();
        stir(values, 1, { kept: 0.8, times: 1 }, newStream(seed, 17, part, cloud.day));
        return { ...cloud, values };
      },
    },
  };
  const variance = noise ** 2 / (1 + noise ** 2);
  const exact = seen / (1 + noise ** 2);
  const particles = 1500;
  const results = [plain, byParts].map((setup) =>
    step(setup, begin(setup, 0, particles, 2), { day: 0, seen: { level: seen } }, 2),
  );
  const distinct = results.map(({ state }) => new Set(state.values).size);
  assert.ok(distinct[0]! < 20, `${distinct[0]} values are left without parts`);
  assert.equal(distinct[1], particles);
  const { state, info } = results[1]!;
  const mean = meanOf(state, 1, (values, at) => values[at]!);
  const spread = Math.sqrt(meanOf(state, 1, (values, at) => (values[at]! - mean) ** 2));
  assert.ok(Math.abs(mean - exact) < 0.3 * Math.sqrt(variance), `${mean}, not ${exact}`);
  assert.ok(Math.abs(spread / Math.sqrt(variance) - 1) < 0.2, `${spread}, not ${Math.sqrt(variance)}`);
  const evidence = logNormalDensity(seen, 0, Math.sqrt(1 + noise ** 2));
  assert.ok(Math.abs(info.logEvidence - evidence) < 0.25, `${info.logEvidence}, not ${evidence}`);
});

/** Of the truth and thirty counts of it: whether nine tenths of the cloud, taken as normal, hold the truth at the end. */
function holds(widened: boolean, seed: number): boolean {
  const noise = 1;
  const setup: Setup<Still, { level: number }> = {
    model: still,
    constants: { noise },
    resampleBelow: 1,
    byParts: {
      leastShare: 0,
      stir: (_c, cloud, from, part, chance) => {
        const values = cloud.values.slice();
        const times = widened ? varianceOfOneMore(effectiveNumber(from.logShares)) : 1;
        stir(values, 1, { kept: 0.85, times }, newStream(chance, 17, part, cloud.day));
        return { ...cloud, values };
      },
    },
  };
  const stream = newStream(seed, 5, 0, 0);
  const truth = nextNormal(stream);
  let cloud = begin(setup, 0, 60, seed);
  for (let day = 0; day < 30; day += 1) {
    cloud = step(setup, cloud, { day, seen: { level: truth + noise * nextNormal(stream) } }, seed).state;
  }
  const mean = meanOf(cloud, 1, (values, at) => values[at]!);
  const variance = meanOf(cloud, 1, (values, at) => (values[at]! - mean) ** 2);
  return Math.abs(truth - mean) < normalQuantile(0.95) * Math.sqrt(variance);
}

test('N26 drawn anew thirty times, few particles are as sure as they are right; without the widening they are too sure', () => {
  const trials = 400;
  const held = (widened: boolean): number =>
    Array.from({ length: trials }, (_, seed) => Number(holds(widened, seed))).reduce((a, b) => a + b, 0) / trials;
  const three = 3 * Math.sqrt((0.9 * 0.1) / trials);
  const right = held(true);
  assert.ok(Math.abs(right - 0.9) < three, `${right}`);
  const sure = held(false);
  assert.ok(sure < 0.9 - three, `${sure}`);
});
