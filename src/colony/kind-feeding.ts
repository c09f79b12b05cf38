/** Food given: what, and how much as typed. */
import * as z from 'zod/mini';
import { idSchema, typedSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  colony: idSchema,
  what: z.enum(['sugar syrup', 'dry sugar', 'candy', 'own honey', 'pollen']),
  amount: z.nullable(typedSchema),
});

export type FeedingBody = z.infer<typeof schema>;

export const feedingKind = entryKind<FeedingBody, ColonyDraft>({
  kind: 'feeding',
  version: 1,
  schema,
  apply: () => fits,
});
