/** Chance by seed for the fuzz: the same seed throws the same dice everywhere. */
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

export interface Dice {
  /** A whole number from 0 to below `n`. */
  readonly below: (n: number) => number;
  readonly one: <T>(from: readonly T[]) => T;
  /** True once in `n`. */
  readonly rarely: (n: number) => boolean;
}

export function diceOf(seed: number): Dice {
  const generator = xoroshiro128plus(seed);
  const below = (n: number): number => uniformInt(generator, 0, n - 1);
  return { below, one: (from) => from[below(from.length)] as (typeof from)[number], rarely: (n) => below(n) === 0 };
}
