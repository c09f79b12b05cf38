/**
 * One colony as it is believed to be on one day, put together from the journal's state: the film as
 * it was read, the nest as it should look, the sums with their ranges, the queen. Nothing is kept
 * between calls; the state may reach beyond the day, which is then left out.
 */
import { type FigureBook, rangeOf } from '../figures/book.ts';
import { hiveMeasures } from '../hive/hive-measures.ts';
import { bayOn } from '../hive/stretch.ts';
import type { Id } from '../journal/entry.ts';
import { assert } from '../numbers/assert.ts';
import { type Day, daysBetween } from '../numbers/day.ts';
import { calendarOf } from './calendar.ts';
import { combHistory } from './comb-history.ts';
import { layingPerDay } from './laying-per-day.ts';
import { barsAtVisit, barsToday, boardToday, byVisit, combsOfHive, daysLaid, type Nest } from './nest-bars.ts';
import { type Believed, type Outlook, plainOutlook } from './outlook.ts';
import { latitudeOf } from './queen-breaks.ts';
import { roomReading } from './room-reading.ts';
import { searchReading } from './search-reading.ts';
import { solidBrood } from './solid-brood.ts';
import type { Colony, ColonyState, DatedEvent, Visit } from './state.ts';
import { combTotals } from './totals.ts';
import type { ColonyView, FilmFrame, QueenReading } from './view.ts';
import { visitSummary } from './visit-summaries.ts';
import { currentQueen, visitsInOrder } from './visits-of.ts';
import { lastStay, stayOn } from './whose.ts';

/**
 * Throws when the colony is not in the state or has never lived in a hive. `frames`: how many strips
 * of the film are made, the last ones.
 */
export function viewOf(
  state: ColonyState,
  colonyId: Id,
  day: Day,
  book: FigureBook,
  outlook: Outlook = plainOutlook,
  frames = Infinity,
): ColonyView {
  const colony = state.colonies.get(colonyId);
  assert(colony, `the colony ${colonyId} is in the state`);
  const ground = groundOf(state, colony, day);
  const believed = outlook(state, colony, day, book);
  const visits = visitsInOrder(state, colonyId, day);
  const nest = nestOf(state, colony, visits, day, book, believed, ground.hive.id);
  const last = visits.at(-1) ?? null;
  const bars = barsToday(nest, ground.from, ground.to, day, bareBars(state, colony, visits, ground, day, book));
  const board = boardToday(nest, ground.bay, ground.to + 1, day);
  const joined = joinedIn(state, ground.hive.id, ground.from, ground.to);
  const totals = combTotals(board === null ? bars : [...bars, board], nest.measures, last?.id ?? null, day, book);
  const idle = notLaying.has(believed.queen.state) || believed.laying(day) === 0;
  const laid = believed.layingPerDay ?? (idle ? null : layingPerDay(bars, totals, nest.calendar, book));
  const evidence = believed.evidence.at(-1);
  const events = (state.events.get(colonyId) ?? []).filter((event) => event.day <= day);
  const reign = currentQueen(state, colonyId, day);
  return {
    colony: colonyId,
    name: colony.name,
    day,
    origin: colony.origin,
    parent: colony.parent,
    began: colony.began,
    ended: colony.ended !== null && colony.ended.day <= day ? { day: colony.ended.day, how: colony.ended.how } : null,
    hive: ground.hive.id,
    hiveName: ground.hive.name,
    hiveBars: ground.hive.bars,
    bay: { from: ground.from, to: ground.to },
    gaps: [...(state.gaps.get(ground.hive.id) ?? [])].filter((place) => ground.from <= place && place <= ground.to),
    entrance: ground.hive.entrance,
    bars: bars.map((bar) => bar.view),
    ...(joined.length === 0 ? {} : { joined }),
    ...(board === null ? {} : { board: board.view }),
    film: visits.flatMap((visit, i) =>
      i < visits.length - frames ? [] : [frameOf(nest, colony, visit, visits[i - 1] ?? null, events)],
    ),
    totals: { ...totals, adults: believed.adults },
    layingPerDay: laid,
    room: roomReading(bars, totals, laid, nest.measures, nest.calendar, day, book),
    queen: believed.queen,
    cells: believed.cells,
    search:
      last === null || evidence === undefined ? null : searchReading(state, last, evidence, ground.to - ground.from + 1, book),
    solid: solidBrood(state, visits, day, book),
    visits: visits.map((visit) => visitSummary(state, visit)),
    events,
    queenMark: reign === null ? null : (state.queens.get(reign.queen)?.mark ?? null),
    queenSince: reign?.began ?? null,
    foreseen: believed.foreseen,
  };
}

