/**
 * Room for the queen: empty worker cells in the brood, how many more each coming day leaves by the
 * ages of what is there, and the day on which none are left. The earliest day takes the worse end of
 * each number, the latest the better.
 */
import { type FigureBook, rangeOf } from '../figures/book.ts';
import { faceDm2, type HiveMeasures, perCombDm2 } from '../hive/hive-measures.ts';
import { addDays, type Day } from '../numbers/day.ts';
import { type Range, scaleRange } from '../numbers/range.ts';
import type { Window } from '../numbers/window.ts';
import type { BroodCalendar } from './calendar.ts';
import { isBroodBar, type CombTotals } from './totals.ts';
import type { NestBar } from './nest-bars.ts';
import { roomLeft } from './room-left.ts';
import type { RoomReading } from './view.ts';

/** How far ahead it is worked out, in broods: beyond two of them the weather has its say. */
const broodsAhead = 2;

/** Null when nothing is known of laying or of any brood comb. */
export function roomReading(
  bars: readonly NestBar[],
  totals: CombTotals,
  laid: Range | null,
  measures: HiveMeasures,
  calendar: BroodCalendar,
  day: Day,
  book: FigureBook,
): RoomReading | null {
  if (laid === null || !bars.some((bar) => isBroodBar(bar, book))) return null;
  const empty = totals.emptyInBrood.total;
  const nectar = rangeOf(book, 'nectar-cells-per-day');
  const coming = comingFree(bars, measures, calendar, book);
  const sealed = totals.sealed.total.likely > 0 ? totals.sealed.total : totals.egg.total;
  const spread = sealed.likely > 0 ? relative(sealed) : one;
  const sealedDays = calendar.workerDays - calendar.sealedFrom;
  const mean = coming.slice(0, sealedDays).reduce((sum, cells) => sum + cells, 0) / sealedDays;
  return {
    empty,
    emergingPerDay: scaleRange(spread, mean),
    laidPerDay: laid,
    nectarPerDay: nectar,
    fullOn: fullOn(empty, coming, spread, laid.likely, nectar, calendar, day),
    bareBars: bareBars(bars, book),
  };
}

const one: Range = { low: 1, likely: 1, high: 1 };

/** Cells left by emerging bees on each coming day, as far as brood is there to emerge. */
function comingFree(
  bars: readonly NestBar[],
  measures: HiveMeasures,
  calendar: BroodCalendar,
  book: FigureBook,
): readonly number[] {
  const perDm2 = perCombDm2(book).workerCells.likely;
  return Array.from({ length: calendar.workerDays }, (_, ahead) =>
    bars.reduce((sum, bar) => {
      const share = bar.cells?.worker[calendar.workerDays - 1 - ahead] ?? 0;
      return sum + share * faceDm2(measures, bar.view.built) * perDm2;
    }, 0),
  );
}

/**
 * Brood and laying come from one reading and err together: both are taken at the low end, as read,
 * and at the high end. Empty cells and nectar err apart: the earliest day has few and much.
 */
function fullOn(
  empty: Range,
  coming: readonly number[],
  spread: Range,
  laid: number,
  nectar: Range,
  calendar: BroodCalendar,
  day: Day,
): Window | null {
  const most = broodsAhead * calendar.workerDays;
  const round = calendar.workerDays + calendar.relayDays;
  const on = (cells: number, factor: number, nectarCells: number): number => {
    // What is laid from now on is back after a whole brood and a rest; brood that dies leaves its cell too.
    const free = Array.from({ length: most }, (_, i) => (coming[i] ?? (i >= round ? laid : 0)) * factor);
    return roomLeft(cells, free, laid * factor, nectarCells).fullOnDay ?? most;
  };
  const ends = [spread.low, 1, spread.high];
  const likely = on(empty.likely, 1, nectar.likely);
  if (likely === most) return null;
  const earliest = Math.min(likely, ...ends.map((factor) => on(empty.low, factor, nectar.high)));
  const latest = Math.max(likely, ...ends.map((factor) => on(empty.high, factor, nectar.low)));
  return { earliest: addDays(day, earliest), latest: addDays(day, latest) };
}

/** Bare bars, and the empty part of combs outside the brood, in bars. */
function bareBars(bars: readonly NestBar[], book: FigureBook): number {
  return bars.reduce((sum, bar) => {
    if (bar.view.kind === 'bare') return sum + 1;
    if (bar.view.shares === null || isBroodBar(bar, book)) return sum;
    return sum + bar.view.shares.empty;
  }, 0);
}

function relative(range: Range): Range {
  return scaleRange(range, 1 / range.likely);
}
