/** A colony is split: some of its combs, with their bees, become a new colony. The part on most combs keeps its identity. */
import * as z from 'zod/mini';
import { idSchema, nameSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import { placeSchema } from '../hive/shapes.ts';
import type { ColonyDraft } from './state.ts';

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
  apply: () => fits,
});
