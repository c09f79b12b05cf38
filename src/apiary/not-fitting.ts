/** Entries of a journal that do not fit with the rest, by all kinds that this program understands. */
import { emptyColonies } from '../colony/state.ts';
import type { Entry } from '../journal/entry.ts';
import { type NoFit, noFits } from '../journal/no-fit.ts';
import { allKinds } from './kinds.ts';

export function notFitting(entries: readonly Entry[]): readonly NoFit[] {
  return noFits(entries, allKinds, emptyColonies);
}
