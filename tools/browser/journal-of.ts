/** The journal as a browser has it on its disk, read past the program: every record of every database that looks like an entry. */
import type { Page } from 'playwright-core';
import type { Entry } from '../../src/journal/entry.ts';

export async function journalOf(page: Page): Promise<readonly Entry[]> {
  return (await page.evaluate(readAll)) as Entry[];
}

const patienceMs = 30_000;

/** The journal once it holds what is waited for: the screen answers before an entry is in it. After a while as it is. */
export async function journalOnce(page: Page, holds: (entries: readonly Entry[]) => boolean): Promise<readonly Entry[]> {
  const until = Date.now() + patienceMs;
  for (;;) {
    const entries = await journalOf(page);
    if (holds(entries) || Date.now() > until) return entries;
    await page.waitForTimeout(100);
  }
}

/** Runs in the page; as text, because a compiled function may lean on what the page does not have. */
const readAll = `(async () => {
  const settled = (request) => new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const found = new Map();
  for (const { name } of await indexedDB.databases()) {
    const database = await settled(indexedDB.open(name));
    for (const store of database.objectStoreNames) {
      for (const row of await settled(database.transaction(store).objectStore(store).getAll())) {
        const entry = row && typeof row.text === 'string' ? JSON.parse(row.text) : row;
        if (entry && typeof entry.id === 'string' && typeof entry.kind === 'string' && 'body' in entry) found.set(entry.id, entry);
      }
    }
    database.close();
  }
  return [...found.values()];
})()`;
