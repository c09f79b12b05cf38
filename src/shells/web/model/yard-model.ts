/**
 * The state behind the screens: which book is open, its entries, its day, and the last Picture.
 * It opens the store, shows the kept Picture at once, then reads the journal and has a new one made.
 * It knows nothing of React; `use-yard.tsx` joins the two.
 */
import type { Picture } from '../../../apiary.ts';
import type { Entry, Id } from '../../../journal/entry.ts';
import type { Day } from '../../../numbers/day.ts';
import { good, type Issue, type Result } from '../../../numbers/result.ts';
import { localTime } from './clock.ts';
import { entryOf, newId, type Note } from './notes.ts';
import type { Book } from './preferences.ts';
import type { Aside, Shown } from './shown.ts';
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
  /** Reads what arrived in the store by another way (a pull, another tab). */
  readonly refresh: () => Promise<void>;
}

export interface Around {
  readonly openStore: (book: Book) => Promise<YardStore>;
  readonly computePicture: (entries: readonly Entry[], day: Day) => Promise<Shown>;
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
export const noAside: Aside = {
  observers: [], contacts: [], hives: [], troughs: {}, measurements: [], overrides: [], names: {}, queens: {}, struck: [], conflicts: [],
  notUnderstood: [], minutes: { open: 0, glance: 0, 'no visit': 0 },
};
const pageSize = 2000;
const settleMs = 60;

export function createYardModel(around: Around): YardModel {
  const listeners = new Set<() => void>();
  let store: YardStore | null = null;
  let cursor = 0;
  let holds = 0;
  let asked = 0;
  let timer: ReturnType<typeof setTimeout> | null = null;
  let state: YardState = {
    book: null, phase: 'closed', entries: [], today: localTime(around.now(), null).day, picture: null,
    aside: noAside, computing: false, yard: newId(), observer: newId(), unsent: null, trouble: [], forgets: false,
    pairing: false,
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
      void store.snapshots.put('shown', shown).catch(() => undefined);
    } catch (error) {
      if (ticket !== asked) return;
      change({ computing: false, trouble: [{ code: 'engine-stopped', path: 'picture', found: String(error), expected: 'a picture' }] });
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

  async function openBook(book: Book): Promise<void> {
    store = await around.openStore(book);
    cursor = 0;
    asked += 1;
    const kept = (await store.snapshots.get('shown')) as Shown | undefined;
    const today = book === 'demo' ? await demoDay(store) : localTime(around.now(), kept?.picture.yard?.timeZone ?? null).day;
    change({
      book, phase: 'reading', entries: [], picture: kept?.picture ?? null, aside: kept?.aside ?? noAside, today, trouble: [],
      computing: true, forgets: store.forgets, yard: kept?.picture.yard?.id ?? around.yardOf(book), observer: around.observerOf(book) ?? newObserver(book),
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

  function newObserver(book: Book): Id {
    const observer = newId();
    around.keepObserver(book, observer);
    return observer;
  }

  async function append(notes: readonly Note[]): Promise<Result<readonly Entry[]>> {
    const writer = { yard: state.yard, by: state.observer, today: state.today, timeZone: zoneOf(state.entries) };
    const now = around.now();
    const entries = notes.map((note) => entryOf(note, writer, now));
    const taken = await take(entries);
    return taken.ok ? good(entries) : taken;
  }

  async function take(entries: readonly Entry[]): Promise<Result<{ readonly added: number; readonly known: number }>> {
    if (store === null) return { ok: false, issues: [{ code: 'store-closed', path: '', found: 'no open journal', expected: 'an open journal' }] };
    const into = store;
    const stored = await into.journal.append(entries);
    if (!stored.ok) return stored;
    const added = new Set(stored.value.added);
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
    setObserver: (observer) => {
      if (state.book !== null) around.keepObserver(state.book, observer);
      change({ observer });
    },
    refresh: async () => {
      const before = state.entries.length;
      await readNew();
      if (state.entries.length !== before) schedule();
    },
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
