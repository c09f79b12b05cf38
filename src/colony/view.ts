/**
 * One colony as it is believed to be on one day: what the advice, the words and the sheets read.
 * Every number carries how it is known, in two parts where it is a sum: seen at the last visit, and
 * carried forward for what was not opened. Made by `view-of.ts`; plain data, safe to store and send.
 */
import type { Attachment } from '../hive/attachments.ts';
import type { Content, Ink, Shares } from '../hive/contents.ts';
import type { JoinedHow } from '../hive/joined.ts';
import type { Spot } from '../hive/state.ts';
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';
import type { Window } from '../numbers/window.ts';
import type { Foreseen } from './foreseen.ts';
import type { CellCounts, LookedFor, Stage } from './reading.ts';
import type { ColonyEnd, ColonyEvent, Origin } from './state.ts';
import type { VisitKind, WinterList } from './visit.ts';

/** One place of the colony's bay as it should look on the view's day, or as it was seen on a visit's day. */
export interface BarView {
  readonly place: number;
  readonly comb: Id | null;
  readonly mark: string | null;
  readonly widthMm: number;
  /** bare: a bar without comb; comb: contents below; unknown: a comb of which nothing is known. */
  readonly kind: 'bare' | 'comb' | 'unknown';
  /** Share of the full outline built, 0…1; of two combs side by side both, up to 2. */
  readonly built: number;
  /** Shares of the built comb; null when nothing is known. */
  readonly shares: Shares | null;
  readonly ink: Ink;
  /** Share of the faces covered by bees; null when not known. */
  readonly bees: number | null;
  /** Queen cells seen on it at the last reading, null when not looked. */
  readonly cells: CellCounts | null;
  readonly queenSeen: boolean;
  /** How it hung at walls and floor when somebody looked last; absent: nobody did. */
  readonly attached?: Attachment;
  /** Day of the reading that this rests on; null when never read. */
  readonly readOn: Day | null;
  readonly spot: Spot | null;
}

/** A strip of the film: the nest as read at one visit. */
export interface FilmFrame {
  readonly visit: Id;
  readonly day: Day;
  readonly kind: VisitKind | 'not closed';
  readonly by: Id;
  readonly bars: readonly BarView[];
  /** Last place of the bay on that day. */
  readonly follower: number;
  readonly event: ColonyEvent | null;
}

/** A sum over the combs: what was seen, what is carried forward for combs not opened, and both. */
export interface Total {
  readonly seen: Range;
  readonly carried: Range;
  readonly total: Range;
  /** The weakest ink in it. */
  readonly ink: Ink;
}

export type TotalName = Content | 'adults' | 'honeyKg' | 'breadKg' | 'workerCells' | 'emptyInBrood';

export interface QueenReading {
  /** The best guess by the plain rules of this issue; the engine gives chances later. */
  readonly state:
    | 'laying'
    | 'cells open'
    | 'cells sealed'
    | 'virgin'
    | 'new queen laying'
    | 'failing'
    | 'drone layer'
    | 'none'
    | 'laying workers'
    | 'unknown';
  readonly eggs: LookedFor;
  readonly youngest: Stage | null;
  /** When laying last happened, from all stages read, intersected; null when nothing tells. */
  readonly lastLaid: Window | null;
  /** True when the stages contradict each other. */
  readonly contradictory: boolean;
  /** A virgin may be in the hive, flying or newly mated: opening does harm. */
  readonly virginDays: Window | null;
  /** First eggs of a new queen are due. */
  readonly firstEggs: Window | null;
  /** The next day on which a look would tell. */
  readonly nextTelling: Day | null;
  /** The reading entries it rests on. */
  readonly from: readonly Id[];
}

export interface CellsReading {
  readonly counts: CellCounts;
  /** swarm, supersedure or emergency, by number, ages and setting; null when it cannot be said. */
  readonly likelyKind: 'swarm' | 'supersedure' | 'emergency' | null;
  /** When the first of them was or will be sealed; when a swarm would leave. */
  readonly sealed: Window | null;
  readonly leaves: Window | null;
  readonly virginEmerges: Window | null;
  readonly places: readonly number[];
  readonly from: readonly Id[];
}

/** How complete the search of the last visit was, and what it could have missed. */
export interface Search {
  readonly barsInBay: number;
  readonly barsOpened: number;
  readonly brushed: boolean | null;
  /** Share of the brood combs' faces looked at, 0…1. */
  readonly shareLooked: number;
  /** Chance that none of n cells would have been seen, for n = 1, 3, 10. */
  readonly missAll: readonly { readonly cells: number; readonly chance: number }[];
}

export interface RoomReading {
  /** Empty worker cells inside the brood nest on the day. */
  readonly empty: Range;
  readonly emergingPerDay: Range;
  readonly laidPerDay: Range;
  readonly nectarPerDay: Range;
  /** When the queen runs out of cells; null when it is not in sight. */
  readonly fullOn: Window | null;
  /** Built comb and bare bars left outside the nest, in bars. */
  readonly bareBars: number;
}

export interface VisitSummary {
  readonly id: Id;
  readonly day: Day;
  readonly kind: VisitKind | 'not closed';
  readonly by: Id;
  readonly barsOpened: number;
  readonly temper: string | null;
  readonly temperNotes: readonly string[];
  readonly straight: string | null;
  /** The list of closing for winter; absent at other visits. */
  readonly winter?: WinterList;
  readonly signs: readonly { readonly code: string; readonly entry: Id }[];
  readonly cellsCut: boolean;
  readonly entry: Id;
}

export interface ColonyView {
  readonly colony: Id;
  readonly name: string;
  readonly day: Day;
  readonly origin: Origin;
  readonly parent: Id | null;
  readonly began: Window;
  readonly ended: { readonly day: Day; readonly how: ColonyEnd } | null;
  readonly hive: Id;
  readonly hiveName: string;
  readonly hiveBars: number;
  /** Places of its bay, both included. */
  readonly bay: { readonly from: number; readonly to: number };
  /** Places of it from which the bar was taken and none put. */
  readonly gaps: readonly number[];
  readonly entrance: 'first' | 'last' | 'side';
  /** The nest as it should look today, by place. */
  readonly bars: readonly BarView[];
  /** Combs that have grown together, by the entry that said so; absent: none are known. */
  readonly joined?: readonly { readonly id: Id; readonly how: JoinedHow; readonly places: readonly number[] }[];
  /** The comb on the follower board, as a bar beyond the last; absent: none is known. */
  readonly board?: BarView;
  readonly film: readonly FilmFrame[];
  readonly totals: Readonly<Record<TotalName, Total>>;
  readonly layingPerDay: Range | null;
  readonly room: RoomReading | null;
  readonly queen: QueenReading;
  readonly cells: CellsReading | null;
  readonly search: Search | null;
  /** Sealed brood: share of cells in the patch that hold brood, where counted. */
  readonly solid: {
    readonly percent: number;
    readonly lo95: number;
    readonly hi95: number;
    readonly from: readonly Id[];
  } | null;
  readonly visits: readonly VisitSummary[];
  readonly events: readonly { readonly day: Day; readonly entry: Id; readonly event: ColonyEvent }[];
  readonly queenMark: string | null;
  readonly queenSince: Window | null;
  /** What the model tells of the view's day; null where it has not been worked out. */
  readonly foreseen: Foreseen | null;
}
