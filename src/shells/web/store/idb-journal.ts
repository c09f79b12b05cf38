/**
 * The journal in the browser: a store with an outbox and a place on the server. What is appended
 * here waits in the outbox in the same step; what is received from the server does not.
 */
import type { Entry, Id } from '../../../journal/entry.ts';
import { type SortedOut, sortOut } from '../../../journal/sort-out.ts';
import type { Appended, JournalStore } from '../../../journal/store.ts';
import { type LocalCopy, type Received, samePlace, type SyncPlace } from '../../../journal/sync-ports.ts';
import { bad, good, type Issue, type Result } from '../../../numbers/result.ts';
import { journalWork, type JournalWork, type YardDatabase } from './idb-schema.ts';

export interface BrowserJournal extends JournalStore, LocalCopy {
  /** All entries, in order of arrival. */
  all(): Promise<readonly Entry[]>;
}

export function idbJournal(db: YardDatabase, epoch: string): BrowserJournal {
  return {
    epoch,
    run: epoch,
    append: (entries) => append(db, entries),
    read: async (cursor, limit) => {
      const found = await db.getAllFromIndex('entries', 'seq', IDBKeyRange.lowerBound(cursor, true), limit + 1);
      const rows = found.slice(0, limit).map((row) => ({ seq: row.seq, run: epoch, entry: JSON.parse(row.text) as Entry }));
      return { rows, cursor: rows.at(-1)?.seq ?? cursor, more: found.length > limit };
    },
    all: async () => (await db.getAllFromIndex('entries', 'seq')).map((row) => JSON.parse(row.text) as Entry),
    count: () => db.count('entries'),
    close: () => Promise.resolve(db.close()),
    place: async () => ((await db.get('facts', 'place')) as SyncPlace | undefined) ?? null,
    restart: (serverEpoch, from) => restart(db, serverEpoch, from),
    waiting: (after, limit) => waiting(db, after, limit),
    waitingCount: () => db.count('outbox'),
    settle: async (ids) => {
      const work = journalWork(db);
      await finished(
        work,
        ids.map((id) => work.objectStore('outbox').delete(id)),
      );
    },
    receive: (entries, place, from) => receive(db, entries, place, from),
  };
}

async function append(db: YardDatabase, entries: readonly Entry[]): Promise<Result<Appended>> {
  const work = journalWork(db);
  try {
    const sorted = await sortIn(work, entries);
    if (sorted.issues.length > 0) {
      await finished(work, []);
      return bad(...sorted.issues);
    }
    const added = [...sorted.fresh.keys()];
    await finished(work, [...(await writes(work, sorted)), ...added.map((id) => work.objectStore('outbox').put(id, id))]);
    return good({ added, known: sorted.known });
  } catch (error) {
    return failed(error);
  }
}

/** Entries with an id that is here with other content are left out, the others are kept; on a full disk nothing is, and the place stays. */
async function receive(
  db: YardDatabase,
  entries: readonly Entry[],
  place: SyncPlace,
  from: SyncPlace | null,
): Promise<Received | null> {
  const work = journalWork(db);
  if (!(await isStillAt(work, from))) return null;
  const sorted = await sortIn(work, entries);
  const outbox = work.objectStore('outbox');
  const clashing = new Set(sorted.issues.map((issue) => issue.entry));
  const settled = entries.filter((entry) => !clashing.has(entry.id)).map((entry) => outbox.delete(entry.id));
  await finished(work, [...(await writes(work, sorted)), ...settled, work.objectStore('facts').put(place, 'place')]);
  return { added: [...sorted.fresh.keys()], issues: sorted.issues };
}

/** So many ids are looked up one by one; more are found by one query over their span. */
const fewIds = 50;

async function sortIn(work: JournalWork, entries: readonly Entry[]): Promise<SortedOut> {
  const store = work.objectStore('entries');
  const ids = [...new Set(entries.map((entry) => entry.id))].sort();
  const [first, last] = [ids[0], ids.at(-1)];
  if (first === undefined || last === undefined) return { fresh: new Map(), known: [], issues: [] };
  const wanted = ids.length <= fewIds ? ids : await present(work, ids, first, last);
  const rows = await Promise.all(wanted.map((id) => store.get(id)));
  const texts = new Map(rows.flatMap((row) => (row === undefined ? [] : [[row.id, row.text] as const])));
  return sortOut(entries, (id) => texts.get(id));
}

async function present(work: JournalWork, ids: readonly Id[], first: Id, last: Id): Promise<readonly Id[]> {
  const here = new Set(await work.objectStore('entries').getAllKeys(IDBKeyRange.bound(first, last)));
  return ids.filter((id) => here.has(id));
}

async function writes(work: JournalWork, sorted: SortedOut): Promise<readonly Promise<unknown>[]> {
  const newest = await work.objectStore('entries').index('seq').openKeyCursor(null, 'prev');
  let seq = newest?.key ?? 0;
  return [...sorted.fresh].map(([id, text]) => work.objectStore('entries').add({ id, seq: (seq += 1), text }));
}

/** Another window of this device may have gone on meanwhile. */
async function isStillAt(work: JournalWork, from: SyncPlace | null): Promise<boolean> {
  const place = ((await work.objectStore('facts').get('place')) as SyncPlace | undefined) ?? null;
  if (samePlace(place, from)) return true;
  await finished(work, []);
  return false;
}

async function restart(db: YardDatabase, epoch: string, from: SyncPlace | null): Promise<boolean> {
  const work = journalWork(db);
  if (!(await isStillAt(work, from))) return false;
  const [entries, outbox] = [work.objectStore('entries'), work.objectStore('outbox')];
  const ids = await entries.getAllKeys();
  const unwaiting = (await outbox.count()) === ids.length ? [] : ids;
  const place: SyncPlace = { epoch, cursor: 0, last: null };
  await finished(work, [...unwaiting.map((id) => outbox.put(id, id)), work.objectStore('facts').put(place, 'place')]);
  return true;
}

async function waiting(db: YardDatabase, after: Id | null, limit: number): Promise<readonly Entry[]> {
  const work = db.transaction(['entries', 'outbox'], 'readonly');
  const ids = await work.objectStore('outbox').getAllKeys(after === null ? null : IDBKeyRange.lowerBound(after, true), limit);
  const rows = await Promise.all(ids.map((id) => work.objectStore('entries').get(id)));
  return rows.flatMap((row) => (row === undefined ? [] : [JSON.parse(row.text) as Entry]));
}

/** All requests first: one that fails ends the work, and its reason is the one to report. */
async function finished(work: JournalWork, requests: readonly Promise<unknown>[]): Promise<void> {
  const all = Promise.all(requests);
  const done = work.done;
  await Promise.all([all, done]);
}

function failed(error: unknown): Result<Appended> {
  const full: Issue = {
    code: 'store-full',
    path: '',
    found: 'no room left in this browser',
    expected: 'free room on the device; what was stored before is untouched',
  };
  if (error instanceof DOMException && error.name === 'QuotaExceededError') return bad(full);
  throw error;
}
