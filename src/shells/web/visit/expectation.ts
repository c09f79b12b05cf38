/**
 * What was there last time and what should be there today, for a bar that the keeper has just read:
 * taken from what is believed of the colony, in the eighths of the rulers. Asked only after Down.
 */
import { type OwnFigure, surpriseOf } from '../../../apiary/visit-told.ts';
import type { Reading } from '../../../colony/reading.ts';
import type { BarView, ColonyView } from '../../../colony/view.ts';
import type { Expected } from './ports.ts';

export function expectationOf(view: ColonyView, reading: Reading, own: readonly OwnFigure[]): Expected {
  // A page opened again in mid-visit may have a picture that knows this very reading: that is no expectation.
  const readNow = view.film.some((each) => each.visit === reading.visit && hasRead(each, reading.place));
  const today = readNow ? null : known(view.bars.find((bar) => bar.place === reading.place));
  const frame = view.film.findLast((each) => each.visit !== reading.visit && hasRead(each, reading.place));
  const last = known(frame?.bars.find((bar) => bar.place === reading.place));
  return {
    lastTime: last === null || frame === undefined ? null : { day: frame.day, ...eighthsOf(last) },
    today: today === null ? null : eighthsOf(today),
    surprise: today === null ? null : surpriseOf(reading, { last, today }, view.day, own),
    outlines: { lastTime: last, today },
  };
}

function hasRead(frame: ColonyView['film'][number], place: number): boolean {
  return frame.bars.some((bar) => bar.place === place && bar.readOn === frame.day);
}

/** Whole eighths of the face, as the rulers have them. */
function eighthsOf(bar: BarView): { readonly brood8: number; readonly food8: number } {
  const { shares } = bar;
  if (shares === null) return { brood8: 0, food8: 0 };
  const brood = shares.egg + shares.larva + shares.sealed + shares.emerging + shares.drone;
  const food = shares.honey + shares.nectar + shares.bread;
  return { brood8: Math.round(8 * brood), food8: Math.round(8 * food) };
}

function known(bar: BarView | undefined): BarView | null {
  return bar === undefined || bar.kind === 'unknown' || (bar.kind === 'comb' && bar.shares === null) ? null : bar;
}
