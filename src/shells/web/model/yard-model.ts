/**
 * The state behind the screens: which book is open, its entries, its day, and the last Picture.
 * It opens the store, shows the kept Picture at once, then reads the journal and has a new one made.
 * It knows nothing of React; `use-yard.tsx` joins the two.
 */
import type { Picture } from '../../../apiary.ts';
import { dayOf, type Entry, type Id } from '../../../journal/entry.ts';
import type { Day } from '../../../numbers/day.ts';
import { good, type Issue, type Result } from '../../../numbers/result.ts';
import { localTime } from './clock.ts';
import { entryOf, newId, type Note } from './notes.ts';
import type { Book } from './preferences.ts';
import type { Aside, Issued, RoundDay, Shown } from './shown.ts';
import type { Shelf, YardStore } from './yard-store.ts';

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

export interface YardModel {
  readonly state: () => YardState;
  readonly subscribe: (listener: () => void) => () => void;
  readonly openBook: (book: Book) => Promise<void>;
  readonly append: (notes: readonly Note[]) => Promise<Result<readonly Entry[]>>;
  /** Entries that are whole already: from a file or from the server. */
  readonly take: (entries: readonly Entry[]) => Promise<Result<{ readonly added: number; readonly known: number }>>;
  readonly drafts: Shelf;
  readonly turnTo: (day: Day) => void;
  readonly holdPicture: () => () => void;
  /** True when the server took the code. */
  readonly pair: (code: string) => Promise<boolean>;
  readonly setObserver: (observer: Id) => void;
  /** Reads what arrived in the store by another way (a pull, another tab); called when the page is looked at again. */
  readonly refresh: () => Promise<void>;
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
  readonly computePicture: (entries: readonly Entry[], day: Day) => Promise<Shown>;
  /** Advice and forecast of a colony as they stand in the last picture, as bodies of entries. */
  readonly issuedFor: (colony: Id, day: Day) => Promise<Issued>;
  /** The demo's journal, fetched when the demo is opened for the first time. */
  readonly demoEntries: () => Promise<readonly Entry[]>;
  readonly now: () => Date;
  readonly observerOf: (book: Book) => Id | null;
  readonly keepObserver: (book: Book, observer: Id) => void;
  /** Yard id for a book without a yard entry; kept, so that a second start has the same. */
  readonly yardOf: (book: Book) => Id;
}

/** The demo yard carries its own today; the same as the front door's `demoDay`, which would bring the engine with it. */
export const demoToday: Day = '2014-05-16';
const noRoundDay: RoundDay = { hours: null, plans: [] };
export const noAside: Aside = {
  observers: [], contacts: [], hives: [], troughs: {}, measurements: [], overrides: [], names: {}, queens: {}, struck: [], conflicts: [],
  notUnderstood: [],
};
const pageSize = 2000;
const settleMs = 60;

