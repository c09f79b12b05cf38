/** A colony begins: how it came, from whom, and where it lives. A later entry for the same id renames or moves it. */
import * as z from 'zod/mini';
import { fault, placeFaults, unknown, windowFaults } from '../hive/faults.ts';
import { bring, occupant } from '../hive/hanging.ts';
import type { Bay, Comb } from '../hive/state.ts';
import { freeStretch } from '../hive/stretch.ts';
import { type Entry, type Id, idSchema, nameSchema, windowSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import { assert } from '../numbers/assert.ts';
import type { Issue } from '../numbers/result.ts';
import type { Colony, ColonyDraft } from './state.ts';
import { bayOf, lastStay, livingFaults, type Place, settle, settleFaults } from './whose.ts';

const schema = z.strictObject({
  colony: idSchema,
  name: nameSchema,
  origin: z.enum(['swarm', 'split', 'nucleus', 'bought', 'unknown']),
  parent: z.nullable(idSchema),
  began: windowSchema,
  hive: idSchema,
  bay: z.nullable(idSchema),
});

export type ColonyBody = z.infer<typeof schema>;

export const colonyKind = entryKind<ColonyBody, ColonyDraft>({
  kind: 'colony',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<ColonyBody>): readonly Issue[] {
  const { colony: id, name, origin, parent, began, hive, bay } = entry.body;
  const known = draft.colonies.get(id);
  const faults = [
    ...windowFaults(entry, 'began', began),
    ...unknown(entry, 'colony', 'parent', parent, draft.colonies),
    ...(known === undefined ? [] : livingFaults(draft, entry, 'colony', id)),
  ];
  if (parent === id) faults.push(fault(entry, 'own-parent', 'parent', parent, 'another colony, or none'));
  if (faults.length > 0) return faults;
  const stays = known !== undefined && staysThere(known, hive, bay);
  const place: Place = { hive, bay, from: null, to: null };
  const cannot = stays ? [] : settleFaults(draft, entry, '', id, place);
  if (cannot.length > 0) return cannot;
  const from = known === undefined ? null : bayEnds(draft, known);
  const moved: Colony = { id, name, origin, parent, began, stays: known?.stays ?? [], ended: known?.ended ?? null };
  const crowded = from === null || stays ? [] : carryFaults(draft, entry, from, place);
  if (crowded.length > 0) return crowded;
  draft.colonies.set(id, moved);
  if (stays) return fits;
  const settled = settle(draft, entry, moved, place);
  if (from !== null && settled !== null) carry(draft, entry, from, settled);
  return fits;
}

function staysThere(colony: Colony, hive: Id, bay: Id | null): boolean {
  const stay = lastStay(colony);
  return stay !== null && stay.hive === hive && (bay === null || stay.bay === bay);
}

interface Ends {
  readonly hive: Id;
  readonly from: number;
  readonly to: number;
}

function bayEnds(draft: ColonyDraft, colony: Colony): Ends | null {
  const bay = bayOf(draft, colony);
  return bay === null ? null : { hive: bay.hive, from: bay.from, to: bay.to };
}

/** Its combs move with a colony, in their order; a comb of others that hangs in the way is a fault. */
function carryFaults(draft: ColonyDraft, entry: Entry, from: Ends, place: Place): readonly Issue[] {
  const combs = combsIn(draft, from);
  const known = place.bay === null ? null : draft.bays.get(place.bay);
  const hive = draft.hives.get(place.hive);
  if (hive === undefined) return unknown(entry, 'hive', 'hive', place.hive, draft.hives);
  const to = known ?? freeStretch(draft, hive);
  if (to === null) return fits;
  const moving = new Set(combs.map((comb) => comb.id));
  return combs.flatMap((comb) => {
    const goal = to.from + comb.place - from.from;
    const other = occupant(draft, place.hive, goal, moving);
    if (other !== null) return [fault(entry, 'place-occupied', 'bay', goal, `a place without comb: ${other.id} hangs there`)];
    return placeFaults(entry, 'bay', goal, hive.bars);
  });
}

function carry(draft: ColonyDraft, entry: Entry, from: Ends, to: Bay): void {
  const combs = combsIn(draft, from);
  for (const { id } of combs) bring(draft, mustComb(draft, id), { kind: 'away', where: 'hand' }, entry);
  for (const { id, place } of combs) {
    bring(
      draft,
      mustComb(draft, id),
      { kind: 'place', hive: to.hive, place: to.from + place - from.from, facing: 'as built' },
      entry,
    );
  }
}

function mustComb(draft: ColonyDraft, id: Id): Comb {
  const comb = draft.combs.get(id);
  assert(comb, `the comb ${id} that hangs in a bay is known`);
  return comb;
}

function combsIn(draft: ColonyDraft, ends: Ends): { readonly id: Id; readonly place: number }[] {
  const places = draft.placed.get(ends.hive) ?? new Map<number, Id>();
  return [...places].filter(([place]) => ends.from <= place && place <= ends.to).map(([place, id]) => ({ id, place }));
}
