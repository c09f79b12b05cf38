/** What is known of a comb itself: its bar, when it was begun, how much of the outline is built, and how it hangs at the walls. */
import * as z from 'zod/mini';
import { daySchema, type Entry, idSchema, windowSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { attachments } from './attachments.ts';
import { fault, windowFaults } from './faults.ts';
import { bring, newComb } from './hanging.ts';
import { eighthsInWhole } from './shapes.ts';
import type { HiveDraft } from './state.ts';

const schema = z.strictObject({
  comb: idSchema,
  bar: z.optional(z.nullable(idSchema)),
  born: z.optional(z.nullable(windowSchema)),
  built8: z.optional(z.nullable(z.number().check(z.minimum(0), z.maximum(8)))),
  attached: z.optional(z.nullable(z.enum(attachments))),
  ended: z.optional(z.nullable(daySchema)),
});

export type CombBody = z.infer<typeof schema>;

export const combKind = entryKind<CombBody, HiveDraft>({
  kind: 'comb',
  version: 1,
  schema,
  apply,
});

function apply(draft: HiveDraft, entry: Entry<CombBody>): readonly Issue[] {
  const { comb: id, bar, born, built8, attached, ended } = entry.body;
  const faults = windowFaults(entry, 'born', born);
  const begun = born ?? draft.combs.get(id)?.born ?? null;
  if (ended && begun !== null && ended < begun.earliest)
    faults.push(fault(entry, 'ended-before-begun', 'ended', ended, `a day from ${begun.earliest} on`));
  if (faults.length > 0) return faults;
  const old = draft.combs.get(id) ?? newComb(id);
  const comb = {
    ...old,
    bar: bar === undefined ? old.bar : bar,
    born: born === undefined ? old.born : born,
    built: built8 === undefined || built8 === null ? old.built : built8 / eighthsInWhole,
    attached: attached === undefined ? old.attached : attached,
    ended: ended === undefined ? old.ended : ended,
  };
  draft.combs.set(id, comb);
  if (comb.ended !== null) bring(draft, comb, { kind: 'away', where: 'lost' }, entry);
  return fits;
}
