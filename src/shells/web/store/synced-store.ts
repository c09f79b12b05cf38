/**
 * A book that is kept here and on the server: the browser's store with the loop that brings both
 * together. Appending and pairing wake the loop; everything works the same when no server answers.
 */
import type { KindMap } from '../../../journal/read-entry.ts';
import { type BrowserStore, openBrowserStore } from './idb-store.ts';
import { httpServer, type Server } from './remote.ts';
import { browserAround, startSync, type SyncAround, type SyncLoop, type SyncStatus } from './sync-loop.ts';

export interface SyncedStore extends BrowserStore {
  readonly sync: SyncLoop;
}

export interface SyncedOptions<D> {
  readonly kinds: KindMap<D>;
  readonly onStatus: (status: SyncStatus) => void;
  /** Absent: the server that the app came from. */
  readonly server?: Server;
  /** Absent: this window's. */
  readonly around?: SyncAround;
}

export async function openSyncedStore<D>(name: string, options: SyncedOptions<D>): Promise<SyncedStore> {
  const server = options.server ?? httpServer({ kinds: options.kinds });
  const store = await openBrowserStore(name, { server });
  const sync = startSync(store.journal, server, options.around ?? browserAround(window), options.onStatus);
  return {
    ...store,
    sync,
    journal: {
      ...store.journal,
      append: async (entries) => {
        const appended = await store.journal.append(entries);
        if (appended.ok && appended.value.added.length > 0) sync.nudge();
        return appended;
      },
      close: () => {
        sync.stop();
        return store.journal.close();
      },
    },
    pair: async (code) => {
      const paired = await store.pair(code);
      if (paired) sync.nudge();
      return paired;
    },
  };
}
