/**
 * One number that a person could dispute, with everything needed to dispute it: value, unit, range,
 * when it holds, and where it comes from. Every such number of the program lives in this room;
 * rival values live side by side under their conditions, and one of them is chosen in one place.
 */
import type { Quantity } from '../numbers/units.ts';
import type { SourceKey } from './sources.ts';

/** How sure we are that the source says so. */
export type Sureness = 'read in the source' | 'read in the abstract' | 'read in a second source' | 'from memory';

export type Basis =
  | { readonly kind: 'source'; readonly source: SourceKey; readonly where: string; readonly sureness: Sureness }
  | { readonly kind: 'derived'; readonly from: readonly string[]; readonly how: string }
  | { readonly kind: 'common practice'; readonly note?: string }
  | { readonly kind: 'our choice'; readonly why: string };

export interface Figure<U extends string = string> {
  readonly key: string;
  /** What it is, in a few plain words, without its value. */
  readonly title: string;
  readonly topic: Topic;
  readonly value: Quantity<U>;
  /** The ends between which the value is believed to lie in most yards (about eight of ten). */
  readonly low: Quantity<U>;
  readonly high: Quantity<U>;
  readonly unit: U;
  /** The conditions under which it holds. */
  readonly when: string;
  readonly basis: Basis;
  /** Rival values or a warning, in a sentence. */
  readonly note?: string;
}

export const topics = [
  'brood',
  'adults',
  'queens',
  'swarms',
  'comb',
  'cells and bees',
  'food',
  'weather',
  'visits',
  'temper',
  'health',
] as const;

export type Topic = (typeof topics)[number];

/** Fixes the unit as a type, so that a figure in kilograms is not taken for one in decimetres. */
export function figure<const K extends string, const U extends string>(
  given: Omit<Figure<U>, 'key'> & { readonly key: K },
): Figure<U> & { readonly key: K } {
  return given;
}
