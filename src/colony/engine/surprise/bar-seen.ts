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
  const days = readOn === null ? 0 : daysBetween(readOn, day);
  const share = (of: readonly Content[]): number => of.reduce((sum, content) => sum + shares[content], 0);
  const part = (of: readonly Content[]): BarPart => barPartOf(share(of), shares.empty, null, days, book);
  const shut = { place: today.place, brood: part(broodContents), food: part(foodContents) };
  return body === null ? shut : barRead(shut, body);
}

/** What was foreseen of a bar, with what was read there; what was filled in as expected is no reading of its own. */
export function barRead({ place, brood, food }: BarSeen, body: Reading): BarSeen {
  if (body.method === 'as expected') return { place, brood, food };
  const read = combRead(body);
  return { place, brood: { ...brood, read: read.brood }, food: { ...food, read: read.food } };
}

/** Empty cells of the comb may have been laid in or filled since; what they held may have been eaten or have emerged. */
export function barPartOf(expected: number, empty: number, read: number | null, days: number, book: FigureBook): BarPart {
  const { barShare, barSpread, barFills } = surpriseConstants(book);
  const drifts = expected * Math.expm1(Math.hypot(barSpread, carriedSd(days, book)));
  return { expected, read, sd: Math.hypot(barShare, drifts, empty * Math.min(1, barFills * days)) };
}
