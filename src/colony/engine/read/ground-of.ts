/**
 * What the journal says of a colony before anything is seen: where it stands, how and when it began, how much
 * comb it had and has room for, and what befell it day by day. Nothing here depends on visits after the first,
 * except for what was done at them: so a new visit leaves what was worked out before as it was.
 */
import type { Id } from '../../../journal/entry.ts';
import { value } from '../../../figures/book.ts';
import { addDays, dayNumber } from '../../../numbers/day.ts';
import { swarmBees } from '../../adults.ts';
import type { Beginning, Ground } from '../constants.ts';
import type { Happening } from '../happening.ts';
import { builtOf, combsBefore, lastReading, type RecordBook, troughOn } from './record-book.ts';
import { splitFrom } from './split-from.ts';
import { toldOf } from './told-of.ts';

export interface GroundRead {
  readonly ground: Ground;
  /** Number of the day on which the model begins to live the colony through. */
  readonly begins: number;
}

export function groundOf(records: RecordBook): GroundRead {
  const told = toldOf(records);
  const kind = kindOf(records, told);
  const begins = beginsOn(records, kind, told);
  const beginning = beginningOf(records, kind);
  const comb = combOf(records, kind);
  return { ground: { latitude: records.latitude, beginning, comb, told }, begins };
}

function beginningOf(records: RecordBook, kind: Beginning['kind']): Beginning {
  const { state, colony, book } = records;
  if (kind === 'swarm') return { kind, bees: swarmBees(state, colony, colony.began.latest, book) };
  const from = kind === 'split' ? splitFrom(records) : null;
  return kind === 'split' && from !== null ? { kind, from } : { kind };
}

type Told = ReadonlyMap<number, readonly Happening[]>;

/** Of a swarm or split that stood for long before anybody wrote of it, the beginning no longer shows. */
function kindOf(records: RecordBook, told: Told): Beginning['kind'] {
  const { colony, state, book } = records;
  const { origin } = colony;
  if (origin !== 'swarm' && origin !== 'split') return 'standing';
  const seen = (state.events.get(colony.id) ?? []).some(
    ({ event }) => event.kind === 'swarm hived' || event.kind === 'split from',
  );
  if (seen) return origin;
  const first = firstKnown(records, told);
  const stood = first === null ? Infinity : first - dayNumber(colony.began.latest);
  return stood <= value(book, 'engine-start-days') ? origin : 'standing';
}

/** The first day on which anything was seen or done; null when nothing was. */
function firstKnown({ visits, colony }: RecordBook, told: Told): number | null {
  const since = dayNumber(colony.began.earliest);
  const days = [...visits.map((visit) => dayNumber(visit.day)), ...told.keys()].filter((day) => day >= since);
  return days.length === 0 ? null : Math.min(...days);
}

function beginsOn(records: RecordBook, kind: Beginning['kind'], told: Told): number {
  const { colony, book, until } = records;
  if (kind !== 'standing') return Math.min(dayNumber(colony.began.latest), dayNumber(until));
  return (firstKnown(records, told) ?? dayNumber(until)) - value(book, 'engine-start-days');
}

/** Null where no comb was ever read: then room is no bound. */
function combOf(records: RecordBook, kind: Beginning['kind']): Ground['comb'] {
  const { colony, visits } = records;
  const first = visits.find((visit) => (records.byVisit.get(visit.id) ?? []).length > 0);
  const day = kind === 'standing' ? first?.day : colony.began.latest;
  const trough = day === undefined ? null : troughOn(records, day);
  if (day === undefined || trough === null) return null;
  const bars = (trough.to - trough.from + 1) * trough.cellsPerBar;
  const shares =
    kind === 'standing' && first !== undefined
      ? builtAtVisit(records, first.id, first.day)
      : builtOn(records, kind === 'split' ? addDays(day, 1) : day);
  const built = shares.reduce((a, b) => a + b, 0) * trough.cellsPerBar;
  return { built, most: Math.max(bars, built) };
}

/** Built shares of the combs read at a visit, and of those between them that were left shut. */
function builtAtVisit(records: RecordBook, visit: Id, day: string): readonly number[] {
  const shares = new Map<number, number>();
  for (const place of combsBefore(records, day).keys()) shares.set(place, value(records.book, 'built-unread-share'));
  for (const reading of records.byVisit.get(visit) ?? []) shares.set(reading.row.body.place, builtOf(reading, records.book));
  const [first, last] = [Math.min(...shares.keys()), Math.max(...shares.keys())];
  return Array.from({ length: last - first + 1 }, (_, i) => shares.get(first + i) ?? value(records.book, 'built-unread-share'));
}

/** Of combs that hung there when the day began, as they had been read before. */
function builtOn(records: RecordBook, day: string): readonly number[] {
  const before = addDays(day, -1);
  return [...combsBefore(records, day).values()].map((comb) => {
    const reading = lastReading(records, comb.id, before);
    if (reading !== null) return builtOf(reading, records.book);
    // A comb that was never read: wax is there only where somebody said so.
    return comb.built ?? 0;
  });
}
