/**
 * The bars of one bay as they hang, and what hands do with them: take, put, swap, shift, move the follower board.
 * Every move is relative to the row as it hangs at that moment, so that a move corrected late makes the later ones run
 * anew. Pure.
 */
import type { Id } from '../journal/entry.ts';
import { bad, good, type Result } from '../numbers/result.ts';
import { keptTogether, placesTogether } from './row-sets.ts';
import type { Hung, Outward, Row } from './row-shape.ts';

/** What is put: what an earlier move took, a comb that hangs nowhere, or a bar without comb. */
export type Put =
  { readonly kind: 'taken'; readonly entry: Id } | { readonly kind: 'comb'; readonly comb: Id } | { readonly kind: 'bare' };

export const awayWhere = ['hand', 'box', 'tub', 'freezer'] as const;
export type AwayWhere = (typeof awayWhere)[number];

export type Move =
  | { readonly do: 'take'; readonly place: number; readonly to: AwayWhere }
  /** `room`: whether the bars from there on make way by a place, or the place must be free. */
  | { readonly do: 'put'; readonly place: number; readonly what: Put; readonly room: 'free' | 'make way' }
  | { readonly do: 'swap'; readonly place: number; readonly with: number }
  | { readonly do: 'turn'; readonly place: number }
  /** The bar there and all outward of it, by so many places outward; negative: inward. */
  | { readonly do: 'shift'; readonly place: number; readonly by: number }
  /** The last place of the bay before the follower board. */
  | { readonly do: 'follower'; readonly place: number }
  /** A strip of wood on the outward side of the bar; 0 mm: none. */
  | { readonly do: 'spacer'; readonly place: number; readonly widthMm: number };

/**
 * The row after a move; spacers and what is taken in hand are the caller's. `what`: the bars that are put, the inmost
 * first. `spare`: the bar that comes into the bay when its end moves beyond a place where nobody has looked.
 */
export function moved<T>(row: Row<T>, move: Move, what: readonly Hung<T>[], spare: (place: number) => Hung<T>): Result<Row<T>> {
  const next = movedBars(row, move, what);
  const whole = next.ok ? keptTogether(row, next.value) : next;
  return whole.ok ? good(settled(row, whole.value, spare)) : whole;
}

function movedBars<T>(row: Row<T>, move: Move, what: readonly Hung<T>[]): Result<Row<T>> {
  const { place } = move;
  if (move.do === 'follower') return withEnd(row, place);
  if (move.do === 'put' && what.length > 0) return putAll(row, place, what, move.room);
  const there = inBay(row, place);
  if (there === null) return bad(fault('no-bar-there', 'place', place, `a place with a bar: ${placesOf(row)}`));
  switch (move.do) {
    case 'take': {
      const going = placesTogether(row, place);
      return good(
        withBars(
          row,
          [...row.at].filter(([at]) => !going.includes(at)),
        ),
      );
    }
    case 'turn':
      return good(withBars(row, [...row.at, [place, { ...there, turned: !there.turned }]]));
    case 'swap':
      return swap(row, place, move.with, there);
    case 'shift':
      return shift(row, place, move.by);
    default:
      return good(row);
  }
}

/** Places left empty are gaps; spare wood comes in where the bay has become longer. */
function settled<T>(before: Row<T>, after: Row<T>, spare: (place: number) => Hung<T>): Row<T> {
  const at = new Map(after.at);
  const gaps = new Set([...before.gaps, ...before.at.keys()].filter((place) => !at.has(place)));
  for (let place = after.from; place <= after.to; place += 1) if (!at.has(place) && !gaps.has(place)) at.set(place, spare(place));
  return { ...after, at, gaps };
}

/** Places that must be outward of each other: 1 toward the last place, -1 toward the first. */
export function step(outward: Outward): 1 | -1 {
  return outward === 'last' ? 1 : -1;
}

/** One outward of the other. */
function putAll<T>(row: Row<T>, place: number, what: readonly Hung<T>[], room: 'free' | 'make way'): Result<Row<T>> {
  return what.reduce(
    (done: Result<Row<T>>, hung, i) => (done.ok ? put(done.value, place + i * step(row.outward), hung, room) : done),
    good(row),
  );
}

