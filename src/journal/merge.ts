/**
 * Merging journals is the union of their entries by id, so the order of merging cannot matter.
 * The same id with other content is no union: it is reported with both hashes, and of the two the
 * one with the smaller canonical text is kept, because "the first" would depend on who asks.
 */
import type { Issue } from '../numbers/result.ts';
import { canonicalText, hashOfText } from './canonical.ts';
import type { Entry, Id } from './entry.ts';
import { inOrder } from './order.ts';

export interface Merged {
  /** In the order of the fold. */
  readonly entries: readonly Entry[];
  readonly issues: readonly Issue[];
}

export function mergeJournals(...journals: readonly (readonly Entry[])[]): Merged {
  const kept = new Map<Id, Entry>();
  const issues: Issue[] = [];
  for (const entry of journals.flat()) {
    const before = kept.get(entry.id);
    if (before === undefined) {
      kept.set(entry.id, entry);
      continue;
    }
    const [old, other] = [canonicalText(before), canonicalText(entry)];
    if (old === other) continue;
    issues.push(duplicateId(entry.id, old, other));
    if (other < old) kept.set(entry.id, entry);
  }
  return { entries: inOrder([...kept.values()]), issues };
}

/** `keptText` is what is there already, `otherText` what came. Both are canonical. */
export function duplicateId(id: Id, keptText: string, otherText: string): Issue {
  return duplicateIdByHash(id, hashOfText(keptText), hashOfText(otherText));
}

export function duplicateIdByHash(id: Id, keptHash: string, otherHash: string): Issue {
  return {
    code: 'duplicate-id',
    path: 'id',
    found: `other content under an id already kept, with hash ${otherHash}`,
    expected: `the content with hash ${keptHash}`,
    entry: id,
  };
}
