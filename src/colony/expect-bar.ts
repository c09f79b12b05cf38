/**
 * What was on a bar last time and what should be on it today: shown on the Visit screen after the
 * keeper's own reading, never before. And the word for a reading that surprises.
 */
import { type FigureBook, value } from '../figures/book.ts';
import { broodContents, type Content, foodContents, type Shares } from '../hive/contents.ts';
import { eighthsInWhole } from '../hive/shapes.ts';
import type { Id } from '../journal/entry.ts';
import { assert } from '../numbers/assert.ts';
import { type Day, daysBetween } from '../numbers/day.ts';
import { combRead } from './comb-read.ts';
import { barsAtVisit, barsToday } from './nest-bars.ts';
import { type Outlook, plainOutlook } from './outlook.ts';
import type { Reading } from './reading.ts';
import type { ColonyState } from './state.ts';
import type { BarView } from './view.ts';
import { nestOf } from './view-of.ts';
import { visitsInOrder } from './visits-of.ts';
import { stayOn } from './whose.ts';
import { carriedSd } from './widen.ts';
import { eightOfTen } from './split-contents.ts';

export interface ExpectedBar {
  /** As read last time; null when the comb that hangs there was never read. */
  readonly last: BarView | null;
  /** As it should look on the day. */
  readonly today: BarView;
}

/** Readings of the visit that is under way must not be in the state. Throws when the colony is not. */
export function expectBar(
  state: ColonyState,
  colonyId: Id,
  place: number,
  day: Day,
  book: FigureBook,
  outlook: Outlook = plainOutlook,
): ExpectedBar {
  const colony = state.colonies.get(colonyId);
  assert(colony, `the colony ${colonyId} is in the state`);
  const visits = visitsInOrder(state, colonyId, day);
  const hive = stayOn(colony, day)?.hive ?? '';
  const nest = nestOf(state, colony, visits, day, book, outlook(state, colony, day, book), hive);
  const [bar] = barsToday(nest, place, place, day, new Map());
  assert(bar, 'one place gives one bar');
  const { reading } = bar;
  const last =
    reading === null
      ? null
      : (barsAtVisit(nest, reading.row.body.place, reading.row.body.place, reading.visit, reading.day).find(
          (one) => one.comb === reading.row.comb,
        ) ?? null);
  return { last: last === null ? null : { ...last, place }, today: bar.view };
}

export const surprises = ['no eggs now', 'eggs again', 'more brood', 'less brood', 'more food', 'less food'] as const;
export type Surprise = (typeof surprises)[number];

/**
 * The word for how the reading differs from what was expected, the weightiest one; null when it lies
 * within what such readings and such expectations err by, or nothing was expected.
 */
export function surprise(body: Reading, expected: ExpectedBar, day: Day, book: FigureBook): Surprise | null {
  const { shares, readOn, kind } = expected.today;
  if (shares === null || kind === 'unknown' || expected.today.ink === 'guessed') return null;
  const read = combRead(body);
  const days = readOn === null ? 0 : daysBetween(readOn, day);
  const eggs = eggsWord(read, shares, expected.last?.shares ?? null, book);
  if (eggs !== null) return eggs;
  const brood = areaWord(read.brood, part(shares, broodContents), days, book);
  if (brood !== null) return brood > 0 ? 'more brood' : 'less brood';
  const food = areaWord(read.food, part(shares, foodContents), days, book);
  if (food !== null) return food > 0 ? 'more food' : 'less food';
  return null;
}

/** Few eggs move from comb to comb by themselves: only as many as a ruler could read are missed. */
function eggsWord(
  read: { readonly youngest: Reading['youngest']; readonly noEggs: boolean },
  shares: Shares,
  last: Shares | null,
  book: FigureBook,
): Surprise | null {
  if (last === null) return null;
  const readable = shares.egg >= value(book, 'brood-comb-share');
  if (read.noEggs && last.egg > 0 && readable) return 'no eggs now';
  const paused = last.egg === 0 && part(last, broodContents) > 0;
  return read.youngest === 'egg' && paused && !readable ? 'eggs again' : null;
}

/** The difference, when it is larger than both the ruler's steps and the growth of the error since the last reading; else null. */
function areaWord(read: number | null, likely: number, days: number, book: FigureBook): number | null {
  if (read === null) return null;
  const least = value(book, 'surprise-eighths') / eighthsInWhole;
  const grown = Math.exp(eightOfTen * carriedSd(days, book));
  const high = likely * grown + least;
  const low = likely / grown - least;
  if (read > high) return read - likely;
  return read < low ? read - likely : null;
}

function part(shares: Shares, of: readonly Content[]): number {
  return of.reduce((sum, content) => sum + shares[content], 0);
}
