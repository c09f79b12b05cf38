/**
 * Cells: how many are built, how many are free for eggs, how comb grows. Where nobody knows the hive there is
 * room enough, and laying is bounded by bees and season alone. Where in the trough the cells stand is left out:
 * that is the nest's bars, which the readings keep.
 */
import type { EngineConstants } from './constants.ts';
import { broodCellsOfParticle, part } from './particle.ts';

/** Cells that hold nothing; never below 0. `brood`: worker cells that hold brood, as they are counted. */
export function freeCells(
  c: EngineConstants,
  values: Float64Array,
  at: number,
  brood = broodCellsOfParticle(values, at),
): number {
  const r = c.room;
  const usable = values[at + part.comb]! * r.usable;
  // More honey than that is still in feeders and bees, or thicker comb.
  const honey = Math.min(values[at + part.honeyKg]! / r.honeyKgPerCell, usable * r.honeyMost);
  const bread = values[at + part.breadKg]! / r.breadKgPerCell;
  return Math.max(0, usable - brood - honey - bread);
}

/** Comb grows in flow, by bees, as far as the bars reach, while less is free than `wanted` cells for eggs of some days. */
export function combDay(
  c: EngineConstants,
  values: Float64Array,
  at: number,
  share: number,
  bees: number,
  free: number,
  wanted: number,
): void {
  const most = values[at + part.combMost]!;
  const comb = values[at + part.comb]!;
  if (comb >= most || free >= wanted) return;
  const r = c.room;
  const flow = Math.min(1, share * Math.exp(values[at + part.flow]!));
  const short = 1 - free / wanted;
  const wish = r.builtPerDay * Math.min(1, bees / r.builderBees) * flow * short;
  // Wax is made of honey, and not of the last of it.
  const spare = Math.max(0, values[at + part.honeyKg]! - 2 * c.stores.hungryKg);
  const built = Math.min(wish, most - comb, spare / r.waxKgPerCell);
  values[at + part.comb] = comb + built;
  values[at + part.honeyKg]! -= built * r.waxKgPerCell;
}
