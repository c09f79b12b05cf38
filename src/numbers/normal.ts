/**
 * The standard normal distribution: density, area below, quantile. The area is the series of
 * G. Marsaglia (2004), "Evaluating the normal distribution", the quantile its inverse by halving and
 * Newton's steps: no table of coefficients, and exact to some 1e-15 of the whole.
 */
import { assert } from './assert.ts';

const logRootTwoPi = 0.5 * Math.log(2 * Math.PI);
/** Beyond, the area is 0 or 1 to the last digit. */
const farthest = 8;
/** Quantiles are told of chances above this, and below 1 less this. */
export const leastChance = 1e-12;

/** Logarithm of the density of a normal of that mean and standard deviation. */
export function logNormalDensity(x: number, mean: number, sd: number): number {
  const z = (x - mean) / sd;
  return -0.5 * z * z - Math.log(sd) - logRootTwoPi;
}

/** Chance that a standard normal lies below z. */
export function normalBelow(z: number): number {
  if (z >= farthest) return 1;
  if (z <= -farthest) return 0;
  let term = z;
  let sum = z;
  for (let k = 3; sum + term !== sum; k += 2) {
    term *= (z * z) / k;
    sum += term;
  }
  return Math.min(1, Math.max(0, 0.5 + sum * Math.exp(-0.5 * z * z - logRootTwoPi)));
}

/** The z below which a standard normal lies with that chance; the chance is above `leastChance` and below 1 less that. */
export function normalQuantile(chance: number): number {
  assert(chance > leastChance && chance < 1 - leastChance, `a chance between 0 and 1, not ${chance}`);
  let low = -farthest;
  let high = farthest;
  for (let i = 0; i < 12; i += 1) {
    const middle = (low + high) / 2;
    if (normalBelow(middle) < chance) low = middle;
    else high = middle;
  }
  let z = (low + high) / 2;
  for (let i = 0; i < 6; i += 1) z -= (normalBelow(z) - chance) / Math.exp(-0.5 * z * z - logRootTwoPi);
  return z;
}
