/**
 * All counted readings of the combs of one colony, comb by comb in order, each worked out with what
 * was known before it. Combs that came from elsewhere bring their readings with them.
 */
import { type FigureBook, value } from '../figures/book.ts';
import { spotOn } from '../hive/hanging.ts';
import type { Piece } from '../hive/pieces.ts';
import type { Comb, Spot } from '../hive/state.ts';
import type { Id } from '../journal/entry.ts';
import { addDays, type Day, earlier } from '../numbers/day.ts';
import type { BroodCalendar } from './calendar.ts';
import { type CombRead, combRead } from './comb-read.ts';
import { possibleAges } from './possible-ages.ts';
import { type CombSplit, splitContents } from './split-contents.ts';
import type { Colony, ColonyState, ReadingRow, Visit } from './state.ts';
import { countedRows, rowsByComb } from './visits-of.ts';

export interface CombReading {
  readonly row: ReadingRow;
  readonly visit: Id;
  readonly day: Day;
  readonly read: CombRead;
  /**
   * Null when the reading tells nothing of the contents. Worked out when it is first asked for: most
   * readings of a long journal never are.
   */
  readonly split: CombSplit | null;
  /** Built share as far as it was known at that reading; null when it never was. */
  readonly built: number | null;
  /** Two combs hang side by side on the bar, and both were read as one. */
  readonly double: boolean;
  /** What is left of what was built by the last reading of it, since pieces were cut from it. */
  readonly left: number;
  /** Nobody read it anew: a piece was cut on that day, and what was read before holds for what is left. */
  readonly cutOn?: Day;
}

/** The last that tells of the comb on the day: as it was read, or as it was cut since. */
export function lastTold(list: readonly CombReading[] | undefined, day: Day, but: Id | null = null): CombReading | null {
  return list?.findLast((reading) => (reading.cutOn ?? reading.day) <= day && reading.visit !== but) ?? null;
}

/** Built share of the outline, what hangs beside it on the bar included; `otherwise` where nobody read how much. */
export function builtNow(reading: CombReading, otherwise: number): number {
  return (reading.built ?? otherwise) * (reading.double ? 2 : 1) * reading.left;
}

/** What a comb counts as of which nobody read how much is built. */
export function builtUnread(reading: CombReading, book: FigureBook): number {
  return value(book, reading.read.combClass === 'building' ? 'building-share' : 'built-unread-share');
}

export type CombHistory = ReadonlyMap<Id, readonly CombReading[]>;

export function combHistory(
  state: ColonyState,
  colony: Colony,
  visits: readonly Visit[],
  day: Day,
  calendar: BroodCalendar,
  book: FigureBook,
): CombHistory {
  const found = new Map<Id, CombReading[]>();
  for (const visit of withOthers(state, colony, visits, day)) {
    for (const row of rowsByComb(countedRows(state, visit)).values()) {
      const list = found.get(row.comb) ?? [];
      if (list.length === 0) found.set(row.comb, list);
      list.push(workedOut(state, colony, visit, row, list, calendar, book));
    }
  }
  for (const piece of state.pieces) if (piece.day <= day) cutFrom(found, piece);
  return found;
}

/** What was read of the parent by then holds for what is left of it, and for the piece. */
function cutFrom(found: Map<Id, CombReading[]>, { piece, parent, day, share }: Piece): void {
  const list = found.get(parent) ?? [];
  const last = lastTold(list, day);
  if (last === null) return;
  const at = list.indexOf(last) + 1;
  const later = list.slice(at);
  const measured = later.findIndex(({ row }) => typeof row.body.built8 === 'number' || row.body.combClass === 'bare');
  const unmeasured = later.slice(0, measured < 0 ? undefined : measured).map((reading) => asCut(reading, 1 - share));
  list.splice(at, unmeasured.length, asCut(last, 1 - share, day), ...unmeasured);
  const own = asCut(last, share, day);
  found.set(piece, [{ ...own, row: { ...own.row, comb: piece } }, ...(found.get(piece) ?? [])]);
}

function asCut(reading: CombReading, left: number, cutOn?: Day): CombReading {
  return {
    ...reading,
    get split() {
      return reading.split;
    },
    left: reading.left * left,
    ...(cutOn === undefined ? {} : { cutOn }),
  };
}

