/**
 * The bars of a colony's bay on a day, from place to place: as they should look on that day, worked
 * on from the last reading of each comb; or, for a strip of the film, as they were read at one visit.
 * A bar that was never read stays unknown: it is never an empty bar.
 */
import { type FigureBook, value } from '../figures/book.ts';
import { bareShares, type Content, type Ink, type Shares } from '../hive/contents.ts';
import { spotOn } from '../hive/hanging.ts';
import { barWidthMm, type HiveMeasures } from '../hive/hive-measures.ts';
import type { Comb } from '../hive/state.ts';
import type { Id } from '../journal/entry.ts';
import { type Day, dayFromNumber, dayNumber, daysBetween } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';
import { aged } from './ageing.ts';
import type { BroodCalendar } from './calendar.ts';
import { type CombCells, sharesOf } from './comb-cells.ts';
import { builtNow, builtUnread, type CombHistory, type CombReading, lastTold } from './comb-history.ts';
import { seasonLaying } from './season-laying.ts';
import { cellsOf, contentRanges } from './split-contents.ts';
import type { ColonyState } from './state.ts';
import type { BarView } from './view.ts';

export interface Nest {
  readonly state: ColonyState;
  readonly hive: Id;
  readonly measures: HiveMeasures;
  readonly calendar: BroodCalendar;
  readonly history: CombHistory;
  readonly byVisit: ReadonlyMap<Id, readonly CombReading[]>;
  readonly book: FigureBook;
  readonly daysLaid: (dayNumber: number) => DayLaid;
  /** Combs that hang, or hung, in this hive. */
  readonly combs: readonly Comb[];
}

/** A bar with what the totals need beside what is shown. */
export interface NestBar {
  readonly view: BarView;
  readonly cells: CombCells | null;
  readonly reading: CombReading | null;
  /** Shares as read, with their ranges; null when nothing is known. */
  readonly ranges: Readonly<Record<Content, Range>> | null;
}

/** The bay's bars as they should look on the day. `bareSince`: places known to have been given a bar without comb, with the day. */
export function barsToday(
  nest: Nest,
  from: number,
  to: number,
  day: Day,
  bareSince: ReadonlyMap<number, Day>,
): readonly NestBar[] {
  const hanging = combsOn(nest, day);
  return places(from, to).map((place) => {
    const comb = hanging.get(place) ?? null;
    const reading = comb === null ? null : lastTold(nest.history.get(comb.id), day);
    if (comb === null || reading === null)
      return {
        view: unread(nest, place, comb, bareSince.get(place) ?? null),
        cells: null,
        reading: null,
        ranges: null,
      };
    return readBar(nest, place, comb, reading, day);
  });
}

/** The comb on the follower board of the bay, as of the place beyond its last; null where none is known. */
export function boardToday(nest: Nest, bay: Id | null, place: number, day: Day): NestBar | null {
  const there = nest.combs.find((comb) => {
    const spot = spotOn(comb, day);
    return spot?.kind === 'follower' && spot.bay === bay;
  });
  const reading = there === undefined ? null : lastTold(nest.history.get(there.id), day);
  return there === undefined || reading === null ? null : readBar(nest, place, there, reading, day);
}

/** The bars as read at one visit, by place; what was not opened is unknown. */
export function barsAtVisit(nest: Nest, from: number, to: number, visit: Id, day: Day): readonly BarView[] {
  const read = nest.byVisit.get(visit) ?? [];
  const hanging = combsOn(nest, day);
  const all = read.map((reading) => reading.row.body.place);
  return places(Math.min(from, ...all), Math.max(to, ...all)).map((place) => {
    const reading = read.find((one) => one.row.body.place === place);
    const comb = reading === undefined ? (hanging.get(place) ?? null) : (nest.state.combs.get(reading.row.comb) ?? null);
    if (reading === undefined || comb === null) return unread(nest, place, comb, null);
    return viewOfReading(nest, place, comb, reading, reading.split?.shares ?? null, day);
  });
}

/** Readings by their visit. */
export function byVisit(history: CombHistory): ReadonlyMap<Id, readonly CombReading[]> {
  const found = new Map<Id, CombReading[]>();
  for (const list of history.values()) {
    for (const reading of list) {
      if (reading.cutOn !== undefined) continue;
      const row = found.get(reading.visit);
      if (row === undefined) found.set(reading.visit, [reading]);
      else row.push(reading);
    }
  }
  return found;
}

