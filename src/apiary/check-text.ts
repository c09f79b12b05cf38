/** Every fault of a journal's text, by all kinds that the program knows: what `festoon check` and an import show. */
import { emptyColonies } from '../colony/state.ts';
import { checkJournal, type CheckedJournal } from '../journal/check-journal.ts';
import type { Day } from '../numbers/day.ts';
import { allKinds } from './kinds.ts';

export function checkText(text: string, today: Day | null): CheckedJournal {
  return checkJournal(text, allKinds, emptyColonies, today === null ? {} : { today });
}
