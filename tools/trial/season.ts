/**
 * One colony-season under several policies side by side. All begin as one colony; they share its days until an
 * act parts them, because looking alone changes nothing. Chance hangs on the season's seed and the day.
 */
import { seasonDays, type TrialWorld } from './hive.ts';
import { actsOn, type KeeperMemory, newMemory } from './keeper.ts';
import type { Chooser, Policy } from './policies.ts';
import { readOpening } from './reader.ts';
import type { Tally } from './tally.ts';

interface Lot {
  readonly chooser: Chooser;
  hive: unknown;
  memory: KeeperMemory;
  alive: boolean;
  openings: number;
  swarms: number;
  starvations: number;
  notLaying: number;
}

/** A tally for each policy, in their order. Days after a colony's death count as not laid. */
export function liveSeason(world: TrialWorld, policies: readonly Policy[], seed: number): readonly Tally[] {
  const first = world.begin(seed);
  const lots = policies.map(({ begin }): Lot => {
    const nothing = { openings: 0, swarms: 0, starvations: 0, notLaying: 0 };
    return { chooser: begin(seed), hive: first, memory: newMemory, alive: true, ...nothing };
  });
  for (let day = 0; day < seasonDays; day += 1) {
    for (const hive of new Set(lots.map((lot) => lot.hive))) {
      const sharing = lots.filter((lot) => lot.hive === hive);
      liveDay(world, hive, day, sharing);
    }
    for (const lot of lots) if (lot.alive && world.fits(lot.hive, day)) look(world, lot, day, seed, lots);
  }
  return lots.map(({ openings, swarms, starvations, notLaying }) => ({ openings, swarms, starvations, notLaying }));
}

function liveDay(world: TrialWorld, hive: unknown, day: number, sharing: readonly Lot[]): void {
  const alive = sharing[0]!.alive;
  const befell = alive ? world.live(hive, day) : { swarms: 0, starved: false, laid: false, alive: false };
  for (const lot of sharing) {
    lot.swarms += befell.swarms;
    lot.starvations += befell.starved ? 1 : 0;
    lot.notLaying += befell.laid ? 0 : 1;
    lot.alive = befell.alive;
  }
}

function look(world: TrialWorld, lot: Lot, day: number, seed: number, lots: readonly Lot[]): void {
  if (!lot.chooser.opens(day, lot.memory)) return;
  const opening = readOpening(world.truth(lot.hive, day), seed, day);
  const { acts, memory } = actsOn(lot.memory, day, opening, seed);
  if (acts.length > 0 && lots.some((other) => other !== lot && other.hive === lot.hive)) lot.hive = structuredClone(lot.hive);
  for (const act of acts) world.act(lot.hive, day, act);
  lot.memory = memory;
  lot.openings += 1;
  lot.chooser.opened(day, opening, acts);
}
