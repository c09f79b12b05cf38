/** The word for a reading that surprises, handed out at the front door with the figures in force on this device. */
import type { BarView } from '../colony/view.ts';
import { surprise, type Surprise } from '../colony/expect-bar.ts';
import type { Reading } from '../colony/reading.ts';
import { type FigureBook, isFigureKey } from '../figures/book.ts';
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';

export type { Surprise } from '../colony/expect-bar.ts';

export interface OwnFigure {
  readonly key: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly entry: Id;
}

/** Null when the reading lies within what such readings and expectations err by, or when nothing was expected. */
export function surpriseOf(
  reading: Reading,
  expected: { readonly last: BarView | null; readonly today: BarView },
  day: Day,
  own: readonly OwnFigure[],
): Surprise | null {
  return surprise(reading, expected, day, ownBook(own));
}

/** The printed figures, with those that the keeper has set on this device. */
export function ownBook(own: readonly OwnFigure[]): FigureBook {
  const rows = own.flatMap(({ key, ...rest }) => (isFigureKey(key) ? [[key, { key, ...rest }] as const] : []));
  return { overrides: new Map(rows) };
}
