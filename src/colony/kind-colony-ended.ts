/** A colony is no more; its combs stay. */
import * as z from 'zod/mini';
import { fault, unknown, windowFaults } from '../hive/faults.ts';
import { dayOf, type Entry, idSchema, windowSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import { later } from '../numbers/day.ts';
import type { Issue } from '../numbers/result.ts';
import type { ColonyDraft } from './state.ts';
import { happened, leave } from './whose.ts';

const schema = z.strictObject({
  colony: idSchema,
  how: z.enum(['died in winter', 'died', 'sold', 'absconded', 'unknown']),
  window: windowSchema,
});

export type ColonyEndedBody = z.infer<typeof schema>;

export const colonyEndedKind = entryKind<ColonyEndedBody, ColonyDraft>({
  kind: 'colony-ended',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<ColonyEndedBody>): readonly Issue[] {
  const { colony: id, how, window } = entry.body;
  const colony = draft.colonies.get(id);
  if (colony === undefined) return unknown(entry, 'colony', 'colony', id, draft.colonies);
  const faults = windowFaults(entry, 'window', window);
  if (colony.ended !== null)
    faults.push(fault(entry, 'colony-ended', 'colony', id, `a colony that did not end on ${colony.ended.day}`));
  if (window.latest < colony.began.earliest) {
    faults.push(fault(entry, 'ended-before-begun', 'window', window.latest, `a day from ${colony.began.earliest} on`));
  }
  if (faults.length > 0) return faults;
  colony.ended = { day: dayOf(entry.at), how, into: null, latest: later(window.latest, dayOf(entry.at)) };
  leave(draft, colony);
  happened(draft, id, entry, { kind: 'ended', how });
  return fits;
}
