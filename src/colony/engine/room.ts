/**
 * Cells: how many are built, how many are free for eggs, how comb grows. Where nobody knows the hive there is
 * room enough, and laying is bounded by bees and season alone. Where in the trough the cells stand is left out:
 * that is the nest's bars, which the readings keep.
 */
import type { EngineConstants } from './constants.ts';
import { broodCellsOfParticle, part } from './particle.ts';

/** Cells that hold nothing; never below 0. */
export function freeCells(c: EngineConstants, values: Float64Array, at: number): number {
  const r = c.room;
  const held = broodCellsOfParticle(values, at) + values[at + part.honeyKg]! / r.honeyKgPerCell;
  return Math.max(0, values[at + part.comb]! * r.usable - held - values[at + part.breadKg]! / r.breadKgPerCell);
}

/** Comb grows in flow, by bees, as far as the bars reach; faster the less is free. */
export function combDay(c: EngineConstants, values: Float64Array, at: number, share: number, bees: number, free: number): void {
  const most = values[at + part.combMost]!;
  const comb = values[at + part.comb]!;
  if (comb >= most) return;
  const r = c.room;
  const flow = Math.min(1, share * Math.exp(values[at + part.flow]!));
  const short = 1 - Math.min(1, free / Math.max(1, comb));
  values[at + part.comb] = Math.min(most, comb + r.builtPerDay * Math.min(1, bees / r.builderBees) * flow * short);
}