function put<T>(row: Row<T>, place: number, what: Hung<T>, room: 'free' | 'make way'): Result<Row<T>> {
  if (outside(row, place)) return beyond(row, 'place', place);
  const there = row.at.get(place);
  if (there === undefined || (there.bare && room === 'free'))
    return good(reaching(withBars(row, [...row.at, [place, what]]), place));
  if (room === 'free') return bad(fault('place-occupied', 'place', place, 'a place without comb'));
  const made = makeWay(row, place);
  return made.ok ? good(withBars(made.value, [...made.value.at, [place, what]])) : made;
}

/** From that place on, up to the first gap, every bar goes a place outward. */
function makeWay<T>(row: Row<T>, place: number): Result<Row<T>> {
  const by = step(row.outward);
  let gap = place;
  while (inBay(row, gap) !== null) gap += by;
  const beyond = row.at.get(gap);
  if (outside(row, gap) || (beyond !== undefined && !beyond.bare))
    return bad(fault('no-room', 'place', place, `a free place outward of it, up to ${row.bars}`));
  const at = new Map(row.at);
  for (let to = gap; to !== place; to -= by) at.set(to, row.at.get(to - by)!);
  at.delete(place);
  return good(reaching({ ...row, at }, gap));
}

function swap<T>(row: Row<T>, place: number, other: number, there: Hung<T>): Result<Row<T>> {
  const second = inBay(row, other);
  if (second === null) return bad(fault('no-bar-there', 'with', other, `a place with a bar: ${placesOf(row)}`));
  return good(withBars(row, [...row.at, [place, second], [other, there]]));
}

function shift<T>(row: Row<T>, place: number, by: number): Result<Row<T>> {
  const way = step(row.outward);
  const goes = (at: number): boolean => (at - place) * way >= 0 && inBay(row, at) !== null;
  const at = new Map([...row.at].filter(([where]) => !goes(where)));
  for (const [where, what] of row.at) {
    if (!goes(where)) continue;
    const to = where + by * way;
    if (outside(row, to)) return beyond(row, 'by', to);
    if (at.has(to)) return bad(fault('place-occupied', 'by', by, `as many places as are free: place ${to} is not`));
    at.set(to, what);
  }
  const end = (row.outward === 'last' ? row.to : row.from) + by * way;
  return outside(row, end) ? beyond(row, 'by', end) : withEnd({ ...row, at }, end);
}

/** The follower board after that place: bars beyond it hang outside of the bay. */
function withEnd<T>(row: Row<T>, place: number): Result<Row<T>> {
  if (outside(row, place)) return beyond(row, 'place', place);
  const ends = row.outward === 'last' ? { from: row.from, to: place } : { from: place, to: row.to };
  if (ends.from > ends.to) return bad(fault('bay-order', 'place', place, `a place from ${row.from} to ${row.to} or outward`));
  return good({ ...row, ...ends });
}

/** The bay reaches at least so far. */
function reaching<T>(row: Row<T>, place: number): Row<T> {
  return { ...row, from: Math.min(row.from, place), to: Math.max(row.to, place) };
}

function withBars<T>(row: Row<T>, bars: readonly (readonly [number, Hung<T>])[]): Row<T> {
  return { ...row, at: new Map(bars) };
}

/** Behind the follower board nothing is reached. */
function inBay<T>({ from, to, at }: Row<T>, place: number): Hung<T> | null {
  return from <= place && place <= to ? (at.get(place) ?? null) : null;
}

function outside({ bars }: Row<unknown>, place: number): boolean {
  return place < 1 || place > bars;
}

function beyond(row: Row<unknown>, path: string, place: number): Result<never> {
  return bad(fault('place-beyond-trough', path, place, `a place from 1 to ${row.bars}`));
}

function placesOf(row: Row<unknown>): string {
  const places = [...row.at.keys()].filter((place) => inBay(row, place) !== null);
  return places.sort((a, b) => a - b).join(', ') || 'none';
}

function fault(code: string, path: string, found: unknown, expected: string) {
  return { code, path, found: String(found), expected };
}
