/** A figure that the keeper measured or set for this yard, with its range and the reason. */
import * as z from 'zod/mini';
import { isFigureKey, printed } from '../figures/book.ts';
import { fault } from '../hive/faults.ts';
import { type Entry, textSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
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
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<FigureOverrideBody>): readonly Issue[] {
  const { figure: key, value, low, high } = entry.body;
  if (!isFigureKey(key)) return [fault(entry, 'unknown-figure', 'figure', key, 'the key of a figure of the handbook')];
  if (!(low <= value && value <= high))
    return [fault(entry, 'range-order', 'value', `${low}, ${value}, ${high}`, 'low, value and high in growing order')];
  if (low < 0 && printed(key).low >= 0) return [fault(entry, 'value-negative', 'low', low, 'a number that is not below 0')];
  draft.overrides.push({ key, value, low, high, entry: entry.id });
  return fits;
}
