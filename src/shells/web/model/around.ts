/** The world that the yard's model stands in: this browser's store, its clock, its worker, what this device prefers. */
import type { Entry } from '../../../journal/entry.ts';
import { computePicture } from './engine.ts';
import { memoryYardStore } from './memory-yard-store.ts';
import { newId } from './notes.ts';
import { keepPreferences, readPreferences } from './preferences.ts';
import type { Around } from './yard-model.ts';

export const around: Around = {
  openStore: () => Promise.resolve(memoryYardStore()),
  computePicture,
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

/** The demo's journal is an asset of its own, fetched only when the demo is asked for. */
async function demoEntries(): Promise<readonly Entry[]> {
  const { default: address } = await import('../../../../examples/ferry-road.jsonl?url');
  const answer = await fetch(address);
  const text = await answer.text();
  return text.split('\n').filter((line) => line.trim() !== '').map((line) => JSON.parse(line) as Entry);
}
