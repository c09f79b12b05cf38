/** A person who reads, and in which role. */
import * as z from 'zod/mini';
import { type Entry, idSchema, nameSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  observer: idSchema,
  name: nameSchema,
  role: z.enum(['keeper', 'helper', 'learner']),
});

export type ObserverBody = z.infer<typeof schema>;

export const observerKind = entryKind<ObserverBody, ColonyDraft>({
  kind: 'observer',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<ObserverBody>): readonly Issue[] {
  const { observer, name, role } = entry.body;
  draft.observers.set(observer, { id: observer, name, role });
  return fits;
}
