/** The kind of entry for a visit as closed: its step of the fold. Shape in `visit.ts`. */
import { entryKind, fits } from '../journal/kind.ts';
import type { ColonyDraft } from './state.ts';
import { type VisitBody, visitSchema } from './visit.ts';

export const visitKind = entryKind<VisitBody, ColonyDraft>({
  kind: 'visit',
  version: 1,
  schema: visitSchema,
  apply: () => fits,
});
