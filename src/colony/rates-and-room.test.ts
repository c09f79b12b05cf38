/** Laying rate, missed cells, room for the queen, pattern: hand-worked cases and what must always hold. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { layingRate } from './laying-rate.ts';
import { missedCell } from './missed-cell.ts';
import { pattern } from './pattern.ts';
import { roomLeft } from './room-left.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });

test('S25 2400 sealed cells at 12 days and 0.8 survival are 200 bees and 250 eggs a day', () => {
  assert.deepEqual(layingRate(2400, 12, 0.8), { emergingPerDay: 200, laidPerDay: 250 });
});

test('S26 two cells, half looked at, seen half of the time: missed both 9 of 16, one at least 15 of 16', () => {
  const { missAll, missAny } = missedCell(2, 0.5, 0.5);
  assert.ok(Math.abs(missAll - 9 / 16) < 1e-12);
  assert.ok(Math.abs(missAny - 15 / 16) < 1e-12);
});

test('S26 chances lie in 0…1, missing all is never likelier than missing one, and looking more never hurts', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 60 }), share, share, share, (cells, a, b, chance) => {
      const [less, more] = [missedCell(cells, Math.min(a, b), chance), missedCell(cells, Math.max(a, b), chance)];
      for (const { missAll, missAny } of [less, more]) assert.ok(0 <= missAll && missAll <= missAny + 1e-12 && missAny <= 1);
      assert.ok(more.missAll <= less.missAll + 1e-12 && more.missAny <= less.missAny + 1e-12);
      const one = missedCell(cells + 1, a, chance);
      const here = missedCell(cells, a, chance);
      assert.ok(one.missAll <= here.missAll + 1e-12 && one.missAny >= here.missAny - 1e-12);
    }),
    { seed: 71 },
  );
});

test('S26 the chances agree with counting over every way in which cells are seen', () => {
  const seen = 0.8 * 0.7;
  let all = 0;
  let any = 0;
  for (let mask = 0; mask < 16; mask += 1) {
    const hits = [0, 1, 2, 3].filter((bit) => (mask & (1 << bit)) !== 0).length;
    const chance = seen ** hits * (1 - seen) ** (4 - hits);
    if (hits === 0) all += chance;
    if (hits < 4) any += chance;
  }
  const { missAll, missAny } = missedCell(4, 0.8, 0.7);
  assert.ok(Math.abs(missAll - all) < 1e-12 && Math.abs(missAny - any) < 1e-12);
});

test('S27 1000 empty cells, 300 and 500 emerging, 700 laid, 100 nectar: 1000, 500, 200, not full yet', () => {
  assert.deepEqual(roomLeft(1000, [300, 500], 700, 100), { free: [1000, 500, 200], fullOnDay: null });
});

test('S27 a nest without an empty cell is full today, even if bees emerge later', () => {
  assert.deepEqual(roomLeft(0, [900], 100, 0), { free: [0, 800], fullOnDay: 0 });
});

test('S27 the last free number is the first plus all that emerged less all that went in', () => {
  const cells = fc.integer({ min: 0, max: 5000 });
  fc.assert(
    fc.property(cells, fc.array(cells, { maxLength: 30 }), cells, cells, (empty, emerging, laid, nectar) => {
      const { free, fullOnDay } = roomLeft(empty, emerging, laid, nectar);
      assert.equal(free.length, emerging.length + 1);
      assert.equal(free.at(-1), empty + emerging.reduce((a, b) => a + b, 0) - emerging.length * (laid + nectar));
      if (fullOnDay === null) assert.ok(free.every((one) => one > 0));
      else assert.ok((free[fullOnDay] ?? 1) <= 0 && free.slice(0, fullOnDay).every((one) => one > 0));
    }),
    { seed: 72 },
  );
});

test('S28 the pattern is in percent: 90 of 100 is 90, between 82 and 95', () => {
  const { percent, lo95, hi95 } = pattern(90, 100);
  assert.equal(percent, 90);
  assert.ok(lo95 > 82 && lo95 < 83 && hi95 > 94 && hi95 < 95);
});
