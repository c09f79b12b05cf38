/**
 * Changes another entry: its body, its time, or both. `knew` names the corrections and voids of the
 * same entry that its writer had seen; two that did not know of each other are shown to the keeper.
 * `correct.ts` works it in before the fold, so its own step does nothing.
 */
import * as z from 'zod/mini';
import { atSchema, idSchema, textSchema } from './entry.ts';
import { entryKind, fits } from './kind.ts';

const schema = z.strictObject({
  /** The whole new body, not a part of it; absent when only the time changes. */
  body: z.optional(z.unknown()),
  /** The version of the new body; absent when it is that of the corrected entry. */
  version: z.optional(z.int().check(z.minimum(1), z.maximum(999))),
  at: z.optional(atSchema),
  why: textSchema,
  knew: z.array(idSchema).check(z.maxLength(100)),
});

export type CorrectionBody = z.infer<typeof schema>;

export const correctionKind = entryKind<CorrectionBody, unknown>({
  kind: 'correction',
  version: 1,
  schema,
  apply: () => fits,
});
