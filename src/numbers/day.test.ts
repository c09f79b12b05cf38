/** Calendar days: known days, impossible ones, and the arithmetic against the platform's own calendar. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { addDays, dayFromNumber, dayNumber, dayOfYear, daysBetween, earlier, isDay, later, weekday } from './day.ts';

test('N1 days that exist are days, others are not', () => {
  for (const day of ['2024-02-29', '2000-02-29', '2023-12-31', '0001-01-01']) assert.ok(isDay(day), day);
  for (const not of [
    '2023-02-29',
    '1900-02-29',
    '2024-13-01',
    '2024-04-31',
    '2024-4-01',
    '2024-00-10',
    '2024-01-00',
    '',
    ' 2024-01-01',
    5,
    null,
  ]) {
    assert.ok(!isDay(not), String(not));
  }
});

test('N1 known days: number, weekday, day of the year', () => {
  assert.equal(dayNumber('1970-01-01'), 0);
  assert.equal(dayNumber('2000-03-01'), 11017);
  assert.equal(weekday('1970-01-01'), 3);
  assert.equal(weekday('2026-03-29'), 6);
  assert.equal(dayOfYear('2024-12-31'), 366);
  assert.equal(dayOfYear('2023-03-01'), 60);
  assert.equal(addDays('2024-02-28', 2), '2024-03-01');
  assert.equal(daysBetween('2024-03-01', '2024-02-01'), -29);
});

test("N1 numbers and days are inverse, and agree with the platform's calendar", () => {
  fc.assert(
    fc.property(fc.integer({ min: -700000, max: 2900000 }), (n) => {
      const day = dayFromNumber(n);
      assert.ok(isDay(day), day);
      assert.equal(dayNumber(day), n);
      assert.equal(new Date(n * 86400000).toISOString().slice(0, 10), day);
      assert.equal((new Date(n * 86400000).getUTCDay() + 6) % 7, weekday(day));
    }),
    { seed: 1, numRuns: 2000 },
  );
});

test('N1 adding and counting are inverse, and days sort as text', () => {
  const day = fc.integer({ min: 0, max: 60000 }).map(dayFromNumber);
  fc.assert(
    fc.property(day, fc.integer({ min: -5000, max: 5000 }), (from, by) => {
      const to = addDays(from, by);
      assert.equal(daysBetween(from, to), by);
      assert.equal(earlier(from, to), by >= 0 ? from : to);
      assert.equal(later(from, to), by >= 0 ? to : from);
    }),
    { seed: 2 },
  );
});
