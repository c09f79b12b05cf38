/**
 * A local copy that lives as long as the program: a store with an outbox and a place on the server,
 * as the browser's database has them on disk.
 */
import { good } from '../numbers/result.ts';
import type { Entry, Id } from './entry.ts';
import { memoryStore } from './memory-store.ts';
import type { JournalStore } from './store.ts';
import { type LocalCopy, type Received, samePlace, type SyncPlace } from './sync-ports.ts';

/** Entries appended here wait for the server; entries received from it do not. */
export function memoryCopy(): JournalStore & LocalCopy {
  const store = memoryStore();
  const outbox = new Map<Id, Entry>();
  let place: SyncPlace | null = null;

  async function all(): Promise<readonly Entry[]> {
    return (await store.read(0, Number.MAX_SAFE_INTEGER)).rows.map((row) => row.entry);
  }

  return {
    ...store,
    append: async (entries) => {
      const appended = await store.append(entries);
      if (!appended.ok) return appended;
      const added = new Set(appended.value.added);
      for (const entry of entries) if (added.has(entry.id)) outbox.set(entry.id, entry);
      return good(appended.value);
    },
    place: () => Promise.resolve(place),
    restart: async (epoch, from) => {
      if (!samePlace(place, from)) return false;
      for (const entry of await all()) outbox.set(entry.id, entry);
      place = { epoch, cursor: 0, last: null };
      return true;
    },
    waiting: (after, limit) => {
      const ids = [...outbox.keys()]
        .sort()
        .filter((id) => after === null || id > after)
        .slice(0, limit);
      return Promise.resolve(ids.map((id) => outbox.get(id) as Entry));
    },
    waitingCount: () => Promise.resolve(outbox.size),
    settle: (ids) => {
      for (const id of ids) outbox.delete(id);
      return Promise.resolve();
    },
    receive: async (entries, now, from): Promise<Received | null> => {
      if (!samePlace(place, from)) return null;
      place = now;
      const added: Id[] = [];
      const issues: Received['issues'][number][] = [];
      for (const entry of entries) {
        const one = await store.append([entry]);
        if (one.ok) {
          added.push(...one.value.added);
          outbox.delete(entry.id);
        } else issues.push(...one.issues);
      }
      return { added, issues };
    },
  };
}
