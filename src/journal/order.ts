/**
 * The one order in which entries are told: when it was so, then when it was noted, then the id.
 * It is total and the same on every device, because it compares plain text and nothing else.
 */
import type { Entry } from './entry.ts';

/** Negative when `a` comes first; 0 only for the same id, time and note. */
export function byOrder(a: Entry, b: Entry): number {
  if (a.at !== b.at) return a.at < b.at ? -1 : 1;
  if (a.noted !== b.noted) return a.noted < b.noted ? -1 : 1;
  if (a.id !== b.id) return a.id < b.id ? -1 : 1;
  return 0;
}

/** The entries in order; the same array when it is in order already. The array given is never changed. */
export function inOrder(entries: readonly Entry[]): readonly Entry[] {
  for (let i = 1; i < entries.length; i += 1) {
    if (byOrder(entries[i - 1] as Entry, entries[i] as Entry) > 0) return [...entries].sort(byOrder);
  }
  return entries;
}
