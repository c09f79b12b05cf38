/**
 * Turns what a screen wants to write down into entries: the envelope is the same for all of them,
 * so it is made here and nowhere else. Ids are UUIDv7, so that they sort by the time of writing.
 */
import { v7 } from 'uuid';
import type { At, Entry, Id } from '../../../journal/entry.ts';
import type { Day } from '../../../numbers/day.ts';
import { atOf, instantOf, localTime } from './clock.ts';

/** An entry to be: the kind's body, and only what differs from "now, by me". */
export interface Note<B = unknown> {
  readonly kind: string;
  readonly body: B;
  /** Absent: now, in the yard's time (or in the demo's day). */
  readonly at?: At;
  /** Absent: a new one. */
  readonly id?: Id;
  readonly version?: number;
  readonly corrects?: Id;
}

export interface Writer {
  readonly yard: Id;
  readonly by: Id;
  readonly today: Day;
  readonly timeZone: string | null;
}

export function newId(): Id {
  return v7();
}

/** Now as an entry's `at`: the writer's today (the demo's own, in the demo) with the hour of the clock. */
export function nowAt(writer: Pick<Writer, 'today' | 'timeZone'>, now: Date = new Date()): At {
  return atOf(writer.today, localTime(now, writer.timeZone).time);
}

export function entryOf(note: Note, writer: Writer, now: Date = new Date()): Entry {
  return {
    id: note.id ?? newId(),
    yard: writer.yard,
    at: note.at ?? nowAt(writer, now),
    noted: instantOf(now),
    by: writer.by,
    kind: note.kind,
    version: note.version ?? 1,
    body: note.body,
    ...(note.corrects === undefined ? {} : { corrects: note.corrects }),
  };
}
