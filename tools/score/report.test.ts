/** Sums of marks by hand: intervals, yards, zeros, and the paired bootstrap by colony. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Case } from './intervals.ts';
import type { Marks } from './marks.ts';
import { reportOf } from './report.ts';

function marks(logError: number, held: boolean): Marks {
  return { logError, error: Math.abs(logError) * 100, crpsLog: Math.abs(logError), held50: held, held80: held, held90: true };
}

function scored(colony: string, k: number, own: number, last: number, yard = 'west'): Case {
  const mine = marks(own, own > 0);
  const each = { engine: mine, challenger: mine, blend: mine, persistence: marks(last, true) };
  return { target: 'adult_bees', colony, yard, k, from: 20 * k, to: 20 * k + 20, marks: each };
}

const zero: Case = { target: 'adult_bees', colony: 'z', yard: 'east', k: 2, from: 40, to: 60, marks: null };
const all = [scored('a', 1, 0.3, 0.4), scored('b', 1, -0.4, 0.3), scored('a', 2, 0, 1), zero];

test('E7 an interval’s scores are root mean square, means and shares of its cases', () => {
  const { intervals } = reportOf(all, 1).targets.adult_bees;
  const [first, second] = intervals;
  assert.deepEqual([first?.k, first?.from, first?.to, first?.n, first?.zeros], [1, 20, 40, 2, 0]);
  assert.ok(Math.abs(first!.methods.blend.logRmse! - Math.sqrt((0.09 + 0.16) / 2)) < 1e-12);
  assert.ok(Math.abs(first!.methods.blend.mae! - 35) < 1e-9);
  assert.deepEqual([first!.methods.blend.cover50, first!.methods.blend.cover80, first!.methods.blend.cover90], [0.5, 0.5, 1]);
  assert.ok(Math.abs(first!.difference.value!) < 1e-12);
  assert.deepEqual([second?.n, second?.zeros, second?.difference.value], [1, 1, -1]);
});

test('E8 counts of nothing are counted and not scored; where nothing is scored there is nothing instead of a number', () => {
  const { pooled, yards } = reportOf(all, 1).targets.adult_bees;
  assert.deepEqual([pooled.n, pooled.zeros], [3, 1]);
  assert.equal(yards['east']?.n, 0);
  assert.equal(yards['east']?.difference.value, null);
  assert.equal(reportOf([], 1).targets.capped_worker_cells.pooled.methods.engine.logRmse, null);
});

test('E9 the difference is redrawn by colonies, whole and paired', () => {
  // Two colonies: the redrawn difference is one of three values, by hand.
  const a = [scored('a', 1, 0.1, 0.5), scored('a', 2, 0.1, 0.5)];
  const b = [scored('b', 1, 0.6, 0.2)];
  const { value, lo95, hi95 } = reportOf([...a, ...b], 5).targets.adult_bees.pooled.difference;
  const gap = (own: readonly number[], last: readonly number[]): number => {
    const rms = (of: readonly number[]): number => Math.sqrt(of.reduce((sum, x) => sum + x * x, 0) / of.length);
    return rms(own) - rms(last);
  };
  assert.ok(Math.abs(value! - gap([0.1, 0.1, 0.6], [0.5, 0.5, 0.2])) < 1e-12);
  assert.ok(Math.abs(lo95! - gap([0.1], [0.5])) < 1e-12);
  assert.ok(Math.abs(hi95! - gap([0.6], [0.2])) < 1e-12);
});

test('E9 many colonies alike give a narrow range; the same seed gives the same one', () => {
  const many = Array.from({ length: 50 }, (_, i) => scored(`c${i}`, 1, 0.2, 0.3));
  const one = reportOf(many, 3).targets.adult_bees.pooled.difference;
  assert.ok(Math.abs(one.lo95! + 0.1) < 1e-9 && Math.abs(one.hi95! + 0.1) < 1e-9);
  const mixed = Array.from({ length: 50 }, (_, i) => scored(`c${i}`, 1, i % 2 ? 0.1 : 0.4, 0.3));
  assert.deepEqual(reportOf(mixed, 3), reportOf(mixed, 3));
  const wide = reportOf(mixed, 3).targets.adult_bees.pooled.difference;
  assert.ok(wide.hi95! - wide.lo95! > 0.03 && wide.hi95! - wide.lo95! < 0.15);
});
