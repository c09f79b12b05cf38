/**
 * A single bar that lies far from what was foreseen of it, said while the visit goes on. What was foreseen is taken
 * when the visit begins and kept with it, so that nothing seen can change it and no model has to run. Of bars whose
 * contents are only guessed, and at a first visit, nothing is foreseen.
 */
import { movedFitOf } from '../colony/engine/surprise/bar-pattern.ts';
import { barRead, type BarSeen, barSeenOf } from '../colony/engine/surprise/bar-seen.ts';
import { barSurprise, fartherPart, leastOfMany } from '../colony/engine/surprise/bar-surprise.ts';
import { surpriseConstants } from '../colony/engine/surprise/surprise-constants.ts';
import type { Surprise } from '../colony/foreseen.ts';
import type { Reading } from '../colony/reading.ts';
import type { ColonyView } from '../colony/view.ts';
import { daysBetween } from '../numbers/day.ts';
import { ownBook, type OwnFigure } from './visit-told.ts';

/** What was foreseen of the bars before the first one was lifted. Plain data, kept with the draft of the visit. */
export interface BarsForetold {
  /** Since the last visit; at least 1. */
  readonly days: number;
  /** By place; none is read. */
  readonly bars: readonly BarSeen[];
}

export interface FarBar {
  /** Which of the two lies farther off: expected and seen are of it. */
  readonly part: 'brood' | 'food';
  readonly surprise: Surprise;
}

export function barsForetold(view: ColonyView, own: readonly OwnFigure[]): BarsForetold {
  const last = view.visits.at(-1);
  if (last === undefined) return { days: 1, bars: [] };
  const book = ownBook(own);
  const known = view.bars.filter(({ kind, readOn }) => kind === 'comb' && readOn !== null);
  return {
    days: Math.max(1, daysBetween(last.day, view.day)),
    bars: known.flatMap((bar) => barSeenOf(bar, null, view.day, book) ?? []),
  };
}

/** Brood and food: one of two is far off more often than one alone. */
const numbersOfBar = 2;

/**
 * Null when that bar is about as foreseen, was not read, or nothing was foreseen of it. `readings`: all of the visit
 * so far: by them combs that hang in another order are told from a bar that differs by itself. Each bar is judged
 * by itself, because it can be looked at again while it hangs there; of the whole visit the model judges later.
 */
export function farBar(
  { days, bars }: BarsForetold,
  place: number,
  readings: readonly Reading[],
  own: readonly OwnFigure[],
): FarBar | null {
  const constants = surpriseConstants(ownBook(own));
  const seen = bars.map((bar) => {
    const body = readings.findLast((one) => one.place === bar.place);
    return body === undefined ? bar : barRead(bar, body);
  });
  const bar = seen.find((one) => one.place === place);
  if (bar === undefined) return null;
  const surprise = { ...constants, leastSd: leastOfMany(numbersOfBar, constants.leastSd) };
  // The order of the combs is asked only where something is off: it takes longer than all the rest.
  if (barSurprise(bar, days, surprise) === null) return null;
  const found = barSurprise(bar, days, surprise, movedFitOf(seen, surprise.outliers));
  return found === null ? null : { part: fartherPart(bar), surprise: found };
}
