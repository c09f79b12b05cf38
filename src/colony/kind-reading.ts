/** The kind of entry for a reading of one bar: its step of the fold. Shape in `reading.ts`. */
import { entryKind, fits } from '../journal/kind.ts';
import type { ColonyDraft } from './state.ts';
import { type Reading, readingSchema } from './reading.ts';

export const readingKind = entryKind<Reading, ColonyDraft>({
  kind: 'reading',
  version: 1,
  schema: readingSchema,
  apply: () => fits,
});
