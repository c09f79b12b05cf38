/** A hive, the trough: its places and its inside measures. A later entry for the same id measures it again. */
import * as z from 'zod/mini';
import { idSchema, nameSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
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
  apply: () => fits,
});
