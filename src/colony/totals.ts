/**
 * Sums over the combs: cells of each content, honey and bee bread by weight, room in the brood; each
 * in two parts, seen at the last visit and carried forward for what was not opened then.
 */
import { type FigureBook, value } from '../figures/book.ts';
import type { FigureKey } from '../figures/list.ts';
import { broodContents, type Content, contents, type Ink } from '../hive/contents.ts';
import { faceDm2, type HiveMeasures, type PerDm2, perCombDm2 } from '../hive/hive-measures.ts';
import type { Id } from '../journal/entry.ts';
import { type Day, daysBetween } from '../numbers/day.ts';
import { addTogether, exactly, nothing, type Range, scaleRange, timesRange } from '../numbers/range.ts';
import type { NestBar } from './nest-bars.ts';
import type { Total, TotalName } from './view.ts';
import { carriedTogether, type Part, readerFactor, seenTogether } from './widen.ts';

export type CombTotals = Readonly<Record<Exclude<TotalName, 'adults'>, Total>>;

/** Which reader's errors act on a content; the split's error comes in where it was worked out. */
const errorsOf: Readonly<Record<Content, readonly FigureKey[]>> = {
  honey: ['reader-error-food', 'food-split-error'],
  nectar: ['reader-error-food', 'food-split-error'],
  bread: ['reader-error-food', 'food-split-error'],
  empty: ['reader-error-sealed'],
  drone: ['reader-error-open'],
  emerging: ['reader-error-sealed', 'stage-split-error'],
  sealed: ['reader-error-sealed', 'stage-split-error'],
  larva: ['reader-error-open', 'stage-split-error'],
  egg: ['reader-error-open', 'stage-split-error'],
};

export function combTotals(
  bars: readonly NestBar[],
  measures: HiveMeasures,
  lastVisit: Id | null,
  day: Day,
  book: FigureBook,
): CombTotals {
  const per = perCombDm2(book);
  const sum = (what: Quantity): Total => totalOf(bars, what, measures, lastVisit, day, book);
  const cells = (content: Content): Total =>
    sum({
      errors: errorsOf[content],
      density: relative(content === 'drone' ? per.droneCells : per.workerCells),
      part: (bar) => scaleRange(shareRange(bar, content), middle(content === 'drone' ? per.droneCells : per.workerCells)),
    });
  const made = Object.fromEntries(contents.map((content) => [content, cells(content)])) as Record<Content, Total>;
  return {
    ...made,
    honeyKg: sum({ errors: ['reader-error-food'], density: relative(per.honeyKg), part: (bar) => honeyPart(bar, per) }),
    breadKg: sum({
      errors: errorsOf.bread,
      density: relative(per.breadKg),
      part: (bar) => scaleRange(shareRange(bar, 'bread'), middle(per.breadKg)),
    }),
    workerCells: sum({
      errors: [],
      density: relative(per.workerCells),
      part: (bar) => (bar.view.built === 0 ? nothing : exactly(middle(per.workerCells))),
    }),
    emptyInBrood: sum({
      errors: errorsOf.empty,
      density: relative(per.workerCells),
      part: (bar) => (isBroodBar(bar, book) ? scaleRange(shareRange(bar, 'empty'), middle(per.workerCells)) : nothing),
    }),
  };
}

/** A comb with as much brood as counts: the nest, as far as room in it goes. */
export function isBroodBar(bar: NestBar, book: FigureBook): boolean {
  const { shares } = bar.view;
  if (shares === null) return false;
  return broodContents.reduce((sum, content) => sum + shares[content], 0) >= value(book, 'brood-comb-share');
}

interface Quantity {
  readonly errors: readonly FigureKey[];
  /** The figure's own range as a factor around 1: common to all bars. */
  readonly density: Range;
  /** Per square decimetre of built comb, by rounding alone. */
  readonly part: (bar: NestBar) => Range;
}

