/**
 * Writes entries of a journal: ids from the seed and a label, times in the yard's zone, canonical lines.
 * Every body passes the schema of its kind before it is taken; a body that does not is a mistake here.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import type * as z from 'zod/mini';
import { adviceIssuedKind } from '../../src/colony/kind-advice-issued.ts';
import { beeEscapeKind } from '../../src/colony/kind-bee-escape.ts';
import { combFellKind } from '../../src/colony/kind-comb-fell.ts';
import { combPieceKind } from '../../src/hive/kind-comb-piece.ts';
import { combsJoinedKind } from '../../src/hive/kind-combs-joined.ts';
import { combsPartedKind } from '../../src/hive/kind-combs-parted.ts';
import { colonyEndedKind } from '../../src/colony/kind-colony-ended.ts';
import { colonyKind } from '../../src/colony/kind-colony.ts';
import { contactKind } from '../../src/colony/kind-contact.ts';
import { feedingKind } from '../../src/colony/kind-feeding.ts';
import { figureOverrideKind } from '../../src/colony/kind-figure-override.ts';
import { lookKind } from '../../src/colony/kind-look.ts';
import { noteKind } from '../../src/colony/kind-note.ts';
import { observerKind } from '../../src/colony/kind-observer.ts';
import { queenKind } from '../../src/colony/kind-queen.ts';
import { readingKind } from '../../src/colony/kind-reading.ts';
import { reignKind } from '../../src/colony/kind-reign.ts';
import { splitKind } from '../../src/colony/kind-split.ts';
import { swarmKind } from '../../src/colony/kind-swarm.ts';
import { uniteKind } from '../../src/colony/kind-unite.ts';
import { visitKind } from '../../src/colony/kind-visit.ts';
import { barKind } from '../../src/hive/kind-bar.ts';
import { bayKind } from '../../src/hive/kind-bay.ts';
import { combKind } from '../../src/hive/kind-comb.ts';
import { hiveKind } from '../../src/hive/kind-hive.ts';
import { measurementKind } from '../../src/hive/kind-measurement.ts';
import { moveKind } from '../../src/hive/kind-move.ts';
import { placingKind } from '../../src/hive/kind-placing.ts';
import { yardKind } from '../../src/hive/kind-yard.ts';
import { type Entry, envelopeSchema } from '../../src/journal/entry.ts';
import { correctionKind } from '../../src/journal/kind-correction.ts';
import { voidKind } from '../../src/journal/kind-void.ts';
import { addDays, type Day, dayNumber, weekday } from '../../src/numbers/day.ts';
import { dayWeatherKind } from '../../src/weather/kind-day-weather.ts';

const kinds = {
  yard: yardKind,
  hive: hiveKind,
  bay: bayKind,
  bar: barKind,
  comb: combKind,
  placing: placingKind,
  move: moveKind,
  'comb-fell': combFellKind,
  'bee-escape': beeEscapeKind,
  'combs-joined': combsJoinedKind,
  'combs-parted': combsPartedKind,
  'comb-piece': combPieceKind,
  measurement: measurementKind,
  observer: observerKind,
  contact: contactKind,
  colony: colonyKind,
  queen: queenKind,
  reign: reignKind,
  visit: visitKind,
  reading: readingKind,
  look: lookKind,
  note: noteKind,
  feeding: feedingKind,
  swarm: swarmKind,
  split: splitKind,
  unite: uniteKind,
  'colony-ended': colonyEndedKind,
  'figure-override': figureOverrideKind,
  'advice-issued': adviceIssuedKind,
  'day-weather': dayWeatherKind,
  correction: correctionKind,
  void: voidKind,
} as const;

export type KindName = keyof typeof kinds;
export type BodyOf<K extends KindName> = z.infer<(typeof kinds)[K]['schema']>;

/** A local time: a day and minutes after midnight. */
export interface Clock {
  readonly day: Day;
  readonly minute: number;
}

