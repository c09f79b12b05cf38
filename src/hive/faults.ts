/**
 * What does not fit, said the same way by every kind: a code, the field, what was found, what is
 * expected and the entry. The sentence for the keeper is made in `words`.
 */
import type { Entry } from '../journal/entry.ts';
import type { Issue } from '../numbers/result.ts';
import type { Window } from '../numbers/window.ts';

export function fault(entry: Entry, code: string, path: string, found: unknown, expected: string): Issue {
  return { code, path, found: String(found), expected, entry: entry.id };
}

/** The fault of something named that is not there, or none. */
export function unknown(
  entry: Entry,
  what: string,
  path: string,
  id: string | null,
  known: ReadonlyMap<string, unknown>,
): Issue[] {
  if (id === null || known.has(id)) return [];
  return [fault(entry, `unknown-${what}`, path, id, `the id of a ${what} that an earlier entry names`)];
}

/** A window whose earliest day comes after its latest. */
export function windowFaults(entry: Entry, path: string, window: Window | null | undefined): Issue[] {
  if (window === null || window === undefined || window.earliest <= window.latest) return [];
  return [fault(entry, 'window-order', path, `${window.earliest} to ${window.latest}`, 'the earliest day first')];
}

/** A place that the trough does not have. */
export function placeFaults(entry: Entry, path: string, place: number | null, bars: number): Issue[] {
  if (place === null || place <= bars) return [];
  return [fault(entry, 'place-beyond-trough', path, place, `a place from 1 to ${bars}`)];
}
