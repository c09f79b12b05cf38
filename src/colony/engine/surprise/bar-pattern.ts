/**
 * How well the pattern of single bars fits where combs hang as they did, and where some were moved: two changed
 * places, or a run of them was pushed along by a bar or two. Only the pattern counts, not the total, which the
 * particles judge; a bar that stayed shut can be where a comb came from.
 */
import { logMix, logSum } from '../../../numbers/log-sum.ts';
import { logNormalDensity } from '../../../numbers/normal.ts';
import type { BarPart, BarSeen } from './bar-seen.ts';

const parts = ['brood', 'food'] as const;
/** A run of combs is pushed along by so many bars: one or two hung in before it, or taken out. */
const pushedBy = [1, 2].flatMap((by) => [by, -by]);
/** A content is taken as so many times more or less than expected, at most, before it is a pattern of its own. */
const mostTimes = 4;

export function patternLogDensity(bars: readonly BarSeen[], moved: boolean, outliers: number): number {
  if (bars.length === 0) return 0;
  const asTheyHung = bars.map((_, i) => i);
  const orders = moved ? movedOrders(bars.length) : [asTheyHung];
  const times = parts.map((name) => overall(bars.map((bar) => bar[name])));
  const logs = orders.map((order) =>
    order.reduce(
      (sum, from, to) => sum + parts.reduce((all, name, i) => all + one(bars, name, from, to, times[i]!, outliers), 0),
      0,
    ),
  );
  return logSum(logs) - Math.log(logs.length);
}

/** How much better moved combs explain the bars together; null where there is no other comb to change places with. */
export function movedFitOf(bars: readonly BarSeen[], outliers: number): number | null {
  return bars.length < 2 ? null : patternLogDensity(bars, true, outliers) - patternLogDensity(bars, false, outliers);
}

/** For each bar the place in the list from which its comb came; −1 for a comb of which nothing was known. */
function movedOrders(count: number): readonly (readonly number[])[] {
  const still = Array.from({ length: count }, (_, i) => i);
  const swaps = still.flatMap((a) => still.slice(a + 1).map((b) => still.map((i) => (i === a ? b : i === b ? a : i))));
  const pushes = pushedBy.flatMap((by) =>
    still.slice(0, -1).map((from) => still.map((i) => (i < from ? i : i - by >= from && i - by < count ? i - by : -1))),
  );
  return [...swaps, ...pushes];
}

function one(
  bars: readonly BarSeen[],
  name: 'brood' | 'food',
  from: number,
  to: number,
  times: number,
  outliers: number,
): number {
  const { read } = bars[to]![name];
  if (read === null || from < 0) return 0;
  const { expected, sd } = bars[from]![name];
  return logMix(logNormalDensity(read, expected * times, sd), 0, outliers);
}

/** How many times what was expected the bars that were read hold together. */
function overall(all: readonly BarPart[]): number {
  const read = all.filter((part) => part.read !== null);
  const expected = read.reduce((sum, part) => sum + part.expected, 0);
  const seen = read.reduce((sum, part) => sum + (part.read ?? 0), 0);
  if (expected === 0) return 1;
  return Math.min(mostTimes, Math.max(1 / mostTimes, seen / expected));
}
