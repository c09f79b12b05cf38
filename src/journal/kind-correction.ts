/** Changes another entry: its body, its time, or both. `knew` names the corrections of the same entry that its writer had seen; two that did not know of each other are shown to the keeper. */
import * as z from 'zod/mini';
import { atSchema, idSchema, textSchema } from './entry.ts';
import { entryKind, fits } from './kind.ts';

const schema = z.strictObject({
  body: z.optional(z.unknown()),
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
