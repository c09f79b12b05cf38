/** The filter against the closed form: a straight line with normal noise, which Kalman's filter solves exactly. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { logNormalDensity } from './normal.ts';
import { type Cloud, type StateModel, begin, foresee, meanOf, step } from './particle-filter.ts';
import { nextNormal } from './streams.ts';

const line = { keep: 0.9, sd: 0.5, noise: 0.4, startMean: 1, startSd: 2 };
type Line = typeof line;

const model: StateModel<Line, { level: number; half: number }> = {
  size: 1,
  initial: (c, _day, values, at, stream) => {
    values[at] = c.startMean + c.startSd * nextNormal(stream);
  },
  step: (c, _day, values, at, stream) => {
    values[at] = c.keep * values[at]! + c.sd * nextNormal(stream);
    return 0;
  },
  observations: {
    level: {
      density: (c, values, at, seen) => logNormalDensity(seen, values[at]!, c.noise),
      draw: (c, values, at, stream) => values[at]! + c.noise * nextNormal(stream),
    },
    half: {
      density: (c, values, at, seen) => logNormalDensity(seen, values[at]! / 2, c.noise),
      draw: (c, values, at, stream) => values[at]! / 2 + c.noise * nextNormal(stream),
    },
  },
};

const setup = { model, constants: line, resampleBelow: 0.5 };
const seen = [
  { day: 1, level: 1.4 },
  { day: 2, level: 2.1 },
  { day: 5, level: 0.2 },
  { day: 6, level: -0.6 },
  { day: 12, level: 0.9 },
  { day: 13, level: 1.1 },
];

/** Kalman 1960, one number. */
function kalman(): { readonly mean: number; readonly variance: number; readonly logEvidence: number } {
  let [mean, variance, day, logEvidence] = [line.startMean, line.startSd ** 2, 0, 0];
  for (const row of seen) {
    for (; day < row.day; day += 1) [mean, variance] = [line.keep * mean, line.keep ** 2 * variance + line.sd ** 2];
    const spread = variance + line.noise ** 2;
    logEvidence += logNormalDensity(row.level, mean, Math.sqrt(spread));
    const gain = variance / spread;
    [mean, variance] = [mean + gain * (row.level - mean), (1 - gain) * variance];
  }
  return { mean, variance, logEvidence };
}

function run(count: number, seed: number): { readonly cloud: Cloud; readonly logEvidence: number } {
  let cloud = begin(setup, 0, count, seed);
  let logEvidence = 0;
  for (const { day, level } of seen) {
    const { state, info } = step(setup, cloud, { day, seen: { level } }, seed);
    cloud = state;
    logEvidence += info.logEvidence;
  }
  return { cloud, logEvidence };
}

test('N10 mean, variance and evidence of a straight line with normal noise are those of the Kalman filter', () => {
  const truth = kalman();
  const runs = Array.from({ length: 20 }, (_, seed) => run(4000, seed + 1));
  const means = runs.map(({ cloud }) => meanOf(cloud, 1, (values, at) => values[at]!));
  const squares = runs.map(({ cloud }) => meanOf(cloud, 1, (values, at) => (values[at]! - truth.mean) ** 2));
  const evidences = runs.map(({ logEvidence }) => Math.exp(logEvidence - truth.logEvidence));
  // Each is unbiased but for 1/4000: the mean of 20 runs lies within four of its own standard errors.
  near(means, truth.mean);
  near(squares, truth.variance);
  near(evidences, 1);
  assert.ok(standardError(means) < 0.01, 'and the error is small enough to tell');
});

test('N11 what is missing adds nothing: a day without a look changes no share and no evidence', () => {
  const cloud = begin(setup, 0, 50, 3);
  const { state, info } = step(setup, cloud, { day: 4, seen: {} }, 3);
  assert.deepEqual(state.logShares, cloud.logShares);
  assert.equal(info.logEvidence, 0);
  const once = step(setup, state, { day: 4, seen: { level: 1 } }, 3);
  const direct = step(setup, cloud, { day: 4, seen: { level: 1 } }, 3);
  assert.deepEqual(once, direct);
});

