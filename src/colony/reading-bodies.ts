/**
 * Readings of what is not one comb on one bar: combs that have grown together and are read as one, and the comb on the
 * follower board. What was read of a set is so of each of its combs; what was counted on it is counted once.
 */
import { fault } from '../hive/faults.ts';
import { bring, followerComb, newComb } from '../hive/hanging.ts';
import { setWith } from '../hive/joined.ts';
import { eighthsInWhole } from '../hive/shapes.ts';
import type { Comb } from '../hive/state.ts';
import type { Entry, Id } from '../journal/entry.ts';
import type { Issue } from '../numbers/result.ts';
import type { Reading } from './reading.ts';
import type { Colony, ColonyDraft, ReadingRow } from './state.ts';
import { bayOf } from './whose.ts';

export function bodyFaults(draft: ColonyDraft, entry: Entry<Reading>, colony: Colony): Issue[] {
  const { of, place, hive, comb } = entry.body;
  if (of === 'set') {
    const id = comb ?? draft.placed.get(hive)?.get(place);
    return id !== undefined && setWith(draft.joined, id) !== null
      ? []
      : [fault(entry, 'not-joined', 'of', of, 'a bar whose comb has grown together with others')];
  }
  const bay = bayOf(draft, colony);
  if (of !== 'follower' || (bay !== null && (place === bay.from || place === bay.to))) return [];
  return [fault(entry, 'not-at-follower', 'place', place, bay === null ? 'a place of a bay' : `place ${bay.from} or ${bay.to}`)];
}

/** The row as read, and the same of every other comb of its set. */
export function rowsOfSet(draft: ColonyDraft, row: ReadingRow): readonly ReadingRow[] {
  const others = (setWith(draft.joined, row.comb)?.combs ?? []).filter((id) => id !== row.comb);
  return [row, ...others.flatMap((id) => likewise(draft, row, id))];
}

function likewise(draft: ColonyDraft, row: ReadingRow, id: Id): ReadingRow[] {
  const comb = draft.combs.get(id);
  if (comb?.at?.kind !== 'place') return [];
  const { body } = row;
  const learner = draft.observers.get(row.by)?.role === 'learner';
  if (!learner && body.built8 !== undefined && body.built8 !== null) comb.built = body.built8 / eighthsInWhole;
  const once = {
    cells: null,
    cellsLooked: body.cellsLooked === 'not looked' ? 'not looked' : 'none seen',
    queen: body.queen === 'none seen' ? 'none seen' : 'not looked',
    patch: null,
    signs: [],
  } as const;
  return [{ ...row, comb: id, body: { ...body, ...once, signs: [], place: comb.at.place } }];
}

/** The comb on the board, as a row of the place beyond the bay's end. Read as bare, it is gone. */
export function readFollower(draft: ColonyDraft, entry: Entry<Reading>, colony: Colony): ReadingRow {
  const { body } = entry;
  const bay = bayOf(draft, colony)!;
  const comb = followerComb(draft, bay.id) ?? newComb(entry.id);
  const learner = draft.observers.get(entry.by)?.role === 'learner';
  draft.combs.set(comb.id, comb);
  if (!learner) hang(draft, entry, comb, bay.id);
  const place = body.place === bay.to ? bay.to + 1 : bay.from - 1;
  return { entry: entry.id, by: entry.by, at: entry.at, comb: comb.id, body: { ...body, place } };
}

function hang(draft: ColonyDraft, entry: Entry<Reading>, comb: Comb, bay: Id): void {
  const { body } = entry;
  if (body.combClass === 'bare') bring(draft, comb, { kind: 'away', where: 'lost' }, entry);
  else bring(draft, comb, { kind: 'follower', hive: body.hive, bay }, entry);
  if (body.built8 !== undefined && body.built8 !== null) comb.built = body.built8 / eighthsInWhole;
}
