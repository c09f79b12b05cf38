/** A store that forgets when the page is closed: for a browser without a database, and for tests. The frame says so. */
import { memoryStore } from '../../../journal/memory-store.ts';
import type { Shelf, YardStore } from './yard-store.ts';

export function memoryYardStore(): YardStore {
  return {
    journal: memoryStore(),
    drafts: memoryShelf(),
    snapshots: memoryShelf(),
    forgets: true,
    unsent: () => Promise.resolve(null),
    pair: () => Promise.resolve(false),
  };
}

export function memoryShelf(): Shelf {
  const kept = new Map<string, unknown>();
  return {
    get: (key) => Promise.resolve(kept.get(key)),
    put: (key, value) => {
      kept.set(key, structuredClone(value));
      return Promise.resolve();
    },
    remove: (key) => {
      kept.delete(key);
      return Promise.resolve();
    },
  };
}
