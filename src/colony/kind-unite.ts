/** Two colonies become one: the first ends in the second. */
import * as z from 'zod/mini';
import { idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  from: idSchema,
  into: idSchema,
});

export type UniteBody = z.infer<typeof schema>;

export const uniteKind = entryKind<UniteBody, ColonyDraft>({
  kind: 'unite',
  version: 1,
  schema,
  apply: () => fits,
});
