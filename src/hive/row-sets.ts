/**
 * Bars whose combs have grown together: whatever hands do, they stay beside each other, in their order, as they faced,
 * and on one side of the follower board.
 */
import type { Id } from '../journal/entry.ts';
import { bad, good, type Result } from '../numbers/result.ts';
import type { Hung, Row } from './row-shape.ts';

/** Places of the bars that hang together with the one at the place, itself among them, from the first place on. */
export function placesTogether<T>({ at }: Pick<Row<T>, 'at'>, place: number): readonly number[] {
  const joined = at.get(place)?.joined;
  if (joined === undefined) return at.has(place) ? [place] : [];
  return placesOf(at, joined);
}

/** The row as it is after a move, or what the move would have torn. */
export function keptTogether<T>(before: Row<T>, after: Row<T>): Result<Row<T>> {
  for (const joined of new Set([...after.at.values()].flatMap((hung) => hung.joined ?? []))) {
    const [was, is] = [placesOf(before.at, joined), placesOf(after.at, joined)];
    if (was.length > 0 && !sameBody(before, after, was, is)) return torn(was);
  }
  return good(after);
}

function placesOf<T>(at: ReadonlyMap<number, Hung<T>>, joined: Id): readonly number[] {
  return [...at].flatMap(([place, hung]) => (hung.joined === joined ? place : [])).sort((a, b) => a - b);
}

function sameBody<T>(before: Row<T>, after: Row<T>, was: readonly number[], is: readonly number[]): boolean {
  const within = is.filter((place) => after.from <= place && place <= after.to).length;
  const alike = is.every((place, i) => {
    const [old, now] = [before.at.get(was[i]!), after.at.get(place)];
    return old?.what === now?.what && old?.turned === now?.turned && place === is[0]! + i;
  });
  return was.length === is.length && alike && (within === 0 || within === is.length);
}

function torn(was: readonly number[]): Result<never> {
  const found = was.join(', ');
  return bad({ code: 'joined-torn', path: 'place', found, expected: 'the bars that have grown together moved together' });
}
