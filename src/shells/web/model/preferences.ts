/**
 * How this device shows things: theme, units, clock, who holds it, which book is open. Kept on the
 * device and not in the journal, because two people with one yard may want different things.
 */
import type { Id } from '../../../journal/entry.ts';

export const themes = ['paper', 'dusk', 'sun'] as const;
export type Theme = (typeof themes)[number];
const unitSystems = ['metric', 'US'] as const;
const clocks = [24, 12] as const;
const books = ['own', 'demo'] as const;
export type Book = (typeof books)[number];

export interface Preferences {
  readonly theme: Theme;
  readonly units: (typeof unitSystems)[number];
  readonly hours: (typeof clocks)[number];
  /** Minutes that the keeper usually has for a round. */
  readonly minutes: number;
  /** The observer who holds this device, by book. */
  readonly observers: Readonly<Partial<Record<Book, Id>>>;
  readonly book: Book | null;
  /** The yard id that a book with an empty journal will have. */
  readonly yard: Id | null;
}

const key = 'festoon.preferences';
const usualMinutes = 90;
const id = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

/** What was kept, with a plain value for whatever is missing or damaged. Read by hand: the first load has no room for a schema library. */
export function readPreferences(): Preferences {
  const kept = record(parsed());
  const observers = record(kept['observers']);
  return {
    theme: oneOf(themes, kept['theme']) ?? 'paper',
    units: oneOf(unitSystems, kept['units']) ?? 'metric',
    hours: oneOf(clocks, kept['hours']) ?? 24,
    minutes: typeof kept['minutes'] === 'number' ? kept['minutes'] : usualMinutes,
    observers: Object.fromEntries(books.flatMap((book) => (isId(observers[book]) ? [[book, observers[book]]] : []))),
    book: oneOf(books, kept['book']),
    yard: isId(kept['yard']) ? kept['yard'] : null,
  };
}

/** False when the browser does not let us keep them; they then hold until the page is closed. */
export function keepPreferences(preferences: Preferences): boolean {
  try {
    localStorage.setItem(key, JSON.stringify(preferences));
    return true;
  } catch {
    return false;
  }
}

function parsed(): unknown {
  try {
    return JSON.parse(localStorage.getItem(key) ?? '{}');
  } catch {
    return {};
  }
}

function record(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
}

function oneOf<T>(these: readonly T[], value: unknown): T | null {
  return these.find((one) => one === value) ?? null;
}

function isId(value: unknown): value is Id {
  return typeof value === 'string' && id.test(value);
}
