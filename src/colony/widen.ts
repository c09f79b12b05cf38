/**
 * How wide a number is. Within one visit the bars err apart by rounding (their half widths add in
 * quadrature), and all together by one factor: the reader's eye, the split into stages, the figure
 * for cells or kilograms on an area. What is carried forward errs together too, and more each day.
 */
import { type FigureBook, value } from '../figures/book.ts';
import type { FigureKey } from '../figures/list.ts';
import { addApart, addTogether, nothing, type Range, timesRange } from '../numbers/range.ts';
import { eightOfTen } from './split-contents.ts';

/** A factor of 1 whose logarithm has this standard deviation, as a range that holds eight of ten. */
export function factorOf(sd: number): Range {
  const half = Math.exp(eightOfTen * sd);
  return { low: 1 / half, likely: 1, high: half };
}

/** Standard deviation of what is carried forward for so many days. */
export function carriedSd(days: number, book: FigureBook): number {
  return Math.min(value(book, 'carried-error-most'), value(book, 'carried-error-per-day') * days);
}

/** One factor for all bars of one visit: the errors named, in quadrature. */
export function readerFactor(errors: readonly FigureKey[], book: FigureBook): Range {
  return factorOf(Math.hypot(...errors.map((key) => value(book, key))));
}

export interface Part {
  readonly range: Range;
  /** Days since it was read. */
  readonly days: number;
}

/** Bars of one visit, or none. */
export function seenTogether(parts: readonly Part[], factor: Range, book: FigureBook): Range {
  const [first] = parts;
  if (first === undefined) return nothing;
  return timesRange(timesRange(addApart(parts.map((part) => part.range)), factor), factorOf(carriedSd(first.days, book)));
}

/** Bars carried forward, each from its own day: the unknown days err together, so their ends add. */
export function carriedTogether(parts: readonly Part[], factor: Range, book: FigureBook): Range {
  const grown = parts.map((part) => timesRange(part.range, factorOf(carriedSd(part.days, book))));
  return timesRange(addTogether(grown), factor);
}
