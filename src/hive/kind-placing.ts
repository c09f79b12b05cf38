/** A comb comes to hang at a place of a hive, or is put away. */
import * as z from 'zod/mini';
import { dayOf, type Entry, idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { fault, placeFaults, unknown } from './faults.ts';
import { bring, occupant } from './hanging.ts';
import { placeSchema } from './shapes.ts';
import { awayPlaces, type HiveDraft } from './state.ts';

const schema = z.strictObject({
  comb: idSchema,
  to: z.discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('place'),
      hive: idSchema,
      place: placeSchema,
      facing: z.enum(['as built', 'turned']),
    }),
    z.strictObject({ kind: z.literal('away'), where: z.enum(awayPlaces) }),
  ]),
});

export type PlacingBody = z.infer<typeof schema>;

export const placingKind = entryKind<PlacingBody, HiveDraft>({
  kind: 'placing',
  version: 1,
  schema,
  apply,
});

function apply(draft: HiveDraft, entry: Entry<PlacingBody>): readonly Issue[] {
  const { comb: id, to } = entry.body;
  const comb = draft.combs.get(id);
  if (comb === undefined) return unknown(entry, 'comb', 'comb', id, draft.combs);
  if (to.kind === 'place') {
    const hive = draft.hives.get(to.hive);
    if (hive === undefined) return unknown(entry, 'hive', 'to.hive', to.hive, draft.hives);
    const beyond = placeFaults(entry, 'to.place', to.place, hive.bars);
    if (beyond.length > 0) return beyond;
    const other = occupant(draft, to.hive, to.place, new Set([id]));
    if (other !== null)
      return [fault(entry, 'place-occupied', 'to.place', to.place, `a place without comb: ${other.id} hangs there`)];
    if (comb.born !== null && dayOf(entry.at) < comb.born.earliest)
      return [fault(entry, 'placed-before-born', 'to.place', dayOf(entry.at), `a day from ${comb.born.earliest} on`)];
    if (comb.ended !== null) return [fault(entry, 'comb-ended', 'comb', id, `a comb that did not end on ${comb.ended}`)];
  }
  bring(draft, comb, to, entry);
  return fits;
}
