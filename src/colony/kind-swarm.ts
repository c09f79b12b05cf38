/** A swarm seen, left or hived. One that is hived is a new colony with its own id, begun by this entry when `child` and `into` are given. */
import * as z from 'zod/mini';
import { idSchema, nameSchema, windowSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  what: z.enum(['seen', 'left', 'hived']),
  from: z.nullable(idSchema),
  window: windowSchema,
  child: z.nullable(idSchema),
  childName: z.nullable(nameSchema),
  into: z.nullable(z.strictObject({ hive: idSchema, bay: z.nullable(idSchema), bars: z.int().check(z.minimum(1), z.maximum(60)) })),
});

export type SwarmBody = z.infer<typeof schema>;

export const swarmKind = entryKind<SwarmBody, ColonyDraft>({
  kind: 'swarm',
  version: 1,
  schema,
  apply: () => fits,
});
