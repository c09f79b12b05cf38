/**
 * How often forecasts were right: those issued at the end of visits against what later visits counted. Nothing is
 * worked out again: a forecast is scored as it was issued. A count of part of the combs, by another hand, of a
 * full box, or filled in as expected meets no forecast; a forecast for a day between two that were issued is read between them.
 */
import type { Apiary } from '../apiary.ts';
import { engineName } from '../colony/engine/tell/tell.ts';
import { recordBook } from '../colony/engine/read/record-book.ts';
import { visitedOf } from '../colony/engine/read/visited-of.ts';
import type { ForecastIssuedBody } from '../colony/kind-forecast-issued.ts';
import {
  type ForecastRecord,
  recordMethods,
  type RecordMethod,
  recordQuantities,
  type RecordQuantity,
  type RecordRow,
  type RecordScore,
} from '../colony/record.ts';
import type { ForecastMethod } from '../colony/foreseen.ts';
import { type FigureBook, value } from '../figures/book.ts';
import type { Id } from '../journal/entry.ts';
import { addDays, type Day, dayFromNumber, daysBetween } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';
import { issuedName } from './issued.ts';

/** About how many days ahead, with the days from which on a visit counts for it: our choice; the last ends with what is issued. */
const horizons = [
  { days: 7, from: 4, to: 13 },
  { days: 21, from: 14, to: 31 },
  { days: 42, from: 32, to: 42 },
] as const;

/** `colony` null: all of the yard; `year` null: all years. */
export function recordOf(apiary: Apiary, colony: Id | null, year: number | null): ForecastRecord {
  const colonies = colony === null ? [...apiary.state.colonies.keys()] : [colony];
  const found = colonies.filter((id) => apiary.state.colonies.has(id)).map((id) => metBy(apiary, id));
  const all = found.flatMap(({ pairs }) => pairs);
  const pairs = all.filter(({ row }) => year === null || yearOf(row.forDay) === year);
  const scores = recordQuantities.flatMap((what) =>
    horizons.flatMap(({ days }) => {
      const mine = pairs.filter((pair) => pair.what === what && pair.horizonDays === days);
      const issued = mine.length > 0 || found.some(({ kinds }) => kinds.has(what));
      return issued ? [scoreOf(what, days, mine, apiary.book)] : [];
    }),
  );
  return {
    colony,
    year,
    years: [...new Set(all.map(({ row }) => yearOf(row.forDay)))].sort((a, b) => a - b),
    waiting: found.reduce((sum, { waiting }) => sum + waiting, 0),
    scores,
  };
}

/** A forecast that a visit met. */
interface Pair {
  readonly what: RecordQuantity;
  readonly horizonDays: number;
  readonly row: RecordRow;
  /** What each way said for the day of the visit; null where it said nothing. */
  readonly said: Readonly<Record<RecordMethod, Range | null>>;
  readonly shown: RecordMethod;
}

interface Met {
  readonly pairs: readonly Pair[];
  readonly kinds: ReadonlySet<RecordQuantity>;
  readonly waiting: number;
}

interface Counted {
  readonly day: Day;
  readonly counts: Readonly<Partial<Record<RecordQuantity, number>>>;
}

function metBy(apiary: Apiary, colony: Id): Met {
  const counted = countsOf(apiary, colony);
  const last = counted.at(-1)?.day ?? '';
  const kinds = new Set<RecordQuantity>();
  const pairs: Pair[] = [];
  let waiting = 0;
  for (const issued of apiary.state.issued) {
    if (issued.kind !== 'forecast' || issued.colony !== colony) continue;
    const body = issued.body as ForecastIssuedBody;
    if (body.engine !== engineName) continue;
    for (const what of recordQuantities) if (body.values.some((row) => row.what === issuedName(what, 'engine'))) kinds.add(what);
    for (const horizon of horizons) {
      const made = recordQuantities.flatMap((what) => pairOf(body, colony, issued.day, what, horizon, counted) ?? []);
      pairs.push(...made);
      if (made.length === 0 && addDays(issued.day, horizon.to) > last) waiting += 1;
    }
  }
  return { pairs, kinds, waiting };
}

