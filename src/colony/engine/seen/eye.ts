/**
 * The eye that counts: each hand has a scale for each thing it counts. Given the story of a particle, what its
 * counts tell of that scale is a normal distribution that can be worked out, so it is carried along as a middle and
 * a variance (G. Storvik 2002; A. Doucet and others 2000) and a scale is drawn from it anew at each count: the cloud
 * of particles need not find it by luck, and does not starve of it. Only whether a count was wrong without measure,
 * and how far a count that says "at least" or "little" really went, are drawn by chance; so it stays exact.
 */
import { leastChance, logNormalDensity, normalBelow, normalQuantile } from '../../../numbers/normal.ts';
import { nextNormal, nextUnit, type Stream } from '../../../numbers/streams.ts';
import { eyeGapAt, eyes, eyeVarianceAt, part } from '../particle.ts';
import type { CountConstants } from '../taken/counts.ts';

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
  /** Of the count, the share on combs that were only said to be as expected, 0 … 1. */
  readonly asExpected?: number;
}

/** What one count met: the logarithm of what there was, the count's spread, and below what it says "little". */
export interface Read {
  readonly there: number;
  readonly spread: number;
  readonly least: number;
}

const places = Int32Array.from(eyes, (name) => part[name]);

/** Middle of what is known of a scale. */
export function eyeMiddle(values: Float64Array, at: number, eye: number): number {
  return values[at + places[eye]!]! + values[at + eyeGapAt + eye]!;
}

/** Works a count into what is known of the eye that made it, and draws the eye's scale anew. */
export function eyeLearns(
  c: CountConstants,
  { there, spread, least }: Read,
  seen: Count,
  values: Float64Array,
  at: number,
  eye: number,
  stream: Stream,
): void {
  const variance = values[at + eyeVarianceAt + eye]!;
  const middle = eyeMiddle(values, at, eye);
  const mean = there + middle;
  const plain = Math.log1p(-c.outlierShare) + logChance(seen, mean, Math.sqrt(spread ** 2 + variance), least);
  const wild = Math.log(c.outlierShare) + logChance(seen, mean, Math.sqrt(c.outlierSpread ** 2 + variance), least);
  const isWild = nextUnit(stream) * (1 + Math.exp(plain - wild)) < 1;
  const total = variance + (isWild ? c.outlierSpread : spread) ** 2;
  const gain = variance / total;
  const known = middle + gain * (logCount(seen, mean, Math.sqrt(total), least, stream) - mean);
  const left = variance * (1 - gain);
  const drawn = known + Math.sqrt(left) * nextNormal(stream);
  values[at + places[eye]!] = drawn;
  values[at + eyeGapAt + eye] = known - drawn;
  values[at + eyeVarianceAt + eye] = left;
}

/** Logarithm of the chance, or density of the logarithm, of a count. */
export function logChance({ count, atLeast }: Count, mean: number, spread: number, least: number): number {
  if (atLeast === true) return Math.log(normalBelow((mean - Math.log(Math.max(least, count))) / spread));
  if (count < least) return Math.log(normalBelow((Math.log(least) - mean) / spread));
  return logNormalDensity(Math.log(count), mean, spread);
}

/** Logarithm of the count; where only a bound of it is known, of one drawn beyond that bound. */
function logCount({ count, atLeast }: Count, mean: number, spread: number, least: number, stream: Stream): number {
  if (atLeast !== true && count >= least) return Math.log(count);
  const bound = Math.log(Math.max(least, count));
  const side = atLeast === true ? -1 : 1;
  const chance = normalBelow((side * (bound - mean)) / spread) * nextUnit(stream);
  // So far out that the count lies at its bound.
  if (chance <= leastChance || chance >= 1 - leastChance) return bound;
  return mean + side * spread * normalQuantile(chance);
}
