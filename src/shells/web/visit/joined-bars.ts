/** Bars of the visit whose combs have grown together, as the journal said when it began or as was found since. */
import type { JoinedHow } from '../../../apiary/visit-terms.ts';
import type { Id } from '../../../journal/entry.ts';

/** The place at which it was found, or the entry that hung it in. */
export type BarOfVisit = number | Id;

export interface JoinedBars {
  /** The entry that said so. */
  readonly id: Id;
  readonly how: JoinedHow;
  readonly bars: readonly BarOfVisit[];
  /** From how many moves of the visit on it is so, and up to how many; null: still. */
  readonly from: number;
  readonly to: number | null;
}

interface Moved {
  readonly joined: readonly JoinedBars[];
  readonly moves: readonly unknown[];
}

/** Those that hang together once so many moves were made. */
export function joinedThen(joined: readonly JoinedBars[], made: number): readonly JoinedBars[] {
  return joined.filter(({ from, to }) => from <= made && (to === null || made < to));
}

/** The set in which the bar hangs now; null when it hangs alone. */
export function joinedNow({ joined, moves }: Moved, bar: BarOfVisit): JoinedBars | null {
  if (joined.length === 0) return null;
  return joinedThen(joined, moves.length).find(({ bars }) => bars.includes(bar)) ?? null;
}

/** Bars found at the beginning that are read with this one, itself left out. */
export function readTogether(draft: Moved, bar: number): readonly number[] {
  return (joinedNow(draft, bar)?.bars ?? []).filter((one): one is number => typeof one === 'number' && one !== bar);
}
