/**
 * Views for the tests of this room: a sound colony of May that each test changes in the part it is about,
 * and views put together by dice for the properties. Nothing outside tests uses it.
 */
import type { Foreseen, Look, Question } from '../colony/foreseen.ts';
import { type Sign, signs } from '../colony/signs.ts';
import type { BarView, CellsReading, ColonyView, QueenReading, Total, TotalName, VisitSummary } from '../colony/view.ts';
import { printedBook } from '../figures/book.ts';
import { bareShares, type Shares } from '../hive/contents.ts';
import { addDays, type Day } from '../numbers/day.ts';
import { exactly, type Range } from '../numbers/range.ts';
import { type Window, windowOf } from '../numbers/window.ts';
import type { DayWeather } from '../weather/state.ts';
import type { Advice } from './advice.ts';
import { saying } from './cited.ts';
import type { Facts } from './rule.ts';

export const today: Day = '2014-05-16';

export function range(low: number, likely: number, high: number): Range {
  return { low, likely, high };
}

export function span(from: Day, to: Day = from): Window {
  return windowOf(from, to);
}

/** A visit that is due from today on; each test changes what it is about. */
export function anAdvice(colony: string, given: Partial<Advice> = {}): Advice {
  return {
    rule: 'visit-due',
    colony,
    day: today,
    verb: 'open',
    act: 'open',
    places: [],
    window: span(today, '2014-05-20'),
    say: saying('due.never-why'),
    reasons: [],
    chance: null,
    wouldChange: [],
    forbids: [],
    cautions: [],
    weight: 0.5,
    ...given,
  };
}

export function total(given: Range): Total {
  return { seen: given, carried: exactly(0), total: given, ink: 'worked out' };
}

export function comb(place: number, shares: Partial<Shares>, built = 1): BarView {
  const filled = Object.values(shares).reduce((sum, share) => sum + share, 0);
  return {
    place,
    comb: `comb-${place}`,
    mark: null,
    widthMm: 35,
    kind: 'comb',
    built,
    shares: { ...bareShares, empty: 1 - filled, ...shares },
    ink: 'worked out',
    bees: 0.8,
    cells: null,
    queenSeen: false,
    readOn: '2014-05-08',
    spot: null,
  };
}

export function bareBar(place: number): BarView {
  return { ...comb(place, {}, 0), comb: null, kind: 'bare', shares: null };
}

export function visit(day: Day, given: Partial<VisitSummary> = {}): VisitSummary {
  return {
    id: `visit-${day}`,
    day,
    kind: 'usual',
    by: 'keeper',
    barsOpened: 10,
    temper: 'calm',
    temperNotes: [],
    straight: null,
    signs: [],
    cellsCut: false,
    entry: `closed-${day}`,
    ...given,
  };
}

export function cellsOf(given: Partial<CellsReading> = {}): CellsReading {
  return {
    counts: { open: 6, sealed: 0, torn: 0, emerged: 0 },
    likelyKind: 'swarm',
    sealed: span('2014-05-18', '2014-05-20'),
    leaves: span('2014-05-18', '2014-05-22'),
    virginEmerges: span('2014-05-25', '2014-05-29'),
    places: [3, 4],
    from: ['reading-cells'],
    ...given,
  };
}

const soundQueen: QueenReading = {
  state: 'laying',
  eggs: 'seen',
  youngest: 'egg',
  lastLaid: span('2014-05-05', '2014-05-08'),
  contradictory: false,
  virginDays: null,
  firstEggs: null,
  nextTelling: null,
  from: ['reading-queen'],
};

const soundBars: readonly BarView[] = [
  comb(1, { honey: 0.5, bread: 0.2 }),
  ...[2, 3, 4, 5, 6, 7].map((place) => comb(place, { sealed: 0.35, larva: 0.15, egg: 0.1, bread: 0.1, honey: 0.15 })),
  comb(8, { honey: 0.7 }),
  comb(9, { honey: 0.6 }),
  comb(10, { nectar: 0.4 }),
];

const broodful: readonly BarView[] = [...soundBars.slice(1, 7), soundBars[2]!, soundBars[3]!].map((bar, i) => ({
  ...bar,
  place: i + 1,
}));

const noTotals = Object.fromEntries(
  [
    'honey',
    'nectar',
    'bread',
    'empty',
    'drone',
    'emerging',
    'sealed',
    'larva',
    'egg',
    'adults',
    'honeyKg',
    'breadKg',
    'workerCells',
    'emptyInBrood',
  ].map((name) => [name, total(exactly(0))]),
) as Record<TotalName, Total>;

