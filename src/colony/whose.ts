/**
 * Whose place is it: which colony lives where and on which day, and what begins or ends a stay. All
 * kinds that bring colonies into bays go through `settle`, so that no two can live in one place.
 */
import { fault, placeFaults, unknown } from '../hive/faults.ts';
import { freeStretch, moveBay, newBay, overlapping } from '../hive/stretch.ts';
import type { Bay } from '../hive/state.ts';
import { dayOf, type Entry, type Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import type { Issue } from '../numbers/result.ts';
import type { Colony, ColonyDraft, ColonyEvent, ColonyState, Stay } from './state.ts';

/** Where the colony lived on that day; its first stay when the day is earlier, null when it never had one. */
export function stayOn(colony: Colony, day: Day): Stay | null {
  let found: Stay | null = colony.stays[0] ?? null;
  for (const stay of colony.stays) if (stay.from <= day) found = stay;
  return found;
}

export function lastStay(colony: Colony): Stay | null {
  return colony.stays.at(-1) ?? null;
}

/** The bay that the colony has now, or had when it ended. */
export function bayOf(state: ColonyState, colony: Colony): Bay | null {
  const bay = lastStay(colony)?.bay ?? null;
  return bay === null ? null : (state.bays.get(bay) ?? null);
}

/** False once the last day is over on which it may still have lived. */
export function mayLive(colony: Colony, day: Day): boolean {
  return colony.ended === null || day <= (colony.ended.latest ?? colony.ended.day);
}

/** Colonies that may live in the hive on that day, those still living first. */
export function coloniesIn(state: ColonyState, hive: Id, day: Day): Colony[] {
  const there = [...state.colonies.values()].filter((colony) => lastStay(colony)?.hive === hive && mayLive(colony, day));
  return there.sort((a, b) => Number(a.ended !== null) - Number(b.ended !== null));
}

/** The colony whose bay holds the place. */
export function colonyAt(state: ColonyState, hive: Id, place: number, day: Day): Colony | null {
  const holds = (colony: Colony): boolean => {
    const bay = bayOf(state, colony);
    return bay !== null && bay.from <= place && place <= bay.to;
  };
  return coloniesIn(state, hive, day).find(holds) ?? null;
}

/** The colony named, or the fault that it is not known or has ended before the entry's day. */
export function livingFaults(draft: ColonyDraft, entry: Entry, path: string, id: Id): Issue[] {
  const colony = draft.colonies.get(id);
  if (colony === undefined) return unknown(entry, 'colony', path, id, draft.colonies);
  if (mayLive(colony, dayOf(entry.at))) return [];
  return [fault(entry, 'colony-ended', path, id, `a colony that did not end on ${colony.ended?.day ?? ''}`)];
}

export interface Place {
  readonly hive: Id;
  readonly bay: Id | null;
  /** The stretch asked for; null: the bay as it stands, or the longest free stretch. */
  readonly from: number | null;
  readonly to: number | null;
}

/** What keeps a colony from being settled there; empty when nothing does. */
export function settleFaults(draft: ColonyDraft, entry: Entry, path: string, colony: Id, place: Place): Issue[] {
  const hive = draft.hives.get(place.hive);
  if (hive === undefined) return unknown(entry, 'hive', `${path}hive`, place.hive, draft.hives);
  const bay = place.bay === null ? null : (draft.bays.get(place.bay) ?? null);
  if (bay !== null && bay.hive !== place.hive)
    return [fault(entry, 'bay-elsewhere', `${path}bay`, bay.id, `a bay of the hive ${place.hive}`)];
  const own = draft.colonies.get(colony);
  const ownBay = own === undefined || own.ended !== null ? null : (bayOf(draft, own)?.id ?? null);
  if (bay?.held === true && bay.id !== ownBay)
    return [fault(entry, 'bay-occupied', `${path}bay`, bay.id, 'a bay without a living colony')];
  const ends = stretchOf(draft, place);
  if (ends === null) return [fault(entry, 'bay-occupied', `${path}hive`, place.hive, 'a hive with a free place')];
  const beyond = placeFaults(entry, `${path}bay`, ends.to, hive.bars);
  if (beyond.length > 0) return beyond;
  const other = overlapping(draft, place.hive, ends.from, ends.to, bay?.id ?? null);
  if (other === null || other.id === ownBay) return [];
  return [
    fault(entry, 'bay-occupied', `${path}bay`, `${ends.from} to ${ends.to}`, `places outside ${other.from} to ${other.to}`),
  ];
}

/**
 * Brings the colony to live there; faults must have been asked for before. A bay not yet known is
 * made, named by the entry when it has no id.
 */
export function settle(draft: ColonyDraft, entry: Entry, colony: Colony, place: Place): Bay | null {
  const ends = stretchOf(draft, place);
  if (ends === null) return null;
  leave(draft, colony);
  const id = place.bay ?? entry.id;
  const bay = draft.bays.get(id) ?? newBay(id, place.hive, ends.from, ends.to, entry);
  draft.bays.set(id, bay);
  moveBay(bay, ends.from, ends.to, entry);
  bay.held = true;
  colony.stays.push({ from: dayOf(entry.at), hive: place.hive, bay: id });
  return bay;
}

/** Frees the bay for others; the record of it stays. */
export function leave(draft: ColonyDraft, colony: Colony): void {
  const bay = bayOf(draft, colony);
  if (bay !== null) bay.held = false;
}

export function happened(draft: ColonyDraft, colony: Id, entry: Entry, event: ColonyEvent): void {
  const list = draft.events.get(colony) ?? [];
  list.push({ day: dayOf(entry.at), entry: entry.id, event });
  draft.events.set(colony, list);
}

function stretchOf(draft: ColonyDraft, place: Place): { from: number; to: number } | null {
  const { from, to } = place;
  if (from !== null && to !== null) return { from, to };
  const bay = place.bay === null ? null : (draft.bays.get(place.bay) ?? null);
  if (bay !== null) return { from: bay.from, to: bay.to };
  const hive = draft.hives.get(place.hive);
  return hive === undefined ? null : freeStretch(draft, hive);
}
