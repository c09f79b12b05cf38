/** From two rulers and a stage to nine contents, worked by hand. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../figures/book.ts';
import { contents } from '../hive/contents.ts';
import { calendarOf } from './calendar.ts';
import { combRead } from './comb-read.ts';
import { reading, type BarSeen } from './for-tests.ts';
import { possibleAges } from './possible-ages.ts';
import { contentRanges, type Possible, splitContents } from './split-contents.ts';

const calendar = calendarOf(printedBook);
const any: Possible = () => true;
const near = (a: number, b: number, why: string): void => {
  assert.ok(Math.abs(a - b) < 1e-12, `${why}: ${a} is not ${b}`);
};

function split(seen: BarSeen, possible: Possible = any) {
  return splitContents(combRead(reading('v', 'h', 1, seen)), possible, calendar, printedBook);
}

function ranges(read: ReturnType<typeof combRead>) {
  const found = splitContents(read, any, calendar, printedBook);
  assert.ok(found);
  return contentRanges(found, read, printedBook);
}

test('C1 brood of which eggs were seen is split 3 to 6 to 12, the last two days about to emerge', () => {
  const found = split({ brood: 4, food: 2, eggs: 'seen' });
  assert.ok(found);
  const each = 0.5 / 21;
  near(found.shares.egg, 3 * each, 'egg');
  near(found.shares.larva, 6 * each, 'larva');
  near(found.shares.sealed, 10 * each, 'sealed');
  near(found.shares.emerging, 2 * each, 'emerging');
  near(found.shares.honey + found.shares.nectar + found.shares.bread, 0.25, 'food');
  near(found.shares.empty, 0.25, 'empty');
});

test('C2 a stage younger than the youngest that was seen has no share', () => {
  const noEggs = split({ brood: 4, food: 4, eggs: 'none seen' });
  near(noEggs?.shares.egg ?? NaN, 0, 'egg');
  near(noEggs?.shares.larva ?? NaN, (0.5 * 6) / 18, 'larva');
  const old = split({ brood: 4, food: 4, eggs: 'none seen', youngest: 'larva' });
  near(old?.shares.larva ?? NaN, (0.5 * 3) / 15, 'old larvae');
  const sealed = split({ brood: 4, food: 4, eggs: 'none seen', youngest: 'sealed' });
  near((sealed?.shares.sealed ?? NaN) + (sealed?.shares.emerging ?? NaN), 0.5, 'all sealed');
});

test('C3 what was read is kept apart from what was not: drone, sealed honey, and a ruler left at nothing', () => {
  const drone = split({ brood: 4, food: 2, face: { drone8: 1, sealedFood8: 2 } });
  near(drone?.shares.drone ?? NaN, 0.125, 'drone');
  near(drone?.shares.honey ?? NaN, 0.25, 'sealed honey');
  near(drone?.shares.nectar ?? NaN, 0, 'no nectar is left');
  const mostly = split({ brood: 8, food: 0, combClass: 'mostly drone' });
  near(mostly?.shares.drone ?? NaN, 0.75, 'mostly drone');
  const half = split({ brood: 4, food: null });
  assert.equal(half?.ink, 'guessed');
  const { honey } = ranges(combRead(reading('v', 'h', 1, { brood: 4, food: null })));
  near(honey.low, 0, 'honey may be none');
  near(honey.high, 0.5, 'or all the rest');
  assert.equal(split({ brood: null, food: null }), null);
  assert.equal(split({ brood: null, food: null, combClass: 'bare' })?.shares.empty, 1);
});

test('C4 nothing is older than the comb, and days without eggs leave a gap', () => {
  const young = possibleAges({ firstCells: '2014-05-02', last: null }, '2014-05-10', calendar);
  const found = split({ brood: 4, food: 0, eggs: 'seen' }, young);
  near((found?.shares.sealed ?? NaN) + (found?.shares.emerging ?? NaN), 0, 'no sealed brood on the eighth day');
  near(found?.shares.egg ?? NaN, (0.5 * 3) / 9, 'eggs of three of nine days');
  const read = combRead(reading('v', 'h', 1, { brood: 0, food: 4, eggs: 'none seen' }));
  const after = possibleAges({ firstCells: null, last: { day: '2014-05-03', read } }, '2014-05-10', calendar);
  assert.deepEqual(
    [6, 7, 20].map((age) => after(age)),
    [true, false, false],
  );
  const odd = split({ brood: 4, food: 0, eggs: 'none seen', youngest: 'sealed' }, after);
  assert.equal(odd?.surprising, true);
  near((odd?.shares.sealed ?? NaN) + (odd?.shares.emerging ?? NaN), 0.5, 'the eye is believed');
});

test('C5 two faces read apart are averaged, one face stands for both with a wider range', () => {
  const two = combRead({
    ...reading('v', 'h', 1, {}),
    faces: [
      { face: 'toward first', brood8: 4, food8: 2 },
      { face: 'toward last', brood8: 2, food8: 4 },
    ],
  });
  assert.equal(two.brood, 3 / 8);
  const one = combRead({ ...reading('v', 'h', 1, {}), faces: [{ face: 'toward first', brood8: 4, food8: 2 }] });
  const width = (read: typeof one): number => {
    const { high, low } = ranges(read).empty;
    return high - low;
  };
  assert.ok(width(one) > width(two));
});

test('C6 every content has a range that holds its likely share', () => {
  for (const seen of [
    { brood: 4, food: 2 },
    { brood: 0, food: 8 },
    { brood: 8, food: 0, combClass: 'mostly drone' as const },
    { brood: 3, food: null },
  ]) {
    const found = split(seen);
    assert.ok(found);
    for (const content of contents) {
      const { low, likely, high } = ranges(combRead(reading('v', 'h', 1, seen)))[content];
      assert.ok(low <= likely && likely <= high && likely === found.shares[content], `${content} ${low} ${likely} ${high}`);
    }
  }
});
