/**
 * How the bars hang at this moment of the visit: the row as it was found, with every move of the hands done to it. A bar
 * of the visit bears the place at which it was found as long as the visit lasts; bars hung in since bear their move.
 */
import { type AwayWhere, type Hung, moved, placesTogether, type Row } from '../../../apiary/visit-terms.ts';
import type { Id } from '../../../journal/entry.ts';
import type { Issue } from '../../../numbers/result.ts';
import type { Draft, VisitMove } from './draft.ts';
import { type BarOfVisit, joinedThen } from './joined-bars.ts';

/** A bar that was taken and hangs nowhere. */
export interface Handed {
  /** The move that took it. */
  readonly entry: Id;
  /** One, or all that had grown together with it, the inmost first. */
  readonly bars: readonly Hung<BarOfVisit>[];
  readonly where: AwayWhere;
}

export interface Arrangement {
  readonly row: Row<BarOfVisit>;
  readonly handed: readonly Handed[];
}

export type ArrangedDraft = Pick<Draft, 'bay' | 'gaps' | 'hiveBars' | 'moves' | 'read' | 'joined' | 'acts'>;

export function arrangementOf(draft: ArrangedDraft): Arrangement {
  const { moves } = draft;
  const now = moves.reduce((before: Arrangement, move, made) => {
    const together = asFound(before, draft, made);
    const after = arranged(together, move);
    return after.ok ? after.value : together;
  }, found(draft));
  return asFound(now, draft, moves.length);
}

/** Which bars hang together, and which are bare no more, once so many moves were made. */
function asFound(now: Arrangement, { joined, acts }: ArrangedDraft, made: number): Arrangement {
  if (joined.length + acts.length === 0) return now;
  const tied = acts.flatMap(({ onto, moves }) => (onto !== undefined && moves <= made ? onto : []));
  // Comb that reached over from the next bar stays on it when they are cut apart.
  const reached = joined.filter(({ from }) => from <= made).flatMap(({ bars }) => bars);
  const combed = new Set([...tied, ...reached]);
  const set = new Map(joinedThen(joined, made).flatMap(({ id, bars }) => bars.map((bar) => [bar, id] as const)));
  const named = ({ joined: _, ...hung }: Hung<BarOfVisit>): Hung<BarOfVisit> => {
    const id = set.get(hung.what);
    const bare = hung.bare && !combed.has(hung.what);
    return id === undefined ? { ...hung, bare } : { ...hung, bare, joined: id };
  };
  const at = new Map([...now.row.at].map(([place, hung]) => [place, named(hung)] as const));
  return { row: { ...now.row, at }, handed: now.handed.map((one) => ({ ...one, bars: one.bars.map(named) })) };
}

/** The row after one move more, or why it cannot be. */
export function arranged(
  { row, handed }: Arrangement,
  { entry, move }: VisitMove,
): { readonly ok: true; readonly value: Arrangement } | { readonly ok: false; readonly issues: readonly Issue[] } {
  const what = move.do === 'put' ? toPut(handed, move.what, entry) : null;
  const after = moved(row, move, what?.bars ?? [], (place) => ({ what: place, bare: false, turned: false }));
  if (!after.ok) return after;
  if (move.do === 'put') return { ok: true, value: { row: after.value, handed: handed.filter((one) => one !== what) } };
  if (move.do !== 'take') return { ok: true, value: { row: after.value, handed } };
  const going = placesTogether(row, move.place).flatMap((place) => row.at.get(place) ?? []);
  const bars = row.outward === 'last' ? going : going.toReversed();
  return { ok: true, value: { row: after.value, handed: [...handed, { entry, bars, where: move.to }] } };
}

/** Where the bar hangs now; null when it hangs nowhere. */
export function placeOf({ row }: Arrangement, bar: BarOfVisit): number | null {
  for (const [place, { what }] of row.at) if (what === bar) return place;
  return null;
}

/** Where it hangs, or where it was found when it hangs nowhere: what the keeper calls it by. */
export function placeNamed(draft: ArrangedDraft, bar: number): number {
  return draft.moves.length === 0 ? bar : (placeOf(arrangementOf(draft), bar) ?? bar);
}

/** It hangs before the follower board: it can be lifted. */
export function isReached(now: Arrangement, bar: BarOfVisit): boolean {
  const place = placeOf(now, bar);
  return place !== null && now.row.from <= place && place <= now.row.to;
}

/** Bars that hang in the bay. */
export function barsHung({ row }: Arrangement): number {
  return [...row.at.keys()].filter((place) => row.from <= place && place <= row.to).length;
}

function found({ bay, gaps, hiveBars, read }: ArrangedDraft): Arrangement {
  const bare = new Set(read.filter(({ seen }) => seen.combClass === 'bare').map(({ place }) => place));
  const at = new Map<number, Hung<BarOfVisit>>();
  for (let place = bay.from; place <= bay.to; place += 1)
    if (!gaps.includes(place)) at.set(place, { what: place, bare: bare.has(place), turned: false });
  const row = { bars: hiveBars, from: bay.from, to: bay.to, outward: bay.follower, at, gaps: new Set(gaps) };
  return { row, handed: [] };
}

type Put = Extract<VisitMove['move'], { do: 'put' }>['what'];

function toPut(handed: readonly Handed[], what: Put, entry: Id): Handed | null {
  if (what.kind === 'taken') return handed.find((one) => one.entry === what.entry) ?? null;
  return { entry, bars: [{ what: entry, bare: what.kind === 'bare', turned: false }], where: 'hand' };
}
