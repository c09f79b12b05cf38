/**
 * Systematic resampling: one number of chance for the whole cloud, so that a particle of share w has
 * floor(n·w) or ceil(n·w) children. After J. Carpenter, P. Clifford, P. Fearnhead (1999), "Improved particle
 * filter for nonlinear problems".
 */
import { assert } from './assert.ts';

/** Parents, in order, of `shares.length` children. `shares` sum to 1 but for rounding; `unit` lies in 0…1. */
export function systematicParents(shares: Float64Array, unit: number): Int32Array {
  const count = shares.length;
  assert(count > 0 && unit >= 0 && unit <= 1, 'shares of a cloud and a number of 0…1');
  const parents = new Int32Array(count);
  let parent = 0;
  let reached = shares[0]!;
  for (let child = 0; child < count; child += 1) {
    const place = (child + unit) / count;
    while (reached < place && parent < count - 1) {
      parent += 1;
      reached += shares[parent]!;
    }
    parents[child] = parent;
  }
  return parents;
}
