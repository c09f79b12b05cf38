/** A bar, the wood: its mark and its own width, where they are known. Bars need no entry to be used. */
import * as z from 'zod/mini';
import { type Entry, idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { dimensionSchema } from './shapes.ts';
import type { HiveDraft } from './state.ts';

const schema = z.strictObject({
  bar: idSchema,
  mark: z.nullable(z.string().check(z.maxLength(12))),
  width: z.nullable(dimensionSchema),
});

export type BarBody = z.infer<typeof schema>;

export const barKind = entryKind<BarBody, HiveDraft>({
  kind: 'bar',
  version: 1,
  schema,
  apply,
});

function apply(draft: HiveDraft, entry: Entry<BarBody>): readonly Issue[] {
  const { bar, mark, width } = entry.body;
  draft.bars.set(bar, { id: bar, mark, width });
  return fits;
}
