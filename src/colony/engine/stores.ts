/**
 * Honey and bee bread of a day: what comes in by bees, season and a flow that wanders; what grown bees eat and
 * what rearing takes. Weather of single days is left to the wandering flow; a station's days will take its place.
 */
import type { EngineConstants } from './constants.ts';
import { part } from './particle.ts';

/** Adds the day's income and takes what is eaten; `bees` as counted, `reared` cells that began the sealed days. */
export function storesDay(
  c: EngineConstants,
  values: Float64Array,
  at: number,
  share: number,
  bees: number,
  reared: number,
  room: number,
): void {
  const s = c.stores;
  const season = Math.max(0, share - s.leastShare) / (1 - s.leastShare);
  const flow = season > 0 ? Math.exp(values[at + part.flow]! - s.flowMean) : 0;
  const wish = bees * season * flow * s.nectarKg;
  const eaten = bees * s.eatKg + reared * s.rearKg;
  // A full trough takes no nectar beyond what is eaten; where there is little comb bees carry some themselves.
  const kept = Math.max(room * c.room.honeyKgPerCell, bees * c.queen.swarmHoneyKg - values[at + part.honeyKg]!, 0);
  const income = Math.min(wish, eaten + kept);
  const honey = values[at + part.honeyKg]! + income - eaten;
  values[at + part.honeyKg] = Math.max(0, honey);
  const bread = values[at + part.breadKg]! + bees * season * Math.sqrt(flow) * s.breadKg - reared * s.rearBreadKg;
  const breadMost = Math.min(c.room.breadMostKg, values[at + part.comb]! * c.room.breadMostKgPerCell);
  values[at + part.breadKg] = Math.min(Math.max(0, bread), breadMost);
}
