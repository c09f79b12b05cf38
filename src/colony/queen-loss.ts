/**
 * What the youngest brood tells about a queen that may be lost: when she last laid, when a queen raised from
 * that brood emerges and lays, and from when a nest without cells is hopeless. A worker's ages are used,
 * since it is worker brood that is read.
 */
import { type FigureBook, rangeOf, value } from '../figures/book.ts';
import { addDays, type Day } from '../numbers/day.ts';
import { agesOf } from './brood-dates.ts';

export const youngestStages = ['egg', 'larva', 'sealed', 'none'] as const;
export type YoungestStage = (typeof youngestStages)[number];

/** A window whose beginning may be unknown: without any brood she may have stopped at any time before. */
export interface OpenWindow {
  readonly earliest: Day | null;
  readonly latest: Day;
}

export interface QueenLoss {
  readonly lastLaid: OpenWindow;
  readonly virginEmerges: OpenWindow;
  readonly firstEggs: OpenWindow;
  /** From this day a nest without queen cells and without open brood will raise no queen. */
  readonly hopelessFrom: Day;
}

export function queenLoss(lastLaid: OpenWindow, book: FigureBook): QueenLoss {
  return {
    lastLaid,
    virginEmerges: shift(lastLaid, rangeOf(book, 'emergency-queen-emerges')),
    firstEggs: shift(lastLaid, rangeOf(book, 'emergency-first-eggs')),
    hopelessFrom: addDays(lastLaid.latest, value(book, 'hopeless-after-days')),
  };
}

/**
 * When laying last happened, from the youngest worker brood seen. `larvaAgeDays` (whole days since hatching)
 * narrows a larva to the day. With no brood at all the last egg has emerged: it is at least as old as the
 * least age of a worker that emerges, and nothing says how much older.
 */
export function lastLaid(youngest: YoungestStage, larvaAgeDays: number | null, seenOn: Day, book: FigureBook): OpenWindow {
  if (youngest === 'none') return { earliest: null, latest: addDays(seenOn, -agesOf('worker', 'emerging', book).least) };
  if (youngest === 'larva' && larvaAgeDays !== null) {
    const laid = addDays(seenOn, -(agesOf('worker', 'larva', book).least + larvaAgeDays));
    return { earliest: laid, latest: laid };
  }
  const { least, greatest } = agesOf('worker', youngest, book);
  return { earliest: addDays(seenOn, -greatest), latest: addDays(seenOn, -least) };
}

function shift(window: OpenWindow, by: { readonly low: number; readonly high: number }): OpenWindow {
  return {
    earliest: window.earliest === null ? null : addDays(window.earliest, by.low),
    latest: addDays(window.latest, by.high),
  };
}
