/** What a bar is expected to hold, and when a reading of it surprises, by worked examples. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../figures/book.ts';
import { expectBar, type Surprise, surprise } from './expect-bar.ts';
import { type BarSeen, reading, sampleYard } from './for-tests.ts';

function told(before: BarSeen, seen: BarSeen, day = '2014-06-08'): Surprise | null {
  const yard = sampleYard();
  const hive = yard.hive('2014-05-01');
  const colony = yard.colony('2014-05-01', hive);
  yard.visit('2014-06-01', colony, hive, { 3: before });
  return surprise(reading('v', hive, 3, seen), expectBar(yard.fold().draft, colony, 3, day, printedBook), day, printedBook);
}
const brood: BarSeen = { brood: 5, food: 2, eggs: 'seen' };

test('C70 the bar as last time and as today: a week on, what was read is there, a week older', () => {
  const yard = sampleYard();
  const hive = yard.hive('2014-05-01');
  const colony = yard.colony('2014-05-01', hive);
  yard.visit('2014-06-01', colony, hive, { 3: { brood: 4, food: 2, eggs: 'none seen', youngest: 'sealed' } });
  const { last, today } = expectBar(yard.fold().draft, colony, 3, '2014-06-08', printedBook);
  assert.equal(last?.readOn, '2014-06-01');
  assert.ok(Math.abs((last.shares?.sealed ?? 0) + (last.shares?.emerging ?? 0) - 0.5) < 1e-12);
  // Twelve days of sealed brood: seven of them have emerged.
  const left = (today.shares?.sealed ?? 0) + (today.shares?.emerging ?? 0);
  assert.ok(left <= (0.5 * 5) / 12 + 1e-12 && left > (0.5 * 5 * 0.98) / 12);
  assert.deepEqual([last.ink, today.ink], ['seen', 'worked out']);
  const never = expectBar(yard.fold().draft, colony, 4, '2014-06-08', printedBook);
  assert.deepEqual([never.last, never.today.kind], [null, 'unknown']);
});

test('C71 a reading surprises when it is beyond what readers and days make: eggs first, then brood, then food', () => {
  assert.equal(told(brood, brood), null);
  assert.equal(told(brood, { ...brood, brood: 4.5 }), null);
  assert.equal(told(brood, { brood: 5, food: 2, eggs: 'none seen', youngest: 'larva' }), 'no eggs now');
  assert.equal(told(brood, { brood: 1, food: 2, eggs: 'seen' }), 'less brood');
  assert.equal(told({ brood: 1, food: 2, eggs: 'seen' }, { brood: 6, food: 2, eggs: 'seen' }), 'more brood');
  assert.equal(told(brood, { brood: 5, food: 1, eggs: 'seen' }), null, 'an eighth is within the steps of the ruler');
  assert.equal(told({ brood: 0, food: 8 }, { brood: 0, food: 2 }), 'less food');
  assert.equal(told({ brood: 0, food: 1 }, { brood: 0, food: 7 }), 'more food');
  const paused: BarSeen = { brood: 2, food: 4, eggs: 'none seen', youngest: 'sealed' };
  assert.equal(told(paused, { brood: 1.5, food: 4, eggs: 'seen' }), 'eggs again');
  assert.equal(told({ brood: 1, food: 4, eggs: 'seen' }, { brood: 1, food: 4, eggs: 'none seen' }), null, 'few eggs');
});

test('C72 the longer ago the reading, the more it takes to surprise; what was never read never does', () => {
  const food = (day: string): Surprise | null => told({ brood: 0, food: 4 }, { brood: 0, food: 7 }, day);
  assert.equal(food('2014-06-02'), 'more food');
  assert.equal(food('2014-07-15'), null);
  const yard = sampleYard();
  const hive = yard.hive('2014-05-01');
  const colony = yard.colony('2014-05-01', hive);
  const never = expectBar(yard.fold().draft, colony, 3, '2014-06-08', printedBook);
  assert.equal(surprise(reading('v', hive, 3, brood), never, '2014-06-08', printedBook), null);
});