/** Whole counts by whoever reads most, by day; next to nothing is no count, only known to be little. */
function countsOf({ state, book }: Apiary, colony: Id): readonly Counted[] {
  const few = value(book, 'engine-least-count');
  const least = { bees: few, sealed: few, honeyKg: value(book, 'engine-least-honey') };
  const { visits } = visitedOf(recordBook(state, colony, forever, book));
  return visits.map(({ day, seen }) => {
    const counts: Partial<Record<RecordQuantity, number>> = {};
    for (const what of recordQuantities) {
      const count = seen[what];
      if (count === undefined || count.count < least[what] || count.atLeast === true || count.hand === 1) continue;
      if ((count.share ?? 1) === 1 && count.asExpected === undefined) counts[what] = count.count;
    }
    return { day: dayFromNumber(day), counts };
  });
}

const forever: Day = '9999-12-31';

/** The first visit of the horizon's days that counted the thing; null when there was none, or nothing was said for its day. */
function pairOf(
  body: ForecastIssuedBody,
  colony: Id,
  issuedOn: Day,
  what: RecordQuantity,
  horizon: (typeof horizons)[number],
  counted: readonly Counted[],
): Pair | null {
  const met = counted.find(({ day, counts }) => {
    const ahead = daysBetween(issuedOn, day);
    return ahead >= horizon.from && ahead <= horizon.to && counts[what] !== undefined;
  });
  const came = met?.counts[what];
  if (met === undefined || came === undefined) return null;
  const said = (method: ForecastMethod): Range | null => saidFor(body, issuedName(what, method), met.day);
  const ways = {
    engine: said('engine'),
    challenger: said('challenger'),
    blend: said('blend'),
    'as last time': said('last time'),
  };
  const shown: RecordMethod = ways.blend === null ? 'engine' : 'blend';
  const range = ways[shown];
  const lastTime = ways['as last time']?.likely ?? null;
  // Without a last time there is nothing to be better than: a first count is not scored.
  if (range === null || lastTime === null) return null;
  return {
    what,
    horizonDays: horizon.days,
    row: { colony, issuedOn, forDay: met.day, ...range, lastTime, came },
    said: ways,
    shown,
  };
}

/** Between two days that were issued by the logarithm; before the first and after the last it is theirs. */
function saidFor({ values }: ForecastIssuedBody, name: string, day: Day): Range | null {
  const rows = values.filter((row) => row.what === name).sort((a, b) => (a.day < b.day ? -1 : 1));
  const after = rows.find((row) => row.day >= day) ?? rows.at(-1);
  const before = rows.findLast((row) => row.day <= day) ?? rows[0];
  if (after === undefined || before === undefined) return null;
  const span = daysBetween(before.day, after.day);
  const part = span <= 0 ? 0 : daysBetween(before.day, day) / span;
  const at = (end: 'low' | 'likely' | 'high'): number =>
    before[end] > 0 && after[end] > 0
      ? Math.exp(Math.log(before[end]) + part * Math.log(after[end] / before[end]))
      : before[end] + part * (after[end] - before[end]);
  return { low: at('low'), likely: at('likely'), high: at('high') };
}

function scoreOf(what: RecordQuantity, horizonDays: number, pairs: readonly Pair[], book: FigureBook): RecordScore {
  const rows = pairs.map(({ row }) => row).sort((a, b) => (a.forDay < b.forDay ? -1 : a.forDay > b.forDay ? 1 : 0));
  const shown = pairs[0]?.shown ?? 'engine';
  const logRmse = Object.fromEntries(recordMethods.map((method) => [method, logRmseOf(pairs, method)])) as RecordScore['logRmse'];
  const own = logRmse[shown];
  const last = logRmse['as last time'];
  const enough = pairs.length >= value(book, 'record-least-forecasts');
  return {
    what,
    horizonDays,
    n: rows.length,
    inside: rows.filter(({ low, high, came }) => low <= came && came <= high).length,
    logRmse,
    isBetter: enough && own !== null && last !== null ? own < last : null,
    shown,
    rows,
  };
}

/** Null where the way did not speak of all of them: ways are compared on the same forecasts. */
function logRmseOf(pairs: readonly Pair[], method: RecordMethod): number | null {
  const squares = pairs.flatMap(({ said, row }) => {
    const likely = said[method]?.likely ?? null;
    return likely === null || likely <= 0 ? [] : [Math.log(row.came / likely) ** 2];
  });
  if (squares.length === 0 || squares.length < pairs.length) return null;
  return Math.sqrt(squares.reduce((a, b) => a + b, 0) / squares.length);
}

function yearOf(day: Day): number {
  return Number(day.slice(0, yearLength));
}

const yearLength = 4;
