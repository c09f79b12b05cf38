/**
 * Bees and brood by age with the present queen's daughters and all others apart, and the days of the turnover: by
 * the day on which each was laid, against the day from which she lays, less the share that came in from other
 * colonies. Drones are left out.
 */
import type { AgeClass, Ages, TurnoverDays } from '../../foreseen.ts';
import { dayFromNumber } from '../../../numbers/day.ts';
import type { Cloud } from '../../../numbers/particle-filter.ts';
import type { Range } from '../../../numbers/range.ts';
import { type Window, windowOf } from '../../../numbers/window.ts';
import { chainStates } from '../../queen-chain/states.ts';
import type { EngineConstants } from '../constants.ts';
import { adultDays, adultsAt, adultsOfParticle, broodAt, broodDays, part, particleSize } from '../particle.ts';
import type { Ahead } from './ahead.ts';
import { type Brought, nothingBrought } from './brought.ts';
import { quantileOfSorted, rangeOfSorted, tails } from './told-range.ts';

const classDays = 7;

export function agesOf(c: EngineConstants, cloud: Cloud, brought: Brought = nothingBrought): Ages {
  const broodEdges = [0, c.hatchAge, c.sealAge, broodDays];
  const adultEdges = [...Array(Math.ceil(adultDays / classDays)).keys()].map((i) => i * classDays).concat(adultDays);
  return {
    brood: classesOf(cloud, { edges: broodEdges, from: broodAt, before: 0, scale: part.sealedScale }, brought),
    adults: classesOf(cloud, { edges: adultEdges, from: adultsAt, before: broodDays, scale: part.beesScale }, brought),
  };
}

interface Cohorts {
  readonly edges: readonly number[];
  /** Where they stand in a particle. */
  readonly from: number;
  /** Days from the egg to the first of these cohorts. */
  readonly before: number;
  readonly scale: number;
}

function classesOf(cloud: Cloud, { edges, from, before, scale }: Cohorts, brought: Brought): readonly AgeClass[] {
  return edges.slice(0, -1).map((fromAge, i) => {
    const toAge = edges[i + 1]! - 1;
    let [ofOld, ofNew] = [0, 0];
    for (let particle = 0; particle < cloud.count; particle += 1) {
      const at = particle * particleSize;
      const times = Math.exp(cloud.logShares[particle]! + cloud.values[at + scale]!);
      for (let age = fromAge; age <= toAge; age += 1) {
        const bees = times * cloud.values[at + from + age]!;
        const hers = bees * herShare(cloud.day, cloud.values[at + part.queenFrom]!, age + before, brought);
        ofNew += hers;
        ofOld += bees - hers;
      }
    }
    return { fromAge, toAge, ofOld, ofNew };
  });
}

/** Of those laid so many days before the day, the share laid by a queen who lays since `from`. */
function herShare(day: number, from: number, daysOld: number, brought: Brought): number {
  const laidOn = day - 1 - daysOld;
  return laidOn < from ? 0 : 1 - brought(day, laidOn);
}

/** Share of the daughters of a queen who lays since `from` among bees of an age from `fromAge` on. */
function newShare(cloud: Cloud, at: number, from: number, fromAge: number, brought: Brought): number {
  let [all, hers] = [0, 0];
  for (let age = fromAge; age < adultDays; age += 1) {
    const bees = cloud.values[at + adultsAt + age]!;
    all += bees;
    hers += bees * herShare(cloud.day, from, age + broodDays, brought);
  }
  return all > 0 ? hers / all : 0;
}

/**
 * Told where a queen began lately, or where none lays and one is to come; a change that may come by itself later
 * is no change in sight. Days not reached in the days ahead stand at their end.
 */
export function turnoverOf(
  c: EngineConstants,
  { clouds }: Ahead,
  recentDays: number,
  brought: Brought = nothingBrought,
): TurnoverDays | null {
  const [first] = clouds;
  const last = clouds.at(-1)!;
  if (first === undefined) return null;
  const places = [...Array(last.count).keys()].map((i) => i * particleSize);
  const begins = (at: number): number => last.values[at + part.queenFrom]!;
  const changed = places.filter((at) => {
    const then = first.values[at + part.queenFrom]!;
    const lays = chainStates[first.values[at + part.queen]!]!.queenLays;
    return lays ? then > first.day - recentDays && then === begins(at) : begins(at) > first.day;
  });
  if (changed.length * 2 < places.length) return null;
  const begun = changed.map(begins);
  const reached = (fromAge: number, share: number): Window => {
    return windowOfDays(
      changed.map((at) => dayReached(clouds, share, (cloud) => newShare(cloud, at, begins(at), fromAge, brought))),
    );
  };
  return {
    laysSince: windowOfDays(begun),
    firstDaughters: windowOfDays(begun.map((day) => day + broodDays)),
    half: reached(0, 1 / 2),
    nineTenths: reached(0, most),
    oldHalf: reached(c.guardAge, 1 / 2),
    oldNineTenths: reached(c.guardAge, most),
    dip: dipOf(clouds, changed),
  };
}

/** The day on which a share that grows reaches a level, straight between days; the last day where it does not. */
function dayReached(clouds: readonly Cloud[], level: number, shareOf: (cloud: Cloud) => number): number {
  let before = 0;
  for (const cloud of clouds) {
    const share = shareOf(cloud);
    if (share >= level) return share > before ? cloud.day - (share - level) / (share - before) : cloud.day;
    before = share;
  }
  return clouds.at(-1)!.day;
}

const most = 1 - tails.wide;

/** Fewest bees ahead against today's; null when half of the particles do not fall by as much as a count errs. */
function dipOf(clouds: readonly Cloud[], places: readonly number[]): TurnoverDays['dip'] {
  const lows = places.map((at) => {
    const counts = clouds.map((cloud) => adultsOfParticle(cloud.values, at));
    const least = Math.min(...counts);
    return { share: least / Math.max(1, counts[0]!), day: clouds[counts.indexOf(least)]!.day };
  });
  const share: Range = rangeOfSorted(Float64Array.from(lows, (one) => one.share).sort(), tails.wide);
  return share.likely > most ? null : { share, window: windowOfDays(lows.map((one) => one.day)) };
}

function windowOfDays(days: readonly number[]): Window {
  const sorted = Float64Array.from(days).sort();
  const at = (chance: number): string => dayFromNumber(Math.round(quantileOfSorted(sorted, chance)));
  return windowOf(at(tails.wide), at(1 - tails.wide));
}