function workedOut(
  state: ColonyState,
  colony: Colony,
  visit: Visit,
  row: ReadingRow,
  before: readonly CombReading[],
  calendar: BroodCalendar,
  book: FigureBook,
): CombReading {
  const last = before.at(-1) ?? null;
  const read = combRead(row.body);
  const comb = state.combs.get(row.comb) ?? null;
  const past = { firstCells: firstCells(colony, comb, book), last };
  const built = builtBy(row, read, last?.built ?? null);
  let split: CombSplit | null | undefined;
  return {
    row,
    visit: visit.id,
    day: visit.day,
    read,
    get split() {
      if (split === undefined) split = splitContents(read, possibleAges(past, visit.day, calendar), calendar, book);
      return split;
    },
    built,
    double: row.body.double ?? last?.double ?? false,
    left: 1,
  };
}

/** Built share in eighths where read; a bar without comb is 0; nothing read leaves what was known. */
function builtBy(row: ReadingRow, read: CombRead, known: number | null): number | null {
  const { built8 } = row.body;
  if (typeof built8 === 'number') return built8 / eighths;
  if (read.combClass === 'bare') return 0;
  return known === 0 ? null : known;
}

const eighths = 8;

/**
 * On the combs of a hived swarm nothing can be older than its first eggs: neither on those that have
 * never hung elsewhere, nor on those that hung there before, which nobody tended. A comb given later
 * may hold any.
 */
function firstCells(colony: Colony, comb: Comb | null, book: FigureBook): Day | null {
  const lag = Math.round(value(book, 'swarm-first-cells'));
  if (comb?.born) return addDays(comb.born.earliest, lag);
  const hived = colony.stays[0];
  if (colony.origin !== 'swarm' || comb === null || hived === undefined) return null;
  const here = (spot: Spot | null): boolean => spot?.kind === 'place' && spot.hive === hived.hive;
  const first = comb.placings[0];
  const own = first !== undefined && here(first.spot) && first.from >= hived.from;
  // A swarm that somebody wrote down only when it had stood for long is as old as it was said to be.
  return own || here(spotOn(comb, hived.from)) ? addDays(earlier(hived.from, colony.began.latest), lag) : null;
}

/** The colony's own visits and, when any of its combs has hung elsewhere, those of the colonies that read it there. */
function withOthers(state: ColonyState, colony: Colony, visits: readonly Visit[], day: Day): readonly Visit[] {
  const others = new Set<Id>();
  for (let parent = colony.parent; parent !== null && !others.has(parent) && colony.origin === 'split';) {
    others.add(parent);
    parent = state.colonies.get(parent)?.parent ?? null;
  }
  for (const { event } of state.events.get(colony.id) ?? []) if (event.kind === 'took in') others.add(event.from);
  for (const id of visitsElsewhere(state, colony)) others.add(id);
  others.delete(colony.id);
  if (others.size === 0) return visits;
  const more = [...others].flatMap((id) => (state.visitsOf.get(id) ?? []).flatMap((visit) => state.visits.get(visit) ?? []));
  return [...visits, ...more.filter((visit) => visit.day <= day)].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
}

/** Colonies living now or then in hives in which a comb of this colony has hung. */
function visitsElsewhere(state: ColonyState, colony: Colony): readonly Id[] {
  const hives = new Set(colony.stays.map((stay) => stay.hive));
  const foreign = new Set<Id>();
  for (const hive of hives) {
    for (const comb of state.placed.get(hive)?.values() ?? []) {
      for (const { spot } of state.combs.get(comb)?.placings ?? []) if (spot.kind === 'place') foreign.add(spot.hive);
    }
  }
  if (foreign.size === 1 && [...foreign].every((hive) => hives.has(hive)) && !sharesTrough(state, colony)) return [];
  return [...state.colonies.values()].filter((one) => one.stays.some((stay) => foreign.has(stay.hive))).map((one) => one.id);
}

function sharesTrough(state: ColonyState, colony: Colony): boolean {
  const hive = colony.stays.at(-1)?.hive;
  return [...state.colonies.values()].some((one) => one.id !== colony.id && one.stays.some((stay) => stay.hive === hive));
}
