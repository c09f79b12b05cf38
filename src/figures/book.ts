/**
 * The figures in force for one keeper: the published or chosen ones, with the keeper's own
 * measurements on top. Everything that calculates takes a book as an argument.
 */
import { assert } from '../numbers/assert.ts';
import type { Range } from '../numbers/range.ts';
import type { Quantity } from '../numbers/units.ts';
import type { Figure } from './figure.ts';
import { type FigureKey, figures } from './list.ts';

export interface Override {
  readonly key: FigureKey;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** The entry that measured or chose it. */
  readonly entry: string;
}

export interface FigureBook {
  readonly overrides: ReadonlyMap<FigureKey, Override>;
}

/** The book with no override: what a new keeper starts with. */
export const printedBook: FigureBook = { overrides: new Map() };

type UnitOf<K extends FigureKey> = Extract<(typeof figures)[number], { key: K }>['unit'];

const byKey: ReadonlyMap<string, Figure> = new Map(figures.map((figure) => [figure.key, figure]));

/** The figure as printed, without the keeper's override. Throws on a key that does not exist. */
export function printed(key: FigureKey): Figure {
  const found = byKey.get(key);
  assert(found, `the figure ${key} is listed`);
  return found;
}

export function isFigureKey(key: string): key is FigureKey {
  return byKey.has(key);
}

/** The value in force, in the figure's own unit. */
export function value<K extends FigureKey>(book: FigureBook, key: K): Quantity<UnitOf<K>> {
  return book.overrides.get(key)?.value ?? printed(key).value;
}

/** The value in force with its range. */
export function rangeOf(book: FigureBook, key: FigureKey): Range {
  const { value: likely, low, high } = book.overrides.get(key) ?? printed(key);
  return { low, likely, high };
}
