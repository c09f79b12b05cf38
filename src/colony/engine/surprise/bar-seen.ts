/**
 * A single bar: what was expected to hang there, carried forward from its last reading, against what was read, as
 * shares of the comb. The word for it that the visit shows at once is in expect-bar; here it becomes a number.
 */
import type { FigureBook } from '../../../figures/book.ts';
import { broodContents, type Content, foodContents } from '../../../hive/contents.ts';
import { type Day, daysBetween } from '../../../numbers/day.ts';
import { combRead } from '../../comb-read.ts';
import type { Reading } from '../../reading.ts';
import type { BarView } from '../../view.ts';
import { carriedSd } from '../../widen.ts';
import { surpriseConstants } from './surprise-constants.ts';

/** One content of a comb, shares 0 … 1 of the comb as built. */
export interface BarPart {
  readonly expected: number;
  /** By how much a reading differs from what is expected, both together. */
  readonly sd: number;
  /** Null where the bar stayed shut, or this was not read. */
  readonly read: number | null;
}

export interface BarSeen {
  readonly place: number;
  readonly brood: BarPart;
  readonly food: BarPart;
}

/** What is expected of a bar: a view of it, or as much of one. */
export type BarExpected = Pick<BarView, 'place' | 'kind' | 'shares' | 'ink' | 'readOn'>;

/** Null when nothing was expected: the comb was never read. `body` is null for a bar that stayed shut. */
export function barSeenOf(today: BarExpected, body: Reading | null, day: Day, book: FigureBook): BarSeen | null {
  const { shares, readOn, kind, ink } = today;
  if (shares === null || kind === 'unknown' || ink === 'guessed') return null;
  const read = body === null ? null : combRead(body);
  const { barShare, barSpread } = surpriseConstants(book);
  const carried = readOn === null ? 0 : carriedSd(daysBetween(readOn, day), book);
  const part = (of: readonly Content[], seen: number | null): BarPart => {
    const expected = of.reduce((sum, content) => sum + shares[content], 0);
    return { expected, sd: Math.hypot(barShare, expected * Math.expm1(Math.hypot(barSpread, carried))), read: seen };
  };
  return {
    place: today.place,
    brood: part(broodContents, read?.brood ?? null),
    food: part(foodContents, read?.food ?? null),
  };
}
