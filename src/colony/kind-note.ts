/** Words about a thing, for people to read. */
import * as z from 'zod/mini';
import { type Entry, idSchema, textSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  about: z.nullable(idSchema),
  text: textSchema,
});

export type NoteBody = z.infer<typeof schema>;

export const noteKind = entryKind<NoteBody, ColonyDraft>({
  kind: 'note',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<NoteBody>): readonly Issue[] {
  draft.notes.push({ entry, text: entry.body.text, about: entry.body.about });
  return fits;
}
