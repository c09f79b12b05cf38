/**
 * A comb broke off at a visit: which, what hung on it, and what was done with it. What was taken out leaves its bar bare;
 * of what was hung again nobody knows how much is left, until it is read.
 */
import * as z from 'zod/mini';
import { placeFaults, unknown } from '../hive/faults.ts';
import { bring, combAt, newComb } from '../hive/hanging.ts';
import { partedFrom, setWith } from '../hive/joined.ts';
import { placeSchema } from '../hive/shapes.ts';
import { type Entry, idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { doneWithFallen, fallenCombs } from './comb-fell.ts';
import type { ColonyDraft } from './state.ts';
import { happened, livingFaults } from './whose.ts';

const schema = z.strictObject({
  colony: idSchema,
  hive: idSchema,
  visit: z.nullable(idSchema),
  place: placeSchema,
  what: z.enum(fallenCombs),
  done: z.enum(doneWithFallen),
});

export type CombFellBody = z.infer<typeof schema>;

export const combFellKind = entryKind<CombFellBody, ColonyDraft>({ kind: 'comb-fell', version: 1, schema, apply });

function apply(draft: ColonyDraft, entry: Entry<CombFellBody>): readonly Issue[] {
  const { colony, hive, place, what, done } = entry.body;
  const faults = livingFaults(draft, entry, 'colony', colony);
  const box = draft.hives.get(hive);
  faults.push(
    ...(box === undefined ? unknown(entry, 'hive', 'hive', hive, draft.hives) : placeFaults(entry, 'place', place, box.bars)),
  );
  if (faults.length > 0) return faults;
  const comb = combAt(draft, hive, place);
  const set = comb === null ? null : setWith(draft.joined, comb.id);
  if (set !== null && comb !== null) partedFrom(set, [comb.id]);
  if (comb !== null && done === 'hung up again') comb.built = null;
  else if (comb !== null) {
    bring(draft, comb, { kind: 'away', where: done === 'taken out' ? 'box' : 'lost' }, entry);
    const bare = { ...newComb(entry.id), built: 0 };
    draft.combs.set(bare.id, bare);
    bring(draft, bare, { kind: 'place', hive, place, facing: 'as built' }, entry);
  }
  happened(draft, colony, entry, { kind: 'comb fell', place, what, done });
  return fits;
}
