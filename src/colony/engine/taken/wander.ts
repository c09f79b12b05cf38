/** What wanders, about which middle, how far and for how long: from the figures, as columns of numbers. */
import { type FigureBook, value } from '../../../figures/book.ts';
import type { FigureKey } from '../../../figures/list.ts';
import { eyes, part, type Part } from '../particle.ts';

/** A number that wanders about its middle with a spread; a gap falls to 1/e in so many days. */
export interface Wanderer {
  readonly part: Part;
  readonly middle: number;
  readonly spread: number;
  readonly days: number;
}

/** The same as columns, for a move of a fixed number of days. */
export interface Wander {
  readonly count: number;
  readonly offset: Int32Array;
  readonly middle: Float64Array;
  readonly spread: Float64Array;
  readonly kept: Float64Array;
  /** Spread of a move's push: the wandering keeps its spread. */
  readonly push: Float64Array;
}

export function wanderOf(wanderers: readonly Wanderer[], moveDays: number): Wander {
  const kept = Float64Array.from(wanderers, ({ days }) => Math.exp(-moveDays / days));
  const spread = Float64Array.from(wanderers, (one) => one.spread);
  return {
    count: wanderers.length,
    offset: Int32Array.from(wanderers, (one) => part[one.part]),
    middle: Float64Array.from(wanderers, (one) => one.middle),
    spread,
    kept,
    push: spread.map((sd, i) => sd * Math.sqrt(1 - kept[i]! ** 2)),
  };
}

/** Days between the moves of what is slow. A power of 2 and small beside the months that it remembers. */
export const slowDays = 8;

export function quickWanderers(book: FigureBook): readonly Wanderer[] {
  const spell = value(book, 'engine-memory-laying');
  return [
    { part: 'laying', middle: 0, spread: value(book, 'engine-laying-wander'), days: spell },
    { part: 'loss', middle: 0, spread: value(book, 'engine-loss-wander'), days: spell },
    { part: 'flow', middle: 0, spread: value(book, 'engine-flow-wander'), days: value(book, 'engine-memory-flow') },
  ];
}

export function slowWanderers(book: FigureBook): readonly Wanderer[] {
  const colony = value(book, 'engine-memory-colony');
  const counting = value(book, 'engine-memory-counting');
  const own = (name: Part, spread: FigureKey): Wanderer => ({ part: name, middle: 0, spread: value(book, spread), days: colony });
  const place = (name: Part, spread: FigureKey): Wanderer => ({
    part: name,
    middle: 0,
    spread: value(book, spread),
    days: counting,
  });
  return [
    own('capacity', 'engine-capacity-spread'),
    own('lossLevel', 'engine-loss-spread'),
    place('rise', 'engine-season-shift-spread'),
    place('fall', 'engine-season-shift-spread'),
    place('depth', 'engine-season-depth-spread'),
  ];
}

export function eyeWanderers(book: FigureBook): readonly Wanderer[] {
  const days = value(book, 'engine-memory-counting');
  const cells = value(book, 'engine-capped-scale');
  const own: readonly (readonly [RegExp, number, FigureKey])[] = [
    [/^bees/, 0, 'engine-adults-scale-spread'],
    [/^bars/, 0, 'engine-bars-scale-spread'],
    [/^sealed|^open/, cells, 'engine-capped-scale-spread'],
    [/^honey/, 0, 'engine-honey-scale-spread'],
  ];
  return eyes.map((name) => {
    const [, middle, spread] = own.find(([which]) => which.test(name))!;
    return { part: name, middle, spread: value(book, spread), days };
  });
}
