/** What ageing must satisfy on any comb, for any days, however the queen lays. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { printedBook } from '../figures/book.ts';
import { contents } from '../hive/contents.ts';
import { aged } from './ageing.ts';
import { calendarOf } from './calendar.ts';
import { type CombCells, sharesOf, sum } from './comb-cells.ts';
import { combRead } from './comb-read.ts';
import { reading } from './for-tests.ts';
import { stages } from './reading.ts';
import { cellsOf, splitContents } from './split-contents.ts';

const calendar = calendarOf(printedBook);
const options = { seed: 20140516, numRuns: 300 };
const half8 = (most: number): fc.Arbitrary<number> => fc.integer({ min: 0, max: most * 2 }).map((n) => n / 2);

const anyComb: fc.Arbitrary<CombCells> = fc
  .record({
    brood: half8(8),
    food: half8(8),
    drone: half8(4),
    eggs: fc.constantFrom('seen' as const, 'none seen' as const, 'not looked' as const),
    youngest: fc.constantFrom(...stages, null),
  })
  .map(({ brood, food, drone, eggs, youngest }) => {
    const body = reading('v', 'h', 1, {
      brood,
      food: Math.min(food, 8 - brood),
      face: { drone8: Math.min(drone, brood) },
      eggs,
      youngest,
    });
    const split = splitContents(combRead(body), () => true, calendar, printedBook);
    assert.ok(split);
    return cellsOf(split, calendar);
  });
const anyLaying = fc.array(fc.constantFrom(0, 0.5, 1), { minLength: 60, maxLength: 60 });

test('C7 the nine shares sum to one and none is negative, on any day, however she lays', () => {
  fc.assert(
    fc.property(anyComb, fc.integer({ min: -30, max: 60 }), anyLaying, (cells, days, laying) => {
      const shares = sharesOf(
        aged(cells, days, calendar, (i) => laying[i] ?? 0),
        calendar,
      );
      const all = contents.reduce((total, content) => total + shares[content], 0);
      assert.ok(Math.abs(all - 1) < 1e-9, `sum ${all}`);
      for (const content of contents) assert.ok(shares[content] > -1e-12, content);
    }),
    options,
  );
});

test('C8 no sealed brood appears that was not laid: without laying, brood only grows older and is gone after its time', () => {
  fc.assert(
    fc.property(anyComb, fc.integer({ min: 0, max: 40 }), (cells, days) => {
      const later = aged(cells, days, calendar, () => 0);
      assert.equal(sum(later.worker, 0, Math.min(days, calendar.workerDays)), 0, 'nothing younger than the days that passed');
      for (let age = days; age < calendar.workerDays; age += 1)
        assert.ok((later.worker[age] ?? 0) <= (cells.worker[age - days] ?? 0) + 1e-12);
      if (days >= calendar.droneDays) assert.equal(sum(later.drone) + sum(later.worker), 0);
    }),
    options,
  );
});

test('C9 however she lays, sealed brood on any day was open brood before or lies within what was sealed already', () => {
  fc.assert(
    fc.property(anyComb, fc.integer({ min: 1, max: 8 }), anyLaying, (cells, days, laying) => {
      const later = sharesOf(
        aged(cells, days, calendar, (i) => laying[i] ?? 0),
        calendar,
      );
      const before = sharesOf(cells, calendar);
      const couldBe = before.sealed + before.emerging + before.larva + before.egg;
      assert.ok(later.sealed + later.emerging <= couldBe + 1e-12);
    }),
    options,
  );
});

test('C10 food does not change by waiting, and days add up: so many and then more is the sum of both', () => {
  fc.assert(
    fc.property(anyComb, fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 30 }), anyLaying, (cells, a, b, laying) => {
      const lay = (i: number): number => laying[i] ?? 0;
      const once = aged(cells, a + b, calendar, lay);
      const twice = aged(aged(cells, a, calendar, lay), b, calendar, (i) => lay(i + a));
      assert.deepEqual(once, twice);
      assert.deepEqual([once.honey, once.nectar, once.bread], [cells.honey, cells.nectar, cells.bread]);
    }),
    options,
  );
});

test('C11 going back and forward again never makes more brood than there is', () => {
  fc.assert(
    fc.property(anyComb, fc.integer({ min: 0, max: 20 }), (cells, days) => {
      const there = aged(
        aged(cells, -days, calendar, () => 0),
        days,
        calendar,
        () => 0,
      );
      there.worker.forEach((share, age) => {
        assert.ok(share <= (cells.worker[age] ?? 0) + 1e-12);
      });
    }),
    options,
  );
});
