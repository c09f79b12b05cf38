/** A figure that the keeper measured or set for this yard, with its range and the reason. */
import * as z from 'zod/mini';
import { textSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  figure: z.string().check(z.maxLength(80)),
  value: z.number(),
  low: z.number(),
  high: z.number(),
  why: textSchema,
});

export type FigureOverrideBody = z.infer<typeof schema>;

export const figureOverrideKind = entryKind<FigureOverrideBody, ColonyDraft>({
  kind: 'figure-override',
  version: 1,
  schema,
  apply: () => fits,
});
