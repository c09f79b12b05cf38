/**
 * Reads a whole journal from JSON lines and reports every fault of it, changing nothing: lines that
 * are no JSON, entries that are wrong, ids used twice, clocks that cannot be, and what the fold
 * finds. What is good is returned as well, so that an import is a check that somebody agreed to.
 */
import type { Issue } from '../numbers/result.ts';
import { canonicalText } from './canonical.ts';
import type { Conflict } from './correct.ts';
import type { Entry, Id } from './entry.ts';
import { foldJournal } from './fold.ts';
import type { AnyKind } from './kind.ts';
import { readLines } from './lines.ts';
import { duplicateId } from './merge.ts';
import { inOrder } from './order.ts';
import { type KindMap, kindMap, readEntry, type ReadOptions } from './read-entry.ts';

export interface LineIssue extends Issue {
  /** Null for a fault of the journal as a whole. */
  readonly line: number | null;
}

export interface ReadJournal {
  /** The entries that can be kept, in order; of two with one id the first in the file. */
  readonly entries: readonly Entry[];
  /** What cannot be kept, in the order of the lines. */
  readonly faults: readonly LineIssue[];
  /** What is kept but worth a look: clocks, kinds not understood. */
  readonly notes: readonly LineIssue[];
}

export interface CheckedJournal extends ReadJournal {
  readonly lines: number;
  readonly conflicts: readonly Conflict[];
}

/** Reads without folding: what an import needs. */
export function readJournal<D>(text: string, kinds: readonly AnyKind<D>[], options: ReadOptions = {}): ReadJournal {
  const { merged, faults, notes } = readAll(text, kindMap(kinds), options);
  return { entries: merged, faults, notes };
}

export function checkJournal<D>(
  text: string,
  kinds: readonly AnyKind<D>[],
  emptyDraft: () => D,
  options: ReadOptions = {},
): CheckedJournal {
  const { merged, faults, notes, lineOf, lines } = readAll(text, kindMap(kinds), options);
  const folded = foldJournal(merged, kinds, emptyDraft);
  const placed = folded.faults.map((issue) => ({ ...issue, line: lineOf.get(issue.entry ?? '') ?? null }));
  return { entries: merged, faults: [...faults, ...placed], notes, lines, conflicts: folded.conflicts };
}

interface ReadAll {
  readonly merged: readonly Entry[];
  readonly faults: readonly LineIssue[];
  readonly notes: readonly LineIssue[];
  readonly lineOf: ReadonlyMap<Id, number>;
  readonly lines: number;
}

function readAll<D>(text: string, kinds: KindMap<D>, options: ReadOptions): ReadAll {
  const found = new Map<Id, Entry>();
  const faults: LineIssue[] = [];
  const notes: LineIssue[] = [];
  const lineOf = new Map<Id, number>();
  const lines = readLines(text);
  for (const row of lines) {
    const { line } = row;
    if (!row.ok) {
      faults.push({ ...row.issue, line });
      continue;
    }
    const read = readEntry(row.value, kinds, options);
    if (!read.ok) {
      faults.push(...read.issues.map((issue) => ({ entry: `line ${line}`, ...issue, line })));
      continue;
    }
    const { entry, understood, warnings } = read.value;
    notes.push(...warnings.map((issue) => ({ ...issue, line })));
    if (!understood) notes.push({ ...notUnderstood(entry, kinds), line });
    const before = found.get(entry.id);
    if (before === undefined) {
      lineOf.set(entry.id, line);
      found.set(entry.id, entry);
      continue;
    }
    const [kept, other] = [canonicalText(before), canonicalText(entry)];
    if (kept !== other) faults.push({ ...duplicateId(entry.id, kept, other), line });
  }
  return { merged: inOrder([...found.values()]), faults, notes, lineOf, lines: lines.length };
}

function notUnderstood<D>(entry: Entry, kinds: KindMap<D>): Issue {
  const known = kinds.get(entry.kind)?.version;
  return known === undefined
    ? {
        code: 'unknown-kind',
        path: 'kind',
        found: entry.kind,
        expected: 'a kind that this version knows; it is kept as it is',
        entry: entry.id,
      }
    : {
        code: 'newer-version',
        path: 'version',
        found: String(entry.version),
        expected: `at most ${known} in this version; it is kept as it is`,
        entry: entry.id,
      };
}
