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
  const own = ownByAge(cloud, edges.at(-1)!, before, brought);
  return edges.slice(0, -1).map((fromAge, i) => {
    const toAge = edges[i + 1]! - 1;
    let [ofOld, ofNew] = [0, 0];
    for (let particle = 0; particle < cloud.count; particle += 1) {
      const at = particle * particleSize;
      const times = Math.exp(cloud.logShares[particle]! + cloud.values[at + scale]!);
      const eldest = eldestOfHers(cloud, cloud.values[at + part.queenFrom]!, before);
      for (let age = fromAge; age <= toAge; age += 1) {
        const bees = times * cloud.values[at + from + age]!;
        const hers = age <= eldest ? bees * own[age]! : 0;
        ofNew += hers;
        ofOld += bees - hers;
      }
    }
    return { fromAge, toAge, ofOld, ofNew };
  });
}

/** Of those of each age, who are `before` days older since the egg, the share that was laid here. */
function ownByAge({ day }: Cloud, ages: number, before: number, brought: Brought): Float64Array {
  return Float64Array.from({ length: ages }, (_, age) => 1 - brought(day, day - 1 - age - before));
}

/** The greatest age of the daughters of a queen who lays since `from`. */
function eldestOfHers({ day }: Cloud, from: number, before: number): number {
  return day - 1 - before - from;
}

/** Share of the daughters of a queen who lays since `from` among bees of an age from `fromAge` on. */
function newShare(cloud: Cloud, own: Float64Array, at: number, from: number, fromAge: number): number {
  const { values } = cloud;
  const first = at + adultsAt;
  const eldest = Math.min(adultDays - 1, eldestOfHers(cloud, from, broodDays));
  let [all, hers] = [0, 0];
  for (let age = fromAge; age < adultDays; age += 1) all += values[first + age]!;
  for (let age = fromAge; age <= eldest; age += 1) hers += values[first + age]! * own[age]!;
  return all > 0 ? hers / all : 0;
}

/**
 * Places of the particles in which a queen began lately, or none lays and one is to come; null where these are the
 * fewer. A change that may come by itself later is no change in sight.
 */
export function turning({ clouds }: Ahead, recentDays: number): readonly number[] | null {
  const [first] = clouds;
  const last = clouds.at(-1);
  if (first === undefined || last === undefined) return null;
  const places = [...Array(last.count).keys()].map((i) => i * particleSize);
  const changed = places.filter((at) => {
    const then = first.values[at + part.queenFrom]!;
    const begins = last.values[at + part.queenFrom]!;
    const lays = chainStates[first.values[at + part.queen]!]!.queenLays;
    return lays ? then > first.day - recentDays && then === begins : begins > first.day;
  });
  return changed.length * 2 < places.length ? null : changed;
}

/** Null where no queen is changing. Days not reached in the days ahead stand at their end. */
export function turnoverOf(
  c: EngineConstants,
  ahead: Ahead,
  recentDays: number,
  brought: Brought = nothingBrought,
): TurnoverDays | null {
  const { clouds } = ahead;
  const changed = turning(ahead, recentDays);
  if (changed === null) return null;
  const own = clouds.map((cloud) => ownByAge(cloud, adultDays, broodDays, brought));
  const begun = changed.map((at) => clouds.at(-1)!.values[at + part.queenFrom]!);
  const days = clouds.map(({ day }) => day);
  const courses = (fromAge: number): readonly (readonly number[])[] =>
    changed.map((at, i) => clouds.map((cloud, k) => newShare(cloud, own[k]!, at, begun[i]!, fromAge)));
  const reached = (shares: readonly (readonly number[])[], level: number): Window =>
    windowOfDays(shares.map((course) => dayReached(days, course, level)));
  const all = courses(0);
  const old = courses(c.guardAge);
  return {
    laysSince: windowOfDays(begun),
    firstDaughters: windowOfDays(begun.map((day) => day + broodDays)),
    half: reached(all, 1 / 2),
    nineTenths: reached(all, most),
    oldHalf: reached(old, 1 / 2),
    oldNineTenths: reached(old, most),
    dip: dipOf(clouds, changed),
  };
}

/** The day on which a share that grows reaches a level, straight between days; the last day where it does not. */
function dayReached(days: readonly number[], course: readonly number[], level: number): number {
  let before = 0;
  for (const [i, share] of course.entries()) {
    if (share >= level) return share > before ? days[i]! - (share - level) / (share - before) : days[i]!;
    before = share;
  }
  return days.at(-1)!;
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
