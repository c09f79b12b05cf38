/** A person who reads, and in which role. */
import * as z from 'zod/mini';
import { idSchema, nameSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  observer: idSchema,
  name: nameSchema,
  role: z.enum(['keeper', 'helper', 'learner']),
});

export type ObserverBody = z.infer<typeof schema>;

export const observerKind = entryKind<ObserverBody, ColonyDraft>({
  kind: 'observer',
  version: 1,
  schema,
  apply: () => fits,
});
