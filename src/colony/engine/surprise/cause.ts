/**
 * What can befall a colony between two visits without anybody writing it down: a cause is how often it does, what
 * it changes in a particle, and which of the things that are looked at it touches. "Just chance" is no cause: it
 * is the particle left as it is.
 */
import type { Cause } from '../../foreseen.ts';
import type { Cloud } from '../../../numbers/particle-filter.ts';
import type { Stream } from '../../../numbers/streams.ts';
import type { EngineConstants } from '../constants.ts';
import type { SeenKind } from '../seen/list.ts';
import type { BarSeen } from './bar-seen.ts';
import type { SurpriseConstants } from './surprise-constants.ts';

export type Befalling = Exclude<Cause, 'just chance'>;

export interface CauseRule {
  readonly cause: Befalling;
  /** Chance that it befell the colony since the last visit, as far as the figures know. */
  readonly prior: (given: Given) => number;
  /**
   * Makes of a particle of the visit's day, in place, what it would be had this befallen it on some day since the
   * last visit. Hands back the logarithm of how much likelier than usual that was for this one; minus infinity
   * where it cannot have been.
   */
  readonly change: (given: Given, values: Float64Array, at: number, stream: Stream) => number;
  /** Kinds that it touches; 'pattern' for what single bars hold. */
  readonly reads: readonly (SeenKind | 'pattern')[];
  /** Where the model itself holds such a thing: tells of a particle of the cloud whether it befell it since the last visit. */
  readonly story?: (cloud: Cloud, sinceDays: number) => Told;
}

/** True of a particle of which the model tells it. */
export type Told = (values: Float64Array, at: number) => boolean;

export interface Given {
  readonly engine: EngineConstants;
  readonly surprise: SurpriseConstants;
  /** Day number of the visit. */
  readonly day: number;
  /** Whole days since the last visit, at least 1. */
  readonly sinceDays: number;
  /** Of the combs, the share that was opened, 0 … 1. */
  readonly opened: number;
  /** Combs that hang there; null when not known. */
  readonly combs: number | null;
  /** Single bars, expected and read; empty when not known. */
  readonly bars: readonly BarSeen[];
}

/** Chance of something that comes with so much a day, in the days since the last visit. */
export function inDays(perDay: number, { sinceDays }: { readonly sinceDays: number }): number {
  return -Math.expm1(-perDay * sinceDays);
}
