/**
 * How right one forecast of one count was: the error of its median, whether its ranges held, and the continuous
 * ranked probability score of T. Gneiting and A. E. Raftery (2007) on the logarithm, which rewards ranges that
 * are both narrow and true.
 */
import { type Foresight, median, quantile, steps } from '../../src/colony/engine/foresight.ts';

export interface Marks {
  /** ln(forecast / count). */
  readonly logError: number;
  /** |forecast − count|, bees or cells. */
  readonly error: number;
  readonly crpsLog: number;
  readonly held50: boolean;
  readonly held80: boolean;
  readonly held90: boolean;
}

/** The count is above 0. */
export function marksOf(foresight: Foresight, count: number): Marks {
  const seen = Math.log(count);
  const held = (share: number): boolean =>
    seen >= quantile(foresight, (1 - share) / 2) && seen <= quantile(foresight, (1 + share) / 2);
  return {
    logError: median(foresight) - seen,
    error: Math.abs(Math.exp(median(foresight)) - count),
    crpsLog: crps(foresight, seen),
    held50: held(0.5),
    held80: held(0.8),
    held90: held(0.9),
  };
}

/** Mean distance to what was seen, less half the mean distance of two draws; quantiles are in order, so one pass does. */
function crps(foresight: Foresight, seen: number): number {
  let away = 0;
  let apart = 0;
  foresight.forEach((x, i) => {
    away += Math.abs(x - seen);
    apart += x * (2 * i + 1 - steps);
  });
  return away / steps - apart / steps ** 2;
}
