/**
 * What a store does with a batch before it writes: new entries, entries that it has already, and
 * ids that come with other content than is kept. All stores share it, so that they cannot differ.
 */
import type { Issue } from '../numbers/result.ts';
import { canonicalText } from './canonical.ts';
import type { Entry, Id } from './entry.ts';
import { duplicateId } from './merge.ts';

/** Tells the new entries of a batch from those already kept, and finds ids used for other content, in the batch too. */
export function sortOut(entries: readonly Entry[], keptText: (id: Id) => string | undefined): SortedOut {
  const fresh = new Map<Id, string>();
  const known: Id[] = [];
  const issues: Issue[] = [];
  for (const entry of entries) {
    const text = canonicalText(entry);
    const kept = keptText(entry.id);
    const before = kept ?? fresh.get(entry.id);
    if (before === undefined) fresh.set(entry.id, text);
    else if (before !== text) issues.push(duplicateId(entry.id, before, text));
    else if (kept !== undefined) known.push(entry.id);
  }
  return { fresh, known, issues };
}

export interface SortedOut {
  /** Canonical text by id, in the order given. */
  readonly fresh: ReadonlyMap<Id, string>;
  readonly known: readonly Id[];
  readonly issues: readonly Issue[];
}
