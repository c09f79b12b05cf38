/**
 * The queen's state as a chain that steps by days and remembers how long it has been where it is. One day of one
 * particle costs a handful of multiplications and allocates nothing; the exact filter (`filter.ts`) walks the same
 * arrays. Crowding, season and hazard of loss come in from outside as factors.
 */
import { type FigureBook, value } from '../../figures/book.ts';
import { chainStates, stateIndex } from './states.ts';
import { chainEvents, scales, type Way, waysOf } from './ways.ts';

export interface QueenChain {
  /** In the order of their states; a way is named by its place here. */
  readonly ways: readonly Way[];
  /** Ways of state s are `firstWay[s]` up to, without, `firstWay[s + 1]`. */
  readonly firstWay: Int32Array;
  readonly to: Uint8Array;
  /** Places in `chainEvents` and in `scales`. */
  readonly event: Uint8Array;
  readonly scaledBy: Uint8Array;
  readonly rare: Uint8Array;
  /** Hazards of way w: from `hazardAt[w]`, `hazardDays[w]` of them. */
  readonly hazards: Float64Array;
  readonly hazardAt: Int32Array;
  readonly hazardDays: Int32Array;
  /** Days in a state from which nothing changes any more. */
  readonly memory: Int32Array;
  /** Days since the last fertile egg after which no larva is young enough to become a queen. */
  readonly rescueDays: number;
  readonly slows: { readonly fromDay: number; readonly share: number; readonly failing: number };
}

/** Multiply the ways that they name; 1 stands for a crowded colony at the height of the season. */
export interface Drives {
  readonly urge: number;
  readonly season: number;
  readonly loss: number;
}

export function queenChain(book: FigureBook): QueenChain {
  const all = waysOf(book);
  const ways = chainStates.flatMap(({ name }) => all.filter(({ from }) => from === name));
  const lengths = ways.map(({ hazardByDaysIn }) => hazardByDaysIn.length);
  const starts = lengths.map((_, index) => lengths.slice(0, index).reduce((a, b) => a + b, 0));
  const hazards = new Float64Array(lengths.reduce((a, b) => a + b, 0));
  ways.forEach(({ hazardByDaysIn }, index) => hazards.set(hazardByDaysIn, starts[index]));
  const before = (state: number): number => ways.filter(({ from }) => stateIndex[from] < state).length;
  const cellAge = value(book, 'queen-sealing-age');
  return {
    ways,
    firstWay: Int32Array.from({ length: chainStates.length + 1 }, (_, state) => before(state)),
    to: Uint8Array.from(ways, ({ to }) => stateIndex[to]),
    event: Uint8Array.from(ways, ({ event }) => chainEvents.indexOf(event)),
    scaledBy: Uint8Array.from(ways, ({ scaledBy }) => scales.indexOf(scaledBy)),
    rare: Uint8Array.from(ways, ({ rare }) => Number(rare)),
    hazards,
    hazardAt: Int32Array.from(starts),
    hazardDays: Int32Array.from(lengths),
    memory: Int32Array.from(chainStates, ({ name }) =>
      Math.max(1, longestSeen, ...ways.filter(({ from }) => from === name).map((one) => one.hazardByDaysIn.length)),
    ),
    rescueDays: Math.round(value(book, 'rescue-window')),
    slows: {
      fromDay: Math.round(cellAge - value(book, 'swarm-shortening')),
      share: value(book, 'queen-chain-swarm-laying'),
      failing: value(book, 'queen-chain-failing-laying'),
    },
  };
}

/** Days in a state for which what is seen of its cells still changes; see `seen.ts`. */
const longestSeen = 16;

/**
 * One day: the place of the way taken, or -1 to stay. `daysIn` counts whole days in the state, 0 on the day of
 * entering; `unit` is uniform between 0 and 1. After a way has been taken the caller sets the state to `to` (by
 * `arrivesAt`) and its days to 0.
 */
