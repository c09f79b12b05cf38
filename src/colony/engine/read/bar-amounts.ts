/**
 * What one comb holds by one reading, as the model counts it: sealed and open worker cells, honey with the nectar
 * that will be honey, built cells, bees; each with the rounding of the eighths alone, because the error of a
 * reader's eye is common to all combs and is the model's to learn. What was not read is null.
 */
import { value } from '../../../figures/book.ts';
import { assert } from '../../../numbers/assert.ts';
import { type Day, daysBetween } from '../../../numbers/day.ts';
import { addTogether, type Range, scaleRange } from '../../../numbers/range.ts';
import { aged } from '../../ageing.ts';
import { sharesOf } from '../../comb-cells.ts';
import type { CombReading } from '../../comb-history.ts';
import { layingAfter } from '../../nest-bars.ts';
import { cellsOf, type CombSplit, contentRanges, eightOfTen } from '../../split-contents.ts';
import type { Shares } from '../../../hive/contents.ts';
import { builtOf, type RecordBook, type Trough } from './record-book.ts';

export const amountNames = ['bees', 'sealed', 'open', 'honeyKg'] as const;
export type AmountName = (typeof amountNames)[number];

/** As read on its day. */
export function amountsRead(
  records: RecordBook,
  trough: Trough,
  reading: CombReading,
): Readonly<Record<AmountName, Range | null>> {
  const { book, per } = records;
  const { split, read } = reading;
  const face = trough.measures.fullFaceDm2 * builtOf(reading, book);
  const ranges = split === null ? null : contentRanges(split, read, book);
  const broodRead = split?.areas.broodRead ?? false;
  const bare = split !== null && builtOf(reading, book) === 0;
  const cells = face * per.workerCells.likely;
  const brood = (names: readonly (keyof Shares)[]): Range | null =>
    ranges === null || (!broodRead && !bare) ? null : scaleRange(addTogether(names.map((name) => ranges[name])), cells);
  return {
    bees: read.bees === null ? null : beesOf(records, trough, read.bees, read.facesRead),
    sealed: brood(['sealed', 'emerging']),
    open: brood(['egg', 'larva']),
    honeyKg: ranges === null || (split?.areas.foodRead !== true && !bare) ? null : honeyOf(records, face, ranges),
  };
}

/** As the comb should be on a later day, had she laid all the time. */
export function amountsExpected(
  records: RecordBook,
  trough: Trough,
  reading: CombReading,
  day: Day,
): Readonly<Record<AmountName, number | null>> {
  const { book, per } = records;
  const { split, read } = reading;
  const bees = read.bees;
  if (split === null) return { bees, sealed: null, open: null, honeyKg: null };
  const shares = sharesExpected(records, reading, split, day);
  const face = trough.measures.fullFaceDm2 * builtOf(reading, book);
  const worker = face * per.workerCells.likely;
  return {
    bees,
    sealed: split.areas.broodRead ? (shares.sealed + shares.emerging) * worker : null,
    open: split.areas.broodRead ? (shares.egg + shares.larva) * worker : null,
    honeyKg: split.areas.foodRead ? face * (shares.honey * per.honeyKg.likely + shares.nectar * per.nectarKg.likely) : null,
  };
}

/** Contents of a comb so many days after it was read, had she laid all the time. */
export function sharesExpected({ calendar, ...rest }: RecordBook, reading: CombReading, split: CombSplit, day: Day): Shares {
  const days = daysBetween(reading.day, day);
  assert(days >= 0, 'nothing is expected of the past');
  return days === 0
    ? split.shares
    : sharesOf(aged(cellsOf(split, calendar), days, calendar, layingAfter(rest, reading.day)), calendar);
}

/** `covered` is a share of both faces of a comb built to the walls. */
function beesOf({ book, per }: RecordBook, trough: Trough, covered: number, facesRead: 1 | 2): Range {
  const half = eightOfTen * value(book, 'eighth-rounding') * Math.sqrt(2 / facesRead);
  const full = trough.measures.fullFaceDm2 * per.bees.likely;
  return { low: Math.max(0, covered - half) * full, likely: covered * full, high: (covered + half) * full };
}

function honeyOf({ per }: RecordBook, face: number, ranges: Readonly<Record<keyof Shares, Range>>): Range {
  return addTogether([
    scaleRange(ranges.honey, face * per.honeyKg.likely),
    scaleRange(ranges.nectar, face * per.nectarKg.likely),
  ]);
}
