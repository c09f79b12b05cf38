/** Entries of one yard's model: into the store, out of the store, and what the server says of them. */
import type { Entry } from '../../../journal/entry.ts';
import { bad, good, type Result } from '../../../numbers/result.ts';
import { localTime } from './clock.ts';
import { forget } from './foresight.ts';
import { entryOf, type Note } from './notes.ts';
import type { Book } from './preferences.ts';
import type { ServerNews } from './yard-state.ts';
import type { YardStore } from './yard-store.ts';
import { change, noteVisit, schedule, type Work } from './yard-work.ts';

export interface Counted {
  readonly added: number;
  readonly known: number;
}

const pageSize = 10_000;
/** Small enough that a tap between two batches is not felt to wait. */
const demoBatch = 100;

export async function append(work: Work, notes: readonly Note[]): Promise<Result<readonly Entry[]>> {
  const { yard, observer, today, entries: known } = work.state;
  const now = work.around.now();
  const writer = { yard, by: observer, today, timeZone: zoneOf(known) };
  const entries = notes.map((note) => entryOf(note, writer, now));
  const taken = await take(work, entries);
  return taken.ok ? good(entries) : taken;
}

export async function take(work: Work, entries: readonly Entry[]): Promise<Result<Counted>> {
  const { store } = work;
  if (store === null) {
    return bad({ code: 'store-closed', path: '', found: 'no open journal', expected: 'an open journal' });
  }
  const stored = await store.journal.append(entries);
  if (!stored.ok) return stored;
  const added = new Set(stored.value.added);
  const fresh = entries.filter((entry) => added.has(entry.id));
  for (const entry of fresh) noteVisit(work, entry);
  join(work, fresh);
  schedule(work);
  void store.unsent().then((unsent) => {
    if (work.store === store) change(work, { unsent });
  });
  return good({ added: added.size, known: stored.value.known.length });
}

/** What lies in the store beyond what was read before. */
export async function readNew(work: Work): Promise<void> {
  const { store } = work;
  if (store === null) return;
  const found: Entry[] = [];
  for (;;) {
    const page = await store.journal.read(work.cursor, pageSize);
    if (work.store !== store) return;
    for (const row of page.rows) found.push(row.entry);
    work.cursor = page.cursor;
    if (!page.more) break;
    // Only at the first reading nothing can have come in by another way meanwhile.
    if (work.state.entries.length === 0) work.around.prepare(found);
  }
  join(work, found);
  change(work, { unsent: await store.unsent() });
}

/** An entry can come twice, by hand and by reading: it is shown once. */
export function join(work: Work, found: readonly Entry[]): void {
  if (found.length === 0) return;
  const known = new Set(work.state.entries.map((entry) => entry.id));
  const fresh = found.filter((entry) => !known.has(entry.id));
  if (fresh.length === 0) return;
  for (const entry of fresh) forget(work, entry);
  change(work, { entries: [...work.state.entries, ...fresh] });
}

/** The screens need not wait for the disk: the demo is shown from what was fetched, and stored afterwards. */
export async function keepDemo(work: Work, into: YardStore, entries: readonly Entry[]): Promise<void> {
  for (let from = 0; from < entries.length; from += demoBatch) {
    const stored = await into.journal.append(entries.slice(from, from + demoBatch));
    if (stored.ok) continue;
    if (work.store === into) change(work, { trouble: stored.issues });
    return;
  }
  await into.snapshots.put(demoWhole, true);
}

const demoWhole = 'demo whole';

/** A page that was closed while the demo was being stored left a part of it; the rest is then fetched again. */
export async function demoIsWhole(store: YardStore): Promise<boolean> {
  return (await store.snapshots.get(demoWhole)) === true;
}

/** Reads what arrived in the store by another way, and turns the day when it has turned outside. */
export async function refresh(work: Work): Promise<void> {
  if (work.state.phase !== 'ready') return;
  const before = work.state.entries.length;
  await readNew(work);
  const { book, entries, today } = work.state;
  const now = book === 'own' ? localTime(work.around.now(), zoneOf(entries)).day : today;
  if (now !== today) change(work, { today: now });
  if (now !== today || entries.length !== before) schedule(work);
}

export function heard(work: Work, book: Book, news: ServerNews): void {
  if (work.state.book !== book) return;
  const came = news.pulled > work.pulled;
  work.pulled = news.pulled;
  change(work, { unsent: news.pending, refused: news.refused, pairing: news.error?.code === 'not-paired' });
  if (came) void refresh(work);
}

export function zoneOf(entries: readonly Entry[]): string | null {
  const body = entries.findLast((entry) => entry.kind === 'yard')?.body;
  const zone = typeof body === 'object' && body !== null ? (body as Record<string, unknown>)['timeZone'] : null;
  return typeof zone === 'string' ? zone : null;
}
