/**
 * What is known about a visit beside its counts, when it is asked what surprised: how long nobody looked, how many
 * of the combs were opened, and what was expected of each bar against what was read there.
 */
import type { Id } from '../../../journal/entry.ts';
import { type Day, dayFromNumber } from '../../../numbers/day.ts';
import type { CombReading } from '../../comb-history.ts';
import type { Visited } from '../run.ts';
import { barRead, type BarSeen, barSeenOf } from '../surprise/bar-seen.ts';
import { surpriseConstants } from '../surprise/surprise-constants.ts';
import { plainContext, type SurpriseContext } from '../surprise/surprises-of.ts';
import { sharesExpected } from './bar-amounts.ts';
import { builtOf, combsBefore, lastReading, type RecordBook } from './record-book.ts';

export function surpriseContextOf(records: RecordBook, visited: Visited, sinceDays: number): SurpriseContext {
  const day = dayFromNumber(visited.day);
  const plain = plainContext(surpriseConstants(records.book), Math.max(1, sinceDays));
  const read = records.byVisit.get(visited.visit) ?? [];
  if (read.length === 0) return plain;
  const there = new Set([...[...combsBefore(records, day).values()].map((comb) => comb.id), ...read.map(({ row }) => row.comb)]);
  const bars = read.flatMap((reading) => barOf(records, reading, day) ?? []);
  return { ...plain, opened: Math.min(1, read.length / there.size), combs: there.size, bars };
}

function barOf(records: RecordBook, { row, visit }: CombReading, day: Day): BarSeen | null {
  const shut = barForeseen(records, row.comb, row.body.place, visit, day);
  return shut === null ? null : barRead(shut, row.body);
}

/** What was foreseen of a comb before that visit. Null where it had not been read before, or was a bare bar then. */
export function barForeseen(records: RecordBook, comb: Id, place: number, visit: Id, day: Day): BarSeen | null {
  const before = lastReading(records, comb, day, visit);
  const split = before?.split ?? null;
  if (before === null || split === null || builtOf(before, records.book) === 0) return null;
  const ink = split.ink === 'guessed' ? 'guessed' : 'worked out';
  const expected = { place, kind: 'comb', shares: sharesExpected(records, before, split, day), ink, readOn: before.day } as const;
  return barSeenOf(expected, null, day, records.book);
}
