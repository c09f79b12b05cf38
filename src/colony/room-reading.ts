/**
 * Room for the queen: empty worker cells in the brood, how many more each coming day leaves by the
 * ages of what is there, and the day on which none are left. The earliest day takes the worse end of
 * each number, the latest the better.
 */
import { type FigureBook, rangeOf } from '../figures/book.ts';
import { faceDm2, type HiveMeasures, perCombDm2 } from '../hive/hive-measures.ts';
import { addDays, type Day } from '../numbers/day.ts';
import { type Range, scaleRange, timesRange } from '../numbers/range.ts';
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
  bars: readonly NestBar[], totals: CombTotals, laid: Range | null, measures: HiveMeasures, calendar: BroodCalendar, day: Day, book: FigureBook,
): RoomReading | null {
  if (laid === null || !bars.some((bar) => isBroodBar(bar, book))) return null;
  const empty = totals.emptyInBrood.total;
  const nectar = rangeOf(book, 'nectar-cells-per-day');
  const coming = comingFree(bars, measures, calendar, book);
  const known = totals.sealed.total.likely + totals.emerging.total.likely;
  const spread = known > 0 ? relative(timesRange(totals.sealed.total.likely > 0 ? totals.sealed.total : totals.emerging.total, one)) : one;
  const first = coming[0] ?? 0;
  return {
    empty, emergingPerDay: scaleRange(spread, first), laidPerDay: laid, nectarPerDay: nectar,
    fullOn: fullOn(empty, coming, spread, laid, nectar, calendar, day),
    bareBars: bareBars(bars, book),
  };
}

const one: Range = { low: 1, likely: 1, high: 1 };

/** Cells left by emerging bees on each coming day, as far as brood is there to emerge. */
function comingFree(bars: readonly NestBar[], measures: HiveMeasures, calendar: BroodCalendar, book: FigureBook): readonly number[] {
  const perDm2 = perCombDm2(book).workerCells.likely;
  return Array.from({ length: calendar.workerDays }, (_, ahead) => bars.reduce((sum, bar) => {
    const share = bar.cells?.worker[calendar.workerDays - 1 - ahead] ?? 0;
    return sum + share * faceDm2(measures, bar.view.built) * perDm2;
  }, 0));
}

function fullOn(
  empty: Range, coming: readonly number[], spread: Range, laid: Range, nectar: Range, calendar: BroodCalendar, day: Day,
): Window | null {
  // Brood that dies leaves its cell too; what is laid from now on is back after a whole brood and a rest.
  const ahead = (laidPerDay: number, factor: number): readonly number[] => {
    const round = calendar.workerDays + calendar.relayDays;
    return Array.from({ length: broodsAhead * calendar.workerDays }, (_, i) => {
      const known = coming[i] ?? (i >= round ? laidPerDay : 0);
      const back = i < coming.length ? known * factor : known;
      return back;
    });
  };
  const soonest = roomLeft(empty.low, ahead(laid.high, spread.low), laid.high, nectar.high).fullOnDay;
  const likely = roomLeft(empty.likely, ahead(laid.likely, 1), laid.likely, nectar.likely).fullOnDay;
  if (soonest === null || likely === null) return null;
  const most = broodsAhead * calendar.workerDays;
  const latest = roomLeft(empty.high, ahead(laid.low, spread.high), laid.low, nectar.low).fullOnDay ?? most;
  return { earliest: addDays(day, Math.min(soonest, likely)), latest: addDays(day, Math.max(latest, likely)) };
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
