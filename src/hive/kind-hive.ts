/** A hive, the trough: its places and its inside measures. A later entry for the same id measures it again. */
import * as z from 'zod/mini';
import { dayOf, type Entry, type Id, idSchema, nameSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { fault } from './faults.ts';
import { dimensionSchema } from './shapes.ts';
import type { HiveDraft } from './state.ts';

const schema = z.strictObject({
  hive: idSchema,
  name: nameSchema,
  bars: z.int().check(z.minimum(1), z.maximum(60)),
  barWidth: dimensionSchema,
  topWidth: dimensionSchema,
  depth: dimensionSchema,
  wallAngleDeg: z.number().check(z.minimum(0), z.maximum(60)),
  wallAngleHow: z.enum(['measured', 'typical']),
  entrance: z.enum(['first', 'last', 'side']),
});

export type HiveBody = z.infer<typeof schema>;

export const hiveKind = entryKind<HiveBody, HiveDraft>({
  kind: 'hive',
  version: 1,
  schema,
  apply,
});

function apply(draft: HiveDraft, entry: Entry<HiveBody>): readonly Issue[] {
  const { hive: id, ...rest } = entry.body;
  const last = lastUsedPlace(draft, id);
  if (last > rest.bars) return [fault(entry, 'bars-in-use', 'bars', rest.bars, `at least ${last}: so far the hive is used`)];
  draft.hives.set(id, { id, ...rest, since: draft.hives.get(id)?.since ?? dayOf(entry.at) });
  return fits;
}

function lastUsedPlace(draft: HiveDraft, hive: Id): number {
  const combs = [...(draft.placed.get(hive)?.keys() ?? [])];
  const bays = [...draft.bays.values()].filter((bay) => bay.hive === hive && bay.held === true).map((bay) => bay.to);
  return Math.max(0, ...combs, ...bays);
}
