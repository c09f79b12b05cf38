/** A bar that was about to be lifted and hangs there no more gives way to the next. */
import type { Id } from '../../../journal/entry.ts';
import { arrangementOf, isReached } from './arrangement.ts';
import { type Draft, freshBar } from './draft.ts';
import { nextPlace } from './next-place.ts';

export function barInReach(draft: Draft, next: Id): Draft {
  const { bar } = draft;
  if (bar === null || isReached(arrangementOf(draft), bar.place)) return draft;
  const place = nextPlace(draft, bar.place);
  return { ...draft, bar: place === null ? null : freshBar(draft, place, next) };
}
