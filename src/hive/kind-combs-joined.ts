/** Combs of neighbouring bars were found grown together. A bar that nobody had read becomes a comb by it. */
import * as z from 'zod/mini';
import { dayOf, type Entry, idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { fault, placeFaults, unknown } from './faults.ts';
import { bring, combAt, newComb } from './hanging.ts';
import { joinedHow, setWith } from './joined.ts';
import { placeSchema } from './shapes.ts';
import type { HiveDraft } from './state.ts';
import { bayAt } from './stretch.ts';

const most = 8;

const schema = z.strictObject({
  hive: idSchema,
  visit: z.nullable(idSchema),
  how: z.enum(joinedHow),
  /** Neighbours, from the first place on. `comb`: the id that a comb gets where none is known to hang. */
  bars: z.array(z.strictObject({ place: placeSchema, comb: idSchema })).check(z.minLength(2), z.maxLength(most)),
});

export type CombsJoinedBody = z.infer<typeof schema>;

export const combsJoinedKind = entryKind<CombsJoinedBody, HiveDraft>({ kind: 'combs-joined', version: 1, schema, apply });

function apply(draft: HiveDraft, entry: Entry<CombsJoinedBody>): readonly Issue[] {
  const { hive: id, bars, how } = entry.body;
  const hive = draft.hives.get(id);
  if (hive === undefined) return unknown(entry, 'hive', 'hive', id, draft.hives);
  const faults = bars.flatMap(({ place }, i) => placeFaults(entry, `bars.${i}.place`, place, hive.bars));
  if (faults.length > 0) return faults;
  const places = bars.map(({ place }) => place);
  if (places.some((place, i) => place !== places[0]! + i))
    return [fault(entry, 'not-neighbours', 'bars', places.join(', '), 'places beside each other, the first one first')];
  faults.push(...barFaults(draft, entry));
  if (faults.length > 0) return faults;
  for (const { place, comb: named } of bars) {
    const comb = combAt(draft, id, place) ?? newComb(named);
    draft.combs.set(comb.id, comb);
    if (comb.at === null) bring(draft, comb, { kind: 'place', hive: id, place, facing: 'as built' }, entry);
    // Comb that reaches over from the next bar has been begun on this one.
    if (comb.built === 0) comb.built = null;
  }
  const combs = places.flatMap((place) => combAt(draft, id, place)?.id ?? []);
  draft.joined.set(entry.id, { id: entry.id, since: dayOf(entry.at), how, combs });
  return fits;
}

/** A place without a bar, a bar of another bay, a comb that is of a set already, an id that another comb bears. */
function barFaults(draft: HiveDraft, entry: Entry<CombsJoinedBody>): Issue[] {
  const { hive, bars } = entry.body;
  const bay = bayAt(draft, hive, bars[0]!.place)?.id;
  return bars.flatMap(({ place, comb: named }, i): Issue[] => {
    const path = `bars.${i}.place`;
    const comb = combAt(draft, hive, place);
    if (draft.gaps.get(hive)?.has(place) === true) return [fault(entry, 'no-bar-there', path, place, 'a place with a bar')];
    if (bayAt(draft, hive, place)?.id !== bay) return [fault(entry, 'bays-overlap', path, place, 'places of one bay')];
    if (comb !== null && setWith(draft.joined, comb.id) !== null)
      return [fault(entry, 'joined-twice', path, place, 'a comb that hangs alone')];
    if (comb === null && draft.combs.has(named))
      return [fault(entry, 'comb-in-two-places', `bars.${i}.comb`, named, 'an id that no comb bears')];
    return [];
  });
}
