/**
 * Where a command takes its journal from: a file of JSON lines (`--journal`), the demo yard (`--demo`),
 * or the keeper's own data folder. And which day it is: the yard's today, the demo's, or the one asked for.
 */
import { fileURLToPath } from 'node:url';
import { allKinds, type Apiary, demoDay, readJournal } from '../../apiary.ts';
import { readJournal as readText } from '../../journal/check-journal.ts';
import type { Entry } from '../../journal/entry.ts';
import { type Day, isDay } from '../../numbers/day.ts';
import { bad, good, type Result } from '../../numbers/result.ts';
import { readJournalFile } from '../disk/journal-file.ts';
import { readEntries } from '../disk/read-only.ts';
import { type Call, flag, option } from './command.ts';

export function demoFile(): string {
  return fileURLToPath(new URL('../../../../examples/ferry-road.jsonl', import.meta.url));
}

export function dataDir(): string {
  return process.env['FESTOON_DATA'] ?? 'yard-data';
}

/** All entries of the journal that the call names; a file with faults is refused, the faults named. */
export function entriesOf(call: Call): Result<readonly Entry[]> {
  const file = flag(call, 'demo') ? demoFile() : option(call, 'journal');
  if (file === null) return readEntries(dataDir());
  const source = readJournalFile(file);
  if (!source.ok) return source;
  const read = readText(source.value, allKinds);
  return read.faults.length > 0 ? bad(...read.faults) : good(read.entries);
}

/** The journal folded to the day asked for, and that day. */
export function apiaryOf(call: Call): Result<{ readonly apiary: Apiary; readonly day: Day }> {
  const asked = option(call, 'day');
  if (asked !== null && !isDay(asked)) {
    return bad({ code: 'not-a-day', path: '--day', found: asked, expected: 'a day YYYY-MM-DD that exists' });
  }
  const entries = entriesOf(call);
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

/** The last day that it can be anywhere on Earth: what no entry may be later than. */
export function todayAnywhere(): Day {
  return todayIn('Pacific/Kiritimati');
}
