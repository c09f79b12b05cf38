/** What a move of the hands, and taking it back, do to the draft of the visit. */
import type { Move } from '../../../apiary/visit-terms.ts';
import type { Id } from '../../../journal/entry.ts';
import { arranged, arrangementOf } from './arrangement.ts';
import { barInReach } from './bar-in-reach.ts';
import type { Draft } from './draft.ts';
import { moveEntry, type Stamp, voidEntry } from './to-entries.ts';

export type MoveTap =
  | { readonly kind: 'move'; readonly entry: Id; readonly move: Move; readonly stamp: Stamp; readonly next: Id }
  /** The last move, or all of the visit, taken back: the row hangs as before. */
  | {
      readonly kind: 'moves back';
      readonly which: 'last' | 'all';
      readonly ids: readonly Id[];
      readonly stamp: Stamp;
      readonly words: { readonly why?: string };
    };

/** Never while a bar is in the hand of which something was read; a move that cannot be changes nothing. */
export function moveBar(draft: Draft, by: Extract<MoveTap, { kind: 'move' }>): Draft {
  if (draft.bar?.touched === true || draft.moves.some(({ entry }) => entry === by.entry)) return draft;
  const move = { entry: by.entry, move: by.move };
  if (!arranged(arrangementOf(draft), move).ok) return draft;
  const entry = moveEntry(draft, move, by.stamp);
  return barInReach({ ...draft, moves: [...draft.moves, move], outbox: [...draft.outbox, entry], past: [] }, by.next);
}

/** The last so many moves: no bar was read since, and nothing was said of how combs hang. */
export function movesUndoable({ moves, read, acts }: Draft): number {
  return moves.length - Math.max(0, ...read.map(({ movesThen = 0 }) => movesThen), ...acts.map((act) => act.moves));
}

/** Entries are taken back from the last to the first, so that each finds the row as it left it. */
export function movesBack(draft: Draft, by: Extract<MoveTap, { kind: 'moves back' }>): Draft {
  const going = by.which === 'all' ? draft.moves : draft.moves.slice(-1);
  if (going.length === 0 || going.length > movesUndoable(draft) || by.ids.length < going.length) return draft;
  const voids = going.toReversed().map(({ entry }, i) => voidEntry(draft, by.ids[i]!, entry, [], by.stamp, by.words.why ?? ''));
  return {
    ...draft,
    moves: draft.moves.slice(0, draft.moves.length - going.length),
    outbox: [...draft.outbox, ...voids],
    past: [],
  };
}
