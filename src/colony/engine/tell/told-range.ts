/**
 * Ranges of a cloud of particles: as many particles as there are are drawn by their shares, evenly, so that a
 * quantile is a place in a sorted list.
 */
import type { Quantity } from '../../foreseen.ts';
import type { Cloud } from '../../../numbers/particle-filter.ts';
import type { Range } from '../../../numbers/range.ts';
import { systematicParents } from '../../../numbers/resample.ts';
import type { EngineConstants } from '../constants.ts';
import { adultsOfParticle, broodAt, cappedOfParticle, cohorts, part, particleSize } from '../particle.ts';

export type Told = (c: EngineConstants, values: Float64Array, at: number) => number;

/** Each quantity as the hand that reads most would find it, without the errors of a single count. */
export const tellers: Readonly<Record<Quantity, Told>> = {
  bees: (_, values, at) => adultsOfParticle(values, at) * Math.exp(values[at + part.beesScale]!),
  drones: (_, values, at) => values[at + part.drones]!,
  eggs: (c, values, at) => cohorts(values, at + broodAt, 0, c.hatchAge) * Math.exp(values[at + part.openScale]!),
  larvae: (c, values, at) => cohorts(values, at + broodAt, c.hatchAge, c.sealAge) * Math.exp(values[at + part.openScale]!),
  sealed: (c, values, at) => cappedOfParticle(values, at, c.sealAge) * Math.exp(values[at + part.sealedScale]!),
  // Eggs of the last day: the youngest cohort, before any of them is lost.
  laidPerDay: (_, values, at) => values[at + broodAt]! * Math.exp(values[at + part.sealedScale]!),
  honeyKg: (_, values, at) => values[at + part.honeyKg]! * Math.exp(values[at + part.honeyScale]!),
  breadKg: (_, values, at) => values[at + part.breadKg]!,
};

/** Places in the long array of particles drawn evenly by their shares. */
export function drawnPlaces(cloud: Cloud): Int32Array {
  const shares = cloud.logShares.map((share) => Math.exp(share));
  return systematicParents(shares, 1 / 2).map((particle) => particle * particleSize);
}

/** Something told of each, ascending. */
export function sortedOf(c: EngineConstants, cloud: Cloud, places: Int32Array, told: Told): Float64Array {
  const all = new Float64Array(places.length);
  for (let i = 0; i < all.length; i += 1) all[i] = told(c, cloud.values, places[i]!);
  return all.sort();
}

const tenth = 0.1;
const quarter = 0.25;
/** What lies outside of the wide and of the inner range at each end: they hold eight of ten, and half. */
export const tails = { wide: tenth, half: quarter } as const;

export function rangeOfSorted(sorted: Float64Array, tail: number): Range {
  return {
    low: quantileOfSorted(sorted, tail),
    likely: quantileOfSorted(sorted, 1 / 2),
    high: quantileOfSorted(sorted, 1 - tail),
  };
}

/** Straight between places. */
export function quantileOfSorted(sorted: Float64Array, chance: number): number {
  const place = Math.min(sorted.length - 1, Math.max(0, chance * sorted.length - 1 / 2));
  const from = Math.floor(place);
  const low = sorted[from]!;
  return low + (place - from) * ((sorted[from + 1] ?? low) - low);
}
