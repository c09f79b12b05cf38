/**
 * Eggs laid in a day, from the worker brood that is sealed now; while nothing can be sealed yet, from
 * the eggs. A range from the sums, the days sealed and the survival, whose errors are unrelated.
 */
import { type FigureBook, rangeOf } from '../figures/book.ts';
import { addTogether, type Range, timesRange } from '../numbers/range.ts';
import type { BroodCalendar } from './calendar.ts';
import { layingRate } from './laying-rate.ts';
import type { NestBar } from './nest-bars.ts';
import type { CombTotals } from './totals.ts';

/** Null when no worker brood is known. */
export function layingPerDay(
  bars: readonly NestBar[],
  totals: CombTotals,
  calendar: BroodCalendar,
  book: FigureBook,
): Range | null {
  const sealed = addTogether([totals.sealed.total, totals.emerging.total]);
  if (sealed.likely > 0) {
    const days = rangeOf(book, 'worker-sealed-days');
    const whole = calendar.workerDays - calendar.sealedFrom;
    // A young nest has sealed brood of fewer days: the rate is per day of those.
    const filled = filledDays(bars, calendar.sealedFrom, calendar.workerDays) / whole;
    const survival = rangeOf(book, 'survival-to-sealed');
    const { laidPerDay } = layingRate(sealed.likely, days.likely * filled, survival.likely);
    const perDay = { low: days.likely / days.high, likely: 1, high: days.likely / days.low };
    const perEgg = { low: survival.likely / survival.high, likely: 1, high: survival.likely / survival.low };
    return timesRange(
      timesRange(
        timesRange(sealed, { low: 1 / sealed.likely, likely: 1 / sealed.likely, high: 1 / sealed.likely }),
        timesRange(perDay, perEgg),
      ),
      { low: laidPerDay, likely: laidPerDay, high: laidPerDay },
    );
  }
  const eggs = totals.egg.total;
  if (eggs.likely <= 0) return null;
  const days = rangeOf(book, 'worker-egg-days');
  const filled = filledDays(bars, 0, calendar.eggEnd) / calendar.eggEnd;
  return timesRange(eggs, {
    low: 1 / days.high / filled,
    likely: 1 / days.likely / filled,
    high: 1 / days.low / filled,
  });
}

/** Days of age, from…to, of which there is any brood. */
function filledDays(bars: readonly NestBar[], from: number, to: number): number {
  let filled = 0;
  for (let age = from; age < to; age += 1) if (bars.some((bar) => (bar.cells?.worker[age] ?? 0) > 0)) filled += 1;
  return Math.max(1, filled);
}
