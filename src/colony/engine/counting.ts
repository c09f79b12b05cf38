/**
 * What counts of bees and of sealed cells say. Each has a scale of its own, because a count of one and a count
 * of the other do not agree on how long bees live; a few counts are wrong without measure; a full box says "at
 * least", and next to nothing is only known to be little.
 */
import { logMix } from '../../numbers/log-sum.ts';
import { logNormalDensity, normalBelow } from '../../numbers/normal.ts';
import type { Observation } from '../../numbers/particle-filter.ts';
import { nextNormal, nextUnit } from '../../numbers/streams.ts';
import type { EngineConstants } from './constants.ts';
import { adultsOfParticle, cappedOfParticle, part } from './particle.ts';

export interface Count {
  /** Bees or cells, as counted; at least 0. */
  readonly count: number;
  /** The box was full: there may have been more. */
  readonly atLeast?: boolean;
}

export type CountObservation = Observation<EngineConstants, Count>;

export const adultsCounted: CountObservation = counted(
  (_, values, at) => logOf(adultsOfParticle(values, at)) + values[at + part.adultsScale]!,
  (c) => c.noise.adults,
);

export const cappedCounted: CountObservation = counted(
  (c, values, at) => logOf(cappedOfParticle(values, at, c.sealAge)) + values[at + part.cappedScale]!,
  (c) => c.noise.capped,
);

/** Densities are those of the logarithm of the count. */
function counted(
  middle: (c: EngineConstants, values: Float64Array, at: number) => number,
  noise: (c: EngineConstants) => number,
): CountObservation {
  return {
    density: (c, values, at, seen) => {
      const mean = middle(c, values, at);
      return logMix(logChance(c, seen, mean, noise(c)), logChance(c, seen, mean, c.outlier.spread), c.outlier.share);
    },
    draw: (c, values, at, stream) => {
      const spread = nextUnit(stream) < c.outlier.share ? c.outlier.spread : noise(c);
      return Math.exp(middle(c, values, at) + spread * nextNormal(stream));
    },
  };
}

function logChance(c: EngineConstants, { count, atLeast }: Count, mean: number, spread: number): number {
  if (atLeast === true) return Math.log(normalBelow((mean - logOf(count)) / spread));
  if (count < c.leastCount) return Math.log(normalBelow((Math.log(c.leastCount) - mean) / spread));
  return logNormalDensity(Math.log(count), mean, spread);
}

/** Less than one bee is as good as one: the logarithm stays finite. */
function logOf(count: number): number {
  return Math.log(Math.max(1, count));
}
