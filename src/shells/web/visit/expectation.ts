/**
 * What was there last time and what should be there today, for a bar that the keeper has just read:
 * taken from what is believed of the colony, in the eighths of the rulers. Asked only after Down.
 */
import type { Reading } from '../../../colony/reading.ts';
import type { BarView, ColonyView } from '../../../colony/view.ts';
import type { Expected } from './ports.ts';

/**
 * A difference of this many eighths is said. Our choice: two careful people differ by one eighth on
 * a comb, and the day's expectation is off by about as much; three is more than both.
 */
const surprise8 = 3;

export function expectationOf(view: ColonyView, reading: Reading): Expected {
  // A page opened again in mid-visit may have a picture that knows this very reading: that is no expectation.
  const now = view.bars.find((bar) => bar.place === reading.place);
  const readNow = view.film.some(
    (each) =>
      each.visit === reading.visit && each.bars.some((bar) => bar.place === reading.place && bar.readOn === each.day),
  );
  const today = readNow ? null : known(now);
  const frame = view.film.findLast(
    (each) =>
      each.visit !== reading.visit && each.bars.some((bar) => bar.place === reading.place && bar.readOn === each.day),
  );
  const last = known(frame?.bars.find((bar) => bar.place === reading.place));
  const [face] = reading.faces;
  const expected = today === null ? null : eighthsOf(today);
  const apart = (seen: number | null | undefined, due: number) =>
    seen !== null && seen !== undefined && Math.abs(seen - due) >= surprise8;
  return {
    lastTime: last === null || frame === undefined ? null : { day: frame.day, ...eighthsOf(last) },
    today: expected,
    surprise: expected !== null && (apart(face?.brood8, expected.brood8) || apart(face?.food8, expected.food8)),
    outlines: { lastTime: last, today },
  };
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