/** A sound colony of May, last opened eight days ago, with plenty of room and food. */
export function aView(
  given: Partial<Omit<ColonyView, 'queen' | 'totals'>> & {
    readonly queen?: Partial<QueenReading>;
    readonly totals?: Partial<Record<TotalName, Total>>;
  } = {},
): ColonyView {
  const { queen, totals, ...rest } = given;
  return {
    colony: 'alder',
    name: 'Alder',
    day: today,
    origin: 'unknown',
    parent: null,
    began: span('2013-05-01'),
    ended: null,
    hive: 'hive-1',
    hiveName: 'First',
    hiveBars: 24,
    gaps: [],
    bay: { from: 1, to: 10 },
    entrance: 'first',
    bars: soundBars,
    film: [],
    totals: {
      ...noTotals,
      adults: total(range(18_000, 21_000, 25_000)),
      honeyKg: total(range(6.5, 8.2, 10)),
      ...totals,
    },
    layingPerDay: range(1000, 1200, 1400),
    room: null,
    queen: { ...soundQueen, ...queen },
    cells: null,
    search: null,
    solid: null,
    visits: [visit('2014-05-12')],
    events: [],
    queenMark: null,
    queenSince: null,
    foreseen: null,
    ...rest,
  };
}

export function facts(view: ColonyView, given: Partial<Omit<Facts, 'view'>> = {}): Facts {
  return { view, book: printedBook, weather: null, latitude: 40.7, authority: null, ...given };
}

export function weatherOf(lowC: number | null, highC: number | null, day: Day = today): DayWeather {
  return { day, lowC, highC, typedLow: null, typedHigh: null, windMs: null, rainMm: null, entry: 'weather-entry' };
}

/** Whole numbers by dice: `roll(n)` gives 0 to n − 1. */
type Roll = (sides: number) => number;

/** What the dice can make: a choice, a day within a month of the view's, a window, a range, or nothing. */
interface Dice {
  readonly roll: Roll;
  readonly one: <T>(...options: readonly T[]) => T;
  readonly near: () => Day;
  readonly window: () => Window;
  readonly maybe: <T>(make: () => T) => T | null;
  readonly some: (scale: number) => Range;
}

/** Facts by dice. Any combination may come up. */
export function rolledFacts(roll: Roll): Facts {
  const day = addDays('2014-01-01', roll(365));
  const dice = diceOf(roll, day);
  const { one, maybe, window, some } = dice;
  const visits = Array.from({ length: roll(5) }, () => addDays(day, -roll(70))).sort();
  const view = aView({
    day,
    visits: visits.map((on) => rolledVisit(on, dice)),
    origin: one('swarm', 'split', 'unknown'),
    began: one(span('2013-05-01'), span(addDays(day, -60))),
    entrance: one('first', 'last', 'side'),
    ...rolledNest(dice),
    queen: rolledQueen(dice),
    cells: maybe(() => rolledCells(dice)),
    search: maybe(() => rolledSearch(dice)),
    solid: maybe(() => ({ percent: 70, lo95: 60, hi95: one(78, 90), from: ['reading-solid'] })),
    events: rolledEvents(dice),
    queenSince: one(null, window(), span(addDays(day, -45)), span(addDays(day, -800))),
    totals: { adults: total(some(20_000)), honeyKg: total(some(8)) },
    foreseen: maybe(() => foreseenLook(day, rolledLook(day, dice))),
  });
  const weather = maybe(() => weatherOf(one(null, 4, 12), one(null, 8, 13, 24, 34), day));
  const authority = one(null, { name: 'the county inspector', phone: 'entered by the keeper' });
  return facts(view, { weather, latitude: one(null, 40.7, -37), authority });
}

function diceOf(roll: Roll, day: Day): Dice {
  const near = (): Day => addDays(day, roll(60) - 30);
  return {
    roll,
    near,
    one: <T>(...options: readonly T[]): T => options[roll(options.length)] as T,
    window: () => {
      const from = near();
      return span(from, addDays(from, roll(20)));
    },
    maybe: (make) => (roll(2) === 0 ? null : make()),
    some: (scale) => {
      const low = roll(scale);
      const likely = low + roll(scale);
      return range(low, likely, likely + roll(scale));
    },
  };
}

/** What the model tells, of which advice reads the look alone. */
export function foreseenLook(day: Day, look: Look): Foreseen {
  return { day, look } as Foreseen;
}

function rolledLook(day: Day, { roll, one, maybe }: Dice): Look {
  const asks = one<readonly Question[]>([], ['cells'], ['room'], ['stores', 'cells'], ['eggs', 'room']);
  const openOn = maybe(() => addDays(day, roll(30)));
  const reasons = asks.filter((ask) => ask !== 'room');
  return {
    changesAct: roll(11) / 10,
    questions: asks.map((ask) => ({ ask, chance: roll(11) / 10, places: one([], [4], [3, 7]) })),
    openOn,
    openFor: openOn === null ? null : one('long', ...reasons),
    harms: roll(4) === 0,
  };
}

