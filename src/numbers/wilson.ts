/**
 * The 95 of 100 range of a share that was counted: `hits` of `of`. Score interval of E. B. Wilson (1927),
 * "Probable inference, the law of succession, and statistical inference", without continuity correction.
 */
import { assert } from './assert.ts';

export interface ShareRange {
  readonly share: number;
  readonly lo95: number;
  readonly hi95: number;
}

/** Half width of the 95 % interval of a standard normal. */
const z = 1.959963984540054;

/** Shares 0…1. `of` is at least 1 and `hits` lies in 0…of. */
export function wilson(hits: number, of: number): ShareRange {
  assert(of >= 1 && hits >= 0 && hits <= of, `a count of ${hits} in ${of}`);
  const p = hits / of;
  const middle = p + (z * z) / (2 * of);
  const half = z * Math.sqrt((p * (1 - p)) / of + (z * z) / (4 * of * of));
  const scale = 1 + (z * z) / of;
  return {
    share: p,
    // At the ends the exact bounds are 0 and 1; the formula only misses them by rounding.
    lo95: hits === 0 ? 0 : (middle - half) / scale,
    hi95: hits === of ? 1 : (middle + half) / scale,
  };
}
