/**
 * Stirring a cloud that was drawn anew: copies of one particle are moved apart, all towards their mean and by chance
 * away from it, so that mean and covariance of the whole stay what they were (M. West 1993; J. Liu and M. West 2001,
 * "Combined parameter and state estimation in simulation-based filtering"). What the cloud holds beyond its first
 * two moments is blurred a little each time.
 */
import { assert } from './assert.ts';
import { nextNormal, type Stream } from './streams.ts';

/** What of each row's way from the mean stays, 0 … 1; and what the covariance becomes. */
export interface Stirring {
  readonly kept: number;
  /** So many times what the rows show, 1 or more; what is lent is not grown. */
  readonly times: number;
  /** Where the rows are too few to show it: another covariance, and the share of it, 0 … 1. */
  readonly lent?: { readonly covariance: Float64Array; readonly share: number };
}

/** `rows` are count × width numbers, changed in place. */
export function stir(rows: Float64Array, width: number, { kept, times, lent }: Stirring, stream: Stream): void {
  assert(kept >= 0 && kept <= 1 && times >= 1 && rows.length % width === 0, 'rows of one width and a share that is kept');
  const count = rows.length / width;
  if (count < 2) return;
  const mean = meanOfRows(rows, width);
  const share = lent?.share ?? 0;
  const stays = Math.min(kept, Math.sqrt(1 - share));
  const own = covarianceOf(rows, width, mean);
  const pushed = own.map((one, i) => (times * (1 - share) - stays * stays) * one + share * (lent?.covariance[i] ?? 0));
  const root = rootOf(pushed, width);
  const chance = new Float64Array(width);
  for (let row = 0; row < rows.length; row += width) {
    for (let i = 0; i < width; i += 1) chance[i] = nextNormal(stream);
    for (let i = 0; i < width; i += 1) {
      let push = 0;
      for (let j = 0; j <= i; j += 1) push += root[i * width + j]! * chance[j]!;
      rows[row + i] = mean[i]! + stays * (rows[row + i]! - mean[i]!) + push;
    }
  }
  // What was pushed has a mean of its own by chance: it is taken back.
  const now = meanOfRows(rows, width);
  for (let at = 0; at < rows.length; at += 1) rows[at]! += mean[at % width]! - now[at % width]!;
}

function meanOfRows(rows: Float64Array, width: number): Float64Array {
  const mean = new Float64Array(width);
  const count = rows.length / width;
  for (let at = 0; at < rows.length; at += 1) mean[at % width]! += rows[at]! / count;
  return mean;
}

/**
 * How many times the variance that n particles show the truth has about their mean, as one more of the same: they
 * know neither their mean nor their spread better than n draws do. That is the prediction interval of a normal
 * sample, in every textbook. What the weights moved counts with it: quantities that have nothing to do with each
 * other seem to in a sample, and moving one by a standard deviation moves the other by one over the root of n (the
 * factor of H. Akaike 1969, "Fitting autoregressive models for prediction", for what was fitted). `particles` are
 * effective ones after weighing, `before` those before; their ratio tells how far the weights moved them: normal
 * weights of variance v leave e^(−v) of the particles.
 */
export function varianceOfOneMore(particles: number, before = particles): number {
  const moved = 1 + Math.log(Math.max(1, before / particles));
  const n = Math.max(2 * moved, particles);
  return (n + moved) / (n - moved);
}

/** Lower triangle of the covariance of the rows as they are: divided by their number. */
export function covarianceOf(rows: Float64Array, width: number, mean = meanOfRows(rows, width)): Float64Array {
  const sums = new Float64Array(width * width);
  const count = rows.length / width;
  for (let row = 0; row < rows.length; row += width) {
    for (let i = 0; i < width; i += 1) {
      const gap = (rows[row + i]! - mean[i]!) / count;
      for (let j = 0; j <= i; j += 1) sums[i * width + j]! += gap * (rows[row + j]! - mean[j]!);
    }
  }
  return sums;
}

/** Of a pivot, what rounding may leave where a number follows from those before it. */
const nothing = 1e-12;

/** Lower triangle L with L·Lᵀ the covariance (A.-L. Cholesky); a number that follows from others gets no push of its own. */
function rootOf(covariance: Float64Array, width: number): Float64Array {
  const root = new Float64Array(width * width);
  for (let i = 0; i < width; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let left = covariance[i * width + j]!;
      for (let k = 0; k < j; k += 1) left -= root[i * width + k]! * root[j * width + k]!;
      if (i === j) root[i * width + i] = left > nothing * covariance[i * width + i]! ? Math.sqrt(left) : 0;
      else root[i * width + j] = root[j * width + j] === 0 ? 0 : left / root[j * width + j]!;
    }
  }
  return root;
}
