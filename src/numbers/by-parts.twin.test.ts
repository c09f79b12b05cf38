/** Taking in by parts and stirring, written once more to be read; and evidence where rare events are guided. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { logNormalDensity } from './normal.ts';
import { begin, type Cloud, type Setup, type StateModel, step } from './particle-filter.ts';
import { stir } from './stir.ts';
import { newStream, nextNormal, nextUnit } from './streams.ts';

interface Walk {
  readonly noise: number;
  /** Chance with which a jump is proposed; it happens with `jumps`. */
  readonly proposed: number;
  readonly weighed: boolean;
}

const jumps = 0.05;

/** A place and the drift that carries it; now and then it jumps far. */
const model: StateModel<Walk, { place: number }> = {
  size: 2,
  initial: (_c, _day, values, at, stream) => {
    values[at] = nextNormal(stream);
    values[at + 1] = nextNormal(stream) / 10;
  },
  step: (c, _day, values, at, stream) => {
    const jumped = nextUnit(stream) < c.proposed;
    values[at] = values[at]! + values[at + 1]! + 0.3 * nextNormal(stream) + (jumped ? 3 : 0);
    if (!c.weighed) return 0;
    return jumped ? Math.log(jumps / c.proposed) : Math.log((1 - jumps) / (1 - c.proposed));
  },
  observations: {
    place: {
      density: (c, values, at, seen) => logNormalDensity(seen, values[at]!, c.noise),
      draw: (c, values, at, stream) => values[at]! + c.noise * nextNormal(stream),
    },
  },
};

const [stepping, resampling, stirring] = [1, 2, 17] as const;
const least = 0.4;
const kept = 0.85;

function setupOf(walk: Walk, below: number): Setup<Walk, { place: number }> {
  const stirCloud = (_: Walk, cloud: Cloud, _from: Cloud, time: number, seed: number): Cloud => {
    const values = cloud.values.slice();
    stir(values, 2, { kept, times: 1 }, newStream(seed, stirring, time, cloud.day));
    return { ...cloud, values };
  };
  return { model, constants: walk, resampleBelow: below, byParts: { leastShare: least, stir: stirCloud } };
}

interface Particle {
  readonly place: number;
  readonly drift: number;
  readonly share: number;
  readonly root: number;
}
type Particles = readonly Particle[];

const effectiveOf = (ps: Particles): number => 1 / ps.reduce((sum, { share }) => sum + share ** 2, 0);

/** A share of what was seen taken in: shares that sum to 1, and what they summed to before. */
function weighed(ps: Particles, place: number, noise: number, share: number): { readonly ps: Particles; readonly total: number } {
  const raw = ps.map((p) => p.share * Math.exp(share * logNormalDensity(place, p.place, noise)));
  const total = raw.reduce((a, b) => a + b, 0);
  return { ps: ps.map((p, i) => ({ ...p, share: raw[i]! / total })), total };
}

function drawnAnew(ps: Particles, unit: number): Particles {
  return ps.map((_, child) => {
    let reached = 0;
    const parent = ps.find(({ share }) => (reached += share) >= (child + unit) / ps.length) ?? ps.at(-1)!;
    return { ...parent, share: 1 / ps.length };
  });
}

/** Each towards the mean, and away from it by chance of the same covariance, written out for two numbers. */
function plainlyStirred(ps: Particles, seed: number, time: number, day: number): Particles {
  const mean = (of: (p: Particle) => number): number => ps.reduce((sum, p) => sum + of(p), 0) / ps.length;
  const [place, drift] = [mean((p) => p.place), mean((p) => p.drift)];
  const placeSd = Math.sqrt(mean((p) => (p.place - place) ** 2));
  const slope = mean((p) => (p.place - place) * (p.drift - drift)) / placeSd;
  const rest = Math.sqrt(mean((p) => (p.drift - drift) ** 2) - slope ** 2);
  const stream = newStream(seed, stirring, time, day);
  const push = Math.sqrt(1 - kept ** 2);
  const moved = ps.map((p) => {
    const [first, second] = [push * nextNormal(stream), push * nextNormal(stream)];
    return {
      ...p,
      place: place + kept * (p.place - place) + placeSd * first,
      drift: drift + kept * (p.drift - drift) + slope * first + rest * second,
    };
  });
  const off = (of: (p: Particle) => number, was: number): number => moved.reduce((sum, p) => sum + of(p), 0) / ps.length - was;
  const [placeOff, driftOff] = [off((p) => p.place, place), off((p) => p.drift, drift)];
  return moved.map((p) => ({ ...p, place: p.place - placeOff, drift: p.drift - driftOff }));
}

