/**
 * Writes a made-up trial of spring splits in the form that is scored: counts of bees and days of the splits. How
 * well such trials are foreseen is told by `try-splits.ts`.
 */
import { readFileSync } from 'node:fs';
import { addDays } from '../../src/numbers/day.ts';
import { chanceOf } from '../world/chance.ts';
import { readSky, type SkyDay } from '../world/sky.ts';
import type { SplitPlan } from './split-plan.ts';
import { liveInPools } from './split-pools.ts';
import { liveInSociety } from './split-society.ts';

export interface SplitFiles {
  readonly counts: string;
  readonly starts: string;
}

export function readWorldSky(): ReadonlyMap<string, SkyDay> {
  return readSky(readFileSync('examples/newyork-weather-2013-2014.csv', 'utf8'));
}

/** The year is of no account. */
const newYear = '2019-01-01';

export function madeUpSplits(plan: SplitPlan, sky: ReadonlyMap<string, SkyDay>): SplitFiles {
  const counts = ['colony,date,round,adult_bees'];
  const starts = ['colony,split_date'];
  for (let i = 0; i < plan.colonies; i += 1) {
    const colony = `c${i + 1}`;
    const luck = chanceOf(plan.seed, `${plan.name}|${colony}|seen`);
    const way = plan.ways[luck.whole(0, plan.ways.length - 1)]!;
    const late = luck.whole(0, plan.splitSpread);
    const splitOn = plan.splitOn + late;
    const days = plan.visits.map((day) => Math.max(0, day - late));
    const bees =
      plan.world === 'society'
        ? liveInSociety(plan, colony, way, splitOn, days, sky)
        : liveInPools(plan, colony, way, splitOn, days);
    starts.push(`${colony},${addDays(newYear, splitOn - 1)}`);
    days.forEach((day, round) => {
      const count = Math.round(bees[round]! * plan.scale * Math.exp(plan.noise * luck.normal()));
      counts.push(`${colony},${addDays(newYear, splitOn - 1 + day)},${round + 1},${count}`);
    });
  }
  return { counts: counts.join('\n'), starts: starts.join('\n') };
}
