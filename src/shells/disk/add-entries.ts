/** Adds checked entries to a data folder and lets go of it again: for commands that write once. */
import type { Entry } from '../../journal/entry.ts';
import type { Appended } from '../../journal/store.ts';
import type { Result } from '../../numbers/result.ts';
import { openSqliteStore } from './sqlite-store.ts';

/** All of the entries, or none and the reasons. */
export async function addEntries(folder: string, entries: readonly Entry[]): Promise<Result<Appended>> {
  const store = await openSqliteStore(folder);
  if (!store.ok) return store;
  try {
    return await store.value.append(entries);
  } finally {
    await store.value.close();
  }
}
