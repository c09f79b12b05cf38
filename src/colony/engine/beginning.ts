/**
 * A colony before it was first seen. One of which nothing is known has stood for some weeks; a split begins on
 * its day with some bees, some brood of all ages, and a queen of her own, a given one, or one yet to be raised;
 * a swarm begins with bees alone: the model lives through what follows instead of guessing the ages of its bees.
 */
import { nextNormal, nextUnit, type Stream } from '../../numbers/streams.ts';
import { stateIndex } from '../queen-chain/states.ts';
import type { EngineConstants, SplitFrom } from './constants.ts';
import { eggsOn, shareOn } from './laying.ts';
import { wornBy } from './ageing.ts';
import { adultDays, adultsAt, broodAt, broodDays, openOfParticle, part } from './particle.ts';
import { becomes } from './queen-day.ts';
import { yearDay } from './season.ts';
import { wanderBegins } from './wander.ts';

/** Cells and kilograms where nobody knows the hive: beyond what any colony fills or eats. */
const enough = { cells: 1e9, kg: 1e4 };

export function colonyBegins(c: EngineConstants, day: number, values: Float64Array, at: number, stream: Stream): void {
  wanderBegins(c, values, at, stream);
  const { beginning, comb } = c.ground;
  values[at + part.comb] = comb === null ? enough.cells : comb.built;
  values[at + part.combMost] = comb === null ? enough.cells : comb.most;
  values[at + part.breadKg] = c.start.breadKg;
  values[at + part.honeyKg] = comb === null ? enough.kg : c.start.honeyKg * Math.exp(c.start.honeySpread * nextNormal(stream));
  values[at + part.flightAge] = c.forageAge;
  becomes(values, at, stateIndex.laying);
  values[at + part.queenFrom] = day - long;
  if (beginning.kind === 'standing') standing(c, day, values, at, stream);
  else if (beginning.kind === 'split') split(c, day, beginning.from ?? nothingCounted, values, at, stream);
  else swarm(c, day, beginning.bees, values, at, stream);
}

/** Days before the beginning since when a queen of unknown age lays: longer than any bee of summer lives. */
const long = 2 * adultDays;

function standing(c: EngineConstants, day: number, values: Float64Array, at: number, stream: Stream): void {
  const bees = c.start.bees * Math.exp(c.start.spread * nextNormal(stream));
  const share = shareOn(c, day, values, at);
  const eggs = eggsOn(c, share, bees, values, at);
  const brood = eggs / c.start.broodShares[0]!;
  fill(c, values, at, bees, brood);
  // In a season in which little is reared bees have been house bees for long.
  const worn = wornBy(c, share, openOfParticle(values, at, c.sealAge), bees);
  values[at + part.flightAge] = Math.min(long, c.forageAge / Math.max(c.forageAge / long, worn));
}

const nothingCounted: SplitFrom = { bees: null, broodCells: null, honeyKg: null };

function split(c: EngineConstants, day: number, from: SplitFrom, values: Float64Array, at: number, stream: Stream): void {
  const { start, season } = c;
  const t = yearDay(season, day);
  // Who splits before the year's peak does so when laying is well on its way up: so spring is not later than that.
  const latest = t - start.afterRise - season.middleOfRise;
  if (t < season.peak) values[at + part.rise] = Math.min(values[at + part.rise]!, latest);
  // Bees fly back and combs are not alike: what the parent's counts let expect keeps the spread of what nobody counted.
  const bees = (from.bees ?? start.splitBees) * Math.exp(start.splitSpread * nextNormal(stream));
  const counted = from.broodCells === null ? bees * start.splitBrood : from.broodCells / Math.exp(values[at + part.sealedScale]!);
  const brood = counted * Math.exp(start.splitBroodSpread * nextNormal(stream));
  fill(c, values, at, bees, brood);
  if (from.honeyKg !== null) values[at + part.honeyKg] = from.honeyKg * Math.exp(c.counts.noise.honeyKg * nextNormal(stream));
  queened(c, day, values, at, stream);
}

/** Her own queen, a mated one in a cage, a sealed cell, or brood to raise one from; the chain tells what comes of it. */
function queened(c: EngineConstants, day: number, values: Float64Array, at: number, stream: Stream): void {
  const { ownQueen, givenQueen, givenCell, cellDays } = c.start;
  const way = nextUnit(stream);
  const place = nextUnit(stream);
  if (way < ownQueen) return;
  values[at + part.queenFrom] = day;
  if (way < ownQueen + givenQueen) becomes(values, at, stateIndex.introduced);
  else if (way < ownQueen + givenQueen + givenCell) {
    becomes(values, at, stateIndex['emergency cells sealed']);
    values[at + part.queenDays] = Math.floor(place * cellDays);
  } else becomes(values, at, stateIndex.orphaned);
}

/** Bees of all ages, each with a load of honey; no comb, no brood; she lays when there are cells. */
function swarm(c: EngineConstants, day: number, counted: number | null, values: Float64Array, at: number, stream: Stream): void {
  const bees = (counted ?? c.start.swarmBees) * Math.exp(c.start.swarmSpread * nextNormal(stream));
  fill(c, values, at, bees, 0);
  values[at + part.honeyKg] = bees * c.queen.swarmHoneyKg;
  values[at + part.breadKg] = 0;
  values[at + part.queenFrom] = day;
}

/** Bees and brood by age as in a colony that stands still. */
function fill(c: EngineConstants, values: Float64Array, at: number, bees: number, brood: number): void {
  for (let age = 0; age < broodDays; age += 1) values[at + broodAt + age] = brood * c.start.broodShares[age]!;
  for (let age = 0; age < adultDays; age += 1) values[at + adultsAt + age] = bees * c.start.adultShares[age]!;
}
