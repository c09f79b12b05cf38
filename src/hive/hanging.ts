/**
 * Which comb hangs where, while the fold is under way, and where each has been. A bar without comb
 * is a comb of which nothing is built: it gives way to any comb that is hung in its place.
 */
import type { Entry, Id } from '../journal/entry.ts';
import { dayOf } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import type { Comb, HiveDraft, Spot } from './state.ts';

/** Takes the comb from where it is and brings it to `spot`, on the day of the entry. Places must have been checked. */
export function bring(draft: HiveDraft, comb: Comb, spot: Spot, entry: Entry): void {
  if (sameSpot(comb.at, spot)) return;
  release(draft, comb);
  if (spot.kind === 'place') {
    const there = combAt(draft, spot.hive, spot.place);
    if (there !== null && there.id !== comb.id)
      bring(draft, there, { kind: 'away', where: there.built === 0 ? 'hand' : 'lost' }, entry);
    placesOf(draft, spot.hive).set(spot.place, comb.id);
    draft.gaps.get(spot.hive)?.delete(spot.place);
  }
  comb.at = spot;
  comb.placings.push({ from: dayOf(entry.at), spot, entry: entry.id });
}

/** Brings several combs at once: all are in hand before the first is hung, so that they may change places with each other. */
export function rehang(draft: HiveDraft, combs: readonly { readonly comb: Comb; readonly spot: Spot }[], entry: Entry): void {
  const going = combs.filter(({ comb, spot }) => !sameSpot(comb.at, spot));
  for (const { comb } of going) release(draft, comb);
  for (const { comb, spot } of going) bring(draft, comb, spot, entry);
}

export function combAt(draft: HiveDraft, hive: Id, place: number): Comb | null {
  const id = draft.placed.get(hive)?.get(place);
  return id === undefined ? null : (draft.combs.get(id) ?? null);
}

/** Another comb, with wax on it, that hangs at the place. */
export function occupant(draft: HiveDraft, hive: Id, place: number, except: ReadonlySet<Id>): Comb | null {
  const there = combAt(draft, hive, place);
  return there === null || there.built === 0 || except.has(there.id) ? null : there;
}

/** The comb built on the follower board of the bay. */
export function followerComb(draft: HiveDraft, bay: Id): Comb | null {
  for (const comb of draft.combs.values()) if (comb.at?.kind === 'follower' && comb.at.bay === bay) return comb;
  return null;
}

export function newComb(id: Id): Comb {
  return { id, bar: null, born: null, ended: null, built: null, attached: null, at: null, placings: [] };
}

/** Where the comb was at the end of that day; null when it had no placing yet. */
export function spotOn(comb: Comb, day: Day): Spot | null {
  let spot: Spot | null = null;
  for (const placing of comb.placings) {
    if (placing.from > day) break;
    spot = placing.spot;
  }
  return spot;
}

function placesOf(draft: HiveDraft, hive: Id): Map<number, Id> {
  const found = draft.placed.get(hive);
  if (found !== undefined) return found;
  const made = new Map<number, Id>();
  draft.placed.set(hive, made);
  return made;
}

function release(draft: HiveDraft, comb: Comb): void {
  if (comb.at?.kind !== 'place') return;
  const places = placesOf(draft, comb.at.hive);
  if (places.get(comb.at.place) === comb.id) places.delete(comb.at.place);
}

function sameSpot(a: Spot | null, b: Spot): boolean {
  if (a === null || a.kind !== b.kind) return false;
  if (a.kind === 'away') return b.kind === 'away' && a.where === b.where;
  if (a.kind === 'follower') return b.kind === 'follower' && a.bay === b.bay;
  return b.kind === 'place' && a.hive === b.hive && a.place === b.place && a.facing === b.facing;
}
