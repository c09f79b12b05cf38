/** A colony is no more; its combs stay. */
import * as z from 'zod/mini';
import { idSchema, windowSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  colony: idSchema,
  how: z.enum(['died in winter', 'died', 'sold', 'absconded', 'unknown']),
  window: windowSchema,
});

export type ColonyEndedBody = z.infer<typeof schema>;

export const colonyEndedKind = entryKind<ColonyEndedBody, ColonyDraft>({
  kind: 'colony-ended',
  version: 1,
  schema,
  apply: () => fits,
});
