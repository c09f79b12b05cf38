/**
 * How often forecasts were right: those issued at the end of visits, against what later visits found. Plain
 * data; the sums are made where the journal is at hand. Nothing is scored twice, and a forecast whose day no
 * visit met is not scored at all. Errors are of logarithms, so that a third too few weighs as a half too many.
 */
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';

/** What forecasts are scored in: those of the model's quantities that a visit counts or works out. */
export const recordQuantities = ['bees', 'sealed', 'honeyKg'] as const;
export type RecordQuantity = (typeof recordQuantities)[number];

export interface ForecastRecord {
  /** Null: all colonies of the yard together. */
  readonly colony: Id | null;
  /** Calendar year of the days that forecasts were for; null: all years. */
  readonly year: number | null;
  /** Years that have scored forecasts, ascending: what can be asked for. */
  readonly years: readonly number[];
  /** Forecasts issued whose day has not been met by a visit yet. */
  readonly waiting: number;
  /** One for each quantity and horizon of which anything was issued; quantities in order, horizons ascending. */
  readonly scores: readonly RecordScore[];
}

export interface RecordScore {
  readonly what: RecordQuantity;
  /** About how many days ahead: a forecast counts for the horizon that it is nearest to. */
  readonly horizonDays: number;
  /** Forecasts that a later visit met. */
  readonly n: number;
  /** How many of the n fell inside their ranges, which should hold eight of ten. */
  readonly inside: number;
  /** Root mean square of the log error; null where n is 0 or the method told nothing. */
  readonly logRmse: Readonly<Record<RecordMethod, number | null>>;
  /** Whether the method that the screens show did better than "as last time"; null when too few to say. */
  readonly isBetter: boolean | null;
  /** Which method the likely value of the rows is of. */
  readonly shown: RecordMethod;
  /** Ascending by the day they are for. */
  readonly rows: readonly RecordRow[];
}

export const recordMethods = ['engine', 'challenger', 'blend', 'as last time'] as const;
export type RecordMethod = (typeof recordMethods)[number];

export interface RecordRow {
  readonly colony: Id;
  readonly issuedOn: Day;
  readonly forDay: Day;
  /** As issued: the range that should hold eight of ten. Bees and cells as counts, honey in kilograms. */
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** What was so when the forecast was issued: what "as last time" says. Null when it was not known. */
  readonly lastTime: number | null;
  /** What the later visit found. */
  readonly came: number;
}