/** How much of what is ready is laid in on each day after the reading: the queen's chance times the turn of the season. */
export function layingAfter(nest: Pick<Nest, 'daysLaid'>, readOn: Day): (i: number) => number {
  const start = dayNumber(readOn);
  const then = nest.daysLaid(start).season;
  return (i) => {
    const { chance, season } = nest.daysLaid(start + i + 1);
    return chance === 0 ? 0 : chance * Math.min(1, then === 0 ? 1 : season / then);
  };
}

export interface DayLaid {
  /** Chance that the queen laid. */
  readonly chance: number;
  /** Laying of the season, as a share of its peak. */
  readonly season: number;
}

/** Both for a day by its number; each day is worked out once for the bars of one view. */
export function daysLaid(
  laying: (day: Day) => number,
  latitude: number | null,
  book: FigureBook,
): (dayNumber: number) => DayLaid {
  const known = new Map<number, DayLaid>();
  return (n) => {
    const found = known.get(n);
    if (found !== undefined) return found;
    const day = dayFromNumber(n);
    const made = { chance: laying(day), season: seasonLaying(day, latitude, book) };
    known.set(n, made);
    return made;
  };
}

function readBar(nest: Nest, place: number, comb: Comb, reading: CombReading, day: Day): NestBar {
  const { split } = reading;
  const days = daysBetween(reading.day, day);
  const cells = split === null ? null : aged(cellsOf(split, nest.calendar), days, nest.calendar, layingAfter(nest, reading.day));
  const shares = cells === null || days === 0 ? (split?.shares ?? null) : sharesOf(cells, nest.calendar);
  const ranges = split === null ? null : contentRanges(split, reading.read, nest.book);
  return { view: viewOfReading(nest, place, comb, reading, shares, day), cells, reading, ranges };
}

function viewOfReading(nest: Nest, place: number, comb: Comb, reading: CombReading, shares: Shares | null, day: Day): BarView {
  const { row, read, split } = reading;
  const built = builtShare(nest, comb, reading);
  const bare = built === 0;
  const same = reading.day === day;
  const known: Ink = same ? 'seen' : 'worked out';
  const bar = comb.bar === null ? null : (nest.state.bars.get(comb.bar) ?? null);
  return {
    place,
    comb: comb.id,
    mark: bar?.mark ?? null,
    widthMm: barWidthMm(nest.measures, bar),
    kind: bare ? 'bare' : shares === null ? 'unknown' : 'comb',
    built,
    shares: bare ? bareShares : shares,
    ink: !bare && (split === null || split.ink === 'guessed') ? 'guessed' : known,
    bees: same ? read.bees : null,
    cells: row.body.cells ?? (row.body.cellsLooked === 'none seen' ? noQueenCells : null),
    queenSeen: row.body.queen === 'seen',
    ...(comb.attached === null ? {} : { attached: comb.attached }),
    readOn: reading.day,
    spot: spotOn(comb, day) ?? comb.at,
  };
}

const noQueenCells = { open: 0, sealed: 0, torn: 0, emerged: 0 } as const;

function unread(nest: Nest, place: number, comb: Comb | null, bareSince: Day | null): BarView {
  const bare = comb === null ? bareSince !== null : comb.built === 0;
  const bar = nest.state.bars.get(comb?.bar ?? '') ?? null;
  return {
    place,
    comb: comb?.id ?? null,
    mark: bar?.mark ?? null,
    widthMm: barWidthMm(nest.measures, bar),
    kind: bare ? 'bare' : 'unknown',
    built: bare ? 0 : (comb?.built ?? value(nest.book, 'built-unread-share')),
    shares: bare ? bareShares : null,
    ink: bare ? 'worked out' : 'guessed',
    bees: null,
    cells: null,
    queenSeen: false,
    readOn: bareSince,
    spot: comb?.at ?? null,
  };
}

function builtShare(nest: Nest, comb: Comb, reading: CombReading): number {
  const known = reading.cutOn === undefined && comb.built !== null && comb.built > 0 ? comb.built : null;
  return builtNow(reading, known ?? builtUnread(reading, nest.book));
}

/** Which comb hung where in the hive at the end of the day. */
function combsOn(nest: Nest, day: Day): ReadonlyMap<number, Comb> {
  const found = new Map<number, Comb>();
  for (const comb of nest.combs) {
    const spot = spotOn(comb, day);
    if (spot?.kind === 'place' && spot.hive === nest.hive && (comb.ended === null || comb.ended > day))
      found.set(spot.place, comb);
  }
  return found;
}

/** Combs that hang, or ever hung, in the hive. */
export function combsOfHive(state: ColonyState, hive: Id): readonly Comb[] {
  return [...state.combs.values()].filter((comb) => comb.placings.some(({ spot }) => spot.kind !== 'away' && spot.hive === hive));
}

function places(from: number, to: number): number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
}
