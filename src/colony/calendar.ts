/**
 * The days of brood in whole days, as the ageing counts them: a cell of age a was laid a to a + 1
 * days ago. From the figures in force, so that a keeper's own figure moves every date.
 */
import { type FigureBook, rangeOf, value } from '../figures/book.ts';
import type { Days } from '../numbers/units.ts';

export interface BroodCalendar {
  /** Worker: ages below this are eggs. */
  readonly eggEnd: Days;
  /** Worker: young larvae are younger than this, the only ones that can become queens. */
  readonly youngEnd: Days;
  /** Worker: ages from here are sealed. */
  readonly sealedFrom: Days;
  /** Worker: ages from here are about to emerge. */
  readonly emergingFrom: Days;
  /** Worker: emerges on reaching this age. */
  readonly workerDays: Days;
  readonly droneDays: Days;
  readonly droneEggEnd: Days;
  readonly droneSealedFrom: Days;
  readonly relayDays: Days;
  readonly survive: { readonly hatch: number; readonly seal: number; readonly emerge: number };
}

export function calendarOf(book: FigureBook): BroodCalendar {
  const eggEnd = Math.round(rangeOf(book, 'worker-egg-age').high);
  const sealedFrom = Math.round(rangeOf(book, 'worker-larva-age').high);
  const workerDays = Math.max(sealedFrom + 1, Math.round(value(book, 'worker-total-days')));
  const droneSealedFrom = Math.round(rangeOf(book, 'drone-larva-age').high);
  return {
    eggEnd,
    youngEnd: Math.min(sealedFrom, eggEnd + Math.round(value(book, 'oldest-larva-for-queen'))),
    sealedFrom,
    emergingFrom: Math.min(workerDays - 1, Math.max(sealedFrom, Math.round(rangeOf(book, 'worker-emerging-age').low))),
    workerDays,
    droneDays: Math.max(droneSealedFrom + 1, Math.round(value(book, 'drone-total-days'))),
    droneEggEnd: Math.round(rangeOf(book, 'drone-egg-age').high),
    droneSealedFrom,
    relayDays: Math.max(0, Math.round(value(book, 'relay-days'))),
    survive: {
      hatch: value(book, 'survival-egg-to-larva'),
      seal: value(book, 'survival-larva-to-sealed'),
      emerge: value(book, 'survival-sealed-to-adult'),
    },
  };
}
