/** Made-up ground, particles and clouds for the tests of the engine. */
import { printedBook } from '../../figures/book.ts';
import { dayNumber } from '../../numbers/day.ts';
import { begin, type Cloud } from '../../numbers/particle-filter.ts';
import { newStream } from '../../numbers/streams.ts';
import { stateIndex } from '../queen-chain/states.ts';
import { type EngineConstants, engineConstants, type Ground, unknownGround } from './constants.ts';
import { colonyModel } from './model.ts';
import { adultsAt, broodAt, broodDays, part, particleSize } from './particle.ts';
import { type EngineSetup, engineSetup } from './run.ts';

export const may = dayNumber('2014-05-01');

export const knownGround: Ground = { ...unknownGround, latitude: 41, comb: { built: 40_000, most: 80_000 } };

export function setupOn(ground: Partial<Ground> = {}): EngineSetup {
  return engineSetup(engineConstants(printedBook, { ...knownGround, ...ground }), printedBook);
}

/** One colony in full order: bees, brood of all ages, honey, a laying queen, all scales and wanderings at 0. */
export function plainParticle(c: EngineConstants, bees = 12_000, brood = 15_000): Float64Array {
  const values = new Float64Array(particleSize);
  values[part.queen] = stateIndex.laying;
  values[part.flightAge] = c.forageAge;
  values[part.queenFrom] = may - 300;
  values[part.honeyKg] = 8;
  values[part.breadKg] = 0.5;
  values[part.comb] = 40_000;
  values[part.combMost] = 80_000;
  c.start.adultShares.forEach((share, age) => (values[adultsAt + age] = bees * share));
  c.start.broodShares.forEach((share, age) => (values[broodAt + age] = brood * share));
  return values;
}

export function cloudOf(setup: EngineSetup, count: number, seed = 5, day = may): Cloud {
  return begin(setup, day, count, seed);
}

/** A day of one particle, by its own luck. */
export function live(setup: EngineSetup, values: Float64Array, from: number, days: number, seed = 3): Float64Array {
  for (let day = from; day < from + days; day += 1) colonyModel.step(setup.constants, day, values, 0, newStream(seed, 1, 0, day));
  return values;
}

export function broodOf(values: Float64Array, from = 0, to = broodDays): number {
  return values.slice(broodAt + from, broodAt + to).reduce((a, b) => a + b, 0);
}

export function beesOf(values: Float64Array): number {
  return values.slice(adultsAt).reduce((a, b) => a + b, 0);
}
