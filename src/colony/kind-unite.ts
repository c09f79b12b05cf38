/** Two colonies become one: the first ends in the second. */
import * as z from 'zod/mini';
import { fault } from '../hive/faults.ts';
import { moveBay, overlapping } from '../hive/stretch.ts';
import { dayOf, type Entry, idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import type { Colony, ColonyDraft } from './state.ts';
import { bayOf, happened, leave, livingFaults } from './whose.ts';

const schema = z.strictObject({
  from: idSchema,
  into: idSchema,
});

export type UniteBody = z.infer<typeof schema>;

export const uniteKind = entryKind<UniteBody, ColonyDraft>({
  kind: 'unite',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<UniteBody>): readonly Issue[] {
  const { from: fromId, into: intoId } = entry.body;
  const faults = [...livingFaults(draft, entry, 'from', fromId), ...livingFaults(draft, entry, 'into', intoId)];
  if (fromId === intoId) faults.push(fault(entry, 'united-with-itself', 'into', intoId, 'another colony'));
  const from = draft.colonies.get(fromId);
  const into = draft.colonies.get(intoId);
  if (faults.length > 0 || from === undefined || into === undefined) return faults;
  if (from.ended !== null || into.ended !== null) return [fault(entry, 'colony-ended', 'from', fromId, 'two living colonies')];
  const day = dayOf(entry.at);
  from.ended = { day, how: 'united', into: intoId, latest: day };
  leave(draft, from);
  joinBays(draft, entry, from, into);
  for (const reign of draft.reigns.get(fromId) ?? []) reign.ended ??= { window: { earliest: day, latest: day }, how: 'unknown' };
  happened(draft, fromId, entry, { kind: 'united into', into: intoId });
  happened(draft, intoId, entry, { kind: 'took in', from: fromId });
  return fits;
}

/** In one trough, with nobody between, the two stretches become one; else the combs stay until they are placed. */
function joinBays(draft: ColonyDraft, entry: Entry, from: Colony, into: Colony): void {
  const a = bayOf(draft, from);
  const b = bayOf(draft, into);
  if (a === null || b === null || a.hive !== b.hive) return;
  const low = Math.min(a.from, b.from);
  const high = Math.max(a.to, b.to);
  if (overlapping(draft, b.hive, low, high, b.id) === null) moveBay(b, low, high, entry);
}
