/** What the screens are shown of a yard, and what its model asks of the world around it: shapes only. */
import type { Picture } from '../../../apiary.ts';
import type { Foreseen, ForeseenColony, KeptColony } from '../../../apiary/foresee.ts';
import type { Entry, Id } from '../../../journal/entry.ts';
import type { Day } from '../../../numbers/day.ts';
import type { Issue } from '../../../numbers/result.ts';
import type { Book } from './preferences.ts';
import type { Aside, Issued, RoundDay, Shown } from './shown.ts';
import type { YardStore } from './yard-store.ts';

export interface YardState {
  readonly book: Book | null;
  /** reading: the journal is being read from disk; ready: all entries are here. */
  readonly phase: 'closed' | 'reading' | 'ready';
  readonly entries: readonly Entry[];
  readonly today: Day;
  /** What was last believed; null until the first one is made. It may be of an earlier day than today. */
  readonly picture: Picture | null;
  readonly aside: Aside;
  readonly roundDay: RoundDay;
  readonly computing: boolean;
  /** The yard that new entries belong to. */
  readonly yard: Id;
  /** The observer who writes on this device. */
  readonly observer: Id;
  /** The server wants a pairing code of this device. */
  readonly pairing: boolean;
  /** Entries not yet on the server; null when there is no server to send to. */
  readonly unsent: number | null;
  readonly trouble: readonly Issue[];
  /** What the server will not take; it stays here. */
  readonly refused: readonly Issue[];
  /** True when this browser gave no database: all is lost when the page is closed. */
  readonly forgets: boolean;
}

/** What the exchange with the server says of itself. */
export interface ServerNews {
  readonly pending: number;
  readonly error: Issue | null;
  readonly refused: readonly Issue[];
  /** Entries that came since the book was opened. */
  readonly pulled: number;
}

export interface OpenedStore {
  readonly store: YardStore;
  readonly trouble: readonly Issue[];
}

export interface Around {
  /** Never rejects: where there is no database, a store that forgets, with the reason. */
  readonly openStore: (book: Book, onServer: (news: ServerNews) => void) => Promise<OpenedStore>;
  /** `told`: what the model told of colonies on that day. */
  readonly computePicture: (entries: readonly Entry[], day: Day, told: readonly Foreseen[]) => Promise<Shown>;
  /** What the model foresees of a colony, from what was kept of it; null when nothing can be told. Rejects when the engine stops. */
  readonly foresee: (entries: readonly Entry[], day: Day, colony: Id, kept: KeptColony | null) => Promise<ForeseenColony | null>;
  /** Entries that a picture will be asked of, while more are still being read. */
  readonly prepare: (entries: readonly Entry[]) => void;
  /** Advice and forecast of a colony as they stand in the last picture, as bodies of entries. */
  readonly issuedFor: (colony: Id, day: Day, foreseen: Foreseen | null) => Promise<Issued>;
  /** The demo's journal, fetched when the demo is opened for the first time. */
  readonly demoEntries: () => Promise<readonly Entry[]>;
  readonly now: () => Date;
  /** Resolves when what was just shown is on the screen. */
  readonly painted: () => Promise<void>;
  readonly observerOf: (book: Book) => Id | null;
  readonly keepObserver: (book: Book, observer: Id) => void;
  /** Yard id for a book without a yard entry; kept, so that a second start has the same. */
  readonly yardOf: (book: Book) => Id;
}

export const noRoundDay: RoundDay = { hours: null, plans: [] };
export const noAside: Aside = {
  observers: [],
  contacts: [],
  hives: [],
  troughs: {},
  measurements: [],
  overrides: [],
  names: {},
  queens: {},
  filmLengths: {},
  struck: [],
  amended: {},
  conflicts: [],
  notUnderstood: [],
};
