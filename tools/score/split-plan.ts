/**
 * A made-up trial of spring splits: where, when, how counted, how queened. Every number is our choice, spread as
 * widely as handbooks on splits and published counts allow; none is taken from the model that is scored.
 */
import { type Chance, chanceOf } from '../world/chance.ts';

export const splitWorlds = ['society', 'pools'] as const;
export type SplitWorld = (typeof splitWorlds)[number];

export const queenWays = ['own', 'given', 'cell', 'egg'] as const;
export type QueenWay = (typeof queenWays)[number];

export interface SplitPlan {
  readonly name: string;
  readonly seed: number;
  readonly world: SplitWorld;
  readonly colonies: number;
  /** Days by which the season is earlier than that of the weather file. */
  readonly early: number;
  /** Day of the year of the split, at the place, and days by which colonies differ. */
  readonly splitOn: number;
  readonly splitSpread: number;
  /** Days from the middle split to each visit. */
  readonly visits: readonly number[];
  /** Counted bees over bees that are there, the same for the whole file; and how counts err, log. */
  readonly scale: number;
  readonly noise: number;
  /** Bees of a split in the middle, and how splits differ, log. */
  readonly bees: number;
  readonly beesSpread: number;
  readonly ways: readonly QueenWay[];
}

/** Published quick counts and careful ones lie a factor of 2.7 apart; nobody says which of the two finds all bees. */
const scales = [0.37, 0.5, 0.7, 0.85, 1, 1.1, 1.5, 2.2] as const;
const waysOfTrial: readonly (readonly QueenWay[])[] = [['own'], ['given'], ['cell'], ['given', 'cell'], ['own', 'given', 'egg']];

/** The n-th trial of a seed. */
export function splitPlan(seed: number, n: number, colonies: number): SplitPlan {
  const luck = chanceOf(seed, `plan|${n}`);
  const world = splitWorlds[n % splitWorlds.length]!;
  const early = luck.whole(0, 50);
  // Between the middle of spring and early summer of the place, and from March on by the calendar.
  const splitOn = Math.max(luck.whole(110, 160) - early, 60);
  const first = luck.pick([0, 7, 14, 21, 30]);
  const gap = luck.whole(14, 35);
  const visits = [0, 1, 2, 3].map((round) => first + round * gap + (round === 0 ? 0 : luck.whole(-2, 2)));
  const scale = scales[Math.floor(n / 2) % scales.length]!;
  const ways = waysOfTrial[luck.whole(0, waysOfTrial.length - 1)]!;
  return {
    name: `${world} ${n}`,
    seed,
    world,
    colonies,
    early,
    splitOn,
    splitSpread: luck.whole(0, 6),
    visits,
    scale,
    noise: noiseOf(scale, luck),
    bees: luck.whole(3500, 8000),
    beesSpread: luck.between(0.15, 0.4),
    ways,
  };
}

/** Careful counts err by 12 to 17 percent, quick ones by 20 to 25. */
function noiseOf(scale: number, luck: Chance): number {
  return scale < 0.6 || scale > 1.1 ? luck.between(0.2, 0.25) : luck.between(0.12, 0.18);
}
