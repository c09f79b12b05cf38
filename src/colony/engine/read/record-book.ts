/**
 * What the readings of one colony hold, worked out once for all that the model takes from them: its visits, the
 * readings of its combs in order, the hive's measures, the bay on a day. Only what was known by a day goes into
 * anything of that day, so that a later visit changes nothing that was taken in before it.
 */
import type { FigureBook } from '../../../figures/book.ts';
import { value } from '../../../figures/book.ts';
import { spotOn } from '../../../hive/hanging.ts';
import { type HiveMeasures, hiveMeasures, type PerDm2, perCombDm2 } from '../../../hive/hive-measures.ts';
import { bayOn } from '../../../hive/stretch.ts';
import type { Comb } from '../../../hive/state.ts';
import type { Id } from '../../../journal/entry.ts';
import { assert } from '../../../numbers/assert.ts';
import { addDays, type Day } from '../../../numbers/day.ts';
import { type BroodCalendar, calendarOf } from '../../calendar.ts';
import { builtNow, builtUnread, type CombHistory, combHistory, type CombReading, lastTold } from '../../comb-history.ts';
import { byVisit, combsOfHive, type DayLaid, daysLaid } from '../../nest-bars.ts';
import { latitudeOf } from '../../queen-breaks.ts';
import type { Colony, ColonyState, Visit } from '../../state.ts';
import { visitsInOrder } from '../../visits-of.ts';
import { lastStay, stayOn } from '../../whose.ts';

export interface RecordBook {
  readonly state: ColonyState;
  readonly colony: Colony;
  readonly book: FigureBook;
  /** What happened or was read later is not in it. */
  readonly until: Day;
  readonly visits: readonly Visit[];
  readonly history: CombHistory;
  readonly byVisit: ReadonlyMap<Id, readonly CombReading[]>;
  readonly calendar: BroodCalendar;
  readonly per: PerDm2;
  readonly latitude: number | null;
  /** As if she laid all the time: how full combs left shut are compared with each other, no more. */
  readonly daysLaid: (dayNumber: number) => DayLaid;
}

/** Throws when the colony is not in the state. */
export function recordBook(state: ColonyState, colonyId: Id, until: Day, book: FigureBook): RecordBook {
  const colony = state.colonies.get(colonyId);
  assert(colony, `the colony ${colonyId} is in the state`);
  const visits = visitsInOrder(state, colonyId, until);
  const calendar = calendarOf(book);
  const history = combHistory(state, colony, visits, until, calendar, book);
  const latitude = latitudeOf(state);
  return {
    state,
    colony,
    book,
    until,
    visits,
    history,
    byVisit: byVisit(history),
    calendar,
    per: perCombDm2(book),
    latitude,
    daysLaid: daysLaid(() => 1, latitude, book),
  };
}

export interface Trough {
  readonly hive: Id;
  readonly measures: HiveMeasures;
  /** Both faces of a comb built to the walls, in worker cells. */
  readonly cellsPerBar: number;
  readonly from: number;
  readonly to: number;
}

/** Where the colony lives at the end of the day; null where its hive is not known. */
export function troughOn({ state, colony, book, per }: RecordBook, day: Day): Trough | null {
  const stay = stayOn(colony, day) ?? lastStay(colony);
  const hive = state.hives.get(stay?.hive ?? '');
  if (hive === undefined) return null;
  const bay = state.bays.get(stay?.bay ?? '');
  const ends = bay === undefined ? { from: 1, to: hive.bars } : bayOn(bay, day);
  const measures = hiveMeasures(hive, book);
  return { hive: hive.id, measures, cellsPerBar: measures.fullFaceDm2 * per.workerCells.likely, ...ends };
}

/** Combs that hang in the colony's bay when the day begins, by place. */
export function combsBefore(records: RecordBook, day: Day): ReadonlyMap<number, Comb> {
  const before = addDays(day, -1);
  const trough = troughOn(records, before);
  const found = new Map<number, Comb>();
  if (trough === null) return found;
  for (const comb of combsOfHive(records.state, trough.hive)) {
    const spot = spotOn(comb, before);
    if (spot?.kind !== 'place' || spot.hive !== trough.hive || (comb.ended !== null && comb.ended <= before)) continue;
    if (trough.from <= spot.place && spot.place <= trough.to) found.set(spot.place, comb);
  }
  return found;
}

/** The last reading of a comb on or before the day; `apart` is a visit whose own readings do not count. */
export function lastReading(records: RecordBook, comb: Id, day: Day, apart: Id | null = null): CombReading | null {
  return lastTold(records.history.get(comb), day, apart);
}

/** Built share of a comb as read, 0 … 1; what was never read is taken as the figure says. */
export function builtOf(reading: CombReading | null, book: FigureBook): number {
  if (reading === null) return value(book, 'built-unread-share');
  return builtNow(reading, builtUnread(reading, book));
}
