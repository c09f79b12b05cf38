/** The world that the yard's model stands in: this browser's store, its clock, its worker, what this device prefers. */
import type { Entry } from '../../../journal/entry.ts';
import demoAddress from '../../../../examples/ferry-road.jsonl?url';
import { openBrowserStore } from '../store/idb-store.ts';
import { computePicture, foresee, issuedFor, prepare } from './engine.ts';
import { painted } from './painted.ts';
import { memoryYardStore } from './memory-yard-store.ts';
import { newId } from './notes.ts';
import { type Book, keepPreferences, readPreferences } from './preferences.ts';
import type { Around, OpenedStore, ServerNews } from './yard-state.ts';

export const around: Around = {
  openStore,
  computePicture,
  prepare,
  painted,
  foresee,
  issuedFor: (colony, day, foreseen) => {
    const { units, hours } = readPreferences();
    return issuedFor(colony, day, { language: 'en', units, hours, today: day }, foreseen);
  },
  demoEntries,
  now: () => new Date(),
  observerOf: (book) => readPreferences().observers[book] ?? null,
  keepObserver: (book, observer) => {
    const preferences = readPreferences();
    keepPreferences({ ...preferences, observers: { ...preferences.observers, [book]: observer } });
  },
  yardOf: (book) => {
    const preferences = readPreferences();
    if (book === 'own' && preferences.yard !== null) return preferences.yard;
    const yard = newId();
    if (book === 'own') keepPreferences({ ...preferences, yard });
    return yard;
  },
};

/** The demo is never sent anywhere; the keeper's own book is kept together with the server that the app came from. */
async function openStore(book: Book, onServer: (news: ServerNews) => void): Promise<OpenedStore> {
  try {
    if (book === 'demo') return { store: await openBrowserStore(book), trouble: [] };
    const { openOwnStore } = await import('./own-store.ts');
    return { store: await openOwnStore(book, onServer), trouble: [] };
  } catch (error) {
    const found = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    return {
      store: memoryYardStore(),
      trouble: [{ code: 'no-database', path: 'store', found, expected: 'a database of this browser' }],
    };
  }
}

/** The demo's journal is an asset of its own, fetched only when the demo is asked for. */
async function demoEntries(): Promise<readonly Entry[]> {
  const answer = await fetch(demoAddress);
  const text = await answer.text();
  return text
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => JSON.parse(line) as Entry);
}
