/**
 * A forecast of a count as quantiles of its logarithm at even steps of chance: the one form in which engine,
 * challenger and "as last time" meet, are blended and are scored.
 */
import { normalQuantile } from '../../numbers/normal.ts';

/** Logarithms of counts, ascending; the i-th is exceeded with chance 1 − (i + ½)/`steps`. */
export type Foresight = Float64Array;

/** Odd, so that the middle one is the median. */
export const steps = 399;

const chances = Float64Array.from({ length: steps }, (_, i) => (i + 1 / 2) / steps);
const standard = chances.map(normalQuantile);

export function normalForesight(mean: number, sd: number): Foresight {
  return standard.map((z) => mean + sd * z);
}

/** From counts drawn with their shares (which sum to 1). */
export function drawnForesight(counts: Float64Array, shares: Float64Array): Foresight {
  const order = Uint32Array.from(counts.keys()).sort((a, b) => counts[a]! - counts[b]!);
  let index = 0;
  let reached = shares[order[0]!]!;
  return chances.map((chance) => {
    while (reached < chance && index < order.length - 1) {
      index += 1;
      reached += shares[order[index]!]!;
    }
    return Math.log(counts[order[index]!]!);
  });
}

/**
 * Two forecasts blended: the mean of their quantiles at each chance, so that the median is the mean of the two
 * medians and the width the mean of the two widths.
 */
export function blend(a: Foresight, b: Foresight): Foresight {
  return a.map((value, i) => (value + b[i]!) / 2);
}

export function median(foresight: Foresight): number {
  return foresight[(steps - 1) / 2]!;
}

/** The logarithm below which the count lies with that chance; straight between steps, level beyond the ends. */
export function quantile(foresight: Foresight, chance: number): number {
  const place = Math.min(steps - 1, Math.max(0, chance * steps - 1 / 2));
  const from = Math.min(steps - 2, Math.floor(place));
  return foresight[from]! + (place - from) * (foresight[from + 1]! - foresight[from]!);
}
