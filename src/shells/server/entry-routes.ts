/**
 * The two routes of the journal: a batch of entries in, a page of entries out. A batch is checked
 * whole and kept whole or not at all; a page goes out as it lies on disk.
 */
import type { Context } from 'hono';
import * as z from 'zod/mini';
import type { Entry } from '../../journal/entry.ts';
import { type KindMap, readEntry } from '../../journal/read-entry.ts';
import { shown } from '../../journal/zod-issues.ts';
import type { Day } from '../../numbers/day.ts';
import { bad, good, type Issue, type Result } from '../../numbers/result.ts';
import type { SqliteStore, TextRow } from '../disk/sqlite-store.ts';
import { refuse } from './answer.ts';
import { readBody } from './read-body.ts';

const batchSchema = z.strictObject({ entries: z.array(z.unknown()).check(z.maxLength(2000)) });

export async function pushEntries<D>(c: Context, store: SqliteStore, kinds: KindMap<D>, today: Day): Promise<Response> {
  const batch = await readBody(c, batchSchema);
  if (!batch.ok) return refuse(c, ...batch.issues);
  const entries: Entry[] = [];
  const issues: Issue[] = [];
  for (const [i, value] of batch.value.entries.entries()) {
    const read = readEntry(value, kinds, { today });
    if (read.ok) entries.push(read.value.entry);
    else
      issues.push(
        ...read.issues.map((issue) => ({ ...issue, path: issue.path === '' ? `entries.${i}` : `entries.${i}.${issue.path}` })),
      );
  }
  if (issues.length > 0) return refuse(c, ...issues);
  const appended = await store.append(entries);
  if (!appended.ok) return refuse(c, ...appended.issues);
  return c.json({ epoch: store.epoch, run: store.run, ...appended.value }, 200, { 'Cache-Control': 'no-store' });
}

export const largestPage = 2000;
const usualPage = 500;
/** Characters of one page: a phone must be able to hold it; a single larger entry still goes out. */
const longestPage = 8 * 1024 * 1024;

export async function pullEntries(c: Context, store: SqliteStore): Promise<Response> {
  const query = readQuery(new URL(c.req.url).searchParams);
  if (!query.ok) return refuse(c, ...query.issues);
  const page = await store.readText(query.value.after, query.value.limit);
  const rows = fitting(page.rows);
  const cut = rows.length < page.rows.length;
  const cursor = cut ? (rows.at(-1)?.seq ?? page.cursor) : page.cursor;
  const list = rows.map((row) => `{"seq":${row.seq},"run":${JSON.stringify(row.run)},"entry":${row.json}}`).join(',');
  const head = `"epoch":${JSON.stringify(store.epoch)},"run":${JSON.stringify(store.run)},"cursor":${cursor},"more":${cut || page.more}`;
  return c.body(`{${head},"rows":[${list}]}`, 200, { 'Content-Type': 'application/json', 'Cache-Control': 'no-store' });
}

function fitting(rows: readonly TextRow[]): readonly TextRow[] {
  let length = 0;
  const end = rows.findIndex((row, i) => (length += row.json.length) > longestPage && i > 0);
  return end === -1 ? rows : rows.slice(0, end);
}

interface Query {
  readonly after: number;
  readonly limit: number;
}

function readQuery(params: URLSearchParams): Result<Query> {
  const issues: Issue[] = [];
  for (const name of params.keys()) {
    if (name !== 'after' && name !== 'limit') issues.push(badQuery(name.slice(0, 60), params.get(name), 'no such field'));
  }
  const after = wholeNumber(params.get('after') ?? '0', 0, Number.MAX_SAFE_INTEGER);
  const limit = wholeNumber(params.get('limit') ?? String(usualPage), 1, largestPage);
  if (after === null) issues.push(badQuery('after', params.get('after'), 'a whole number from 0'));
  if (limit === null) issues.push(badQuery('limit', params.get('limit'), `a whole number from 1 to ${largestPage}`));
  if (issues.length > 0 || after === null || limit === null) return bad(...issues);
  return good({ after, limit });
}

function wholeNumber(text: string, least: number, most: number): number | null {
  const value = /^\d{1,16}$/.test(text) ? Number(text) : -1;
  return value >= least && value <= most ? value : null;
}

function badQuery(path: string, found: string | null, expected: string): Issue {
  return { code: 'bad-request', path, found: shown(found ?? undefined), expected };
}
