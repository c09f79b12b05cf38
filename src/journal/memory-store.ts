/** A journal store that lives as long as the program: for tests, and for a browser without a database. */
import { bad, good } from '../numbers/result.ts';
import type { Entry, Id } from './entry.ts';
import { sortOut } from './sort-out.ts';
import type { JournalStore } from './store.ts';

interface Row {
  readonly seq: number;
  readonly text: string;
}

export function memoryStore(epoch = 'memory', run = 'once'): JournalStore {
  const rows: Row[] = [];
  const byId = new Map<Id, string>();
  return {
    epoch,
    run,
    append: (entries) => {
      const sorted = sortOut(entries, (id) => byId.get(id));
      if (sorted.issues.length > 0) return Promise.resolve(bad(...sorted.issues));
      for (const [id, text] of sorted.fresh) {
        byId.set(id, text);
        rows.push({ seq: rows.length + 1, text });
      }
      return Promise.resolve(good({ added: [...sorted.fresh.keys()], known: sorted.known }));
    },
    read: (cursor, limit) => {
      const page = rows.slice(cursor, cursor + limit);
      return Promise.resolve({
        rows: page.map((row) => ({ seq: row.seq, run, entry: JSON.parse(row.text) as Entry })),
        cursor: page.at(-1)?.seq ?? cursor,
        more: cursor + page.length < rows.length,
      });
    },
    count: () => Promise.resolve(rows.length),
    close: () => Promise.resolve(),
  };
}