/** Sets of which every comb hangs in the stretch. */
function joinedIn(state: ColonyState, hive: Id, from: number, to: number): NonNullable<ColonyView['joined']> {
  return [...state.joined.values()].flatMap(({ id, how, combs }) => {
    const spots = combs.map((comb) => state.combs.get(comb)?.at);
    const places = spots.flatMap((spot) => (spot?.kind === 'place' && spot.hive === hive ? spot.place : []));
    return combs.length > 0 && places.length === combs.length && places.every((place) => from <= place && place <= to)
      ? [{ id, how, places }]
      : [];
  });
}

const notLaying: ReadonlySet<QueenReading['state']> = new Set(['virgin', 'none', 'laying workers', 'drone layer']);

interface Ground {
  readonly hive: {
    readonly id: Id;
    readonly name: string;
    readonly bars: number;
    readonly entrance: 'first' | 'last' | 'side';
  };
  readonly bay: Id | null;
  readonly from: number;
  readonly to: number;
}

/** Where the colony lived on the day. */
function groundOf(state: ColonyState, colony: Colony, day: Day): Ground {
  const stay = stayOn(colony, day) ?? lastStay(colony);
  const hive = state.hives.get(stay?.hive ?? '');
  assert(hive, `the hive of the colony ${colony.id} is in the state`);
  const bay = state.bays.get(stay?.bay ?? '');
  const ends = bay === undefined ? { from: 1, to: hive.bars } : bayOn(bay, day);
  return { hive, bay: bay?.id ?? null, ...ends };
}

/** All that bars are worked out with. */
export function nestOf(
  state: ColonyState,
  colony: Colony,
  visits: readonly Visit[],
  day: Day,
  book: FigureBook,
  believed: Believed,
  hiveId: Id,
): Nest {
  const hive = state.hives.get(hiveId);
  assert(hive, `the hive ${hiveId} is in the state`);
  const calendar = calendarOf(book);
  const history = combHistory(state, colony, visits, day, calendar, book);
  return {
    state,
    hive: hiveId,
    book,
    calendar,
    measures: hiveMeasures(hive, book),
    daysLaid: daysLaid(believed.laying, latitudeOf(state), book),
    history,
    byVisit: byVisit(history),
    combs: combsOfHive(state, hiveId),
  };
}

/**
 * Places that were given a bar without comb, as long as none can have been drawn on it: all of a
 * swarm's bay, and bars given at a visit. After that nobody knows.
 */
function bareBars(
  state: ColonyState,
  colony: Colony,
  visits: readonly Visit[],
  ground: Ground,
  day: Day,
  book: FigureBook,
): ReadonlyMap<number, Day> {
  const bare = new Map<number, Day>();
  const hived = (state.events.get(colony.id) ?? []).find(({ event }) => event.kind === 'swarm hived');
  if (hived !== undefined) for (let place = ground.from; place <= ground.to; place += 1) bare.set(place, hived.day);
  for (const visit of visits) {
    for (const row of visit.readings) bare.delete(row.body.place);
    for (const place of visit.closed?.body.given ?? []) bare.set(place, visit.day);
    for (const place of visit.closed?.body.taken ?? []) bare.delete(place);
  }
  const drawn = rangeOf(book, 'bar-draw-days').high;
  return new Map([...bare].filter(([, since]) => daysBetween(since, day) <= drawn));
}

function frameOf(nest: Nest, colony: Colony, visit: Visit, before: Visit | null, events: readonly DatedEvent[]): FilmFrame {
  const bay = nest.state.bays.get(stayOn(colony, visit.day)?.bay ?? '');
  const read = visit.readings.map((row) => row.body.place);
  const ends = bay === undefined ? { from: Math.min(...read), to: Math.max(...read) } : bayOn(bay, visit.day);
  const since = events.filter(
    (event) => event.day <= visit.day && (before === null || event.day > before.day) && event.event.kind !== 'look',
  );
  // A colony that has moved is drawn in the trough in which it was read.
  const there = visit.hive === nest.hive ? nest : { ...nest, hive: visit.hive, combs: combsOfHive(nest.state, visit.hive) };
  return {
    visit: visit.id,
    day: visit.day,
    kind: visit.closed?.body.visitKind ?? 'not closed',
    by: visit.by,
    bars: barsAtVisit(there, ends.from, ends.to, visit.id, visit.day),
    follower: ends.to,
    event: since.at(-1)?.event ?? null,
  };
}
