/**
 * A bay of a hive: the places between follower boards or end walls that one colony has. A later entry
 * for the same bay moves its boards.
 */
import * as z from 'zod/mini';
import { type Entry, idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { fault, placeFaults, unknown } from './faults.ts';
import { placeSchema } from './shapes.ts';
import type { HiveDraft } from './state.ts';
import { moveBay, newBay, overlapping } from './stretch.ts';

const schema = z.strictObject({
  bay: idSchema,
  hive: idSchema,
  from: placeSchema,
  to: placeSchema,
});

export type BayBody = z.infer<typeof schema>;

export const bayKind = entryKind<BayBody, HiveDraft>({
  kind: 'bay',
  version: 1,
  schema,
  apply,
});

function apply(draft: HiveDraft, entry: Entry<BayBody>): readonly Issue[] {
  const { bay: id, hive: hiveId, from, to } = entry.body;
  const hive = draft.hives.get(hiveId);
  if (hive === undefined) return unknown(entry, 'hive', 'hive', hiveId, draft.hives);
  if (from > to) return [fault(entry, 'bay-order', 'from', from, `a place not beyond ${to}`)];
  const beyond = placeFaults(entry, 'to', to, hive.bars);
  if (beyond.length > 0) return beyond;
  const known = draft.bays.get(id);
  if (known !== undefined && known.hive !== hiveId)
    return [fault(entry, 'bay-elsewhere', 'hive', hiveId, `the hive of this bay, ${known.hive}`)];
  const other = overlapping(draft, hiveId, from, to, id);
  if (other !== null)
    return [fault(entry, 'bays-overlap', 'from', `${from} to ${to}`, `places outside ${other.from} to ${other.to}`)];
  if (known === undefined) draft.bays.set(id, newBay(id, hiveId, from, to, entry));
  else moveBay(known, from, to, entry);
  return fits;
}
