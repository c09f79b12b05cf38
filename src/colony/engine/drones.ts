/**
 * Drones of a day: a share of the eggs while bees are many and the season is on its height, cohorts of brood,
 * grown drones as one number. In a failing season they are driven out. Drone comb as a limit is left out.
 */
import type { EngineConstants } from './constants.ts';
import { droneBroodAt, droneBroodDays, part } from './particle.ts';

/** Of the queen's eggs of the day, those that are drones. */
export function droneShare(c: EngineConstants, share: number, bees: number): number {
  const d = c.drones;
  return share < d.fromShare || bees < d.leastBees ? 0 : d.share;
}

/** Moves drones on by a day with the drone eggs that were laid. */
export function ageDrones(c: EngineConstants, values: Float64Array, at: number, share: number, eggs: number): void {
  const first = at + droneBroodAt;
  const last = first + droneBroodDays - 1;
  const emerging = values[last]! * c.drones.survives;
  for (let i = last; i > first; i -= 1) values[i] = values[i - 1]!;
  values[first] = eggs;
  const kept = share < c.drones.fromShare ? c.drones.drivenKept : c.drones.kept;
  values[at + part.drones] = values[at + part.drones]! * kept + emerging;
}
