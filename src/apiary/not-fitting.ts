/** Entries of a journal that do not fit with the rest, by all kinds that this program understands. */
import { emptyColonies } from '../colony/state.ts';
import type { Entry, Id } from '../journal/entry.ts';
import { foldJournal } from '../journal/fold.ts';
import { type NoFit, noFits } from '../journal/no-fit.ts';
import { allKinds } from './kinds.ts';

export function notFitting(entries: readonly Entry[]): readonly NoFit[] {
  return noFits(entries, allKinds, emptyColonies);
}

/** Entries that fit now and would not fit any more with `more` written as well. */
export function newlyUnfit(entries: readonly Entry[], more: Entry): readonly Id[] {
  const unfit = (all: readonly Entry[]) => foldJournal(all, allKinds, emptyColonies).faults.flatMap(({ entry }) => entry ?? []);
  const before = new Set(unfit(entries));
  return [...new Set(unfit([...entries, more]))].filter((id) => !before.has(id));
}
