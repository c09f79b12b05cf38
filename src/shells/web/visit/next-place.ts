/** Which bar is lifted next. */
import { type ArrangedDraft, arrangementOf, isReached } from './arrangement.ts';
import type { Draft } from './draft.ts';
import { readTogether } from './joined-bars.ts';

/** Places whose bars were read, by themselves or with one that they have grown together with. */
export function placesRead({ read }: Pick<Draft, 'read'>): readonly number[] {
  return read.flatMap((row) => [row.place, ...(row.with ?? [])]);
}

/** The place lifted after this one: the next unread in order, then any that was left out by a jump; null when all are done. */
export function nextPlace(draft: ArrangedDraft & Pick<Draft, 'places' | 'skipped'>, after: number): number | null {
  const done = new Set([...placesRead(draft), ...draft.skipped, after, ...readTogether(draft, after)]);
  const from = draft.places.indexOf(after) + 1;
  const round = [...draft.places.slice(from), ...draft.places.slice(0, from)];
  const left = round.filter((place) => !done.has(place));
  if (draft.moves.length === 0) return left[0] ?? null;
  // What was taken, or hangs behind the follower board now, is not lifted.
  const now = arrangementOf(draft);
  return left.find((place) => isReached(now, place)) ?? null;
}
