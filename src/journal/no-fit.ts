/**
 * Entries that do not fit with the rest, each with its reasons and with the later corrections and takings
 * back that brought it about: with one of those taken back, it fits. Found by trying: the journal is
 * folded once more for each of them. Two that only together did it are not found.
 */
import type { Issue } from '../numbers/result.ts';
import { isAmendment } from './correct.ts';
import type { Entry, Id } from './entry.ts';
import { foldJournal, type Folded } from './fold.ts';
import type { AnyKind } from './kind.ts';
import { inOrder } from './order.ts';

export interface NoFit {
  readonly entry: Id;
  readonly faults: readonly Issue[];
  /** Corrections and takings back, the newest first; without any one of them the entry fits. */
  readonly since: readonly Id[];
}

/** `tried`: how many corrections are tried, the newest first. The oldest entry that does not fit comes first. */
export function noFits<D>(
  entries: readonly Entry[],
  kinds: readonly AnyKind<D>[],
  emptyDraft: () => D,
  tried = 24,
): readonly NoFit[] {
  const whole = foldJournal(entries, kinds, emptyDraft);
  const faults = byEntry(whole);
  if (faults.size === 0) return [];
  const struck = new Set(whole.struck);
  const amendments = entries.filter((entry) => isAmendment(entry) && !struck.has(entry.id)).sort(newestFirst);
  const without = amendments.slice(0, tried).map((amendment) => ({
    id: amendment.id,
    faults: byEntry(foldJournal([...entries, takenBack(amendment, entries)], kinds, emptyDraft)),
  }));
  return inOrder(entries)
    .filter((entry) => faults.has(entry.id))
    .map((entry) => ({
      entry: entry.id,
      faults: faults.get(entry.id) ?? [],
      since: without.filter((one) => one.id !== entry.id && !one.faults.has(entry.id)).map(({ id }) => id),
    }));
}

/** The entry that takes another one back, written by somebody who has seen all that was done to it; for trying only. */
export function takenBack(entry: Entry, entries: readonly Entry[]): Entry {
  const knew = entries.filter((one) => one.corrects === entry.id).map(({ id }) => id);
  return { ...entry, id: `without ${entry.id}`, kind: 'void', version: 1, corrects: entry.id, body: { why: 'tried', knew } };
}

function byEntry<D>({ faults }: Folded<D>): ReadonlyMap<Id, readonly Issue[]> {
  const found = new Map<Id, Issue[]>();
  for (const issue of faults) {
    if (issue.entry === undefined) continue;
    const list = found.get(issue.entry);
    if (list === undefined) found.set(issue.entry, [issue]);
    else list.push(issue);
  }
  return found;
}

function newestFirst(a: Entry, b: Entry): number {
  if (a.noted === b.noted) return a.id < b.id ? 1 : -1;
  return a.noted < b.noted ? 1 : -1;
}
