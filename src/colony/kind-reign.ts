/** A reign begins or ends: this queen in this colony, within a window. */
import * as z from 'zod/mini';
import { idSchema, windowSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  colony: idSchema,
  queen: idSchema,
  change: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('began'), how: z.enum(['introduced', 'raised here', 'came with the swarm', 'found', 'unknown']), window: z.nullable(windowSchema) }),
    z.strictObject({ kind: z.literal('ended'), how: z.enum(['removed', 'died', 'left with a swarm', 'superseded', 'lost', 'unknown']), window: windowSchema }),
  ]),
});

export type ReignBody = z.infer<typeof schema>;

export const reignKind = entryKind<ReignBody, ColonyDraft>({
  kind: 'reign',
  version: 1,
  schema,
  apply: () => fits,
});