function totalOf(
  bars: readonly NestBar[],
  what: Quantity,
  measures: HiveMeasures,
  lastVisit: Id | null,
  day: Day,
  book: FigureBook,
): Total {
  const seen = new Map<Id, Part>();
  const carried = new Map<Id, Part>();
  const unread: NestBar[] = [];
  for (const bar of bars) {
    if (bar.view.kind === 'bare') continue;
    if (bar.cells === null || bar.reading === null) {
      unread.push(bar);
      continue;
    }
    const part = {
      range: scaleRange(what.part(bar), faceDm2(measures, bar.view.built)),
      days: daysBetween(bar.reading.day, day),
    };
    const parts = bar.reading.visit === lastVisit ? seen : carried;
    const { entry } = bar.reading.row;
    const known = parts.get(entry);
    // Combs that were read as one err in their rounding as one.
    parts.set(entry, known === undefined ? part : { ...part, range: addTogether([known.range, part.range]) });
  }
  const factor = timesRange(readerFactor(what.errors, book), what.density);
  const read = bars.filter((bar) => bar.cells !== null && bar.view.kind === 'comb');
  const guessed = addTogether(
    unread.map((bar) => scaleRange(unknownPart(read, what, bar.view.comb !== null), faceDm2(measures, bar.view.built))),
  );
  const seenRange = seenTogether([...seen.values()], factor, book);
  const carriedRange = addTogether([carriedTogether([...carried.values()], factor, book), timesRange(guessed, factor)]);
  return {
    seen: seenRange,
    carried: carriedRange,
    total: addTogether([seenRange, carriedRange]),
    ink: inkOf(bars, unread.length > 0, day),
  };
}

/**
 * A comb that nobody read may hold as much as the fullest that was read, or nothing; its likely part
 * is the mean of those read. Where no comb is even known to hang, the likely part is nothing: keepers
 * read the combs that they have. Where none was read at all, there is no number to give.
 */
function unknownPart(read: readonly NestBar[], what: Quantity, combKnown: boolean): Range {
  if (read.length === 0) return nothing;
  const parts = read.map((bar) => what.part(bar));
  const mean = parts.reduce((sum, part) => sum + part.likely, 0) / parts.length;
  return { low: 0, likely: combKnown ? mean : 0, high: Math.max(...parts.map((part) => part.high)) };
}

/** Today's share with the half widths of its reading, which age with it in proportion. */
function shareRange(bar: NestBar, content: Content): Range {
  const { shares } = bar.view;
  const split = bar.reading?.split;
  if (shares === null || bar.ranges === null || !split) return nothing;
  const likely = shares[content];
  const was = bar.ranges[content];
  if (split.shares === shares) return was;
  const rounding = Math.max(was.likely - was.low, was.high - was.likely);
  const half = was.likely > 0 ? (likely / was.likely) * rounding : Math.min(rounding, likely);
  return {
    low: Math.max(0, likely - half),
    likely,
    high: Math.min(1, likely + Math.max(half, was.likely === 0 ? was.high : 0)),
  };
}

/** Nectar is the honey that it will be. Honey and nectar change places without changing the sum: only the food read errs. */
function honeyPart(bar: NestBar, per: PerDm2): Range {
  const { shares } = bar.view;
  if (shares === null) return nothing;
  const both = addTogether([shareRange(bar, 'honey'), shareRange(bar, 'nectar')]);
  const kg = shares.honey * middle(per.honeyKg) + shares.nectar * middle(per.nectarKg);
  if (both.likely === 0) return scaleRange(both, middle(per.honeyKg));
  return scaleRange(both, kg / both.likely);
}

function inkOf(bars: readonly NestBar[], unread: boolean, day: Day): Ink {
  if (unread) return 'guessed';
  const combs = bars.filter((bar) => bar.view.kind === 'comb');
  if (combs.some((bar) => bar.view.ink === 'guessed')) return 'guessed';
  return combs.every((bar) => bar.reading?.day === day) ? 'seen' : 'worked out';
}

function middle(range: Range): number {
  return range.likely;
}

function relative(range: Range): Range {
  return scaleRange(range, 1 / range.likely);
}
