/**
 * Dates from a stage of brood seen on a day: when it was laid, is or was sealed, and emerges, each as a window
 * of whole days. The windows follow from the ages alone; that a cell seen open cannot have been sealed before
 * is left to the reader who intersects them.
 */
import { type FigureBook, rangeOf } from '../figures/book.ts';
import { addDays, type Day } from '../numbers/day.ts';
import { shiftWindow, type Window } from '../numbers/window.ts';

export const castes = ['worker', 'drone', 'queen'] as const;
export type Caste = (typeof castes)[number];

export const broodStages = ['egg', 'larva', 'sealed', 'emerging'] as const;
export type BroodStage = (typeof broodStages)[number];

export interface BroodDates {
  readonly laid: Window;
  readonly sealed: Window;
  readonly emerges: Window;
}

/** Least and greatest age in whole days after laying. */
export interface Ages {
  readonly least: number;
  readonly greatest: number;
}

export function broodDates(caste: Caste, stage: BroodStage, seenOn: Day, book: FigureBook): BroodDates {
  const { least, greatest } = agesOf(caste, stage, book);
  const laid: Window = { earliest: addDays(seenOn, -greatest), latest: addDays(seenOn, -least) };
  const sealing = agesOf(caste, 'sealing', book);
  const emerging = agesOf(caste, 'emerging', book);
  return {
    laid,
    sealed: shiftWindow(laid, sealing.least, sealing.greatest),
    emerges: shiftWindow(laid, emerging.least, emerging.greatest),
  };
}

/** Ages at which a stage can be met; "sealing" is the moment at which the cell is sealed. */
export function agesOf(caste: Caste, stage: BroodStage | 'sealing', book: FigureBook): Ages {
  const { low, high } = rangeOf(book, `${caste}-${stage}-age`);
  return { least: Math.round(low), greatest: Math.round(high) };
}
