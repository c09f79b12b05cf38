/** A look from outside, nothing opened. */
import * as z from 'zod/mini';
import { unknown } from '../hive/faults.ts';
import { dayOf, type Entry, idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import type { ColonyDraft } from './state.ts';
import { coloniesIn, happened } from './whose.ts';

const schema = z.strictObject({
  hive: idSchema,
  colony: z.nullable(idSchema),
  flight: z.enum(['none', 'few', 'many']),
  pollenIn: z.nullable(z.boolean()),
  seen: z.array(z.string().check(z.maxLength(40))).check(z.maxLength(12)),
});

export type LookBody = z.infer<typeof schema>;

export const lookKind = entryKind<LookBody, ColonyDraft>({
  kind: 'look',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<LookBody>): readonly Issue[] {
  const { hive, colony, seen, flight, pollenIn } = entry.body;
  const faults = unknown(entry, 'hive', 'hive', hive, draft.hives);
  if (colony !== null) faults.push(...unknown(entry, 'colony', 'colony', colony, draft.colonies));
  if (faults.length > 0) return faults;
  const there = coloniesIn(draft, hive, dayOf(entry.at)).filter((one) => one.ended === null);
  const whose = colony ?? (there.length === 1 ? there[0]?.id : undefined);
  if (whose !== undefined) happened(draft, whose, entry, { kind: 'look', seen, flight, pollenIn });
  return fits;
}
