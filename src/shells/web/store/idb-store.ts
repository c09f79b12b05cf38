/**
 * What a browser keeps of one book: the journal, drafts of visits under way, snapshots that may be
 * thrown away, and settings. A promise that was kept is on disk, as far as the browser tells the truth.
 */
import type { Shelf, YardStore } from '../model/yard-store.ts';
import { type BrowserJournal, idbJournal } from './idb-journal.ts';
import { openDatabase, type ShelfName, type YardDatabase } from './idb-schema.ts';
import type { Server } from './remote.ts';

export interface BrowserStore extends YardStore {
  readonly journal: BrowserJournal;
  readonly settings: Shelf;
}

export interface OpenOptions {
  /** Absent for a book that is never sent anywhere, as the demo. */
  readonly server?: Pick<Server, 'pair'>;
}

export async function openBrowserStore(name: string, options: OpenOptions = {}): Promise<BrowserStore> {
  const db = await openDatabase(name);
  const journal = idbJournal(db, await epochOf(db));
  return {
    journal,
    drafts: shelf(db, 'drafts'),
    snapshots: shelf(db, 'snapshots'),
    settings: shelf(db, 'settings'),
    forgets: false,
    unsent: async () => (options.server === undefined ? null : journal.waitingCount()),
    pair: async (code) => (await options.server?.pair(code))?.ok === true,
  };
}

/** Asks the browser not to clear the journal when room is short; false when it will not promise. */
export async function askToStay(storage: Partial<StorageManager> | undefined): Promise<boolean> {
  if (storage?.persist === undefined) return false;
  return storage.persist().catch(() => false);
}

async function epochOf(db: YardDatabase): Promise<string> {
  const work = db.transaction('facts', 'readwrite', { durability: 'strict' });
  const known = (await work.store.get('epoch')) as string | undefined;
  // getRandomValues and not randomUUID: the latter is missing on plain http.
  const epoch =
    known ?? [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  if (known === undefined) await work.store.put(epoch, 'epoch');
  await work.done;
  return epoch;
}

function shelf(db: YardDatabase, name: ShelfName): Shelf {
  return {
    get: (key) => db.get(name, key),
    put: async (key, value) => {
      const work = db.transaction(name, 'readwrite', { durability: 'strict' });
      await Promise.all([work.store.put(value, key), work.done]);
    },
    remove: async (key) => {
      const work = db.transaction(name, 'readwrite', { durability: 'strict' });
      await Promise.all([work.store.delete(key), work.done]);
    },
  };
}
