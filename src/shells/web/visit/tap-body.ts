/** What is found or done with combs that are not one comb on one bar: each tap is one entry, and the last can be taken back. */
import type { AwayWhere, JoinedHow, StopReason } from '../../../apiary/visit-terms.ts';
import type { Id } from '../../../journal/entry.ts';
import { arrangementOf } from './arrangement.ts';
import { barInReach } from './bar-in-reach.ts';
import { type BodyAct, type Draft, freshBar, unseen } from './draft.ts';
import { type BarOfVisit, type JoinedBars, joinedThen } from './joined-bars.ts';
import { bodyEntry, readingOf, type Stamp, voidEntry } from './to-entries.ts';

export type BodyTap = BodyMade & { readonly entry: Id; readonly stamp: Stamp; readonly next: Id };

export type BodyMade =
  /** Places as they hang now; `combs`: ids for combs where none was known. */
  | { readonly kind: 'joined'; readonly how: JoinedHow; readonly places: readonly number[]; readonly combs: readonly Id[] }
  | { readonly kind: 'parted'; readonly joined: Id; readonly places: readonly number[]; readonly stopped: StopReason | null }
  | { readonly kind: 'piece'; readonly place: number; readonly comb: Id; readonly share8: number; readonly to: PieceTo }
  | { readonly kind: 'bee escape'; readonly what: 'set' | 'taken out'; readonly after: number }
  /** Comb on the follower board beside the place; null: none is there any more. */
  | { readonly kind: 'board'; readonly place: number; readonly read: BoardRead | null };

export type PieceTo =
  { readonly kind: 'place'; readonly place: number } | { readonly kind: 'away'; readonly where: Exclude<AwayWhere, 'hand'> };

export interface BoardRead {
  readonly built8: number;
  readonly brood8: number;
  readonly food8: number;
}

/** Never while a bar is in the hand of which something was read. */
export function bodyTap(draft: Draft, by: BodyTap): Draft {
  if (draft.bar?.touched === true || draft.acts.some(({ entry }) => entry === by.entry)) return draft;
  const joined = joinedAfter(draft, by);
  if (joined === null) return draft;
  const { kind, body } = bodyOf(draft, by);
  const act: BodyAct = {
    entry: by.entry,
    what: by.kind !== 'bee escape' ? by.kind : by.what === 'set' ? 'escape set' : 'escape out',
    ...ontoOf(draft, by),
    before: draft.joined,
    moves: draft.moves.length,
    reads: draft.read.length,
  };
  const outbox = [...draft.outbox, bodyEntry(draft, by.entry, kind, body, by.stamp)];
  return afresh({ ...draft, joined, acts: [...draft.acts, act], outbox, past: [] }, by.next);
}

/** The last act, as long as nothing was read or moved since. */
export function undoableAct({ acts, moves, read }: Draft): BodyAct | null {
  const last = acts.at(-1) ?? null;
  return last !== null && last.moves === moves.length && last.reads === read.length ? last : null;
}

export function bodyBack(
  draft: Draft,
  by: { readonly id: Id; readonly stamp: Stamp; readonly why: string; readonly next: Id },
): Draft {
  const act = undoableAct(draft);
  if (act === null || draft.bar?.touched === true) return draft;
  const taken = voidEntry(draft, by.id, act.entry, [], by.stamp, by.why);
  const acts = draft.acts.slice(0, -1);
  return afresh({ ...draft, joined: act.before, acts, outbox: [...draft.outbox, taken], past: [] }, by.next);
}

/** The bar that was about to be lifted, with what is now known of how it hangs. */
function afresh(draft: Draft, next: Id): Draft {
  const { bar } = draft;
  if (bar === null || bar.again !== null) return draft;
  return barInReach({ ...draft, bar: freshBar(draft, bar.place, next) }, next);
}

/** What hangs together after it; null when it cannot be. */
function joinedAfter(draft: Draft, by: BodyTap): readonly JoinedBars[] | null {
  const { joined, moves } = draft;
  const { at, from, to } = arrangementOf(draft).row;
  const made = moves.length;
  const within = (place: number): boolean => from <= place && place <= to;
  if (by.kind === 'piece' && (!within(by.place) || at.get(by.place)?.bare !== false)) return null;
  if (by.kind === 'piece' && by.to.kind === 'place' && (!within(by.to.place) || !at.has(by.to.place))) return null;
  if (by.kind === 'joined' && !by.places.every(within)) return null;
  if (by.kind === 'joined') {
    const hung = by.places.map((place) => at.get(place));
    if (hung.length < 2 || hung.some((one) => one === undefined || one.joined !== undefined)) return null;
    const bars = hung.flatMap((one) => one?.what ?? []);
    return [...joined, { id: by.entry, how: by.how, bars, from: made, to: null }];
  }
  if (by.kind !== 'parted') return joined;
  const set = joinedThen(joined, made).find(({ id }) => id === by.joined);
  if (set === undefined) return null;
  const free = by.places.flatMap((place): BarOfVisit[] => [at.get(place)?.what ?? []].flat());
  const left = set.bars.filter((bar) => !free.includes(bar));
  const ended = joined.map((one) => (one === set ? { ...one, to: made } : one));
  return left.length > 1 ? [...ended, { ...set, bars: left, from: made, to: null }] : ended;
}

/** The bar to which a piece was tied: it is bare no more. */
function ontoOf(draft: Draft, by: BodyTap): Pick<BodyAct, 'onto'> {
  const bar = by.kind === 'piece' && by.to.kind === 'place' ? arrangementOf(draft).row.at.get(by.to.place)?.what : undefined;
  return bar === undefined ? {} : { onto: bar };
}

function bodyOf(draft: Draft, by: BodyTap): { readonly kind: string; readonly body: unknown } {
  const { hive, visit, colony } = draft;
  switch (by.kind) {
    case 'joined': {
      const bars = by.places.map((place, i) => ({ place, comb: by.combs[i] }));
      return { kind: 'combs-joined', body: { hive, visit, how: by.how, bars } };
    }
    case 'parted':
      return { kind: 'combs-parted', body: { hive, visit, joined: by.joined, places: by.places, stopped: by.stopped } };
    case 'piece':
      return { kind: 'comb-piece', body: { hive, visit, place: by.place, comb: by.comb, share8: by.share8, to: by.to } };
    case 'bee escape':
      return { kind: 'bee-escape', body: { colony, hive, visit, what: by.what, after: by.after } };
    case 'board':
      return { kind: 'reading', body: boardReading(draft, by.place, by.read) };
  }
}

function boardReading(draft: Draft, place: number, read: BoardRead | null): unknown {
  const seen = read === null ? { ...unseen, combClass: 'bare' as const, brood8: 0, food8: 0 } : { ...unseen, ...read };
  return { ...readingOf(draft, place, seen), built8: read?.built8 ?? 0, of: 'follower' };
}
