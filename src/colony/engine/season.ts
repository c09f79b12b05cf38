/**
 * How much of her best a queen lays on a day of the year at a place whose spring and autumn may be early or
 * late and whose seasons may cut deep or not. The monthly shares of the figures are parted at their peak; each
 * half is shifted by itself, the lower of the two counts, and the whole is taken to a power.
 */
import { type FigureBook, value } from '../../figures/book.ts';
import { addDays } from '../../numbers/day.ts';
import { seasonLaying } from '../season-laying.ts';

export interface SeasonTables {
  /** Shares by day of the year from 0: the way up, then 1; and 1, then the way down. */
  readonly rise: Float64Array;
  readonly fall: Float64Array;
  readonly floor: number;
  /** Days of longer season at each end that raise the floor e-fold. */
  readonly floorDays: number;
  /** Days to add to the northern year. */
  readonly turn: number;
  /** Day of the year, from 0, at which half of the way up is done. */
  readonly middleOfRise: number;
  /** Day of the year, from 0, of the peak. */
  readonly peak: number;
}

const yearDays = 365.2425;
const tableDays = 366;
/** However mild the winter, it is not the height of the year. */
const mostFloor = 1 / 2;
/** Any year that does not leap, for its days' names. */
const someYear = '2001-01-01';

export function seasonTables(book: FigureBook, latitude: number | null): SeasonTables {
  const shares = sharesOf(book);
  const most = shares.reduce((a, b) => Math.max(a, b), 0);
  const peak = shares.indexOf(most);
  const rise = shares.map((share, day) => (day < peak ? share / most : 1));
  return {
    rise,
    fall: shares.map((share, day) => (day > peak ? share / most : 1)),
    floor: value(book, 'engine-season-floor'),
    floorDays: value(book, 'engine-season-floor-days'),
    turn: latitude !== null && latitude < 0 ? yearDays / 2 : 0,
    middleOfRise: rise.findIndex((share) => share >= 1 / 2),
    peak,
  };
}

/** Of each day of the northern year; kept for a book, because many colonies ask. */
function sharesOf(book: FigureBook): Float64Array {
  const found = sharesByBook.get(book);
  if (found !== undefined) return found;
  const shares = Float64Array.from({ length: tableDays }, (_, day) => seasonLaying(addDays(someYear, day), null, book));
  sharesByBook.set(book, shares);
  return shares;
}

const sharesByBook = new WeakMap<FigureBook, Float64Array>();

/** Day of the northern year, from 0, of a day number; calendar days wander about it by less than a day. */
export function yearDay(tables: SeasonTables, day: number): number {
  const t = (day + tables.turn) % yearDays;
  return t < 0 ? t + yearDays : t;
}

/** Share of the peak, floor … 1. `rise` and `fall` in days, later above 0; `depth` is the logarithm of the power. */
export function seasonShare(tables: SeasonTables, day: number, rise: number, fall: number, depth: number): number {
  const t = yearDay(tables, day);
  const share = Math.min(read(tables.rise, t - rise), read(tables.fall, t - fall));
  const floor = Math.min(mostFloor, tables.floor * Math.exp((fall - rise) / 2 / tables.floorDays));
  return floor + (1 - floor) * power(share, Math.exp(depth));
}

/** A share of 0 … 1 to a power above 0; far quicker than `**`, and read for every particle and day. */
export function power(share: number, exponent: number): number {
  return Math.exp(exponent * Math.log(share));
}

/** Straight between the days of a table, level beyond its ends. */
function read(table: Float64Array, t: number): number {
  const last = table.length - 1;
  if (t <= 0) return table[0]!;
  if (t >= last) return table[last]!;
  const from = Math.floor(t);
  return table[from]! + (t - from) * (table[from + 1]! - table[from]!);
}
