/** A bay of a hive: the places between follower boards or end walls that one colony has. A later entry for the same bay moves its boards. */
import * as z from 'zod/mini';
import { idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import { placeSchema } from './shapes.ts';
import type { HiveDraft } from './state.ts';

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
  apply: () => fits,
});