export function chainDay(
  chain: QueenChain,
  state: number,
  daysIn: number,
  urge: number,
  unit: number,
  season = 1,
  loss = 1,
): number {
  const end = chain.firstWay[state + 1]!;
  const scale = fitting(chain, state, daysIn, urge, season, loss, 1);
  let passed = 0;
  for (let way = chain.firstWay[state]!; way < end; way += 1) {
    passed += scale * wayChance(chain, way, daysIn, urge, season, loss);
    if (unit < passed) return way;
  }
  return -1;
}

/**
 * The same with rare ways proposed `boost` times as often, as far as there is room. Adds to `logWeight[0]` the
 * logarithm of chance over proposal of what was chosen, so that weighted particles stay exact.
 */
export function guidedChainDay(
  chain: QueenChain,
  state: number,
  daysIn: number,
  urge: number,
  unit: number,
  boost: number,
  logWeight: Float64Array,
  season = 1,
  loss = 1,
): number {
  const first = chain.firstWay[state]!;
  const count = chain.firstWay[state + 1]! - first;
  const chances = chancesOfDay;
  let [all, rare] = [0, 0];
  for (let i = 0; i < count; i += 1) {
    const chance = wayChance(chain, first + i, daysIn, urge, season, loss);
    chances[i] = chance;
    all += chance;
    if (chain.rare[first + i] === 1) rare += chance;
  }
  const scale = all > 1 ? 1 / all : 1;
  const push = pushFor(rare * scale, (all - rare) * scale, boost);
  let passed = 0;
  for (let i = 0; i < count; i += 1) {
    const isRare = chain.rare[first + i] === 1;
    passed += scale * chances[i]! * (isRare ? push : 1);
    if (unit < passed) {
      if (isRare) logWeight[0]! -= Math.log(push);
      return first + i;
    }
  }
  if (push !== 1) logWeight[0]! += Math.log((1 - all * scale) / (1 - passed));
  return -1;
}

/** Of the ways of one state, for a moment. */
const mostWays = 16;
const chancesOfDay = new Float64Array(mostWays);

/** Chance of a way on a day, before ways that sum to more than 1 are brought down together. */
export function wayChance(chain: QueenChain, way: number, daysIn: number, urge: number, season: number, loss: number): number {
  const last = chain.hazardDays[way]! - 1;
  const hazard = chain.hazards[chain.hazardAt[way]! + (daysIn < last ? daysIn : last)]!;
  const by = chain.scaledBy[way]!;
  return by === 0 ? hazard : hazard * (by === 1 ? urge : by === 2 ? season : loss);
}

/** Where a way really leads: an orphaned colony without young brood has nothing to raise a queen from. */
export function arrivesAt(chain: QueenChain, to: number, daysSinceEgg: number): number {
  return to === stateIndex.orphaned && daysSinceEgg > chain.rescueDays ? stateIndex.none : to;
}

/** Share of her laying that is left in a state: 0 where no fertile egg is laid; she slims before a swarm. */
export function layingShare(chain: QueenChain, state: number, daysIn: number): number {
  if (chainStates[state]!.queenLays === false) return 0;
  if (state === stateIndex['swarm cells sealed']) return chain.slows.share;
  if (state === stateIndex['swarm cells open'] && daysIn >= chain.slows.fromDay) return chain.slows.share;
  return state === stateIndex.failing ? chain.slows.failing : 1;
}

/** 1, or less where the ways' chances would sum to more than 1. */
export function fitting(
  chain: QueenChain,
  state: number,
  daysIn: number,
  urge: number,
  season: number,
  loss: number,
  most: number,
): number {
  let sum = 0;
  for (let way = chain.firstWay[state]!; way < chain.firstWay[state + 1]!; way += 1) {
    sum += wayChance(chain, way, daysIn, urge, season, loss);
  }
  return sum > most ? most / sum : 1;
}

/** How far rare ways can be pushed: half of the room that is left stays for what is not rare. */
function pushFor(rare: number, other: number, boost: number): number {
  return rare === 0 ? 1 : Math.max(1, Math.min(boost, (1 - other) / 2 / rare));
}
