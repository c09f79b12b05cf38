/** A colony of the second world as plain data: bees in classes, queens, cells of the queen, food and comb. */
import { stageSettings as w } from './stage-settings.ts';

export interface StageCell {
  age: number;
  fate: 'growing' | 'torn' | 'emerged';
  stale: number;
  readonly why: 'swarm' | 'loss' | 'peace';
}

export interface StageQueen {
  /** Days since she emerged; of one that laid before the season, many. */
  age: number;
  /** Days since she mated; null for a virgin. */
  mated: number | null;
  readonly power: number;
  readonly dronesOnly: boolean;
}

export interface StageHive {
  readonly seed: number;
  readonly care: number;
  readonly life: number;
  readonly site: number;
  readonly bears: number;
  old: boolean;
  eggs: number[];
  larvae: number[];
  pupae: number[];
  /** Brood of drones in worker cells, all stages. */
  misplaced: number;
  house: number;
  field: number;
  winter: number;
  honeyG: number;
  fedG: number;
  built: number;
  most: number;
  fair: boolean;
  flow: 0 | 1 | 2;
  queen: StageQueen | null;
  /** The old queen beside cells or a virgin, until the daughter lays. */
  mother: StageQueen | null;
  cells: StageCell[];
  restless: number;
  calm: number;
  begins: number;
  orphaned: number;
  broodless: number;
  layingWorkers: boolean;
  hungry: boolean;
  alive: boolean;
}

export const purpose = { begin: 70, weather: 71, bees: 72, queens: 73, given: 74 } as const;

export function beesOf(hive: StageHive): number {
  return hive.house + hive.field + hive.winter;
}

export function broodOf(hive: StageHive): number {
  return total(hive.eggs) + total(hive.larvae) + total(hive.pupae) + hive.misplaced;
}

/** Cells in use of those built. */
export function useOf(hive: StageHive): number {
  return (broodOf(hive) + hive.honeyG / w.food.cellGrams) / hive.built;
}

export function total(counts: readonly number[]): number {
  return counts.reduce((a, b) => a + b, 0);
}
