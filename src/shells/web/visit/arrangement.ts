/**
 * How the bars hang at this moment of the visit: the row as it was found, with every move of the hands done to it. A bar
 * of the visit bears the place at which it was found as long as the visit lasts; bars hung in since bear their move.
 */
import { type AwayWhere, type Hung, moved, type Row } from '../../../apiary/visit-terms.ts';
import type { Id } from '../../../journal/entry.ts';
import type { Issue } from '../../../numbers/result.ts';
import type { Draft, VisitMove } from './draft.ts';

/** The place at which it was found, or the entry that hung it in. */
export type BarOfVisit = number | Id;

/** A bar that was taken and hangs nowhere. */
export interface Handed {
  /** The move that took it. */
  readonly entry: Id;
  readonly bar: BarOfVisit;
  readonly where: AwayWhere;
  readonly hung: Hung<BarOfVisit>;
}

export interface Arrangement {
  readonly row: Row<BarOfVisit>;
  readonly handed: readonly Handed[];
}

export type ArrangedDraft = Pick<Draft, 'bay' | 'gaps' | 'hiveBars' | 'moves' | 'read'>;

export function arrangementOf(draft: ArrangedDraft): Arrangement {
  return draft.moves.reduce((before: Arrangement, move) => {
    const after = arranged(before, move);
    return after.ok ? after.value : before;
  }, found(draft));
}

/** The row after one move more, or why it cannot be. */
export function arranged(
  { row, handed }: Arrangement,
  { entry, move }: VisitMove,
): { readonly ok: true; readonly value: Arrangement } | { readonly ok: false; readonly issues: readonly Issue[] } {
  const what = move.do === 'put' ? toPut(handed, move.what, entry) : null;
  const after = moved(row, move, what?.hung ?? null, (place) => ({ what: place, bare: false, turned: false }));
  if (!after.ok) return after;
  if (move.do === 'put') return { ok: true, value: { row: after.value, handed: handed.filter((one) => one !== what) } };
  const hung = row.at.get(move.place);
  if (move.do !== 'take' || hung === undefined) return { ok: true, value: { row: after.value, handed } };
  return { ok: true, value: { row: after.value, handed: [...handed, { entry, bar: hung.what, where: move.to, hung }] } };
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
  const hung = { what: entry, bare: what.kind === 'bare', turned: false };
  return { entry, bar: entry, where: 'hand', hung };
}
