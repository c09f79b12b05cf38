/** Whom to call, as the keeper entered it: never a person who learns. */
import * as z from 'zod/mini';
import { type Entry, nameSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  role: z.enum(['authority', 'mentor', 'vet', 'emergency', 'neighbour']),
  name: nameSchema,
  phone: z.string().check(z.maxLength(40)),
});

export type ContactBody = z.infer<typeof schema>;

export const contactKind = entryKind<ContactBody, ColonyDraft>({
  kind: 'contact',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<ContactBody>): readonly Issue[] {
  draft.contacts.set(entry.body.role, entry.body);
  return fits;
}
