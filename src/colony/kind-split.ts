/** A colony is split: some of its combs, with their bees, become a new colony. The part on most combs keeps its identity. */
import * as z from 'zod/mini';
import { fault, placeFaults, unknown } from '../hive/faults.ts';
import { occupant, rehang } from '../hive/hanging.ts';
import { placeSchema } from '../hive/shapes.ts';
import { dayOf, type Entry, type Id, idSchema, nameSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Day } from '../numbers/day.ts';
import type { Issue } from '../numbers/result.ts';
import { windowOf } from '../numbers/window.ts';
import type { Colony, ColonyDraft } from './state.ts';
import { happened, livingFaults, type Place, settle, settleFaults } from './whose.ts';

const schema = z.strictObject({
  from: idSchema,
  child: idSchema,
  childName: nameSchema,
  into: z.strictObject({ hive: idSchema, bay: z.nullable(idSchema) }),
  combs: z.array(z.strictObject({ comb: idSchema, place: placeSchema })).check(z.minLength(1), z.maxLength(60)),
  queenSide: z.enum(['stayed', 'went', 'unknown']),
});

export type SplitBody = z.infer<typeof schema>;

export const splitKind = entryKind<SplitBody, ColonyDraft>({
  kind: 'split',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<SplitBody>): readonly Issue[] {
  const { from: fromId, child, childName, into, combs, queenSide } = entry.body;
  const faults = livingFaults(draft, entry, 'from', fromId);
  if (draft.colonies.has(child)) faults.push(fault(entry, 'colony-begun-twice', 'child', child, 'an id that no colony has'));
  const hive = draft.hives.get(into.hive);
  if (faults.length > 0 || hive === undefined) return [...faults, ...unknown(entry, 'hive', 'into.hive', into.hive, draft.hives)];
  faults.push(...combs.flatMap((row, i) => rowFaults(draft, entry, `combs.${i}`, row, hive.bars)), ...twiceFaults(entry));
  const place = stretchFor(draft, entry.body);
  if (faults.length === 0) faults.push(...settleFaults(draft, entry, 'into.', child, place));
  if (faults.length > 0) return faults;
  const day = dayOf(entry.at);
  const colony: Colony = {
    id: child,
    name: childName,
    origin: 'split',
    parent: fromId,
    began: windowOf(day),
    stays: [],
    ended: null,
  };
  draft.colonies.set(child, colony);
  settle(draft, entry, colony, place);
  hangAll(draft, entry);
  if (queenSide === 'went') moveQueen(draft, fromId, child, day);
  const ids = combs.map((row) => row.comb);
  happened(draft, fromId, entry, { kind: 'split off', child, queenSide, combs: ids });
  happened(draft, child, entry, { kind: 'split from', parent: fromId, queenSide, combs: ids });
  return fits;
}

type Row = SplitBody['combs'][number];

function rowFaults(draft: ColonyDraft, entry: Entry<SplitBody>, path: string, row: Row, bars: number): Issue[] {
  const comb = draft.combs.get(row.comb);
  if (comb === undefined) return unknown(entry, 'comb', `${path}.comb`, row.comb, draft.combs);
  if (comb.ended !== null)
    return [fault(entry, 'comb-ended', `${path}.comb`, row.comb, `a comb that did not end on ${comb.ended}`)];
  const beyond = placeFaults(entry, `${path}.place`, row.place, bars);
  const moving = new Set(entry.body.combs.map((one) => one.comb));
  const other = occupant(draft, entry.body.into.hive, row.place, moving);
  if (other !== null)
    beyond.push(fault(entry, 'place-occupied', `${path}.place`, row.place, `a place without comb: ${other.id} hangs there`));
  return beyond;
}

function twiceFaults(entry: Entry<SplitBody>): Issue[] {
  const { combs } = entry.body;
  const one = (what: 'comb' | 'place', code: string): Issue[] =>
    combs.flatMap((row, i) =>
      combs.findIndex((other) => other[what] === row[what]) === i
        ? []
        : [fault(entry, code, `combs.${i}.${what}`, row[what], `each ${what} once`)],
    );
  return [...one('comb', 'comb-in-two-places'), ...one('place', 'place-occupied')];
}

/** The bay as named, wide enough for the combs; without a name, from the first to the last of their places. */
function stretchFor(draft: ColonyDraft, body: SplitBody): Place {
  const places = body.combs.map((row) => row.place);
  const bay = body.into.bay === null ? undefined : draft.bays.get(body.into.bay);
  const from = Math.min(...places, bay?.from ?? Infinity);
  const to = Math.max(...places, bay?.to ?? 0);
  return { ...body.into, from, to };
}

function hangAll(draft: ColonyDraft, entry: Entry<SplitBody>): void {
  const { combs, into } = entry.body;
  const known = combs.flatMap((row) => {
    const comb = draft.combs.get(row.comb);
    const spot = { kind: 'place', hive: into.hive, place: row.place, facing: 'as built' } as const;
    return comb === undefined ? [] : [{ comb, spot }];
  });
  rehang(draft, known, entry);
}

/** The queen who reigned goes on reigning, in the new colony. */
function moveQueen(draft: ColonyDraft, from: Id, to: Id, day: Day): void {
  const reign = draft.reigns.get(from)?.findLast((one) => one.ended === null);
  if (reign === undefined) return;
  reign.ended = { window: windowOf(day), how: 'removed' };
  draft.reigns.set(to, [
    ...(draft.reigns.get(to) ?? []),
    { colony: to, queen: reign.queen, began: windowOf(day), how: 'introduced', ended: null },
  ]);
}
