/** What counts take from the figures: how each errs, and below what it says nothing but "little". */
import { type FigureBook, value } from '../../../figures/book.ts';

type Counted = 'bees' | 'bars' | 'sealed' | 'open' | 'honeyKg';

export interface CountConstants {
  /** Spread of the logarithm of a careful count. */
  readonly noise: Readonly<Record<Counted, number>>;
  /** Below this a count is only known to be below it. */
  readonly least: Readonly<Record<Counted, number>>;
  /** As little as the logarithm is taken of. */
  readonly none: Readonly<Record<Counted, number>>;
  readonly outlierShare: number;
  readonly outlierSpread: number;
  /** Spread of what combs left shut hold, where all were left shut. */
  readonly unopened: number;
  /** Of what combs hold that were only said to be as expected, where all were. */
  readonly asExpected: number;
  /** Of built cells as read. */
  readonly builtNoise: number;
}

export function countConstants(book: FigureBook): CountConstants {
  const bees = value(book, 'engine-least-count');
  const honey = value(book, 'engine-least-honey');
  const least = { bees, bars: bees, sealed: bees, open: bees, honeyKg: honey };
  return {
    noise: {
      bees: value(book, 'engine-adults-noise'),
      bars: value(book, 'engine-bars-noise'),
      sealed: value(book, 'engine-capped-noise'),
      open: value(book, 'engine-capped-noise'),
      honeyKg: value(book, 'engine-honey-noise'),
    },
    least,
    none: { bees: 1, bars: 1, sealed: 1, open: 1, honeyKg: honey / bees },
    outlierShare: value(book, 'engine-outlier-share'),
    outlierSpread: value(book, 'engine-outlier-spread'),
    unopened: value(book, 'engine-unopened-spread'),
    asExpected: value(book, 'engine-as-expected-spread'),
    builtNoise: value(book, 'engine-built-noise'),
  };
}
