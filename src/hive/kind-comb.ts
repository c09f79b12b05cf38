/** What is known of a comb itself: its bar, when it was begun, how much of the outline is built, and how it hangs at the walls. */
import * as z from 'zod/mini';
import { daySchema, idSchema, windowSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { HiveDraft } from './state.ts';

const schema = z.strictObject({
  comb: idSchema,
  bar: z.optional(z.nullable(idSchema)),
  born: z.optional(z.nullable(windowSchema)),
  built8: z.optional(z.nullable(z.number().check(z.minimum(0), z.maximum(8)))),
  attached: z.optional(z.nullable(z.enum(['free', 'attached', 'cut']))),
  ended: z.optional(z.nullable(daySchema)),
});

export type CombBody = z.infer<typeof schema>;

export const combKind = entryKind<CombBody, HiveDraft>({
  kind: 'comb',
  version: 1,
  schema,
  apply: () => fits,
});
