/**
 * Makes the slots of a saying: each number, day and place together with where it comes from, so that no
 * sentence can hold a number that nobody answers for.
 */
import { type FigureBook, rangeOf, value } from '../figures/book.ts';
import type { FigureKey } from '../figures/list.ts';
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';
import type { Window } from '../numbers/window.ts';
import type { Cite, Saying, Slot, Unit } from './advice.ts';

export function saying(key: string, slots: Readonly<Record<string, Slot>> = {}): Saying {
  return { key: `advice.${key}`, slots };
}

export function byFigure(key: FigureKey): Cite {
  return { kind: 'figure', key };
}

export function byEntry(id: Id): Cite {
  return { kind: 'entry', id };
}

/** Worked out from all of these; entries and figures may be mixed. */
export function workedOut(...from: readonly Cite[]): Cite {
  return { kind: 'worked out', from };
}

/** Worked out from readings of the journal, and from figures. */
export function fromEntries(entries: readonly Id[], ...figures: readonly FigureKey[]): Cite {
  return workedOut(...entries.map(byEntry), ...figures.map(byFigure));
}

/** A figure of the book as it is in force. */
export function figureNumber(book: FigureBook, key: FigureKey, unit: Unit): Slot {
  return { kind: 'number', value: value(book, key), unit, cite: byFigure(key) };
}

export function figureRange(book: FigureBook, key: FigureKey, unit: Unit): Slot {
  return { kind: 'range', range: rangeOf(book, key), unit, cite: byFigure(key) };
}

export function numberSlot(given: number, unit: Unit, cite: Cite): Slot {
  return { kind: 'number', value: given, unit, cite };
}

export function rangeSlot(range: Range, unit: Unit, cite: Cite): Slot {
  return { kind: 'range', range, unit, cite };
}

export function daySlot(day: Day, cite: Cite): Slot {
  return { kind: 'day', day, cite };
}

export function windowSlot(given: Window, cite: Cite): Slot {
  return { kind: 'window', window: given, cite };
}

export function placeSlot(place: number, cite: Cite): Slot {
  return { kind: 'place', place, cite };
}

export function placesSlot(places: readonly number[], cite: Cite): Slot {
  return { kind: 'places', places, cite };
}

export function term(key: string): Slot {
  return { kind: 'term', key };
}

export function nameSlot(name: string): Slot {
  return { kind: 'name', name };
}
