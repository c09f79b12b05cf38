/** Advice as it was issued: rule, verb, window and the text that was shown. */
import * as z from 'zod/mini';
import { unknown } from '../hive/faults.ts';
import { dayOf, type Entry, idSchema, textSchema, windowSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  colony: idSchema,
  engine: z.string().check(z.maxLength(40)),
  digest: z.string().check(z.maxLength(80)),
  items: z
    .array(
      z.strictObject({
        rule: z.string().check(z.maxLength(40)),
        verb: z.string().check(z.maxLength(40)),
        window: windowSchema,
        text: textSchema,
      }),
    )
    .check(z.maxLength(40)),
});

export type AdviceIssuedBody = z.infer<typeof schema>;

export const adviceIssuedKind = entryKind<AdviceIssuedBody, ColonyDraft>({
  kind: 'advice-issued',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<AdviceIssuedBody>): readonly Issue[] {
  const { colony } = entry.body;
  const faults = unknown(entry, 'colony', 'colony', colony, draft.colonies);
  if (faults.length > 0) return faults;
  draft.issued.push({ entry: entry.id, day: dayOf(entry.at), colony, kind: 'advice', body: entry.body });
  return fits;
}
