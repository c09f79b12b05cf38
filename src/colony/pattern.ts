/** How solid the brood is: cells of a counted patch that hold brood, in percent, with the range that a count of that size allows. */
import { wilson } from '../numbers/wilson.ts';

export interface Pattern {
  readonly percent: number;
  readonly lo95: number;
  readonly hi95: number;
}

const inPercent = 100;

/** `cells` counted, at least 1; `occupied` of them hold brood. All three answers in percent. */
export function pattern(occupied: number, cells: number): Pattern {
  const { share, lo95, hi95 } = wilson(occupied, cells);
  return { percent: inPercent * share, lo95: inPercent * lo95, hi95: inPercent * hi95 };
}
