/** What every part of the screen for awkward combs is given. */
import type { Arrangement } from './arrangement.ts';
import type { Draft } from './draft.ts';

export interface BodyProps {
  readonly draft: Draft;
  readonly now: Arrangement;
  readonly place: number;
}
