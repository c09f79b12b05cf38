/**
 * Makes the state out of the journal: corrections first, then every entry in order through its
 * kind's step. Pure outside: the draft is made here and belongs to this fold. The entries were
 * checked when they were appended, so bodies are not checked again; a step that throws is a
 * programmer's mistake and stops the fold with the name of the entry.
 */
import type { Day } from '../numbers/day.ts';
import type { Issue } from '../numbers/result.ts';
import { type Conflict, correctEntries } from './correct.ts';
import type { Entry, Id } from './entry.ts';
import type { AnyKind } from './kind.ts';
import { inOrder } from './order.ts';
import { kindMap } from './read-entry.ts';

export interface Folded<D> {
  readonly draft: D;
  /** Entries of a kind or version that this program has not learnt. */
  readonly notUnderstood: readonly Entry[];
  /** Entries that are taken back. */
  readonly struck: readonly Id[];
  readonly conflicts: readonly Conflict[];
  /** What did not fit, with its entry: such an entry was not applied. */
  readonly faults: readonly Issue[];
}

export interface FoldOptions {
  /** The state at the end of this day, by all that is known now: later days are left out, later corrections are not. */
  readonly until?: Day;
}

/** `entries`: any order, one for each id (see `merge.ts`). */
export function foldJournal<D>(
  entries: readonly Entry[],
  kinds: readonly AnyKind<D>[],
  emptyDraft: () => D,
  options: FoldOptions = {},
): Folded<D> {
  const map = kindMap(kinds);
  const corrected = correctEntries(entries, map);
  const notUnderstood: Entry[] = [];
  const faults: Issue[] = [...corrected.faults];
  const draft = emptyDraft();
  // "T" and the end of the text both sort before "U": everything of the last day is in.
  const end = options.until === undefined ? null : `${options.until}U`;
  for (const entry of inOrder(corrected.entries)) {
    if (end !== null && entry.at > end) break;
    const kind = map.get(entry.kind);
    if (kind === undefined || entry.version > kind.version) notUnderstood.push(entry);
    else applyOne(draft, kind, entry, faults);
  }
  return { draft, notUnderstood, struck: corrected.struck, conflicts: corrected.conflicts, faults };
}

function applyOne<D>(draft: D, kind: AnyKind<D>, entry: Entry, faults: Issue[]): void {
  try {
    const older = entry.version < kind.version && kind.upgrade !== undefined;
    const now = older ? { ...entry, version: kind.version, body: kind.upgrade(entry.version, entry.body) } : entry;
    for (const issue of kind.apply(draft, now)) faults.push(issue.entry === undefined ? { ...issue, entry: entry.id } : issue);
  } catch (error) {
    throw new Error(`the step of kind ${entry.kind} stopped at entry ${entry.id}`, { cause: error });
  }
}
