/**
 * A made-up colony and the yard it stands in: bees by age, combs in a row, the queen, her daughters'
 * cells. Places grow away from the entrance. What is true here is never shown to the estimator.
 */
import type { Day } from '../../src/numbers/day.ts';
import { faceDm2, sum, type WorldComb } from './comb.ts';
import { settings } from './settings.ts';

export interface WorldQueen {
  readonly id: string;
  /** Days since she emerged. */
  age: number;
  /** Days since she mated; null for a virgin. */
  mated: number | null;
  /** Of the best laying, 0…1.2. */
  vigour: number;
  /** Share of her worker-cell eggs that are unfertilised. */
  drones: number;
  /** Share of her eggs that can live; the bees eat the rest as larvae, and the brood looks patchy. */
  sound: number;
  /** Days for which she will not lay: caged, just introduced, slimmed for a swarm. */
  rests: number;
}

export type CellFate = 'growing' | 'torn' | 'emerged';

export interface QueenCell {
  readonly comb: string;
  /** Days since the egg. */
  age: number;
  fate: CellFate;
  /** Days since torn or emerged: the empty cell is cleared away later. */
  stale: number;
}

export interface Society {
  readonly id: string;
  /** Bees by days since emergence, 0…79, that live a summer's life. */
  readonly summer: number[];
  winter: number;
  drones: number;
  queen: WorldQueen | null;
  cells: QueenCell[];
  combs: WorldComb[];
  /** First and last place of its stretch of the trough. */
  from: number;
  to: number;
  /** Days on which swarm cells are still being begun; 0 when not preparing. */
  preparing: number;
  /** Days since no egg of a queen was laid and none lives. */
  orphaned: number;
  /** Days since there was the last open worker brood. */
  sinceOpenBrood: number;
  layingWorkers: boolean;
  /** How readily it stings, 0…1. */
  temper: number;
  /** Multiplies deaths; 1 is sound. */
  ailing: number;
  /** Days of the builders' zeal of a new swarm. */
  zeal: number;
  /** Slow luck of laying, log scale. */
  mood: number;
  alive: boolean;
  combsBegun: number;
  fedGrams: number;
  /** Fate spares its virgin on her flights. */
  spared: boolean;
}

export interface World {
  day: Day;
  readonly societies: Map<string, Society>;
  /** What happened by itself, as the bees would tell it. */
  readonly happened: Happening[];
  /** Whether colonies prepare to swarm of their own accord; the demo's are called by its story. */
  readonly natural: boolean;
}

export interface Happening {
  readonly day: Day;
  readonly society: string;
  readonly what:
    | 'swarm cells begun'
    | 'emergency cells begun'
    | 'swarm left'
    | 'virgin emerged'
    | 'mated'
    | 'virgin lost'
    | 'first eggs'
    | 'queen lost'
    | 'laying workers'
    | 'died';
  readonly bees?: number;
}

export function adults(society: Society): number {
  return sum(society.summer) + society.winter;
}

/** Faces that the bees can cover, nearest the heart of the nest first. */
export function facesCovered(society: Society): number {
  return adults(society) / (settings.adults.perDm2 * faceDm2 * 0.8);
}

/** Combs in the order of the row; index 0 is at the entrance. */
export function row(society: Society): WorldComb[] {
  return [...society.combs].sort((a, b) => a.place - b.place);
}

/** Place in the row, from the entrance, in which the nest has its heart. */
export function heartOf(society: Society): number {
  return Math.min(3, Math.max(0.5, (society.combs.length - 1) / 2));
}

/** Combs from the heart outwards. */
export function fromHeart(society: Society): WorldComb[] {
  const heart = heartOf(society);
  return row(society)
    .map((comb, i) => ({ comb, far: i < heart ? (heart - i) * 1.15 : i - heart }))
    .sort((a, b) => a.far - b.far)
    .map((x) => x.comb);
}

export function newSociety(id: string, from: number, to: number): Society {
  return {
    id,
    summer: new Array<number>(80).fill(0),
    winter: 0,
    drones: 0,
    queen: null,
    cells: [],
    combs: [],
    from,
    to,
    preparing: 0,
    orphaned: 0,
    sinceOpenBrood: 0,
    layingWorkers: false,
    temper: 0.2,
    ailing: 1,
    zeal: 0,
    mood: 0,
    alive: true,
    combsBegun: 0,
    fedGrams: 0,
    spared: false,
  };
}

export function newQueen(id: string, vigour: number, mated: number | null): WorldQueen {
  return { id, age: mated === null ? 0 : mated + 8, mated, vigour, drones: 0, sound: 0.98, rests: 0 };
}
