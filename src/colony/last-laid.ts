/**
 * When laying last happened, as far as the youngest brood of all visits tells. A stage is a window;
 * windows of visits are intersected as long as they speak of the same end of laying. When nothing is
 * left, somebody misread or two events were taken for one: that is reported, and the newest stands.
 */
import { type FigureBook, rangeOf, value } from '../figures/book.ts';
import { addDays, type Day, later } from '../numbers/day.ts';
import { intersect, type Window } from '../numbers/window.ts';
import { agesOf } from './brood-dates.ts';
import type { Evidence } from './queen-evidence.ts';
import { lastLaid as laidBy } from './queen-loss.ts';
import type { Stage } from './reading.ts';

export interface LastLaid {
  /** `earliest` may be unknown: then it is the latest, less the longest life of brood twice over. */
  readonly window: Window;
  /** Laying had ended by then: the youngest brood was looked for well enough to say so. */
  readonly over: boolean;
  readonly contradictory: boolean;
  readonly from: readonly Id[];
}

type Id = Evidence['from'][number];

/** What the next visit adds to what was known; visits that say nothing of brood change nothing. */
export function nextLastLaid(known: LastLaid | null, seen: Evidence, book: FigureBook): LastLaid | null {
  if (seen.youngest === null) return known;
  const stage = stageWindow(seen.youngest, seen.day, book);
  const enough = seen.eggShare >= value(book, 'look-enough-share');
  const over = seen.youngest !== 'egg' && enough;
  const window = over || seen.youngest === 'egg' ? stage : { earliest: stage.earliest, latest: seen.day };
  const fresh: LastLaid = { window, over, contradictory: false, from: seen.from };
  if (known === null || seen.youngest === 'egg') return fresh;
  if (window.latest < known.window.earliest) return { ...fresh, contradictory: true, from: [...known.from, ...seen.from] };
  if (known.over) {
    const both = intersect([known.window, window]);
    // Later than the known end: laying has begun again since.
    return both === null ? fresh : { ...fresh, window: both, from: [...known.from, ...seen.from] };
  }
  return { ...fresh, window: { earliest: later(known.window.earliest, window.earliest), latest: window.latest } };
}

/** Broods back, at most, for an end of laying that nothing dates. */
const lives = 2;

/** The day of the last egg when this is the youngest worker brood of the nest. */
export function stageWindow(youngest: Stage, day: Day, book: FigureBook): Window {
  if (youngest === 'young larva') {
    const { least } = agesOf('worker', 'larva', book);
    return {
      earliest: addDays(day, -(least + Math.round(rangeOf(book, 'oldest-larva-for-queen').high))),
      latest: addDays(day, -least),
    };
  }
  const { earliest, latest } = laidBy(youngest, null, day, book);
  return { earliest: earliest ?? addDays(latest, -lives * Math.round(value(book, 'worker-total-days'))), latest };
}
