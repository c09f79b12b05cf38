/**
 * The state behind the screens: which book is open, its entries, its day, and the last Picture.
 * It opens the store, shows the kept Picture at once, then reads the journal and has a new one made.
 * It knows nothing of React; `use-yard.tsx` joins the two.
 */
import type { Entry, Id } from '../../../journal/entry.ts';
import type { Day } from '../../../numbers/day.ts';
import type { Result } from '../../../numbers/result.ts';
import { localTime } from './clock.ts';
import { restoreTold } from './foresight.ts';
import { newId, type Note } from './notes.ts';
import type { Book } from './preferences.ts';
import type { Shown } from './shown.ts';
import { append, type Counted, demoIsWhole, heard, join, keepDemo, readNew, refresh, take, zoneOf } from './yard-entries.ts';
import { type Around, noAside, noRoundDay, type YardState } from './yard-state.ts';
import type { Shelf, YardStore } from './yard-store.ts';
import { compute } from './yard-picture.ts';
import { change, schedule, setObserver, type Work } from './yard-work.ts';

export interface YardModel {
  readonly state: () => YardState;
  readonly subscribe: (listener: () => void) => () => void;
  readonly openBook: (book: Book) => Promise<void>;
  readonly append: (notes: readonly Note[]) => Promise<Result<readonly Entry[]>>;
  /** Entries that are whole already: from a file or from the server. */
  readonly take: (entries: readonly Entry[]) => Promise<Result<Counted>>;
  readonly drafts: Shelf;
  readonly turnTo: (day: Day) => void;
  readonly holdPicture: () => () => void;
  /** True when the server took the code. */
  readonly pair: (code: string) => Promise<boolean>;
  readonly setObserver: (observer: Id) => void;
  /** Reads what arrived in the store by another way (a pull, another tab); called when the page is looked at again. */
  readonly refresh: () => Promise<void>;
}

/** The demo yard carries its own today; the same as the front door's `demoDay`, which would bring the engine with it. */
export const demoToday: Day = '2014-05-16';

export function createYardModel(around: Around): YardModel {
  const work: Work = {
    around,
    listeners: new Set(),
    picture: compute,
    state: closed(around),
    store: null,
    cursor: 0,
    holds: 0,
    asked: 0,
    pulled: 0,
    timer: null,
    justVisited: new Set(),
    told: new Map(),
  };
  return {
    state: () => work.state,
    subscribe: (listener) => {
      work.listeners.add(listener);
      return () => work.listeners.delete(listener);
    },
    openBook: (book) => openBook(work, book),
    append: (notes) => append(work, notes),
    take: (entries) => take(work, entries),
    drafts: {
      get: (key) => draftsOf(work).get(key),
      put: (key, value) => draftsOf(work).put(key, value),
      remove: (key) => draftsOf(work).remove(key),
    },
    turnTo: (today) => {
      change(work, { today });
      if (work.state.book === 'demo') void work.store?.snapshots.put('today', today).catch(() => undefined);
      schedule(work);
    },
    holdPicture: () => {
      work.holds += 1;
      return () => {
        work.holds -= 1;
        schedule(work);
      };
    },
    pair: async (code) => {
      const taken = work.store === null ? false : await work.store.pair(code);
      if (taken) change(work, { pairing: false });
      return taken;
    },
    setObserver: (observer) => setObserver(work, observer),
    refresh: () => refresh(work),
  };
}

async function openBook(work: Work, book: Book): Promise<void> {
  const { around } = work;
  await work.store?.journal.close();
  const { store, trouble } = await around.openStore(book, (news) => heard(work, book, news));
  work.store = store;
  work.cursor = 0;
  work.pulled = 0;
  work.asked += 1;
  work.justVisited.clear();
  work.told.clear();
  await showKept(work, book, store);
  change(work, { trouble });
  // What was kept is read by the keeper while the journal is read by us: the first frame comes first.
  if (work.state.picture !== null) await around.painted();
  await readNew(work);
  const unkept = book === 'demo' && !(await demoIsWhole(store)) ? await around.demoEntries() : [];
  if (work.store !== store) return;
  join(work, unkept);
  const { entries, today } = work.state;
  change(work, {
    phase: 'ready',
    yard: entries.find((entry) => entry.kind === 'yard')?.yard ?? work.state.yard,
    today: book === 'own' ? localTime(around.now(), zoneOf(entries)).day : today,
  });
  await restoreTold(work, store, work.state.picture);
  await compute(work);
  if (unkept.length > 0) void keepDemo(work, store, unkept);
}

/** The Picture of the last time stands on the screen while the journal is read. */
async function showKept(work: Work, book: Book, store: YardStore): Promise<void> {
  const { around } = work;
  const kept = (await store.snapshots.get('shown')) as Shown | undefined;
  const zone = kept?.picture.yard?.timeZone ?? null;
  change(work, {
    ...closed(around),
    book,
    phase: 'reading',
    picture: kept?.picture ?? null,
    aside: kept?.aside ?? noAside,
    roundDay: kept?.roundDay ?? noRoundDay,
    today: book === 'demo' ? await demoDay(store) : localTime(around.now(), zone).day,
    computing: true,
    forgets: store.forgets,
    yard: kept?.picture.yard?.id ?? around.yardOf(book),
    observer: around.observerOf(book) ?? newId(),
  });
}

function closed(around: Around): YardState {
  return {
    book: null,
    phase: 'closed',
    entries: [],
    today: localTime(around.now(), null).day,
    picture: null,
    aside: noAside,
    roundDay: noRoundDay,
    computing: false,
    yard: newId(),
    observer: newId(),
    unsent: null,
    trouble: [],
    refused: [],
    forgets: false,
    pairing: false,
  };
}

function draftsOf(work: Work): Shelf {
  if (work.store === null) throw new Error('no journal is open');
  return work.store.drafts;
}

async function demoDay(store: YardStore): Promise<Day> {
  const kept = await store.snapshots.get('today');
  return typeof kept === 'string' ? kept : demoToday;
}
