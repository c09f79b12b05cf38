/**
 * Sums of numbers given by their logarithms, without overflow: the largest is taken out first.
 */

/** log Σ exp(values). Minus infinity for an empty list, or when every value is minus infinity. */
export function logSum(values: ArrayLike<number>): number {
  let largest = -Infinity;
  for (let i = 0; i < values.length; i += 1) largest = Math.max(largest, values[i]!);
  if (largest === -Infinity) return -Infinity;
  let sum = 0;
  for (let i = 0; i < values.length; i += 1) sum += Math.exp(values[i]! - largest);
  return largest + Math.log(sum);
}

/** log((1 − share)·e^a + share·e^b): two logarithms of densities mixed. */
export function logMix(a: number, b: number, share: number): number {
  const first = a + Math.log1p(-share);
  const second = b + Math.log(share);
  const [large, small] = first > second ? [first, second] : [second, first];
  return large === -Infinity ? -Infinity : large + Math.log1p(Math.exp(small - large));
}
