/** A piece cut or broken from a comb: a comb of its own from then on, which knows where it comes from. */
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';

export interface Piece {
  /** The comb that it has become. */
  readonly piece: Id;
  readonly parent: Id;
  readonly day: Day;
  /** Of the parent as it hung, 0 … 1. */
  readonly share: number;
}
