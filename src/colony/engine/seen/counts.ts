/**
 * What counts say: bees on the combs, bars with bees at a glance, sealed cells, open brood, honey. Each has a
 * scale of its own for each hand, because counts of one thing and another do not agree on how long bees live; a
 * few counts are wrong without measure; a full box says "at least"; next to nothing is only known to be little;
 * and where part of the combs was opened, the rest stays unknown.
 */
import { logMix } from '../../../numbers/log-sum.ts';
import { logNormalDensity, normalBelow } from '../../../numbers/normal.ts';
import type { Observation } from '../../../numbers/particle-filter.ts';
import { nextNormal, nextUnit } from '../../../numbers/streams.ts';
import type { EngineConstants } from '../constants.ts';
import { adultsOfParticle, cappedOfParticle, openOfParticle, type Part, part } from '../particle.ts';

export interface Count {
  /** Bees, cells or kilograms, as counted on what was opened; at least 0. */
  readonly count: number;
  /** The box was full: there may have been more. */
  readonly atLeast?: boolean;
  /** Whose eye: 0 for whoever reads most, 1 for everybody else. */
  readonly hand?: 0 | 1;
  /** Of all that there is, the share expected on the combs that were opened; 1 when all were. */
  readonly share?: number;
  /** Spread of the logarithm beyond that of a careful count: rounding to eighths, for one. */
  readonly rounding?: number;
}

export type CountKind = Observation<EngineConstants, Count>;

type Counted = 'bees' | 'bars' | 'sealed' | 'open' | 'honeyKg';

export const beesSeen = counted('bees', ['beesScale', 'beesScaleOther'], (_, values, at) => adultsOfParticle(values, at));
export const barsSeen = counted('bars', ['barsScale', 'barsScaleOther'], (_, values, at) => adultsOfParticle(values, at));
export const sealedSeen = counted('sealed', ['sealedScale', 'sealedScaleOther'], (c, values, at) =>
  cappedOfParticle(values, at, c.sealAge),
);
export const openSeen = counted('open', ['openScale', 'openScaleOther'], (c, values, at) =>
  openOfParticle(values, at, c.sealAge),
);
export const honeySeen = counted('honeyKg', ['honeyScale', 'honeyScaleOther'], (_, values, at) => values[at + part.honeyKg]!);

/** Densities are those of the logarithm of the count. */
function counted(
  what: Counted,
  [mine, others]: readonly [Part, Part],
  amount: (c: EngineConstants, values: Float64Array, at: number) => number,
): CountKind {
  const middle = (c: EngineConstants, values: Float64Array, at: number, seen: Count): number => {
    const scale = values[at + (seen.hand === 1 ? part[others] : part[mine])]!;
    return Math.log(Math.max(c.counts.none[what], amount(c, values, at) * (seen.share ?? 1))) + scale;
  };
  return {
    density: (c, values, at, seen) => {
      const mean = middle(c, values, at, seen);
      const spread = spreadOf(c, what, seen);
      const least = c.counts.least[what];
      const straight = logChance(seen, mean, spread, least);
      return logMix(straight, logChance(seen, mean, c.counts.outlierSpread, least), c.counts.outlierShare);
    },
    draw: (c, values, at, stream, seen) => {
      const like = seen ?? { count: 0 };
      const spread = nextUnit(stream) < c.counts.outlierShare ? c.counts.outlierSpread : spreadOf(c, what, like);
      return Math.exp(middle(c, values, at, like) + spread * nextNormal(stream));
    },
  };
}

/** A careful count's spread, its rounding, and what the combs left shut may hold otherwise than expected. */
function spreadOf(c: EngineConstants, what: Counted, { share = 1, rounding = 0 }: Count): number {
  const unopened = c.counts.unopened * (1 - share);
  return Math.sqrt(c.counts.noise[what] ** 2 + rounding ** 2 + unopened ** 2);
}

function logChance({ count, atLeast }: Count, mean: number, spread: number, least: number): number {
  if (atLeast === true) return Math.log(normalBelow((mean - Math.log(Math.max(least, count))) / spread));
  if (count < least) return Math.log(normalBelow((Math.log(least) - mean) / spread));
  return logNormalDensity(Math.log(count), mean, spread);
}
