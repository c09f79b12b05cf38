/**
 * What counts say: bees on the combs, bars with bees at a glance, sealed cells, open brood, honey. Each has a
 * scale of its own for each hand, because counts of one thing and another do not agree on how long bees live; a
 * few counts are wrong without measure; a full box says "at least"; next to nothing is only known to be little;
 * and where part of the combs was opened, the rest stays unknown.
 */
import { logMix } from '../../../numbers/log-sum.ts';
import type { Observation } from '../../../numbers/particle-filter.ts';
import { nextNormal, nextUnit } from '../../../numbers/streams.ts';
import type { EngineConstants } from '../constants.ts';
import { adultsOfParticle, cappedOfParticle, eyes, eyeVarianceAt, openOfParticle, type Part, part } from '../particle.ts';
import { type Count, eyeLearns, eyeMiddle, logChance } from './eye.ts';

export type { Count };

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

/** Densities are those of the logarithm of the count, over all that is not known of the eye that read it. */
function counted(
  what: Counted,
  scales: readonly [Part, Part],
  amount: (c: EngineConstants, values: Float64Array, at: number) => number,
): CountKind {
  const [mine, others] = scales.map((scale) => eyes.indexOf(scale));
  const eyeOf = ({ hand }: Count): number => (hand === 1 ? others! : mine!);
  /** Logarithm of what there is to be counted, before any eye. */
  const there = (c: EngineConstants, values: Float64Array, at: number, { share = 1 }: Count): number =>
    Math.log(Math.max(c.counts.none[what], amount(c, values, at) * share));
  return {
    density: (c, values, at, seen) => {
      const eye = eyeOf(seen);
      const mean = there(c, values, at, seen) + eyeMiddle(values, at, eye);
      const variance = values[at + eyeVarianceAt + eye]!;
      const spread = Math.sqrt(spreadOf(c, what, seen) ** 2 + variance);
      const least = c.counts.least[what];
      const wild = Math.sqrt(c.counts.outlierSpread ** 2 + variance);
      return logMix(logChance(seen, mean, spread, least), logChance(seen, mean, wild, least), c.counts.outlierShare);
    },
    draw: (c, values, at, stream, seen) => {
      const like = seen ?? { count: 0 };
      const spread = nextUnit(stream) < c.counts.outlierShare ? c.counts.outlierSpread : spreadOf(c, what, like);
      const scale = values[at + part[scales[like.hand ?? 0]!]]!;
      return Math.exp(there(c, values, at, like) + scale + spread * nextNormal(stream));
    },
    learn: (c, values, at, seen, stream) => {
      const read = { there: there(c, values, at, seen), spread: spreadOf(c, what, seen), least: c.counts.least[what] };
      eyeLearns(c.counts, read, seen, values, at, eyeOf(seen), stream);
    },
  };
}

/** A careful count's spread, its rounding, and what combs left shut, or only said to be as expected, may hold otherwise. */
function spreadOf(c: EngineConstants, what: Counted, { share = 1, rounding = 0, asExpected = 0 }: Count): number {
  const unopened = c.counts.unopened * (1 - share);
  const said = c.counts.asExpected * asExpected;
  return Math.sqrt(c.counts.noise[what] ** 2 + rounding ** 2 + unopened ** 2 + said ** 2);
}