/** The largest share that leaves enough effective, by halving. */
function shareOf(ps: Particles, place: number, noise: number, left: number): number {
  const enough = (share: number): boolean => effectiveOf(weighed(ps, place, noise, share).ps) >= least * ps.length;
  if (enough(left)) return left;
  let [low, high] = [0, left];
  for (let i = 0; i < 16; i += 1) {
    const middle = (low + high) / 2;
    if (enough(middle)) low = middle;
    else high = middle;
  }
  return low;
}

function plainStep(walk: Walk, from: Particles, fromDay: number, day: number, place: number, below: number, seed: number) {
  let ps = from.map((p, index) => {
    const values = Float64Array.of(p.place, p.drift);
    let share = p.share;
    for (let d = fromDay; d < day; d += 1) share *= Math.exp(model.step(walk, d, values, 0, newStream(seed, stepping, index, d)));
    return { ...p, place: values[0]!, drift: values[1]!, share };
  }) as Particles;
  let evidence = 1;
  let left = 1;
  let parts = 0;
  while (left > 0) {
    const share = parts < 16 ? shareOf(ps, place, walk.noise, left) : left;
    const now = weighed(ps, place, walk.noise, share);
    ps = now.ps;
    evidence *= now.total;
    left -= share;
    if (left > 0 || effectiveOf(ps) < below * ps.length) {
      ps = drawnAnew(ps, nextUnit(newStream(seed, resampling, parts, day)));
      ps = plainlyStirred(ps, seed, parts, day);
    }
    parts += 1;
  }
  return { ps, evidence, parts };
}

for (const below of [0.5, 1]) {
  test(`N24 by parts and stirred, the fast filter is the slow one for the same seed, resampling below ${below}`, () => {
    const walk = { noise: 0.05, proposed: 0.2, weighed: true };
    const setup = setupOf(walk, below);
    let fast = begin(setup, 0, 300, 42);
    let slow: Particles = Array.from({ length: 300 }, (_, root) => {
      const [place, drift] = fast.values.subarray(2 * root, 2 * root + 2);
      return { place: place!, drift: drift!, share: 1 / 300, root };
    });
    let most = 0;
    for (const [i, place] of [0.4, 0.9, 2.5, 5.6, 5.2].entries()) {
      const day = 2 * i + 1;
      const plain = plainStep(walk, slow, fast.day, day, place, below, 42);
      const { state, info } = step(setup, fast, { day, seen: { place } }, 42);
      [fast, slow] = [state, plain.ps];
      most = Math.max(most, plain.parts);
      const flat = slow.flatMap((p) => [p.place, p.drift]);
      flat.forEach((one, at) =>
        assert.ok(Math.abs(state.values[at]! - one) < 1e-9, `day ${day}: ${state.values[at]}, not ${one}`),
      );
      assert.deepEqual(
        [...state.roots],
        slow.map(({ root }) => root),
      );
      slow.forEach(({ share }, p) => assert.ok(Math.abs(Math.exp(state.logShares[p]!) - share) < 1e-9));
      assert.ok(Math.abs(info.logEvidence - Math.log(plain.evidence)) < 1e-9);
    }
    assert.ok(most >= 2, 'something was sharp enough to be taken in by parts');
  });
}

/** Evidence of what a jump alone explains well: mean of many runs, and its standard error. */
function evidenceOf(walk: Walk, from: number): { readonly mean: number; readonly error: number } {
  const setup: Setup<Walk, { place: number }> = { model, constants: walk, resampleBelow: 0.5 };
  const runs = Array.from({ length: 60 }, (_, run) => {
    const seed = from + run;
    let cloud = begin(setup, 0, 400, seed);
    let log = 0;
    for (const [day, place] of [
      [2, 0.2],
      [4, 3.4],
    ] as const) {
      const { state, info } = step(setup, cloud, { day, seen: { place } }, seed);
      cloud = state;
      log += info.logEvidence;
    }
    return Math.exp(log);
  });
  const mean = runs.reduce((a, b) => a + b) / runs.length;
  const variance = runs.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (runs.length - 1);
  return { mean, error: Math.sqrt(variance / runs.length) };
}

test('N25 guided or not, the evidence is the same within its error; without the weights it is another', () => {
  const plain = evidenceOf({ noise: 0.3, proposed: jumps, weighed: true }, 1000);
  const guided = evidenceOf({ noise: 0.3, proposed: 0.4, weighed: true }, 5000);
  const careless = evidenceOf({ noise: 0.3, proposed: 0.4, weighed: false }, 9000);
  const apart = (one: { mean: number; error: number }): number =>
    Math.abs(one.mean - plain.mean) / Math.hypot(one.error, plain.error);
  assert.ok(apart(guided) < 4, `${guided.mean} and ${plain.mean}, ${apart(guided)} standard errors apart`);
  assert.ok(apart(careless) > 8, `${careless.mean} and ${plain.mean} can be told apart`);
  assert.ok(plain.error < 0.1 * plain.mean && guided.error < plain.error, 'and guiding is the surer way');
});
