/**
 * A visit that is going on, as plain data small enough to be put on disk at every tap. It holds what
 * was tapped and the entries that are not yet in the journal, and nothing that can be worked out.
 * Taps change it in `tap.ts`; entries are made of it in `to-entries.ts`.
 */
import type { CellCounts, LookedFor, Reading, Stage } from '../../../colony/reading.ts';
import type { SignCode } from '../../../colony/signs.ts';
import type { VisitBody, VisitKind } from '../../../colony/visit.ts';
import type { At, Entry, Id } from '../../../journal/entry.ts';
import type { Attachment, FallenComb, Move, WinterList } from '../../../apiary/visit-terms.ts';
import type { BarsForetold, FarBar } from '../../../apiary/bar-far.ts';
import { type BarOfVisit, type JoinedBars, joinedNow } from './joined-bars.ts';
import type { Expected } from './ports.ts';

export type CombClass = NonNullable<Reading['combClass']>;
export type Order = VisitBody['order'];
export type Temper = NonNullable<VisitBody['temper']>;
export type TemperNote = VisitBody['temperNotes'][number];
export type Straight = NonNullable<VisitBody['straight']>;
/** Signs are shown by how grave they are, a page each: nothing has to be scrolled with gloves on. */
export type Panel =
  | 'eggs'
  | 'cells'
  | 'queen'
  | 'sign-note'
  | 'sign-ask'
  | 'sign-stop'
  | 'note'
  | 'fell'
  /** What hung on the comb that fell is answered, what was done with it is asked. */
  | `fell-${FallenComb}`
  | 'more'
  | 'discard';
export type Phase = 'bars' | 'moves' | 'bodies' | 'row' | 'winter' | 'colony' | 'confirm' | 'done';

/** What is seen on the bar in the hand. Nulls are "not read". */
export interface Seen {
  readonly combClass: CombClass | null;
  readonly brood8: number | null;
  readonly food8: number | null;
  /** Which rulers were set by a class and not by a finger: those give way when the other is tapped. */
  readonly byClass: 'both' | 'brood' | 'food' | 'none';
  /** Both rulers were filled in with what should be there today. */
  readonly asExpected?: true;
  readonly eggs: LookedFor;
  readonly youngest: Stage | null;
  readonly cells: CellCounts | null;
  readonly cellsLooked: LookedFor;
  readonly queen: LookedFor;
  readonly brushed: boolean | null;
  readonly signs: readonly SignCode[];
  /** How the comb hangs at walls and floor; absent: not looked. */
  readonly attached?: Attachment;
  /** Two combs side by side on the bar; absent: not looked. */
  readonly double?: boolean;
  /** Read as one with all that have grown together with it. */
  readonly of?: 'set';
}

/** The bar in the hand. */
export interface BarDraft {
  /** The id of the entry that Down will write. */
  readonly entry: Id;
  readonly place: number;
  readonly seen: Seen;
  readonly note: string;
  /** True once something was tapped: an untouched bar is never written. */
  readonly touched: boolean;
  /** A bar that was already put down and is taken up again: Down then corrects its reading. */
  readonly again: Written | null;
}

/** A bar that was put down. */
export interface Written {
  readonly place: number;
  readonly reading: Id;
  readonly seen: Seen;
  /** Where it hung when it was read, if it had been moved by then. */
  readonly readAt?: number;
  /** Bars read with it, because they have grown together. */
  readonly with?: readonly number[];
  /** How many moves had been made by then, if any: those are not undone any more, because it was read where they left it. */
  readonly movesThen?: number;
  /** Corrections of it so far, oldest first. */
  readonly corrections: readonly Id[];
}

export interface VisitMove {
  readonly entry: Id;
  readonly move: Move;
}

/** One that can be taken back as long as nothing was read or moved since. */
export interface BodyAct {
  readonly entry: Id;
  readonly what: 'joined' | 'parted' | 'piece' | 'escape set' | 'escape out' | 'board';
  /** The bar to which a piece was tied. */
  readonly onto?: BarOfVisit;
  /** What hung together before it. */
  readonly before: readonly JoinedBars[];
  readonly moves: number;
  readonly reads: number;
}

export interface Closing {
  readonly given: number;
  readonly taken: number;
  /** Steps by which the follower board was moved outwards by hand, beyond bars given and taken. */
  readonly follower: number;
  readonly barsCounted: number | null;
  readonly beesBars: number | null;
  readonly temper: Temper | null;
  readonly temperNotes: readonly TemperNote[];
  readonly straight: Straight | null;
  readonly cellsCut: boolean | null;
  /** Answers of closing for winter; absent: none. */
  readonly winter?: WinterList;
}

/** What a step back restores: the old values of what the tap changed, or an act that is in the journal. */
export type Step =
  | {
      readonly kind: 'values';
      readonly values: Partial<Pick<Draft, 'bar' | 'skipped' | 'closing' | 'brushed' | 'smokeSince' | 'phase'>>;
    }
  | { readonly kind: 'down'; readonly place: number }
  | { readonly kind: 'fell'; readonly note: Id; readonly temperNotes: readonly TemperNote[] };

/** What was told of a bar when it was put down: kept, because the journal that told it knows the reading from then on. */
export interface ToldBar {
  readonly place: number;
  readonly seen: Seen;
  readonly expected: Expected;
  /** When it lies far from what was foreseen before the visit. */
  readonly far: FarBar | null;
}

