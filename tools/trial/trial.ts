/** The trial as a whole: which worlds and policies, the tallies of all seasons, and the tables that are made of them. */
import { readFileSync } from 'node:fs';
import { readSky } from '../world/sky.ts';
import { festoon } from './festoon.ts';
import type { TrialWorld } from './hive.ts';
import { every, type Policy, simpleRule } from './policies.ts';
import { liveSeason } from './season.ts';
import { type Difference, type Mean, type Measure, measures, meanOf, pairedDifference, type Tally } from './tally.ts';
import { worldOfCombs } from './world-of-combs.ts';
import { worldOfStages } from './world-of-stages.ts';

export const worldNames = ['combs', 'stages'] as const;
export type WorldName = (typeof worldNames)[number];

export const trialPolicies: readonly Policy[] = [every(7), every(10), every(14), simpleRule, festoon()];
/** What the others are compared with, by place in the policies. */
export const rivals = [0, 3] as const;

export function trialWorld(name: WorldName): TrialWorld {
  if (name === 'stages') return worldOfStages as TrialWorld;
  const file = new URL('../../examples/newyork-weather-2013-2014.csv', import.meta.url);
  return worldOfCombs(readSky(readFileSync(file, 'utf8'))) as TrialWorld;
}

/** Tallies by season, then by policy. */
export function liveSeasons(world: TrialWorld, policies: readonly Policy[], from: number, to: number): (readonly Tally[])[] {
  return Array.from({ length: to - from }, (_, i) => liveSeason(world, policies, from + i));
}

export interface PolicyRow {
  readonly policy: string;
  readonly means: Readonly<Record<Measure, Mean>>;
  /** This policy less the rival, by season. Null against itself. */
  readonly less: readonly { readonly rival: string; readonly by: Readonly<Record<Measure, Difference>> | null }[];
}

export interface WorldTable {
  readonly world: string;
  readonly seasons: number;
  readonly rows: readonly PolicyRow[];
}

export function tableOf(
  world: string,
  policies: readonly { readonly name: string }[],
  rivalPlaces: readonly number[],
  tallies: readonly (readonly Tally[])[],
): WorldTable {
  const column = (policy: number, measure: Measure): number[] => tallies.map((season) => season[policy]![measure]);
  const each = <T>(make: (measure: Measure) => T): Record<Measure, T> =>
    Object.fromEntries(measures.map((measure) => [measure, make(measure)])) as Record<Measure, T>;
  const rows = policies.map(({ name }, i): PolicyRow => ({
    policy: name,
    means: each((measure) => meanOf(column(i, measure))),
    less: rivalPlaces.map((rival) => ({
      rival: policies[rival]!.name,
      by: rival === i ? null : each((measure) => pairedDifference(column(i, measure), column(rival, measure))),
    })),
  }));
  return { world, seasons: tallies.length, rows };
}
