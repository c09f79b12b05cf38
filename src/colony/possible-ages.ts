/**
 * Which ages of worker brood can be on a comb, by what is known of its past: nothing older than the
 * comb's first cells, and no cell laid in days of which a reading said that there were no eggs. Only
 * sure things count; what is merely likely does not rule anything out.
 */
import type { Day } from '../numbers/day.ts';
import { daysBetween } from '../numbers/day.ts';
import type { BroodCalendar } from './calendar.ts';
import type { CombRead } from './comb-read.ts';
import { type Possible, youngestAge } from './split-contents.ts';

export interface CombPast {
  /** First day on which the comb can have had a cell fit for an egg; null when it may be old. */
  readonly firstCells: Day | null;
  /** The reading before this one. */
  readonly last: { readonly day: Day; readonly read: CombRead } | null;
}

export function possibleAges(past: CombPast, day: Day, calendar: BroodCalendar): Possible {
  const oldest = past.firstCells === null ? Infinity : daysBetween(past.firstCells, day);
  const { last } = past;
  if (last === null) return (age) => age <= oldest;
  const since = daysBetween(last.day, day);
  const gap = gapOf(last.read, calendar);
  return (age) => age <= oldest && (age < since || age >= since + gap);
}

/** Days before the last reading in which, by that reading, no egg was laid that still lives. */
function gapOf(read: CombRead, calendar: BroodCalendar): number {
  if (read.youngest === 'egg') return 0;
  if (read.brood === 0) return calendar.workerDays;
  if (read.youngest === null && !read.noEggs) return 0;
  if (read.youngest === 'none') return 0;
  return youngestAge(read, calendar);
}
