/**
 * How this device shows things: theme, units, clock, who holds it, which book is open. Kept on the
 * device and not in the journal, because two people with one yard may want different things.
 */
import * as z from 'zod/mini';
import { idSchema } from '../../../journal/entry.ts';

export const themes = ['paper', 'dusk', 'sun'] as const;
export type Theme = (typeof themes)[number];

const preferencesSchema = z.object({
  theme: z.catch(z.enum(themes), 'paper'),
  units: z.catch(z.enum(['metric', 'US']), 'metric'),
  hours: z.catch(z.union([z.literal(24), z.literal(12)]), 24),
  minutes: z.catch(z.int().check(z.minimum(0), z.maximum(600)), 90),
  /** The observer who holds this device, by book. */
  observers: z.catch(z.record(z.string(), idSchema), {}),
  book: z.catch(z.nullable(z.enum(['own', 'demo'])), null),
  /** The yard id that a book with an empty journal will have. */
  yard: z.catch(z.nullable(idSchema), null),
});

export type Preferences = z.infer<typeof preferencesSchema>;
export type Book = 'own' | 'demo';

const key = 'festoon.preferences';

/** What was kept, with a plain value for whatever is missing or damaged. */
export function readPreferences(): Preferences {
  let found: unknown = {};
  try {
    found = JSON.parse(localStorage.getItem(key) ?? '{}');
  } catch {
    found = {};
  }
  const record = typeof found === 'object' && found !== null ? found : {};
  return preferencesSchema.parse(record);
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
