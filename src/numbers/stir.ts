/**
 * Stirring a cloud that was drawn anew: copies of one particle are moved apart, all towards their mean and by chance
 * away from it, so that mean and covariance of the whole stay what they were (M. West 1993; J. Liu and M. West 2001,
 * "Combined parameter and state estimation in simulation-based filtering"). What the cloud holds beyond its first
 * two moments is blurred a little each time.
 */
import { assert } from './assert.ts';
import { nextNormal, type Stream } from './streams.ts';

/**
 * `rows` are count × width numbers, changed in place; `kept` of each row's way from the mean stays, 0 … 1. The
 * covariance becomes `times` what it was, 1 or more.
 */
export function stir(rows: Float64Array, width: number, kept: number, stream: Stream, times = 1): void {
  assert(kept >= 0 && kept <= 1 && times >= 1 && rows.length % width === 0, 'rows of one width and a share that is kept');
  const count = rows.length / width;
  if (count < 2) return;
  const mean = meanOfRows(rows, width);
  const root = rootOf(covarianceOf(rows, width, mean), width);
  const push = Math.sqrt(times - kept * kept);
  const chance = new Float64Array(width);
  for (let row = 0; row < rows.length; row += width) {
    for (let i = 0; i < width; i += 1) chance[i] = push * nextNormal(stream);
    for (let i = 0; i < width; i += 1) {
      let pushed = 0;
      for (let j = 0; j <= i; j += 1) pushed += root[i * width + j]! * chance[j]!;
      rows[row + i] = mean[i]! + kept * (rows[row + i]! - mean[i]!) + pushed;
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
 * know neither their mean nor their spread better than n draws do. It is the prediction interval of a normal sample,
 * in every textbook. A cloud that is drawn anew a hundred times and never widened by it ends up too sure of itself.
 */
export function varianceOfOneMore(particles: number): number {
  const n = Math.max(2, particles);
  return (n + 1) / (n - 1);
}

/** Of the rows as they are: divided by their number. */
function covarianceOf(rows: Float64Array, width: number, mean: Float64Array): Float64Array {
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
