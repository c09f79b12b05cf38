/** A yard: where it is, and the time zone in which its days are counted. The yard's id is the one in the envelope. */
import * as z from 'zod/mini';
import { type Entry, nameSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import type { HiveDraft } from './state.ts';

const schema = z.strictObject({
  name: nameSchema,
  latitude: z.nullable(z.number().check(z.minimum(-90), z.maximum(90))),
  longitude: z.nullable(z.number().check(z.minimum(-180), z.maximum(180))),
  timeZone: z.string().check(z.minLength(1), z.maxLength(64)),
});

export type YardBody = z.infer<typeof schema>;

export const yardKind = entryKind<YardBody, HiveDraft>({
  kind: 'yard',
  version: 1,
  schema,
  apply,
});

function apply(draft: HiveDraft, entry: Entry<YardBody>): readonly Issue[] {
  draft.yards.set(entry.yard, { id: entry.yard, ...entry.body });
  return fits;
}
