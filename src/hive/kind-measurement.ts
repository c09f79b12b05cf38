/** A measurement of the keeper's own, as typed; it stands on top of the printed figures. */
import * as z from 'zod/mini';
import { idSchema, typedSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import { measurementKinds, type HiveDraft } from './state.ts';

const schema = z.strictObject({
  what: z.enum(measurementKinds),
  typed: typedSchema,
  comb: z.optional(z.nullable(idSchema)),
  hive: z.optional(z.nullable(idSchema)),
});

export type MeasurementBody = z.infer<typeof schema>;

export const measurementKind = entryKind<MeasurementBody, HiveDraft>({
  kind: 'measurement',
  version: 1,
  schema,
  apply: () => fits,
});
