/**
 * Where a command takes its journal from: a file of JSON lines (`--journal`), the demo yard (`--demo`),
 * or the keeper's own data folder. And which day it is: the yard's today, the demo's, or the one asked for.
 */
import { fileURLToPath } from 'node:url';
import { type Apiary, demoDay, readJournal } from '../../apiary.ts';
import type { Entry } from '../../journal/entry.ts';
import { type Day, isDay } from '../../numbers/day.ts';
import { bad, good, type Result } from '../../numbers/result.ts';
import { readJournalFile } from '../disk/journal-file.ts';
import { openSqliteStore } from '../disk/sqlite-store.ts';
import { type Call, flag, option } from './command.ts';

const pageSize = 1000;

export function demoFile(): string {
  return fileURLToPath(new URL('../../../../examples/ferry-road.jsonl', import.meta.url));
}

export function dataDir(): string {
  return process.env['FESTOON_DATA'] ?? 'yard-data';
}

/** All entries of the journal that the call names. */
export async function entriesOf(call: Call): Promise<Result<readonly Entry[]>> {
  const file = flag(call, 'demo') ? demoFile() : option(call, 'journal');
  if (file !== null) return readJournalFile(file);
  const store = await openSqliteStore(dataDir());
  if (!store.ok) return store;
  const entries: Entry[] = [];
  for (let cursor = 0; ; ) {
    const page = await store.value.read(cursor, pageSize);
    entries.push(...page.rows.map((row) => row.entry));
    if (!page.more) break;
    cursor = page.cursor;
  }
  await store.value.close();
  return good(entries);
}

/** The journal folded to the day asked for, and that day. */
export async function apiaryOf(call: Call): Promise<Result<{ readonly apiary: Apiary; readonly day: Day }>> {
  const asked = option(call, 'day');
  if (asked !== null && !isDay(asked)) {
    return bad({ code: 'not-a-day', path: '--day', found: asked, expected: 'a day YYYY-MM-DD that exists' });
  }
  const entries = await entriesOf(call);
  if (!entries.ok) return entries;
  const zone = readJournal(entries.value).timeZone;
  const day = asked ?? (flag(call, 'demo') ? demoDay : todayIn(zone));
  return good({ apiary: readJournal(entries.value, day), day });
}

/** Today in a time zone; a zone that this machine does not know counts as its own. */
export function todayIn(timeZone: string | null): Day {
  const style = { year: 'numeric', month: '2-digit', day: '2-digit' } as const;
  try {
    return new Intl.DateTimeFormat('en-CA', { ...style, ...(timeZone === null ? {} : { timeZone }) }).format(new Date());
  } catch {
    return new Intl.DateTimeFormat('en-CA', style).format(new Date());
  }
}

export function nowInstant(): string {
  return `${new Date().toISOString().slice(0, 19)}Z`;
}
