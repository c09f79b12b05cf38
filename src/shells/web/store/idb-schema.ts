/** The stores of the browser's database: the journal with its outbox, and three shelves beside it. */
import type { DBSchema, IDBPDatabase, IDBPTransaction } from 'idb';
import { openDB } from 'idb';
import type { Id } from '../../../journal/entry.ts';

export interface Row {
  readonly id: Id;
  readonly seq: number;
  /** Canonical JSON: smaller and quicker to read than a cloned record, and the same text everywhere. */
  readonly text: string;
}

export interface YardTables extends DBSchema {
  entries: { key: Id; value: Row; indexes: { seq: number } };
  /** Ids of entries that the server has not confirmed. */
  outbox: { key: Id; value: Id };
  facts: { key: string; value: unknown };
  drafts: { key: string; value: unknown };
  snapshots: { key: string; value: unknown };
  settings: { key: string; value: unknown };
}

export type YardDatabase = IDBPDatabase<YardTables>;
export type ShelfName = 'drafts' | 'snapshots' | 'settings';
type JournalPart = 'entries' | 'outbox' | 'facts';
export type JournalWork = IDBPTransaction<YardTables, JournalPart[], 'readwrite'>;

const schemaVersion = 1;

/** Each book is a database of its own. Rejects when the browser has no database, or one of a newer program. */
export function openDatabase(name: string): Promise<YardDatabase> {
  return openDB<YardTables>(`festoon-${name}`, schemaVersion, {
    upgrade: (db, from) => {
      if (from < 1) {
        db.createObjectStore('entries', { keyPath: 'id' }).createIndex('seq', 'seq', { unique: true });
        for (const store of ['outbox', 'facts', 'drafts', 'snapshots', 'settings'] as const) db.createObjectStore(store);
      }
    },
    // Another tab has a newer program and waits for us to let go.
    blocking: (_current, _wanted, event) => (event.target as IDBDatabase).close(),
  });
}

/** One step over the journal that is on disk when its promise is kept. */
export function journalWork(db: YardDatabase): JournalWork {
  return db.transaction(['entries', 'outbox', 'facts'], 'readwrite', { durability: 'strict' });
}
