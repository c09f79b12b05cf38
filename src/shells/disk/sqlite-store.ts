/**
 * The server's journal store: better-sqlite3 with a write-ahead log and full synchronising, so that
 * an appended batch is on disk before it is confirmed. Queries go through Kysely and use nothing
 * that only this database has.
 */
import Database from 'better-sqlite3';
import { Kysely, SqliteDialect, type Transaction } from 'kysely';
import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { canonicalText, hashOfText } from '../../journal/canonical.ts';
import type { Entry, Id } from '../../journal/entry.ts';
import { duplicateIdByHash } from '../../journal/merge.ts';
import type { Appended, JournalStore } from '../../journal/store.ts';
import { bad, good, type Issue, type Result } from '../../numbers/result.ts';
import { type HeldFolder, holdFolder, reason } from './data-folder.ts';
import { type Pairings, sqlitePairings } from './sqlite-pairings.ts';
import { migrate, type Tables } from './sqlite-schema.ts';

export interface TextRow {
  readonly seq: number;
  readonly run: string;
  /** The entry in canonical JSON. */
  readonly json: string;
}

export interface SqliteStore extends JournalStore {
  /** As `read`, without parsing: rows go to the wire as they lie on disk. */
  readText(
    cursor: number,
    limit: number,
  ): Promise<{ readonly rows: readonly TextRow[]; readonly cursor: number; readonly more: boolean }>;
  readonly pairings: Pairings;
}

export interface OpenOptions {
  /** The most pages that the file may grow to; only tests set it, to fill the disk. */
  readonly mostPages?: number;
}

/** Opens, or makes, `festoon.db` in the folder and holds the folder until `close`. Every reason not to is an issue of one line. */
export async function openSqliteStore(folder: string, options: OpenOptions = {}): Promise<Result<SqliteStore>> {
  const held = holdFolder(folder);
  if (!held.ok) return held;
  const file = join(folder, 'festoon.db');
  const opened = openDatabase(file, options);
  if (!opened.ok) {
    held.value.release();
    return opened;
  }
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: opened.value }) });
  const ready = await migrate(db, randomUUID()).catch((error: unknown) => bad<{ readonly epoch: string }>(unusable(file, error)));
  if (!ready.ok) {
    await db.destroy();
    held.value.release();
    return ready;
  }
  return good(storeOver(db, { epoch: ready.value.epoch, run: randomUUID() }, held.value));
}

function openDatabase(file: string, options: OpenOptions): Result<Database.Database> {
  let database: Database.Database | null = null;
  try {
    database = new Database(file, { timeout: 2000 });
    database.pragma('journal_mode = WAL');
    database.pragma('synchronous = FULL');
    if (options.mostPages !== undefined) database.pragma(`max_page_count = ${options.mostPages}`);
    return good(database);
  } catch (error) {
    database?.close();
    return bad(unusable(file, error));
  }
}

function unusable(file: string, error: unknown): Issue {
  const why = reason(error);
  if (why === 'SQLITE_FULL') return storeFull();
  if (why.startsWith('SQLITE_BUSY')) {
    return {
      code: 'folder-in-use',
      path: file,
      found: 'another running program holds it',
      expected: 'one program for one folder',
    };
  }
  const damaged = why === 'SQLITE_NOTADB' || why.startsWith('SQLITE_CORRUPT');
  return {
    code: damaged ? 'database-damaged' : 'database-unusable',
    path: file,
    found: why,
    expected: 'a database that this program wrote',
  };
}

function storeOver(db: Kysely<Tables>, names: { readonly epoch: string; readonly run: string }, held: HeldFolder): SqliteStore {
  async function readText(cursor: number, limit: number): ReturnType<SqliteStore['readText']> {
    const found = await db
      .selectFrom('entries')
      .select(['seq', 'run', 'json'])
      .where('seq', '>', cursor)
      .orderBy('seq')
      .limit(limit + 1)
      .execute();
    const rows = found.slice(0, limit);
    return { rows, cursor: rows.at(-1)?.seq ?? cursor, more: found.length > limit };
  }

  return {
    ...names,
    append: (entries) => append(db, names.run, entries),
    readText,
    read: async (cursor, limit) => {
      const page = await readText(cursor, limit);
      return { ...page, rows: page.rows.map(({ seq, run, json }) => ({ seq, run, entry: JSON.parse(json) as Entry })) };
    },
    count: async () => {
      const row = await db
        .selectFrom('entries')
        .select((select) => select.fn.countAll<number>().as('count'))
        .executeTakeFirstOrThrow();
      return Number(row.count);
    },
    close: async () => {
      await db.destroy();
      held.release();
    },
    pairings: sqlitePairings(db),
  };
}

/** Rows in one statement: twelve values a row stay well below what any database takes. */
const rowsAtOnce = 250;

async function append(db: Kysely<Tables>, run: string, entries: readonly Entry[]): Promise<Result<Appended>> {
  const rows = entries.map((entry) => rowOf(entry, run));
  const troubles: unknown[] = [];
  try {
    return await db.transaction().execute((transaction) =>
      appendRows(transaction, rows).catch((error: unknown) => {
        troubles.push(error);
        throw error;
      }),
    );
  } catch (error) {
    // A full disk ends the transaction by itself; undoing it then fails, and that failure would hide the reason.
    if (reason(troubles[0] ?? error) === 'SQLITE_FULL') return bad(storeFull());
    throw troubles[0] ?? error;
  }
}

async function appendRows(transaction: Transaction<Tables>, rows: readonly Row[]): Promise<Result<Appended>> {
  const kept = new Map<Id, string>();
  for (const part of chunks(rows)) {
    const found = await transaction
      .selectFrom('entries')
      .select(['id', 'hash'])
      .where(
        'id',
        'in',
        part.map((row) => row.id),
      )
      .execute();
    for (const row of found) kept.set(row.id, row.hash);
  }
  const sorted = sortRows(rows, kept);
  if (sorted.issues.length > 0) return bad(...sorted.issues);
  for (const part of chunks(sorted.fresh)) await transaction.insertInto('entries').values(part).execute();
  return good({ added: sorted.fresh.map((row) => row.id), known: sorted.known });
}

type Row = Omit<Tables['entries'], 'seq'>;

function rowOf(entry: Entry, run: string): Row {
  const json = canonicalText(entry);
  const { id, yard, at, noted, by, kind, version } = entry;
  return { id, yard, at, noted, by, kind, version, corrects: entry.corrects ?? null, hash: hashOfText(json), json, run };
}

/** As `sortOut` of the journal, by hashes instead of texts: the texts of old entries are not read for it. */
function sortRows(rows: readonly Row[], kept: ReadonlyMap<Id, string>): { fresh: Row[]; known: Id[]; issues: Issue[] } {
  const fresh = new Map<Id, Row>();
  const known: Id[] = [];
  const issues: Issue[] = [];
  for (const row of rows) {
    const old = kept.get(row.id);
    const before = old ?? fresh.get(row.id)?.hash;
    if (before === undefined) fresh.set(row.id, row);
    else if (before !== row.hash) issues.push(duplicateIdByHash(row.id, before, row.hash));
    else if (old !== undefined) known.push(row.id);
  }
  return { fresh: [...fresh.values()], known, issues };
}

function chunks<T>(rows: readonly T[]): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(rows.length / rowsAtOnce) }, (_, i) => rows.slice(i * rowsAtOnce, (i + 1) * rowsAtOnce));
}

function storeFull(): Issue {
  return {
    code: 'store-full',
    path: '',
    found: 'no room left where the journal is kept',
    expected: 'free room; what was stored before is untouched',
  };
}
