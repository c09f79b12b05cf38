/** A look from outside, nothing opened. */
import * as z from 'zod/mini';
import { idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  hive: idSchema,
  colony: z.nullable(idSchema),
  flight: z.enum(['none', 'few', 'many']),
  pollenIn: z.nullable(z.boolean()),
  seen: z.array(z.string().check(z.maxLength(40))).check(z.maxLength(12)),
});

export type LookBody = z.infer<typeof schema>;

export const lookKind = entryKind<LookBody, ColonyDraft>({
  kind: 'look',
  version: 1,
  schema,
  apply: () => fits,
});
