/** A store that forgets when the page is closed: for a browser without a database, and for tests. The frame says so. */
import type { Entry, Id } from '../../../journal/entry.ts';
import type { JournalStore, Stored } from '../../../journal/store.ts';
import { bad, good } from '../../../numbers/result.ts';
import type { Shelf, YardStore } from './yard-store.ts';

export function memoryYardStore(): YardStore {
  return { journal: memoryJournal(), drafts: memoryShelf(), snapshots: memoryShelf(), unsent: () => Promise.resolve(null) };
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

function memoryJournal(): JournalStore {
  const rows: Stored[] = [];
  const byId = new Map<Id, Entry>();
  return {
    epoch: 'memory',
    append: (entries) => {
      const clash = entries.find((entry) => {
        const known = byId.get(entry.id);
        return known !== undefined && JSON.stringify(known) !== JSON.stringify(entry);
      });
      if (clash !== undefined) {
        return Promise.resolve(bad({
          code: 'duplicate-id', path: 'id', found: 'another entry with this id', expected: 'the same content', entry: clash.id,
        }));
      }
      const fresh = entries.filter((entry) => !byId.has(entry.id));
      for (const entry of fresh) {
        byId.set(entry.id, entry);
        rows.push({ seq: rows.length + 1, entry });
      }
      const added = fresh.map((entry) => entry.id);
      return Promise.resolve(good({ added, known: entries.map((entry) => entry.id).filter((id) => !added.includes(id)) }));
    },
    read: (cursor, limit) => {
      const page = rows.slice(cursor, cursor + limit);
      return Promise.resolve({ rows: page, cursor: cursor + page.length, more: cursor + page.length < rows.length });
    },
    count: () => Promise.resolve(rows.length),
    close: () => Promise.resolve(),
  };
}
