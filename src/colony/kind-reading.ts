/**
 * The kind of entry for a reading of one bar: its step of the fold. It finds whose bar it is and
 * which comb hangs there, and says so when that cannot be. Shape in `reading.ts`.
 */
import { fault, placeFaults, unknown } from '../hive/faults.ts';
import { bring, combAt, newComb } from '../hive/hanging.ts';
import { eighthsInWhole } from '../hive/shapes.ts';
import type { Comb } from '../hive/state.ts';
import { moveBay, overlapping } from '../hive/stretch.ts';
import { dayOf, type Entry } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { faceFaults } from './face-faults.ts';
import { type Reading, readingSchema } from './reading.ts';
import { bodyFaults, readFollower, rowsOfSet } from './reading-bodies.ts';
import type { Colony, ColonyDraft, ReadingRow, Visit } from './state.ts';
import { bayOf, colonyAt, coloniesIn, mayLive } from './whose.ts';

export const readingKind = entryKind<Reading, ColonyDraft>({
  kind: 'reading',
  version: 1,
  schema: readingSchema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<Reading>): readonly Issue[] {
  const { body } = entry;
  const hive = draft.hives.get(body.hive);
  if (hive === undefined) return unknown(entry, 'hive', 'hive', body.hive, draft.hives);
  const visit = draft.visits.get(body.visit) ?? null;
  const faults = [...placeFaults(entry, 'place', body.place, hive.bars), ...faceFaults(entry), ...visitFaults(entry, visit)];
  if (faults.length > 0) return faults;
  const colony = readColony(draft, entry, visit);
  if (colony === null) return [noColony(draft, entry)];
  if (visit !== null && visit.colony !== colony.id) {
    return [fault(entry, 'place-of-another-colony', 'place', body.place, `a place of the bay of ${visit.colony}`)];
  }
  const bodies = bodyFaults(draft, entry, colony);
  if (bodies.length > 0) return bodies;
  if (body.of === 'follower') {
    keepRow(draft, entry, visit, colony, [readFollower(draft, entry, colony)]);
    return fits;
  }
  const found = combOf(draft, entry, visit);
  const twice = twiceFaults(draft, entry, visit, found.comb);
  if (twice.length > 0) return twice;
  workIn(draft, entry, found.comb, found.stillHere);
  const row = { entry: entry.id, by: entry.by, at: entry.at, comb: found.comb.id, body };
  keepRow(draft, entry, visit, colony, body.of === 'set' ? rowsOfSet(draft, row) : [row]);
  return fits;
}

function visitFaults(entry: Entry<Reading>, visit: Visit | null): Issue[] {
  if (visit === null) return [];
  if (visit.hive !== entry.body.hive)
    return [fault(entry, 'visit-elsewhere', 'hive', entry.body.hive, `the hive of this visit, ${visit.hive}`)];
  if (visit.day !== dayOf(entry.at))
    return [fault(entry, 'visit-on-two-days', 'at', dayOf(entry.at), `the day of this visit, ${visit.day}`)];
  return [];
}

/** The colony whose bay holds the place; beyond all bays that of the visit, or the only colony of the trough. */
function readColony(draft: ColonyDraft, entry: Entry<Reading>, visit: Visit | null): Colony | null {
  const { hive, place } = entry.body;
  const day = dayOf(entry.at);
  const visited = visit === null ? undefined : draft.colonies.get(visit.colony);
  if (visited !== undefined && mayLive(visited, day)) {
    const bay = bayOf(draft, visited);
    if (bay !== null && bay.from <= place && place <= bay.to) return visited;
  }
  const holder = colonyAt(draft, hive, place, day);
  if (holder !== null) return holder;
  const there = coloniesIn(draft, hive, day);
  return visited ?? (there.length === 1 ? (there[0] ?? null) : null);
}

function noColony(draft: ColonyDraft, entry: Entry<Reading>): Issue {
  const { hive, place } = entry.body;
  const was = [...draft.colonies.values()].find((colony) => colony.ended !== null && colony.stays.at(-1)?.hive === hive);
  if (was !== undefined && coloniesIn(draft, hive, dayOf(entry.at)).length === 0) {
    return fault(entry, 'colony-ended', 'hive', hive, `a colony that did not end on ${was.ended?.day ?? ''}`);
  }
  return fault(entry, 'no-colony-there', 'place', place, 'a place in the bay of a living colony');
}

/**
 * The comb as named; else the one that hangs there; else the one that this visit has just taken from
 * there; else a new one, named by the entry.
 */
function combOf(
  draft: ColonyDraft,
  entry: Entry<Reading>,
  visit: Visit | null,
): { readonly comb: Comb; readonly stillHere: boolean } {
  const { comb: named, hive, place } = entry.body;
  const id = named ?? combAt(draft, hive, place)?.id ?? null;
  const taken = id === null || named !== undefined ? takenFrom(draft, entry, visit) : null;
  if (taken !== null && (id === null || taken.id === id)) return { comb: taken, stillHere: false };
  return { comb: (id === null ? undefined : draft.combs.get(id)) ?? newComb(id ?? entry.id), stillHere: true };
}

/** A visit may be folded before its readings: the bar that its closing took out was still there to be read. */
function takenFrom(draft: ColonyDraft, entry: Entry<Reading>, visit: Visit | null): Comb | null {
  const { hive, place } = entry.body;
  if (visit?.closed?.body.taken.includes(place) !== true) return null;
  for (const comb of draft.combs.values()) {
    const before = comb.placings.at(-2)?.spot;
    if (
      comb.placings.at(-1)?.entry === visit.closed.entry &&
      before?.kind === 'place' &&
      before.hive === hive &&
      before.place === place
    )
      return comb;
  }
  return null;
}

/** One comb at two places, or two at one, unless hands moved them in between. */
function twiceFaults(draft: ColonyDraft, entry: Entry<Reading>, visit: Visit | null, comb: Comb): Issue[] {
  const { hive, place } = entry.body;
  if (comb.ended !== null) return [fault(entry, 'comb-ended', 'comb', comb.id, `a comb that did not end on ${comb.ended}`)];
  const there = combAt(draft, hive, place)?.id ?? null;
  for (const row of visit?.readings ?? []) {
    if (row.comb === comb.id && row.body.place !== place && there !== comb.id) {
      return [fault(entry, 'comb-in-two-places', 'place', place, `place ${row.body.place}, where this visit read the same comb`)];
    }
    if (row.comb !== comb.id && row.body.place === place && there !== comb.id) {
      return [fault(entry, 'place-occupied', 'comb', comb.id, `${row.comb}, the comb that this visit read at the place`)];
    }
  }
  return [];
}

/** A learner's reading tells where no comb was known; it moves no comb and measures none. */
function workIn(draft: ColonyDraft, entry: Entry<Reading>, comb: Comb, stillHere: boolean): void {
  const { body } = entry;
  const learner = draft.observers.get(entry.by)?.role === 'learner';
  if (!draft.combs.has(comb.id)) draft.combs.set(comb.id, comb);
  const known = comb.at !== null;
  if (stillHere && !(learner && (known || combAt(draft, body.hive, body.place) !== null))) {
    const elsewhere = comb.at?.kind !== 'place' || comb.at.hive !== body.hive || comb.at.place !== body.place;
    if (elsewhere) bring(draft, comb, { kind: 'place', hive: body.hive, place: body.place, facing: 'as built' }, entry);
  }
  if (learner) return;
  if (body.attached !== undefined && body.attached !== null) comb.attached = body.attached;
  if (body.built8 !== undefined && body.built8 !== null) comb.built = body.built8 / eighthsInWhole;
  else if (body.combClass === 'bare') comb.built = 0;
  else if (comb.built === 0) comb.built = null;
}

function keepRow(
  draft: ColonyDraft,
  entry: Entry<Reading>,
  visit: Visit | null,
  colony: Colony,
  rows: readonly ReadingRow[],
): void {
  const { body } = entry;
  if (visit !== null) visit.readings.push(...rows);
  else
    openVisit(draft, {
      id: body.visit,
      day: dayOf(entry.at),
      by: entry.by,
      hive: body.hive,
      colony: colony.id,
      readings: [...rows],
      closed: null,
    });
  if (visit?.closed) return;
  const bay = bayOf(draft, colony);
  if (bay === null || (bay.from <= body.place && body.place <= bay.to)) return;
  const from = Math.min(bay.from, body.place);
  const to = Math.max(bay.to, body.place);
  if (overlapping(draft, bay.hive, from, to, bay.id) === null) moveBay(bay, from, to, entry);
}

/** Adds a visit to its colony's row, oldest first. */
export function openVisit(draft: ColonyDraft, visit: Visit): void {
  draft.visits.set(visit.id, visit);
  const list = draft.visitsOf.get(visit.colony) ?? [];
  list.push(visit.id);
  draft.visitsOf.set(visit.colony, list);
}
