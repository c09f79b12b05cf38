/**
 * Whether a queen lays. In this part of the model she lays from a day on and does not stop: swarming, loss and
 * replacement come as days of this one function, which may propose them more often than they happen and hands
 * back the logarithm of the weight for it.
 */
import { part } from './particle.ts';

export function laysOn(day: number, values: Float64Array, at: number): boolean {
  return day >= values[at + part.laysFrom]!;
}
