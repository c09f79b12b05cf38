/**
 * Which comb of last time hangs at which place today: bars that bear no mark are told apart by brood and food, and the
 * cheapest matching of all of them together is taken. Costs are −2 log chance, so that a difference of 2 is a factor e.
 * Age of brood, built share, and combs cut or joined are left out.
 */
import { type FigureBook, value } from '../figures/book.ts';
import type { FigureKey } from '../figures/list.ts';
import { leastAssignment } from '../numbers/assignment.ts';
import { logMix, logSum } from '../numbers/log-sum.ts';
import { logNormalDensity } from '../numbers/normal.ts';
import type { BarPart } from './engine/surprise/bar-seen.ts';
import { surpriseConstants } from './engine/surprise/surprise-constants.ts';

/** A comb of last time, carried forward to the day; null for what was not read of it. */
export interface CombBefore {
  readonly place: number;
  readonly mark: string | null;
  readonly brood: Expected | null;
  readonly food: Expected | null;
}

export type Expected = Pick<BarPart, 'expected' | 'sd'>;

/** A bar of today; shares 0 … 1 of the comb, null where it was not read. */
export interface CombToday {
  readonly place: number;
  readonly mark: string | null;
  readonly brood: number | null;
  readonly food: number | null;
}

export interface CombMatch {
  /** Its place today. */
  readonly today: number;
  /** The place at which the comb hung last time; null for a comb that was not there. */
  readonly last: number | null;
  readonly by: 'mark' | 'contents';
  readonly cost: number;
  /** By how much the cheapest matching is dearer in which this bar is matched otherwise; null where there is none. */
  readonly gapToNextBest: number | null;
  /**
   * Chance that the match is right: e^(−½ gap) of this one over the sum of the same for all that it could be, each with
   * its cheapest matching of the others. Null for a bar of which nothing was read today: it is only left where it was.
   */
  readonly sure: number | null;
}

export interface CombMatches {
  /** By place. */
  readonly matches: readonly CombMatch[];
  /** Places of combs of last time that hang nowhere today. */
  readonly gone: readonly number[];
  readonly totalCost: number;
}

export const combMatchFigures = [
  'comb-match-place',
  'comb-match-apart',
  'surprise-bar-eighths',
  'surprise-bar-spread',
  'surprise-bar-fills',
  'carried-error-per-day',
  'carried-error-most',
  'engine-outlier-share',
] as const satisfies readonly FigureKey[];

/** No two of `before`, and no two of `today`, have one place or one mark. */
export function matchCombs(before: readonly CombBefore[], today: readonly CombToday[], book: FigureBook): CombMatches {
  const sorted = <T extends { readonly place: number }>(all: readonly T[]): readonly T[] =>
    [...all].sort((a, b) => a.place - b.place);
  const sameMark = (one: Marked, all: readonly Marked[]): boolean => one.mark !== null && all.some((o) => o.mark === one.mark);
  const marked = today.flatMap((bar): readonly CombMatch[] => {
    const last = before.find(({ mark }) => bar.mark !== null && mark === bar.mark);
    return last === undefined ? [] : [{ today: bar.place, last: last.place, by: 'mark', cost: 0, gapToNextBest: null, sure: 1 }];
  });
  const combs = sorted(before.filter((comb) => !sameMark(comb, today)));
  const bars = sorted(today.filter((bar) => !sameMark(bar, before)));
  const price = pricesOf(book);
  const costs = bars.map((bar) => combs.map((comb) => costOf(bar, comb, price)));
  const news = bars.map((bar) => price.apart + known(bar) * price.sharpest);
  // Left out, a bar costs what a new comb costs; that price differs from bar to bar, so it is taken off the row.
  const found = leastAssignment(
    costs.map((row, i) => row.map((cost) => cost - news[i]!)),
    combs.length,
    { row: 0, column: price.apart },
  );
  const matches = bars.map((bar, i): CombMatch => {
    const column = found.columnOf[i]!;
    const gap = found.gaps[i]!;
    const sure = Math.exp(-logSum(found.dearer[i]!.map((more) => -more / 2)));
    return {
      today: bar.place,
      last: column === null ? null : combs[column]!.place,
      by: 'contents',
      cost: column === null ? news[i]! : costs[i]![column]!,
      gapToNextBest: gap === Infinity ? null : gap,
      sure: known(bar) === 0 ? null : sure,
    };
  });
  return {
    matches: [...marked, ...matches].sort((a, b) => a.today - b.today),
    gone: combs.filter((_, column) => !found.columnOf.includes(column)).map(({ place }) => place),
    totalCost: found.total + news.reduce((sum, cost) => sum + cost, 0),
  };
}

type Marked = Pick<CombToday, 'mark'>;

interface Prices {
  readonly place: number;
  readonly apart: number;
  readonly outliers: number;
  /** The cost of knowing nothing, beside a reading that could not fit better. */
  readonly sharpest: number;
}

function pricesOf(book: FigureBook): Prices {
  const { barShare, outliers } = surpriseConstants(book);
  const sharpest = 2 * logMix(logNormalDensity(0, 0, barShare), 0, outliers);
  return { place: value(book, 'comb-match-place'), apart: value(book, 'comb-match-apart'), outliers, sharpest };
}

/** How many of its two contents were read. */
function known({ brood, food }: CombToday): number {
  return Number(brood !== null) + Number(food !== null);
}

function costOf(bar: CombToday, comb: CombBefore, price: Prices): number {
  if (bar.mark !== null && comb.mark !== null) return Infinity;
  // Once a comb is in the hand any place is about as near: each doubling costs as much as the first place.
  const apart = price.place * Math.log2(1 + Math.abs(bar.place - comb.place));
  return apart + partCost(bar.brood, comb.brood, price) + partCost(bar.food, comb.food, price);
}

/**
 * The squared standardised difference, and what a wide expectation says less than a sharp one; at most what a reading
 * costs that is wrong without a reason. Of a comb of which nothing is known any share is as likely as any other.
 */
function partCost(read: number | null, of: Expected | null, { outliers, sharpest }: Prices): number {
  if (read === null) return 0;
  if (of === null) return sharpest;
  return sharpest - 2 * logMix(logNormalDensity(read, of.expected, of.sd), 0, outliers);
}
