/**
 * What the trial asks of a world: a colony that lives day by day, that can be looked into and acted upon, and
 * that tells what befell it. Worlds differ in how their bees work inside; keeper, reader and tally are the same
 * for all of them.
 */

/** 1 April to 15 September; days of the trial are counted from 0. */
export const seasonDays = 168;
export const firstDay = '2013-04-01';

/** A colony as it is. Readers never hand it on as it stands. */
export interface Truth {
  /** Bees that are at home at noon. */
  readonly bees: number;
  readonly eggs: number;
  readonly larvae: number;
  readonly sealed: number;
  readonly honeyKg: number;
  /** Worker cells that are built, and that all bars can hold. */
  readonly built: number;
  readonly most: number;
  readonly cells: readonly TrueCell[];
  readonly queenHere: boolean;
  readonly queenYoung: boolean;
  /** What is laid becomes drones: a drone layer's, or laying workers'. */
  readonly dronesOnly: boolean;
}

export interface TrueCell {
  readonly what: 'open' | 'sealed' | 'torn' | 'emerged';
  /** Days since its egg; a cup with an egg is no cell to a reader. */
  readonly age: number;
}

/** What befell the colony on one day. */
export interface Befell {
  /** Swarms that left, after-swarms too. */
  readonly swarms: number;
  /** The stores ran out today. */
  readonly starved: boolean;
  /** A queen laid worker eggs today. */
  readonly laid: boolean;
  readonly alive: boolean;
}

export type Act =
  /** An artificial swarm: cells cut, bees and brood taken off; one cell is missed where it does not hold. */
  | { readonly kind: 'relieve'; readonly holds: boolean }
  | { readonly kind: 'feed'; readonly kg: number }
  | { readonly kind: 'bars'; readonly bars: number }
  | { readonly kind: 'give queen'; readonly taken: boolean };

/** Of an artificial swarm: shares of bees and of brood that go. Same for all worlds. */
export const relieved = { bees: 0.4, brood: 0.35 } as const;

/** `S` is plain data that can be cloned. */
export interface TrialWorld<S = unknown> {
  readonly name: string;
  readonly begin: (seed: number) => S;
  /** Lives the day and tells what befell. The same colony, day and seed live the same. */
  readonly live: (hive: S, day: number) => Befell;
  /** The day suits opening. */
  readonly fits: (hive: S, day: number) => boolean;
  readonly truth: (hive: S, day: number) => Truth;
  readonly act: (hive: S, day: number, act: Act) => void;
}