export interface Scribe {
  /** The id of a thing, by its label; always the same for the same seed. */
  readonly id: (label: string) => string;
  readonly write: <K extends KindName>(
    kind: K,
    clock: Clock,
    by: string,
    body: BodyOf<K>,
    more?: { corrects?: string; wholeDay?: boolean; noted?: Clock; label?: string },
  ) => Entry;
  readonly entries: Entry[];
}

/** `checked` false leaves the schemas out, for journals of a hundred thousand entries whose writer a test has checked. */
export function newScribe(seed: string, checked = true): Scribe {
  const entries: Entry[] = [];
  const named = new Map<string, string>();
  const id = (label: string): string => {
    const found = named.get(label) ?? uuidOf(`${seed}|${label}`);
    named.set(label, found);
    return found;
  };
  let yard = '';
  let second = 0;
  let lastMinute = '';
  return {
    id,
    entries,
    write: (kind, clock, by, body, more = {}) => {
      if (kind === 'yard') yard = id('yard');
      const minute = atOf(more.noted ?? clock);
      second = minute === lastMinute ? Math.min(59, second + 1) : 0;
      lastMinute = minute;
      const entry: Entry = {
        id: uuidOf(`${seed}|entry|${kind}|${more.label ?? entries.length}`),
        yard,
        at: more.wholeDay === true ? clock.day : atOf(clock),
        noted: instantOf(more.noted ?? clock, second),
        by,
        kind,
        version: kinds[kind].version,
        body,
        ...(more.corrects === undefined ? {} : { corrects: more.corrects }),
      };
      if (checked) mustFit(entry, kinds[kind].schema);
      entries.push(entry);
      return entry;
    },
  };
}

function mustFit(entry: Entry, schema: unknown): void {
  const envelope = envelopeSchema.safeParse(entry);
  const body = (schema as z.ZodMiniType<unknown>).safeParse(entry.body);
  const issues = [...(envelope.success ? [] : envelope.error.issues), ...(body.success ? [] : body.error.issues)];
  if (issues.length > 0) throw new Error(`${entry.kind} at ${entry.at}: ${JSON.stringify(issues)}`);
}

/** The journal as text: one canonical line an entry, in the order of the fold (time, then noted, then id). */
export function linesOf(entries: readonly Entry[]): string {
  const key = (e: Entry): string => `${e.at.slice(0, 10)}|${e.at.slice(10)}|${e.noted}|${e.id}`;
  const sorted = [...entries].sort((a, b) => (key(a) < key(b) ? -1 : 1));
  return sorted.map((entry) => `${canonicalize(entry) ?? ''}\n`).join('');
}

export function atOf(clock: Clock): string {
  const hour = String(Math.floor(clock.minute / 60)).padStart(2, '0');
  return `${clock.day}T${hour}:${String(Math.floor(clock.minute % 60)).padStart(2, '0')}`;
}

/** New York: five hours behind, four from the second Sunday of March to the first of November. */
export function instantOf(clock: Clock, second: number): string {
  const year = clock.day.slice(0, 4);
  const summer = clock.day >= sundayFrom(`${year}-03-08`) && clock.day < sundayFrom(`${year}-11-01`);
  const minutes = Math.floor(clock.minute) + (summer ? 240 : 300);
  const day = addDays(clock.day, Math.floor(minutes / 1440));
  return `${atOf({ day, minute: minutes % 1440 })}:${String(second).padStart(2, '0')}Z`;
}

function sundayFrom(day: Day): Day {
  return addDays(day, (6 - weekday(day) + 7) % 7);
}

/** A UUID of the free form (version 8) from the hash of a text. */
function uuidOf(text: string): string {
  const hex = bytesToHex(sha256(utf8ToBytes(text)));
  const variant = ((parseInt(hex.slice(16, 17), 16) & 3) | 8).toString(16);
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-${variant}${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}

export function minutesBetween(a: Clock, b: Clock): number {
  return (dayNumber(b.day) - dayNumber(a.day)) * 1440 + b.minute - a.minute;
}
