/** Marks of single forecasts against closed forms. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { blend, drawnForesight, median, normalForesight, quantile, steps } from '../../src/colony/engine/foresight.ts';
import { marksOf } from './marks.ts';

/** Closed form for a normal forecast (Gneiting and Raftery 2007): σ (z (2 Φ(z) − 1) + 2 φ(z) − 1/√π). */
function crpsOfNormal(mean: number, sd: number, seen: number): number {
  const z = (seen - mean) / sd;
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  let below = 0.5;
  const pieces = 2000;
  // Φ by Simpson's rule, apart from the room's own.
  for (let i = 0; i <= pieces; i += 1) {
    const t = (z * i) / pieces;
    const weight = i === 0 || i === pieces ? 1 : i % 2 === 1 ? 4 : 2;
    below += ((weight * z) / pieces / 3) * (Math.exp((-t * t) / 2) / Math.sqrt(2 * Math.PI));
  }
  return sd * (z * (2 * below - 1) + 2 * density - 1 / Math.sqrt(Math.PI));
}

test('E4 the ranked score of a normal forecast is that of the closed form', () => {
  for (const [mean, sd, seen] of [
    [9, 0.3, 9],
    [9, 0.3, 9.5],
    [8, 0.8, 6.5],
    [0, 1, 3],
  ] as const) {
    const got = marksOf(normalForesight(mean, sd), Math.exp(seen)).crpsLog;
    assert.ok(Math.abs(got - crpsOfNormal(mean, sd, seen)) < 0.004 * sd, `${mean} ${sd} ${seen}: ${got}`);
  }
});

test('E4 the ranked score of one value is its distance', () => {
  const got = marksOf(new Float64Array(steps).fill(2), Math.exp(1.25)).crpsLog;
  assert.ok(Math.abs(got - 0.75) < 1e-12);
});

test('E5 errors are of the median, in logarithms and in bees; a range holds what lies between its quantiles', () => {
  const marks = marksOf(normalForesight(Math.log(8000), 0.2), 10_000);
  assert.ok(Math.abs(marks.logError - Math.log(0.8)) < 1e-9);
  assert.ok(Math.abs(marks.error - 2000) < 1e-6);
  // ln 1.25 is 1.116 spreads above: outside the half, inside eight and nine tenths.
  assert.deepEqual([marks.held50, marks.held80, marks.held90], [false, true, true]);
  const far = marksOf(normalForesight(0, 1), Math.exp(1.5));
  assert.deepEqual([far.held50, far.held80, far.held90], [false, false, true]);
});

test('E6 the blend is the mean of the log medians, and as wide as the mean of the widths', () => {
  const both = blend(normalForesight(9, 0.2), normalForesight(8, 0.6));
  assert.ok(Math.abs(median(both) - 8.5) < 1e-9);
  assert.ok(Math.abs(quantile(both, 0.9) - quantile(normalForesight(8.5, 0.4), 0.9)) < 1e-9);
});

test('E6 quantiles of draws follow their shares', () => {
  const drawn = drawnForesight(Float64Array.of(400, 100, 200), Float64Array.of(0.25, 0.25, 0.5));
  assert.equal(median(drawn), Math.log(200));
  assert.equal(quantile(drawn, 0.2), Math.log(100));
  assert.equal(quantile(drawn, 0.8), Math.log(400));
});
