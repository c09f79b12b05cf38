/** Values of the Picture as they stand in a sentence: the words then round them, give them units and dates in the keeper's manner. */
import type { Slot, Unit } from '../../../advice/advice.ts';
import type { Day } from '../../../numbers/day.ts';
import type { Range } from '../../../numbers/range.ts';
import type { Window } from '../../../numbers/window.ts';

const workedOut = { kind: 'worked out', from: [] } as const;

export function dayPart(day: Day): Slot {
  return { kind: 'day', day, cite: workedOut };
}

export function windowPart(window: Window): Slot {
  return { kind: 'window', window, cite: workedOut };
}

export function rangePart(range: Range, unit: Unit): Slot {
  return { kind: 'range', range, unit, cite: workedOut };
}

export function numberPart(value: number, unit: Unit): Slot {
  return { kind: 'number', value, unit, cite: workedOut };
}

export function placesPart(places: readonly number[]): Slot {
  return { kind: 'places', places, cite: workedOut };
}
