/** The integration against closed forms: a decay, a swing, and how the error falls with the step. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { type Rates, rungeKuttaStep } from './runge-kutta.ts';

function run(rates: Rates, state: readonly number[], until: number, steps: number): readonly number[] {
  const step = until / steps;
  let now = state;
  for (let i = 0; i < steps; i += 1) now = rungeKuttaStep(rates, i * step, now, step);
  return now;
}

test('E65 a decay, a swing and a rate that hangs on time come out as their closed forms', () => {
  assert.ok(Math.abs(run((_, [y]) => [-0.3 * y!], [5], 10, 200)[0]! - 5 * Math.exp(-3)) < 1e-8);
  const [x, v] = run((_, [x, v]) => [v!, -x!], [1, 0], Math.PI, 400);
  assert.ok(Math.abs(x! + 1) < 1e-9 && Math.abs(v!) < 1e-8);
  assert.ok(Math.abs(run((t) => [3 * t * t], [0], 2, 3)[0]! - 8) < 1e-12);
});

test('E65 half the step has a sixteenth of the error', () => {
  const error = (steps: number): number => Math.abs(run((_, [y]) => [y!], [1], 1, steps)[0]! - Math.E);
  const ratio = error(10) / error(20);
  assert.ok(ratio > 14 && ratio < 17, `${ratio}`);
});
