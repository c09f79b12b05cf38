/** Adds many entries in batches. A batch is stored whole or not at all, so that a refused entry is set aside and its batch tried again. */
import type { Entry } from '../../../journal/entry.ts';
import type { Issue, Result } from '../../../numbers/result.ts';

export interface Taken {
  readonly added: number;
  readonly known: number;
  /** Why the rest was not stored; each names its entry. */
  readonly issues: readonly Issue[];
}

type Take = (entries: readonly Entry[]) => Promise<Result<{ readonly added: number; readonly known: number }>>;

const batchSize = 500;

export async function takeAll(entries: readonly Entry[], take: Take): Promise<Taken> {
  let added = 0;
  let known = 0;
  const issues: Issue[] = [];
  for (let from = 0; from < entries.length; from += batchSize) {
    let batch = entries.slice(from, from + batchSize);
    while (batch.length > 0) {
      const taken = await take(batch);
      if (taken.ok) {
        added += taken.value.added;
        known += taken.value.known;
        break;
      }
      issues.push(...taken.issues);
      const refused = new Set(taken.issues.map((issue) => issue.entry));
      const rest = batch.filter((entry) => !refused.has(entry.id));
      if (rest.length === batch.length) return { added, known, issues };
      batch = rest;
    }
  }
  return { added, known, issues };
}
