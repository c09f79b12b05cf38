/**
 * Chance for the made-up yards: a stream of numbers for each label, so that one colony's luck does not
 * hang on another's, nor on how often somebody looked. Built on a splittable generator; no clock.
 */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

export interface Chance {
  /** 0 (included) to 1 (excluded). */
  readonly unit: () => number;
  readonly between: (low: number, high: number) => number;
  /** A whole number, both ends included. */
  readonly whole: (low: number, high: number) => number;
  readonly normal: (mean?: number, sd?: number) => number;
  readonly happens: (chance: number) => boolean;
  readonly pick: <T>(from: readonly [T, ...T[]]) => T;
}

/** The stream of a seed and a label; the same pair always gives the same stream. */
export function chanceOf(seed: number, label: string): Chance {
  const generator = xoroshiro128plus(mixed(hash32(`${seed}|${label}`)));
  // The generator's first numbers still show its seed; labels that differ by a day would share their luck.
  for (let i = 0; i < warmUp; i += 1) generator.next();
  const unit = (): number => uniformFloat64(generator);
  const whole = (low: number, high: number): number => low + Math.floor(unit() * (high - low + 1));
  return {
    unit,
    between: (low, high) => low + unit() * (high - low),
    whole,
    normal: (mean = 0, sd = 1) => mean + sd * Math.sqrt(-2 * Math.log(1 - unit())) * Math.cos(2 * Math.PI * unit()),
    happens: (chance) => unit() < chance,
    pick: (from) => from[whole(0, from.length - 1)] ?? from[0],
  };
}

const warmUp = 8;

/** The last step of MurmurHash3 (A. Appleby, public domain): spreads every bit over all. */
function mixed(hash: number): number {
  let h = hash;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}

/** 32-bit FNV-1a (offset basis 2166136261, prime 16777619, as published by Fowler, Noll and Vo). */
export function hash32(text: string): number {
  let h = 2166136261;
  for (let i = 0; i < text.length; i += 1) {
    h ^= text.charCodeAt(i);
    h = Math.imul(h, 16777619);
  }
  return h | 0;
}
