/** Food given: what, and how much as typed. */
import * as z from 'zod/mini';
import { fault } from '../hive/faults.ts';
import { type Entry, idSchema, typedSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { inBase } from '../numbers/units.ts';
import type { ColonyDraft } from './state.ts';
import { happened, livingFaults } from './whose.ts';

const schema = z.strictObject({
  colony: idSchema,
  what: z.enum(['sugar syrup', 'dry sugar', 'candy', 'own honey', 'pollen']),
  amount: z.nullable(typedSchema),
});

export type FeedingBody = z.infer<typeof schema>;

export const feedingKind = entryKind<FeedingBody, ColonyDraft>({
  kind: 'feeding',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<FeedingBody>): readonly Issue[] {
  const { colony, what, amount } = entry.body;
  const faults = livingFaults(draft, entry, 'colony', colony);
  if (amount !== null && inBase(amount, 'kg') === null && inBase(amount, 'l') === null) {
    faults.push(fault(entry, 'unit-does-not-fit', 'amount.unit', amount.unit, 'kg, g, lb, l or gal'));
  }
  if (amount !== null && !(amount.value > 0))
    faults.push(fault(entry, 'value-not-positive', 'amount.value', amount.value, 'a number above 0'));
  if (faults.length > 0) return faults;
  happened(draft, colony, entry, { kind: 'fed', what, amount });
  return fits;
}
