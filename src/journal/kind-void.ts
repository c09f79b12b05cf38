/**
 * Takes another entry back; it stays in the journal and is shown struck out. A void of a void, or of
 * a correction, takes that one back. `correct.ts` works it in before the fold.
 */
import * as z from 'zod/mini';
import { idSchema, textSchema } from './entry.ts';
import { entryKind, fits } from './kind.ts';

const schema = z.strictObject({
  why: textSchema,
  knew: z.array(idSchema).check(z.maxLength(100)),
});

export type VoidBody = z.infer<typeof schema>;

export const voidKind = entryKind<VoidBody, unknown>({
  kind: 'void',
  version: 1,
  schema,
  apply: () => fits,
});
