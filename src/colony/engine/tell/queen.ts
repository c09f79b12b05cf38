/**
 * The queen as chances: the states of the day, the days on which a look does harm, and the first on which one
 * would tell. What a look tells is the information, in nats, that eggs and queen cells seen or not give about the
 * nine states, over the particles of that day.
 */
import type { QueenChances } from '../../foreseen.ts';
import { type FigureBook, value } from '../../../figures/book.ts';
import { dayFromNumber } from '../../../numbers/day.ts';
import type { Cloud } from '../../../numbers/particle-filter.ts';
import { chainStates, reportedIndex, reportedStates, stateIndex } from '../../queen-chain/states.ts';
import type { EngineConstants } from '../constants.ts';
import { part, particleSize } from '../particle.ts';
import { cellsLooked, eggsFoundChance } from '../seen/looks.ts';
import type { Ahead } from './ahead.ts';
import { queenChancesOf } from './belief.ts';

export function queenTold(c: EngineConstants, { clouds }: Ahead, horizonDays: number, book: FigureBook): QueenChances {
  const [today] = clouds;
  const chances = today === undefined ? [] : queenChancesOf(today);
  const within = clouds.slice(0, horizonDays + 1);
  const harm = within.map((cloud) => harmOn(cloud, book));
  return {
    states: reportedStates.map((state, i) => ({ state, chance: chances[i] ?? 0 })).sort((a, b) => b.chance - a.chance),
    nextTelling: nextTelling(c, within, harm, book),
    harmful: windowsOf(within, harm),
  };
}

type Why = QueenChances['harmful'][number]['why'];

const kindsOfHarm: readonly (readonly [Why, readonly number[]])[] = [
  ['virgin', [stateIndex.virgin, stateIndex['mother and virgin']]],
  ['introduced', [stateIndex.introduced]],
  ['new queen laying', [stateIndex['new queen laying']]],
];

/** What a look on the day may harm, if that is likely enough to matter. */
function harmOn(cloud: Cloud, book: FigureBook): Why | null {
  const least = value(book, 'queen-state-harm-chance');
  const rest = value(book, 'new-laying-rest-days');
  for (const [why, states] of kindsOfHarm) {
    let chance = 0;
    for (let particle = 0; particle < cloud.count; particle += 1) {
      const at = particle * particleSize;
      const isThere = states.includes(cloud.values[at + part.queen]!);
      // A new queen wants her peace for some days only.
      const matters = why !== 'new queen laying' || cloud.values[at + part.queenDays]! < rest;
      if (isThere && matters) chance += Math.exp(cloud.logShares[particle]!);
    }
    if (chance >= least) return why;
  }
  return null;
}

function windowsOf(clouds: readonly Cloud[], harm: readonly (Why | null)[]): QueenChances['harmful'] {
  const windows: { window: { earliest: string; latest: string }; why: Why }[] = [];
  harm.forEach((why, i) => {
    if (why === null) return;
    const day = dayFromNumber(clouds[i]!.day);
    const last = windows.at(-1);
    if (last !== undefined && harm[i - 1] === why) last.window.latest = day;
    else windows.push({ window: { earliest: day, latest: day }, why });
  });
  return windows;
}

/** Null when the states are told as well as a look could tell them. */
function nextTelling(
  c: EngineConstants,
  clouds: readonly Cloud[],
  harm: readonly (Why | null)[],
  book: FigureBook,
): string | null {
  const least = value(book, 'queen-state-telling-gain');
  const worth = value(book, 'queen-state-telling-share');
  const gains = clouds.map((cloud, i) => (harm[i] === null ? gainOn(c, cloud) : 0));
  const best = Math.max(...gains);
  if (best < least) return null;
  const index = gains.findIndex((gain) => gain >= Math.max(least, worth * best));
  return dayFromNumber(clouds[index]!.day);
}

/** Mutual information of the state with a look at the whole nest: eggs or none, no cells or some. */
export function gainOn(c: EngineConstants, cloud: Cloud): number {
  const joint = reportedStates.map(() => new Float64Array(2 * 2));
  const noCellsIn = new Map<number, number>();
  for (let particle = 0; particle < cloud.count; particle += 1) {
    const at = particle * particleSize;
    const share = Math.exp(cloud.logShares[particle]!);
    const row = joint[reportedIndex[cloud.values[at + part.queen]!]!]!;
    const eggs = eggsFoundChance(c, cloud.values, at);
    // Cells hang on the state and the days in it alone, and few of these are different.
    const story = cloud.values[at + part.queen]! + chainStates.length * cloud.values[at + part.queenDays]!;
    const noCells = noCellsIn.get(story) ?? Math.exp(cellsLooked.density(c, cloud.values, at, noCellsSeen));
    noCellsIn.set(story, noCells);
    row[0]! += share * eggs * noCells;
    row[1]! += share * eggs * (1 - noCells);
    row[2]! += share * (1 - eggs) * noCells;
    row[2 + 1]! += share * (1 - eggs) * (1 - noCells);
  }
  const outcomes = joint[0]!.map((_, i) => joint.reduce((sum, row) => sum + row[i]!, 0));
  return joint.reduce((sum, row) => {
    const state = row.reduce((a, b) => a + b, 0);
    return sum + row.reduce((a, p, i) => (p > 0 ? a + p * Math.log(p / (state * outcomes[i]!)) : a), 0);
  }, 0);
}

const noCellsSeen = { cells: { open: 0, sealed: 0, torn: 0, emerged: 0 }, share: 1 } as const;

/** Chance that a queen who lays fertile eggs is there. */
export function layingChanceOf(cloud: Cloud): number {
  let chance = 0;
  for (let particle = 0; particle < cloud.count; particle += 1) {
    const state = cloud.values[particle * particleSize + part.queen]!;
    if (chainStates[state]!.queenLays) chance += Math.exp(cloud.logShares[particle]!);
  }
  return chance;
}
