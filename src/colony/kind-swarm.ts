/**
 * A swarm seen, left or hived. One that is hived is a new colony with its own id, begun by this entry
 * when `child` and `into` are given.
 */
import * as z from 'zod/mini';
import { fault, windowFaults } from '../hive/faults.ts';
import { freeStretch } from '../hive/stretch.ts';
import { type Entry, type Id, idSchema, nameSchema, windowSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { intersect } from '../numbers/window.ts';
import type { Colony, ColonyDraft } from './state.ts';
import { happened, livingFaults, type Place, settle, settleFaults } from './whose.ts';

const schema = z.strictObject({
  what: z.enum(['seen', 'left', 'hived']),
  from: z.nullable(idSchema),
  window: windowSchema,
  child: z.nullable(idSchema),
  childName: z.nullable(nameSchema),
  into: z.nullable(
    z.strictObject({ hive: idSchema, bay: z.nullable(idSchema), bars: z.int().check(z.minimum(1), z.maximum(60)) }),
  ),
});

export type SwarmBody = z.infer<typeof schema>;

export const swarmKind = entryKind<SwarmBody, ColonyDraft>({
  kind: 'swarm',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<SwarmBody>): readonly Issue[] {
  const { what, from, window, child, into } = entry.body;
  const faults = windowFaults(entry, 'window', window);
  if (from !== null) faults.push(...livingFaults(draft, entry, 'from', from));
  if (what === 'left' && from === null) faults.push(fault(entry, 'missing', 'from', from, 'the colony that it left'));
  const begins = what === 'hived' && (child !== null || into !== null);
  if (begins && (child === null || into === null))
    faults.push(fault(entry, 'missing', child === null ? 'child' : 'into', null, 'both child and into'));
  if (faults.length > 0) return faults;
  if (begins && child !== null && into !== null) {
    if (draft.colonies.has(child)) return [fault(entry, 'colony-begun-twice', 'child', child, 'an id that no colony has')];
    const place = placeFor(draft, into);
    const cannot = settleFaults(draft, entry, 'into.', child, place);
    if (cannot.length > 0) return cannot;
    const name = entry.body.childName ?? draft.hives.get(into.hive)?.name ?? child;
    const colony: Colony = { id: child, name, origin: 'swarm', parent: from, began: window, stays: [], ended: null };
    draft.colonies.set(child, colony);
    settle(draft, entry, colony, place);
    happened(draft, child, entry, { kind: 'swarm hived', parent: from });
  }
  if (from !== null) departed(draft, entry, from);
  return fits;
}

/** The stretch of so many bars at the entrance's end of the bay, or of the longest free run. */
function placeFor(draft: ColonyDraft, into: NonNullable<SwarmBody['into']>): Place {
  const hive = draft.hives.get(into.hive);
  const bay = into.bay === null ? undefined : draft.bays.get(into.bay);
  const run = bay ?? (hive === undefined ? null : freeStretch(draft, hive));
  if (hive === undefined || run === null) return { ...into, from: null, to: null };
  if (hive.entrance === 'last') return { ...into, from: Math.max(1, run.to - into.bars + 1), to: run.to };
  return { ...into, from: run.from, to: run.from + into.bars - 1 };
}

/** One swarm, one event: what was seen to leave and is hived later is the same swarm when the windows meet. */
function departed(draft: ColonyDraft, entry: Entry<SwarmBody>, from: Id): void {
  const { window, child, what } = entry.body;
  const list = draft.events.get(from) ?? [];
  const index = list.findLastIndex(
    ({ event }) =>
      event.kind === 'swarm left' &&
      (event.child === null || child === null || event.child === child) &&
      !event.hived &&
      intersect([event.window, window]) !== null,
  );
  const old = list[index];
  if (old?.event.kind !== 'swarm left') {
    happened(draft, from, entry, { kind: 'swarm left', window, child, hived: what === 'hived' });
    return;
  }
  const both = intersect([old.event.window, window]) ?? window;
  list[index] = {
    ...old,
    event: { kind: 'swarm left', window: both, child: child ?? old.event.child, hived: what === 'hived' },
  };
}
