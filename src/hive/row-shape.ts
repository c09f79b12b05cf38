/** The bars of one bay as they hang at one moment. `T` is what hangs there: a comb in the journal, a bar of the visit on the screen. */
import type { Id } from '../journal/entry.ts';

/** Toward which end wall of the trough bars make way: away from the entrance. */
export type Outward = 'first' | 'last';

export interface Row<T> {
  /** Places of the trough. */
  readonly bars: number;
  readonly from: number;
  readonly to: number;
  readonly outward: Outward;
  readonly at: ReadonlyMap<number, Hung<T>>;
  /** Places from which a bar was taken and none put. Any other place without one, beyond the bay, has spare wood. */
  readonly gaps: ReadonlySet<number>;
}

export interface Hung<T> {
  readonly what: T;
  /** Without comb: it gives way to any comb that is put in its place. */
  readonly bare: boolean;
  readonly turned: boolean;
  /** Has grown together with every other bar that bears the same name; absent: hangs alone. */
  readonly joined?: Id;
}
