/** A colony begins: how it came, from whom, and where it lives. A later entry for the same id renames or moves it. */
import * as z from 'zod/mini';
import { idSchema, nameSchema, windowSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  colony: idSchema,
  name: nameSchema,
  origin: z.enum(['swarm', 'split', 'nucleus', 'bought', 'unknown']),
  parent: z.nullable(idSchema),
  began: windowSchema,
  hive: idSchema,
  bay: z.nullable(idSchema),
});

export type ColonyBody = z.infer<typeof schema>;

export const colonyKind = entryKind<ColonyBody, ColonyDraft>({
  kind: 'colony',
  version: 1,
  schema,
  apply: () => fits,
});
