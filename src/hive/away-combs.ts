/** Combs that hang nowhere and may be hung again: in hand, in a box, a tub or the freezer, with where they hung last. */
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import { awayWhere, type AwayWhere } from './row.ts';
import type { HiveDraft } from './state.ts';

export interface AwayComb {
  readonly comb: Id;
  readonly where: AwayWhere;
  readonly since: Day;
  /** The entry that put it there. */
  readonly taken: Id;
  /** Null when it never hung in a hive of the yard. */
  readonly from: { readonly hive: string; readonly place: number } | null;
}

/** The latest first. Bare bars are wood, and not told apart. */
export function awayCombs(state: HiveDraft): readonly AwayComb[] {
  const found = [...state.combs.values()].flatMap((comb): AwayComb[] => {
    const { at } = comb;
    const where = at?.kind === 'away' ? awayWhere.find((each) => each === at.where) : undefined;
    if (where === undefined || comb.ended !== null || comb.built === 0) return [];
    const hung = comb.placings.findLast(({ spot }) => spot.kind === 'place')?.spot;
    const hive = hung?.kind === 'place' ? state.hives.get(hung.hive) : undefined;
    const from = hung?.kind === 'place' && hive !== undefined ? { hive: hive.name, place: hung.place } : null;
    const last = comb.placings.at(-1);
    return last === undefined ? [] : [{ comb: comb.id, where, since: last.from, taken: last.entry, from }];
  });
  return found.sort((a, b) => (a.since < b.since ? 1 : -1));
}
