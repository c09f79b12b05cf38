/**
 * The bars of a colony's bay on a day, from place to place: as they should look on that day, worked
 * on from the last reading of each comb; or, for a strip of the film, as they were read at one visit.
 * A bar that was never read stays unknown: it is never an empty bar.
 */
import { type FigureBook, value } from '../figures/book.ts';
import { bareShares, type Ink } from '../hive/contents.ts';
import { spotOn } from '../hive/hanging.ts';
import { barWidthMm, type HiveMeasures } from '../hive/hive-measures.ts';
import type { Comb } from '../hive/state.ts';
import type { Id } from '../journal/entry.ts';
import { addDays, type Day, daysBetween } from '../numbers/day.ts';
import { aged } from './ageing.ts';
import type { BroodCalendar } from './calendar.ts';
import { type CombCells, sharesOf } from './comb-cells.ts';
import type { CombHistory, CombReading } from './comb-history.ts';
import { seasonLaying } from './season-laying.ts';
import type { ColonyState } from './state.ts';
import type { BarView } from './view.ts';

export interface Nest {
  readonly state: ColonyState;
  readonly hive: Id;
  readonly measures: HiveMeasures;
  readonly calendar: BroodCalendar;
  readonly history: CombHistory;
  readonly book: FigureBook;
  readonly latitude: number | null;
  /** Chance that the queen laid on a day. */
  readonly laying: (day: Day) => number;
  /** Combs that hang, or hung, in this hive. */
  readonly combs: readonly Comb[];
}

/** A bar with what the totals need beside what is shown. */
export interface NestBar {
  readonly view: BarView;
  readonly cells: CombCells | null;
  readonly reading: CombReading | null;
}

/** The bay's bars as they should look on the day. `bareSince`: places known to have been given a bar without comb, with the day. */
export function barsToday(nest: Nest, from: number, to: number, day: Day, bareSince: ReadonlyMap<number, Day>): readonly NestBar[] {
  const hanging = combsOn(nest, day);
  return places(from, to).map((place) => {
    const comb = hanging.get(place) ?? null;
    const reading = comb === null ? null : (lastReading(nest.history.get(comb.id), day) ?? null);
    if (comb === null || reading === null) return { view: unread(nest, place, comb, bareSince.get(place) ?? null), cells: null, reading: null };
    return readBar(nest, place, comb, reading, day);
  });
}

/** The bars as read at one visit; what was not opened is unknown. */
export function barsAtVisit(nest: Nest, from: number, to: number, visit: Id, day: Day): readonly BarView[] {
  const hanging = combsOn(nest, day);
  const read = new Map<number, CombReading>();
  for (const list of nest.history.values()) {
    for (const reading of list) if (reading.visit === visit) read.set(reading.row.body.place, reading);
  }
  const all = [...read.keys()];
  return places(Math.min(from, ...all), Math.max(to, ...all)).map((place) => {
    const reading = read.get(place);
    const comb = reading === undefined ? (hanging.get(place) ?? null) : (nest.state.combs.get(reading.row.comb) ?? null);
    if (reading === undefined || comb === null) return unread(nest, place, comb, null);
    return viewOfReading(nest, place, comb, reading, reading.split?.cells ?? null, day);
  });
}

/** How much of what is ready is laid in on each day after the reading: the queen's chance times the turn of the season. */
export function layingAfter(nest: Nest, readOn: Day): (i: number) => number {
  const then = seasonLaying(readOn, nest.latitude, nest.book);
  return (i) => {
    const day = addDays(readOn, i + 1);
    const chance = nest.laying(day);
    return chance === 0 ? 0 : chance * Math.min(1, then === 0 ? 1 : seasonLaying(day, nest.latitude, nest.book) / then);
  };
}

function readBar(nest: Nest, place: number, comb: Comb, reading: CombReading, day: Day): NestBar {
  const start = reading.split?.cells ?? null;
  const days = daysBetween(reading.day, day);
  const cells = start === null ? null : aged(start, days, nest.calendar, layingAfter(nest, reading.day));
  return { view: viewOfReading(nest, place, comb, reading, cells, day), cells, reading };
}

function viewOfReading(nest: Nest, place: number, comb: Comb, reading: CombReading, cells: CombCells | null, day: Day): BarView {
  const { row, read, split } = reading;
  const built = builtShare(nest, comb, reading);
  const bare = built === 0;
  const same = reading.day === day;
  const ink: Ink = split === null || split.ink === 'guessed' ? 'guessed' : same ? 'seen' : 'worked out';
  return {
    ...base(nest, place, comb),
    kind: bare ? 'bare' : cells === null ? 'unknown' : 'comb', built,
    shares: bare ? bareShares : cells === null ? null : sharesOf(cells, nest.calendar),
    ink: bare ? (same ? 'seen' : 'worked out') : ink,
    bees: same ? read.bees : null,
    cells: row.body.cells ?? (row.body.cellsLooked === 'none seen' ? { open: 0, sealed: 0, torn: 0, emerged: 0 } : null),
    queenSeen: row.body.queen === 'seen', readOn: reading.day,
    spot: spotOn(comb, day) ?? comb.at,
  };
}

function unread(nest: Nest, place: number, comb: Comb | null, bareSince: Day | null): BarView {
  const bare = comb === null ? bareSince !== null : comb.built === 0;
  return {
    ...base(nest, place, comb), kind: bare ? 'bare' : 'unknown', built: bare ? 0 : (comb?.built ?? value(nest.book, 'built-unread-share')),
    shares: bare ? bareShares : null, ink: bare ? 'worked out' : 'guessed', bees: null, cells: null, queenSeen: false, readOn: bareSince,
    spot: comb?.at ?? null,
  };
}

function base(nest: Nest, place: number, comb: Comb | null): Pick<BarView, 'place' | 'comb' | 'mark' | 'widthMm'> {
  const bar = comb?.bar == null ? null : (nest.state.bars.get(comb.bar) ?? null);
  return { place, comb: comb?.id ?? null, mark: bar?.mark ?? null, widthMm: barWidthMm(nest.measures, bar) };
}

function builtShare(nest: Nest, comb: Comb, reading: CombReading): number {
  if (reading.built !== null) return reading.built;
  if (comb.built !== null && comb.built > 0) return comb.built;
  return value(nest.book, reading.read.combClass === 'building' ? 'building-share' : 'built-unread-share');
}

function lastReading(list: readonly CombReading[] | undefined, day: Day): CombReading | undefined {
  return list?.findLast((reading) => reading.day <= day);
}

/** Which comb hung where in the hive at the end of the day. */
function combsOn(nest: Nest, day: Day): ReadonlyMap<number, Comb> {
  const found = new Map<number, Comb>();
  for (const comb of nest.combs) {
    const spot = spotOn(comb, day);
    if (spot?.kind === 'place' && spot.hive === nest.hive && (comb.ended === null || comb.ended > day)) found.set(spot.place, comb);
  }
  return found;
}

/** Combs that hang, or ever hung, in the hive. */
export function combsOfHive(state: ColonyState, hive: Id): readonly Comb[] {
  return [...state.combs.values()].filter((comb) => comb.placings.some(({ spot }) => spot.kind === 'place' && spot.hive === hive));
}

function places(from: number, to: number): number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
}

