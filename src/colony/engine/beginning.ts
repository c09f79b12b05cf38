/**
 * A colony before its first count. One of which nothing is known has stood for some weeks; a split begins on
 * its day with some bees, some brood of all ages, and a queen of her own, a given one, or one yet to be raised:
 * the model lives through what follows instead of guessing the ages of its bees.
 */
import { nextNormal, nextUnit, type Stream } from '../../numbers/streams.ts';
import type { EngineConstants } from './constants.ts';
import { eggsOn, shareOn } from './laying.ts';
import { adultDays, adultsAt, broodAt, broodDays, part } from './particle.ts';
import { yearDay } from './season.ts';
import { wanderBegins } from './wander.ts';

export function colonyBegins(c: EngineConstants, day: number, values: Float64Array, at: number, stream: Stream): void {
  wanderBegins(c, values, at, stream);
  if (c.splitOn === null) standing(c, day, values, at, stream);
  else split(c, c.splitOn, values, at, stream);
}

function standing(c: EngineConstants, day: number, values: Float64Array, at: number, stream: Stream): void {
  const bees = c.start.bees * Math.exp(c.start.spread * nextNormal(stream));
  const eggs = eggsOn(c, shareOn(c, day, values, at), bees, values, at);
  values[at + part.laysFrom] = day;
  fill(c, values, at, bees, eggs / c.start.broodShares[0]!);
}

function split(c: EngineConstants, day: number, values: Float64Array, at: number, stream: Stream): void {
  const { start, season } = c;
  const t = yearDay(season, day);
  // Who splits before the year's peak does so when laying is well on its way up: so spring is not later than that.
  const latest = t - start.afterRise - season.middleOfRise;
  if (t < season.peak) values[at + part.rise] = Math.min(values[at + part.rise]!, latest);
  const bees = start.splitBees * Math.exp(start.splitSpread * nextNormal(stream));
  const brood = bees * start.splitBrood * Math.exp(start.splitBroodSpread * nextNormal(stream));
  values[at + part.laysFrom] = day + queenless(c, stream);
  fill(c, values, at, bees, brood);
}

/** Days from the split to the first eggs. */
function queenless(c: EngineConstants, stream: Stream): number {
  const { ownQueen, givenQueen, givenDays, raisedDays } = c.start;
  const way = nextUnit(stream);
  const place = nextUnit(stream);
  if (way < ownQueen) return 0;
  const [low, high] = way < ownQueen + givenQueen ? givenDays : raisedDays;
  return Math.round(low + place * (high - low));
}

/** Bees and brood by age as in a colony that stands still. */
function fill(c: EngineConstants, values: Float64Array, at: number, bees: number, brood: number): void {
  for (let age = 0; age < broodDays; age += 1) values[at + broodAt + age] = brood * c.start.broodShares[age]!;
  for (let age = 0; age < adultDays; age += 1) values[at + adultsAt + age] = bees * c.start.adultShares[age]!;
}