export function createYardModel(around: Around): YardModel {
  const listeners = new Set<() => void>();
  let store: YardStore | null = null;
  let cursor = 0;
  let holds = 0;
  let asked = 0;
  let pulled = 0;
  const justVisited = new Set<Id>();
  let timer: ReturnType<typeof setTimeout> | null = null;
  let state: YardState = {
    book: null, phase: 'closed', entries: [], today: localTime(around.now(), null).day, picture: null,
    aside: noAside, roundDay: noRoundDay, computing: false, yard: newId(), observer: newId(), unsent: null, trouble: [], refused: [],
    forgets: false, pairing: false,
  };

  function change(part: Partial<YardState>): void {
    state = { ...state, ...part };
    for (const listener of listeners) listener();
  }

  async function compute(): Promise<void> {
    if (state.phase !== 'ready' || store === null || state.book === null) return;
    const ticket = ++asked;
    const { book } = state;
    change({ computing: true });
    try {
      const shown = await around.computePicture(state.entries, state.today);
      if (ticket !== asked || state.book !== book) return;
      change({ ...shown, computing: false });
      adoptKeeper(shown.aside);
      await keepIssued();
      void store.snapshots.put('shown', shown).catch(() => undefined);
    } catch (error) {
      if (ticket !== asked) return;
      change({ computing: false, trouble: [{ code: 'engine-stopped', path: 'picture', found: String(error), expected: 'a picture' }] });
    }
  }

  /** What was advised and forecast at the end of a visit is kept as it was issued, so that it can be scored. */
  async function keepIssued(): Promise<void> {
    const colonies = [...justVisited];
    justVisited.clear();
    for (const colony of colonies) {
      const { advice, forecast } = await around.issuedFor(colony, state.today);
      const kept = await append([{ kind: 'advice-issued', body: advice }, { kind: 'forecast-issued', body: forecast }]);
      if (!kept.ok) change({ trouble: kept.issues });
    }
  }

  function schedule(): void {
    if (holds > 0) return;
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => {
      timer = null;
      void compute();
    }, settleMs);
  }

  async function readNew(): Promise<void> {
    if (store === null) return;
    const from = store;
    const known = new Set(state.entries.map((entry) => entry.id));
    const found: Entry[] = [];
    for (;;) {
      const page = await from.journal.read(cursor, pageSize);
      if (store !== from) return;
      for (const row of page.rows) if (!known.has(row.entry.id)) found.push(row.entry);
      cursor = page.cursor;
      if (!page.more) break;
    }
    if (found.length > 0) change({ entries: [...state.entries, ...found] });
    change({ unsent: await from.unsent() });
  }

  function heard(book: Book, news: ServerNews): void {
    if (state.book !== book) return;
    const came = news.pulled > pulled;
    pulled = news.pulled;
    change({ unsent: news.pending, refused: news.refused, pairing: news.error?.code === 'not-paired' });
    if (came) void refresh();
  }

  /** Reads what arrived in the store by another way, and turns the day when it has turned outside. */
  async function refresh(): Promise<void> {
    if (state.phase !== 'ready') return;
    const before = state.entries.length;
    await readNew();
    const today = state.book === 'own' ? localTime(around.now(), zoneOf(state.entries)).day : state.today;
    const turned = today !== state.today;
    if (turned) change({ today });
    if (turned || state.entries.length !== before) schedule();
  }

  async function openBook(book: Book): Promise<void> {
    await store?.journal.close();
    const opened = await around.openStore(book, (news) => heard(book, news));
    store = opened.store;
    cursor = 0;
    pulled = 0;
    justVisited.clear();
    asked += 1;
    const kept = (await store.snapshots.get('shown')) as Shown | undefined;
    const today = book === 'demo' ? await demoDay(store) : localTime(around.now(), kept?.picture.yard?.timeZone ?? null).day;
    change({
      book, phase: 'reading', entries: [], picture: kept?.picture ?? null, aside: kept?.aside ?? noAside, roundDay: kept?.roundDay ?? noRoundDay, today,
      trouble: opened.trouble, refused: [], pairing: false,      computing: true, forgets: store.forgets, yard: kept?.picture.yard?.id ?? around.yardOf(book), observer: around.observerOf(book) ?? newId(),
    });
    await readNew();
    if (book === 'demo' && state.entries.length === 0) await fillDemo(store);
    const yard = state.entries.find((entry) => entry.kind === 'yard')?.yard ?? state.yard;
    const zone = zoneOf(state.entries);
    change({ phase: 'ready', yard, ...(book === 'own' ? { today: localTime(around.now(), zone).day } : {}) });
    await compute();
  }

  /** The screens need not wait for the disk: the demo is shown from what was fetched, and stored beside. */
  async function fillDemo(into: YardStore): Promise<void> {
    const entries = await around.demoEntries();
    change({ entries });
    void into.journal.append(entries).then((stored) => {
      if (!stored.ok) change({ trouble: stored.issues });
    });
  }

  /** A device that nobody has been named for is the keeper's, once the journal says who that is. */
  function adoptKeeper({ observers }: Aside): void {
    if (observers.length === 0 || observers.some((one) => one.id === state.observer)) return;
    const keeper = observers.find((one) => one.role === 'keeper') ?? observers[0];
    if (keeper !== undefined) setObserver(keeper.id);
  }

  function setObserver(observer: Id): void {
    if (state.book !== null) around.keepObserver(state.book, observer);
    change({ observer });
  }

  async function append(notes: readonly Note[]): Promise<Result<readonly Entry[]>> {
    const writer = { yard: state.yard, by: state.observer, today: state.today, timeZone: zoneOf(state.entries) };
    const now = around.now();
    const entries = notes.map((note) => entryOf(note, writer, now));
    const taken = await take(entries);
    return taken.ok ? good(entries) : taken;
  }

  function noteVisit(entry: Entry): void {
    const body = entry.body as { readonly colony?: unknown };
    if (entry.kind === 'visit' && dayOf(entry.at) === state.today && typeof body.colony === 'string') justVisited.add(body.colony);
  }

  async function take(entries: readonly Entry[]): Promise<Result<{ readonly added: number; readonly known: number }>> {
    if (store === null) return { ok: false, issues: [{ code: 'store-closed', path: '', found: 'no open journal', expected: 'an open journal' }] };
    const into = store;
    const stored = await into.journal.append(entries);
    if (!stored.ok) return stored;
    const added = new Set(stored.value.added);
    for (const entry of entries) if (added.has(entry.id) && entry.by === state.observer) noteVisit(entry);
    change({ entries: [...state.entries, ...entries.filter((entry) => added.has(entry.id))] });
    schedule();
    void into.unsent().then((unsent) => {
      if (store === into) change({ unsent });
    });
    return good({ added: added.size, known: stored.value.known.length });
  }

  return {
    state: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    openBook, append, take,
    drafts: {
      get: (key) => openShelf(store).get(key),
      put: (key, value) => openShelf(store).put(key, value),
      remove: (key) => openShelf(store).remove(key),
    },
    turnTo: (today) => {
      change({ today });
      if (state.book === 'demo') void store?.snapshots.put('today', today).catch(() => undefined);
      schedule();
    },
    holdPicture: () => {
      holds += 1;
      return () => {
        holds -= 1;
        schedule();
      };
    },
    pair: async (code) => {
      const taken = store === null ? false : await store.pair(code);
      if (taken) change({ pairing: false });
      return taken;
    },
    setObserver,
    refresh,
  };
}

function openShelf(store: YardStore | null): Shelf {
  if (store === null) throw new Error('no journal is open');
  return store.drafts;
}

async function demoDay(store: YardStore): Promise<Day> {
  const kept = await store.snapshots.get('today');
  return typeof kept === 'string' ? kept : demoToday;
}

function zoneOf(entries: readonly Entry[]): string | null {
  const body = entries.findLast((entry) => entry.kind === 'yard')?.body;
  const zone = typeof body === 'object' && body !== null ? (body as Record<string, unknown>)['timeZone'] : null;
  return typeof zone === 'string' ? zone : null;
}
