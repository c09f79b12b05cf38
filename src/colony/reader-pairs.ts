/**
 * How one reader differs from another, from combs that both read on the same day: the mean difference in eighths with its
 * range, drawn toward none where pairs are few, and the spread of single differences. The normal model with a normal
 * prior on the bias and a scaled prior on the spread (Gelman and others, Bayesian Data Analysis, 2.5 and 3.3), the spread
 * put in as if it were known. Nobody's reading is changed by it.
 */
import { type FigureBook, value } from '../figures/book.ts';
import { eighthsInWhole } from '../hive/shapes.ts';
import type { Id } from '../journal/entry.ts';
import { dayOf } from '../journal/entry.ts';
import type { Range } from '../numbers/range.ts';
import { combRead } from './comb-read.ts';
import { eightOfTen } from './split-contents.ts';
import type { ColonyState, ReadingRow } from './state.ts';

export const pairContents = ['brood', 'food'] as const;
export type PairContent = (typeof pairContents)[number];

export interface ReaderBias {
  readonly reader: Id;
  /** Who is read against: the one with most readings among those who are not learning. */
  readonly against: Id;
  readonly content: PairContent;
  readonly pairs: number;
  /** Eighths more than the other, with the ends that hold eight of ten; null where pairs are too few to tell. */
  readonly bias: Range | null;
  /** Standard deviation of one difference, eighths; null where pairs are too few. */
  readonly spread: number | null;
}

export function readerBiases(state: ColonyState, book: FigureBook): readonly ReaderBias[] {
  const rows = [...state.visits.values()].flatMap((visit) => visit.readings);
  const against = mostPractised(state, rows);
  if (against === null) return [];
  const readers = [...state.observers.keys()].filter((id) => id !== against);
  return readers.flatMap((reader) =>
    pairContents.flatMap((content): ReaderBias[] => {
      const differences = differencesOf(rows, reader, against, content);
      if (differences.length === 0) return [];
      return [{ reader, against, content, pairs: differences.length, ...estimated(differences, book) }];
    }),
  );
}

/** Bias and spread of differences, in their unit. Nulls below the least number of pairs. */
export function estimated(differences: readonly number[], book: FigureBook): Pick<ReaderBias, 'bias' | 'spread'> {
  const n = differences.length;
  if (n < value(book, 'reader-least-pairs')) return { bias: null, spread: null };
  const mean = differences.reduce((a, b) => a + b, 0) / n;
  const squares = differences.reduce((sum, d) => sum + (d - mean) ** 2, 0);
  const prior = {
    weight: value(book, 'reader-pair-prior'),
    sd: value(book, 'reader-pair-sd'),
    bias: value(book, 'reader-bias-sd'),
  };
  const variance = (prior.weight * prior.sd ** 2 + squares) / (prior.weight + n - 1);
  const precision = n / variance + 1 / prior.bias ** 2;
  const likely = (n * mean) / variance / precision;
  const half = eightOfTen / Math.sqrt(precision);
  return { bias: { low: likely - half, likely, high: likely + half }, spread: Math.sqrt(variance) };
}

function mostPractised(state: ColonyState, rows: readonly ReadingRow[]): Id | null {
  const counts = new Map<Id, number>();
  for (const { by } of rows) {
    const role = state.observers.get(by)?.role;
    if (role !== undefined && role !== 'learner') counts.set(by, (counts.get(by) ?? 0) + 1);
  }
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null;
}

/** Of each comb and day the last reading of each, where both read the content; in eighths. */
function differencesOf(rows: readonly ReadingRow[], reader: Id, against: Id, content: PairContent): readonly number[] {
  const read = (by: Id): ReadonlyMap<string, number> => {
    const found = new Map<string, number>();
    for (const row of rows) {
      const share = row.by === by ? combRead(row.body)[content] : null;
      if (share !== null) found.set(`${row.comb} ${dayOf(row.at)}`, share * eighthsInWhole);
    }
    return found;
  };
  const others = read(against);
  return [...read(reader)].flatMap(([key, eighths]) => {
    const other = others.get(key);
    return other === undefined ? [] : [eighths - other];
  });
}
