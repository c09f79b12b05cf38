/**
 * Combs that have grown together: one that crosses bars, or several with wax between them. They are lifted and moved
 * together, and may be read as one, until they were cut apart.
 */
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';

export const joinedHow = ['across bars', 'wax between'] as const;
export type JoinedHow = (typeof joinedHow)[number];

/** Why hands stopped before all was cut apart. */
export const stopReasons = ['too warm', 'robbers', 'brood in the way', 'queen on it', 'no time'] as const;
export type StopReason = (typeof stopReasons)[number];

export interface JoinedSet {
  /** The entry that said so first. */
  readonly id: Id;
  readonly since: Day;
  readonly how: JoinedHow;
  /** Those that still hang together, from the first place on; empty once all were cut apart. */
  combs: readonly Id[];
}

/** The set in which a comb hangs; null when it hangs alone. */
export function setWith(sets: ReadonlyMap<Id, JoinedSet>, comb: Id): JoinedSet | null {
  for (const set of sets.values()) if (set.combs.includes(comb)) return set;
  return null;
}

/** They hang apart from the others from now on; one alone is no set. */
export function partedFrom(set: JoinedSet, combs: readonly Id[]): void {
  const left = set.combs.filter((comb) => !combs.includes(comb));
  set.combs = left.length > 1 ? left : [];
}