function rolledNest({ roll, one, maybe, window, some }: Dice): Pick<ColonyView, 'bars' | 'hiveBars' | 'joined' | 'room'> {
  const bar = (place: number): BarView =>
    one(bareBar(place), comb(place, { sealed: 0.4, egg: 0.1 }, one(0.1, 1)), comb(place, { honey: 0.9 }), {
      ...comb(place, {}),
      attached: 'attached',
    });
  return {
    bars: roll(4) === 0 ? broodful : Array.from({ length: roll(14) }, (_, index) => bar(index + 1)),
    hiveBars: one(11, 13, 24),
    joined: one([], [], [{ id: 'event-joined', how: 'across bars', places: [2, 3] }]),
    room: maybe(() => ({
      empty: some(2000),
      emergingPerDay: some(900),
      laidPerDay: some(900),
      nectarPerDay: some(200),
      fullOn: maybe(window),
      bareBars: roll(4),
    })),
  };
}

const queenStates = [
  'laying',
  'cells open',
  'cells sealed',
  'virgin',
  'new queen laying',
  'failing',
  'drone layer',
  'none',
  'laying workers',
  'unknown',
] as const;

function rolledQueen({ roll, one, maybe, window, near }: Dice): Partial<QueenReading> {
  return {
    state: one('laying', 'laying', 'laying', ...queenStates),
    eggs: one('seen', 'none seen', 'not looked'),
    lastLaid: maybe(window),
    virginDays: maybe(window),
    firstEggs: maybe(window),
    nextTelling: maybe(near),
    contradictory: roll(4) === 0,
  };
}

function rolledCells({ roll, one, maybe, window }: Dice): CellsReading {
  return cellsOf({
    counts: { open: roll(8), sealed: roll(8), torn: roll(2), emerged: roll(2) },
    likelyKind: one('swarm', 'supersedure', 'emergency', null),
    sealed: maybe(window),
    leaves: maybe(window),
    virginEmerges: maybe(window),
    places: one([], [3], [3, 4, 7]),
  });
}

function rolledSearch({ roll, one }: Dice): ColonyView['search'] {
  const missAll = [
    { cells: 1, chance: 0.5 },
    { cells: 3, chance: roll(11) / 10 },
  ];
  return { barsInBay: 10, barsOpened: roll(11), brushed: one(true, false, null), shareLooked: roll(11) / 10, missAll };
}

function rolledEvents({ roll, near }: Dice): ColonyView['events'] {
  const rolledFallen = roll(2) === 0 ? 'honey' : 'brood';
  const raised = roll(2) === 0;
  const all: ColonyView['events'] = [
    { day: near(), entry: 'event-hived', event: { kind: 'swarm hived', parent: null } },
    { day: near(), entry: 'event-fed', event: { kind: 'fed', what: 'syrup', amount: null } },
    {
      day: near(),
      entry: 'event-queen',
      event: { kind: 'queen began', queen: 'queen', how: raised ? 'raised here' : 'introduced' },
    },
    { day: near(), entry: 'event-cut', event: { kind: 'cells cut' } },
    { day: near(), entry: 'event-fell', event: { kind: 'comb fell', place: 1 + roll(9), what: rolledFallen, done: 'taken out' } },
    { day: near(), entry: 'event-split', event: { kind: 'split off', child: 'child', queenSide: 'unknown', combs: [] } },
    { day: near(), entry: 'event-union', event: { kind: 'took in', from: 'other' } },
    { day: near(), entry: 'event-look', event: { kind: 'look', seen: ['robbing'], flight: 'many', pollenIn: null } },
    { day: near(), entry: 'event-escape', event: { kind: 'bee escape', what: 'set', after: 1 + roll(9) } },
  ];
  return all.filter(() => roll(2) === 0);
}

function rolledVisit(on: Day, { roll, one }: Dice): VisitSummary {
  const rolled = signs[roll(signs.length)] as Sign;
  return visit(on, {
    kind: one('usual', 'glance', 'after a swarm'),
    barsOpened: roll(11),
    temper: one(null, 'calm', 'edgy', 'stinging'),
    temperNotes: one([], ['after rain'], ['followed people'], ['dropped a comb', 'robbing about']),
    straight: one(null, 'straight', 'bent', 'crossed'),
    signs: one([], [], [], [{ code: rolled.code, entry: `sign-${on}` }]),
    cellsCut: roll(4) === 0,
  });
}
