/** A comb comes to hang at a place of a hive, or is put away. */
import * as z from 'zod/mini';
import { idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import { placeSchema } from './shapes.ts';
import { awayPlaces, type HiveDraft } from './state.ts';

const schema = z.strictObject({
  comb: idSchema,
  to: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('place'), hive: idSchema, place: placeSchema, facing: z.enum(['as built', 'turned']) }),
    z.strictObject({ kind: z.literal('away'), where: z.enum(awayPlaces) }),
  ]),
});

export type PlacingBody = z.infer<typeof schema>;

export const placingKind = entryKind<PlacingBody, HiveDraft>({
  kind: 'placing',
  version: 1,
  schema,
  apply: () => fits,
});