test('N11 two things seen on a day count as both, whichever is named first', () => {
  const cloud = begin(setup, 0, 50, 3);
  const both = step(setup, cloud, { day: 2, seen: { half: 0.3, level: 1 } }, 3);
  assert.deepEqual(step(setup, cloud, { day: 2, seen: { level: 1, half: 0.3 } }, 3), both);
});

test('N12 a particle has chance of its own: with more of them the first ones live the same', () => {
  const few = step(setup, begin(setup, 0, 10, 7), { day: 9, seen: {} }, 7).state.values;
  const many = step(setup, begin(setup, 0, 1000, 7), { day: 9, seen: {} }, 7).state.values;
  assert.deepEqual(many.subarray(0, 10), few);
  const halfway = step(setup, begin(setup, 0, 10, 7), { day: 4, seen: {} }, 7).state;
  assert.deepEqual(step(setup, halfway, { day: 9, seen: {} }, 7).state.values, few);
});

test('N13 ancestors can only become fewer, and a cloud that was pinned down has few', () => {
  let cloud = begin(setup, 0, 500, 5);
  let before = 500;
  for (let day = 1; day <= 30; day += 1) {
    const { state, info } = step({ ...setup, resampleBelow: 1 }, cloud, { day, seen: { level: 0.5 } }, 5);
    assert.ok(info.ancestors <= before && info.effective <= 500 + 1e-6 && info.resampled);
    before = info.ancestors;
    cloud = state;
  }
  assert.ok(before < 50, `${before} ancestors`);
});

test('N14 what nothing explains is said as such and leaves the shares', () => {
  const impossible = {
    ...model,
    observations: { ...model.observations, level: { ...model.observations.level, density: () => -Infinity } },
  };
  const cloud = begin(setup, 0, 20, 1);
  const { state, info } = step({ ...setup, model: impossible }, cloud, { day: 1, seen: { level: 1 } }, 1);
  assert.equal(info.logEvidence, -Infinity);
  assert.deepEqual(state.logShares, cloud.logShares);
});

test('N15 what is foreseen has the mean and the spread of the closed form', () => {
  const { state } = step(setup, begin(setup, 0, 20000, 2), { day: 3, seen: {} }, 2);
  const { values, shares } = foresee(setup, state, 'level', 2, 2);
  const mean = values.reduce((sum, value, i) => sum + value * shares[i]!, 0);
  const variance = values.reduce((sum, value, i) => sum + (value - mean) ** 2 * shares[i]!, 0);
  const trueVariance =
    line.keep ** 6 * line.startSd ** 2 + line.sd ** 2 * (1 + line.keep ** 2 + line.keep ** 4) + line.noise ** 2;
  // Four standard errors of 20 000 particles.
  assert.ok(Math.abs(mean - line.keep ** 3) < 4 * Math.sqrt(trueVariance / 20000));
  assert.ok(Math.abs(variance / trueVariance - 1) < 4 * Math.sqrt(2 / 20000));
});

test('N16 time does not run backwards', () => {
  const { state } = step(setup, begin(setup, 0, 5, 1), { day: 3, seen: {} }, 1);
  assert.throws(() => step(setup, state, { day: 2, seen: {} }, 1), /a day from 3 on/);
});

function standardError(sample: readonly number[]): number {
  const mean = sample.reduce((a, b) => a + b) / sample.length;
  return Math.sqrt(sample.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (sample.length - 1) / sample.length);
}

function near(sample: readonly number[], truth: number): void {
  const mean = sample.reduce((a, b) => a + b) / sample.length;
  const se = standardError(sample);
  assert.ok(Math.abs(mean - truth) < 4 * se, `${mean} is ${truth}, standard error ${se}`);
}
