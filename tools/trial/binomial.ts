/** Whole numbers by chance: how many of n, each with a chance; how many where a mean is given. Large ones by a rounded normal. */
import { nextNormal, nextUnit, type Stream } from '../../src/numbers/streams.ts';

/** Above so large a variance the normal is near enough: beside it a colony's noise is large. */
const exactBelow = 12;

export function binomial(n: number, chance: number, s: Stream): number {
  if (n <= 0 || chance <= 0) return 0;
  if (chance >= 1) return n;
  if (chance > 1 / 2) return n - binomial(n, 1 - chance, s);
  const variance = n * chance * (1 - chance);
  if (variance > exactBelow) return bounded(n * chance + Math.sqrt(variance) * nextNormal(s), n);
  // By going up from none, each chance from the last.
  let left = nextUnit(s);
  let p = (1 - chance) ** n;
  let count = 0;
  while (left > p && count < n) {
    left -= p;
    p *= ((n - count) / (count + 1)) * (chance / (1 - chance));
    count += 1;
  }
  return count;
}

export function poisson(mean: number, s: Stream): number {
  if (mean <= 0) return 0;
  if (mean > exactBelow) return bounded(mean + Math.sqrt(mean) * nextNormal(s), Infinity);
  let left = nextUnit(s);
  let p = Math.exp(-mean);
  let count = 0;
  while (left > p && p > 0) {
    left -= p;
    count += 1;
    p *= mean / count;
  }
  return count;
}

function bounded(x: number, most: number): number {
  return Math.min(most, Math.max(0, Math.round(x)));
}
