/** Combs that had grown together were cut apart: which of them hang alone now, and why hands stopped, if they did. */
import * as z from 'zod/mini';
import { type Entry, idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { fault, unknown } from './faults.ts';
import { partedFrom, stopReasons } from './joined.ts';
import { placeSchema } from './shapes.ts';
import type { HiveDraft } from './state.ts';

const most = 8;

const schema = z.strictObject({
  hive: idSchema,
  visit: z.nullable(idSchema),
  /** The entry that said that they had grown together. */
  joined: idSchema,
  /** Places of the bars that hang alone now; none when hands stopped before the first cut. */
  places: z.array(placeSchema).check(z.maxLength(most)),
  stopped: z.nullable(z.enum(stopReasons)),
});

export type CombsPartedBody = z.infer<typeof schema>;

export const combsPartedKind = entryKind<CombsPartedBody, HiveDraft>({ kind: 'combs-parted', version: 1, schema, apply });

function apply(draft: HiveDraft, entry: Entry<CombsPartedBody>): readonly Issue[] {
  const { hive, joined, places, stopped } = entry.body;
  const set = draft.joined.get(joined);
  if (set === undefined) return unknown(entry, 'joined', 'joined', joined, draft.joined);
  if (set.combs.length === 0) return [fault(entry, 'parted-already', 'joined', joined, 'combs that still hang together')];
  if (places.length === 0 && stopped === null)
    return [fault(entry, 'nothing-parted', 'places', 'none', 'a place, or why hands stopped')];
  const combs = set.combs.flatMap((id) => draft.combs.get(id) ?? []);
  const going = places.flatMap((place) =>
    combs.filter(({ at }) => at?.kind === 'place' && at.hive === hive && at.place === place),
  );
  const hung = combs.flatMap(({ at }) => (at?.kind === 'place' ? at.place : []));
  const strange = places.findIndex((place) => !hung.includes(place));
  if (strange >= 0)
    return [fault(entry, 'not-joined', `places.${strange}`, places[strange], `one of the places ${hung.join(', ')}`)];
  partedFrom(
    set,
    going.map(({ id }) => id),
  );
  return fits;
}
