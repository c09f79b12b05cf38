/**
 * The queen's day in one particle: her state moves on by the chain, faster to swarming where bees are many and
 * cells are few; when a swarm leaves it takes its bees and its honey. Rare ways are proposed more often than
 * they happen, so that some particles hold each story before it is seen; the log weight makes up for it.
 */
import { nextNormal, nextUnit, type Stream } from '../../numbers/streams.ts';
import { arrivesAt, guidedChainDay, layingShare } from '../queen-chain/chain.ts';
import { chainStates, stateIndex } from '../queen-chain/states.ts';
import { chainEvents } from '../queen-chain/ways.ts';
import type { EngineConstants } from './constants.ts';
import { logit } from './taken/queen.ts';
import { adultDays, adultsAt, adultsOfParticle, broodAt, broodDays, part } from './particle.ts';
import { power, yearDay } from './season.ts';

const eventAt = {
  swarm: chainEvents.indexOf('swarm leaves'),
  after: chainEvents.indexOf('after-swarm leaves'),
  eggs: chainEvents.indexOf('eggs begin'),
};
/** Which states lay worker eggs, by index: read for every particle and day. */
const workersLaid = Uint8Array.from(chainStates, ({ queenLays }) => Number(queenLays));
const dronesLaid = Uint8Array.from(chainStates, ({ dronesOnly }) => Number(dronesOnly));
const weight = new Float64Array(1);

/** Moves the queen's state on by a day; hands back the log weight of what was proposed. */
export function queenDay(
  c: EngineConstants,
  day: number,
  values: Float64Array,
  at: number,
  share: number,
  urge: number,
  stream: Stream,
): number {
  const state = values[at + part.queen]!;
  const daysIn = values[at + part.queenDays]!;
  weight[0] = 0;
  const way = guidedChainDay(c.chain, state, daysIn, urge, nextUnit(stream), c.queen.guided, weight, share);
  if (way < 0) {
    values[at + part.queenDays] = daysIn + 1;
    return weight[0]!;
  }
  const event = c.chain.event[way]!;
  if (event === eventAt.swarm) swarmLeaves(c, values, at, c.queen.swarmLogit, stream);
  else if (event === eventAt.after) swarmLeaves(c, values, at, logit(c.queen.afterSwarmShare), stream);
  else if (event === eventAt.eggs) values[at + part.queenFrom] = day;
  const since = daysSinceEgg(values, at);
  const to = arrivesAt(c.chain, c.chain.to[way]!, since);
  becomes(values, at, to);
  // Workers begin to lay by the days without a queen's eggs, however these came about: a virgin lost, cells that failed.
  if (to === stateIndex.none) values[at + part.queenDays] = Math.max(0, since - c.chain.rescueDays);
  return weight[0]!;
}

/** Enters a state today. */
export function becomes(values: Float64Array, at: number, state: number): void {
  values[at + part.queen] = state;
  values[at + part.queenDays] = 0;
}

/** Bees fly off with their honey; drones follow in like part. */
export function swarmLeaves(c: EngineConstants, values: Float64Array, at: number, middle: number, stream: Stream): void {
  const gone = 1 / (1 + Math.exp(-(middle + c.queen.swarmSpread * nextNormal(stream))));
  const bees = adultsOfParticle(values, at) * gone;
  for (let i = at + adultsAt; i < at + adultsAt + adultDays; i += 1) values[i]! *= 1 - gone;
  values[at + part.drones]! *= 1 - gone;
  values[at + part.honeyKg] = Math.max(0, values[at + part.honeyKg]! - bees * c.queen.swarmHoneyKg);
}

/** Share of her best that a queen lays in her state: 0 where she lays no worker eggs; a new one comes to it in days. */
export function queenShare(c: EngineConstants, day: number, values: Float64Array, at: number): number {
  const state = values[at + part.queen]!;
  if (workersLaid[state] === 0) return 0;
  const laid = layingShare(c.chain, state, values[at + part.queenDays]!);
  const since = day - values[at + part.queenFrom]!;
  return since < c.queen.rampDays ? (laid * (since + 1)) / c.queen.rampDays : laid;
}

/** Drone eggs in worker cells, as a share of what a queen could lay: a drone layer's, or the few of laying workers. */
export function misplacedShare(c: EngineConstants, values: Float64Array, at: number): number {
  const state = values[at + part.queen]!;
  if (dronesLaid[state] === 0) return 0;
  return state === stateIndex['drone layer'] ? c.chain.slows.failing : c.chain.slows.share;
}

/**
 * How many times as strong as its figure the urge to swarm is: by the season, by bees in all and on the comb that
 * there is, and by the days for which cells are left for eggs. `comb` in built cells.
 */
export function swarmUrge(
  c: EngineConstants,
  day: number,
  share: number,
  bees: number,
  eggs: number,
  free: number,
  comb: number,
): number {
  const { urgeBees, urgeSeason, urgeAfter, coverBees, crowdedUrge, roomyUrge, roomyDays } = c.queen;
  const days = eggs > 0 ? free / eggs : roomyDays;
  const room = crowdedUrge + (roomyUrge - crowdedUrge) * Math.min(1, days / roomyDays);
  const many = Math.min(1, bees / urgeBees);
  // Where nobody knows the comb, the bees are taken to cover it as the figure says.
  const dense = c.ground.comb === null ? 1 : Math.min(2, bees / (comb * coverBees));
  const season = power(share, yearDay(c.season, day) > c.season.peak ? urgeAfter : urgeSeason);
  return season * many * many * dense * dense * room;
}

/** As far back as worker brood reaches. */
function daysSinceEgg(values: Float64Array, at: number): number {
  let age = 0;
  while (age < broodDays && values[at + broodAt + age]! < 1) age += 1;
  return age;
}
