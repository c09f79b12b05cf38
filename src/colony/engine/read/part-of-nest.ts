/**
 * The part of a nest that went with some of its combs: their share of bees, brood, food and wax by what each comb
 * last held. A comb of which a thing was never read counts as the mean of those read.
 */
import type { Id } from '../../../journal/entry.ts';
import { addDays, type Day } from '../../../numbers/day.ts';
import { amountsExpected } from './bar-amounts.ts';
import { shareOpened } from './counts-of.ts';
import { builtOf, combsBefore, lastReading, type RecordBook, troughOn } from './record-book.ts';

export interface NestPart {
  readonly bees: number;
  readonly brood: number;
  readonly food: number;
  readonly comb: number;
}

/** `combs` hung in the colony's bay when the day began, or were read there on it. */
export function partOfNest(records: RecordBook, day: Day, combs: readonly Id[]): NestPart {
  const trough = troughOn(records, addDays(day, -1));
  const all = [...new Set([...[...combsBefore(records, day).values()].map((comb) => comb.id), ...combs])];
  if (trough === null) return { bees: 0, brood: 0, food: 0, comb: 0 };
  const went = all.map((comb) => combs.includes(comb));
  const readings = all.map((comb) => lastReading(records, comb, day));
  const held = readings.map((reading) => (reading === null ? null : amountsExpected(records, trough, reading, day)));
  const share = (of: readonly (number | null)[]): number => (went.includes(true) ? shareOpened(went, () => of) : 0);
  return {
    bees: share(held.map((one) => one?.bees ?? null)),
    brood: share(held.map((one) => (one === null || one.sealed === null || one.open === null ? null : one.sealed + one.open))),
    food: share(held.map((one) => one?.honeyKg ?? null)),
    comb: share(readings.map((reading) => builtOf(reading, records.book))),
  };
}