export interface Draft {
  readonly form: 1;
  readonly visit: Id;
  readonly yard: Id;
  readonly by: Id;
  readonly colony: Id;
  readonly hive: Id;
  readonly began: At;
  readonly visitKind: VisitKind;
  readonly order: Order;
  /** Where the follower board stood, and on which side of the bay. */
  readonly bay: { readonly from: number; readonly to: number; readonly follower: 'first' | 'last' };
  /** Places of the trough. */
  readonly hiveBars: number;
  /** Bees brushed off, unless a bar says otherwise. */
  readonly brushed: boolean | null;
  /** Places of the bay without a bar when it began. */
  readonly gaps: readonly number[];
  /** Places to read, in the order in which they are lifted. */
  readonly places: readonly number[];
  readonly phase: Phase;
  readonly panel: Panel | null;
  readonly bar: BarDraft | null;
  readonly read: readonly Written[];
  readonly skipped: readonly number[];
  /** Moves of the hands so far, oldest first, each with its entry. */
  readonly moves: readonly VisitMove[];
  /** Bars whose combs have grown together. */
  readonly joined: readonly JoinedBars[];
  /** What else was done or found with a comb, oldest first. */
  readonly acts: readonly BodyAct[];
  readonly fell: readonly number[];
  readonly smokeSince: number | null;
  /** Before the first bar was lifted; null in a draft of an earlier build. */
  readonly foretold: BarsForetold | null;
  /** Of the bar put down last. */
  readonly told: ToldBar | null;
  readonly closing: Closing;
  /** Entries made by Down, by the fall of a comb and by closing that the journal has not confirmed yet. */
  readonly outbox: readonly Entry[];
  readonly past: readonly Step[];
}

export const unseen: Seen = {
  combClass: null,
  brood8: null,
  food8: null,
  byClass: 'none',
  eggs: 'not looked',
  youngest: null,
  cells: null,
  cellsLooked: 'not looked',
  queen: 'not looked',
  brushed: null,
  signs: [],
};

export const nothingCounted: Closing = {
  given: 0,
  taken: 0,
  follower: 0,
  barsCounted: null,
  beesBars: null,
  temper: null,
  temperNotes: [],
  straight: null,
  cellsCut: null,
};

export interface Beginning {
  readonly visit: Id;
  readonly entry: Id;
  readonly yard: Id;
  readonly by: Id;
  readonly colony: Id;
  readonly hive: Id;
  readonly began: At;
  readonly visitKind: VisitKind;
  readonly order: Order;
  readonly bay: Draft['bay'];
  readonly hiveBars: number;
  readonly brushed: boolean | null;
  /** Places with a comb, as last known: a glance lifts the last two of them. */
  readonly combs: readonly number[];
  /** Places of the bay without a bar. */
  readonly gaps: readonly number[];
  readonly joined: readonly JoinedBars[];
  readonly foretold: BarsForetold | null;
}

export function beginDraft(given: Beginning): Draft {
  const { entry, combs, ...rest } = given;
  const places = placesToRead(given.visitKind, given.order, given.bay, combs).filter((place) => !given.gaps.includes(place));
  const draft: Draft = {
    form: 1,
    ...rest,
    places,
    phase: 'bars',
    panel: null,
    bar: null,
    read: [],
    skipped: [],
    moves: [],
    acts: [],
    fell: [],
    smokeSince: null,
    told: null,
    closing: nothingCounted,
    outbox: [],
    past: [],
  };
  const [first] = places;
  return first === undefined ? { ...draft, phase: 'row' } : { ...draft, bar: freshBar(draft, first, entry) };
}

export function freshBar(draft: Pick<Draft, 'brushed' | 'joined' | 'moves'>, place: number, entry: Id): BarDraft {
  const together = joinedNow(draft, place) === null ? {} : { of: 'set' as const };
  return { entry, place, seen: { ...unseen, brushed: draft.brushed, ...together }, note: '', touched: false, again: null };
}

/** The bar as it was put down, taken up again. */
export function reopenedBar(written: Written, entry: Id): BarDraft {
  return { entry, place: written.place, seen: written.seen, note: '', touched: false, again: written };
}

/**
 * The whole bay, follower or entrance end first; for a glance two bars at the follower: the last two
 * with comb, where combs are known, because it is their straightness that is asked.
 */
export function placesToRead(kind: VisitKind, order: Order, bay: Draft['bay'], combs: readonly number[]): readonly number[] {
  const all = Array.from({ length: Math.max(0, bay.to - bay.from + 1) }, (_, index) => bay.from + index);
  const inwards = bay.follower === 'last' ? all.toReversed() : all;
  if (kind === 'glance') {
    const hung = inwards.filter((place) => combs.includes(place));
    return (hung.length > 0 ? hung : inwards).slice(0, glanceBars);
  }
  return order === 'from the follower' ? inwards : inwards.toReversed();
}

const glanceBars = 2;

export function writtenAt(draft: Draft, place: number): Written | null {
  return draft.read.find((row) => row.place === place) ?? null;
}

/** A draft from disk, or null when it is of another form or damaged. */
export function asDraft(found: unknown): Draft | null {
  if (typeof found !== 'object' || found === null) return null;
  const draft = found as Partial<Draft>;
  const whole =
    draft.form === 1 &&
    typeof draft.visit === 'string' &&
    Array.isArray(draft.read) &&
    Array.isArray(draft.outbox) &&
    Array.isArray(draft.places) &&
    Array.isArray(draft.past) &&
    typeof draft.closing === 'object';
  if (!whole) return null;
  const { foretold = null, told = null, moves = [], gaps = [], joined = [], acts = [] } = draft;
  return {
    ...(draft as Draft),
    moves,
    gaps,
    joined,
    acts,
    foretold,
    told: told === null ? null : { ...told, far: (told as Partial<ToldBar>).far ?? null },
  };
}
