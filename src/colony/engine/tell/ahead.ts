/**
 * The days ahead: particles live on with nothing seen, and for each it is noted when it is first hemmed in, has
 * filled its trough, starves or swarms. A thinner cloud does for that. What a keeper would do meanwhile is left
 * out: it is what is coming if nobody does anything.
 */
import { type Chance, type Coming, type DayBelief, type Sign } from '../../foreseen.ts';
import { dayFromNumber } from '../../../numbers/day.ts';
import { type Cloud, goOn } from '../../../numbers/particle-filter.ts';
import { chainStates, stateIndex } from '../../queen-chain/states.ts';
import type { EngineConstants } from '../constants.ts';
import { eggsOn, shareOn } from '../laying.ts';
import { adultsOfParticle, part, particleSize } from '../particle.ts';
import { freeCells } from '../room.ts';
import type { EngineSetup } from '../run.ts';
import { onlyOf, thinned } from '../thin.ts';
import { beliefOn } from './belief.ts';
import { tails } from './told-range.ts';

export interface Ahead {
  /** Rows of the line, ascending. */
  readonly line: readonly DayBelief[];
  /** Clouds of the days ahead, from the day itself on, one a day: particle i is the same colony in all. */
  readonly clouds: readonly Cloud[];
}

/** Lives on for so many days, from a cloud thinned to so many particles. */
export function liveOn(
  setup: EngineSetup,
  cloud: Cloud,
  days: number,
  particles: number,
  everyDays: number,
  seed: number,
): Ahead {
  const { clouds } = furtherOn(setup, { line: [], clouds: [thinned(cloud, particles)] }, days, seed);
  const line = clouds.filter((_, day) => day > 0 && day % everyDays === 0).map((one) => beliefOn(setup.constants, one, 'ahead'));
  return { line, clouds };
}

/** So many of the particles, evenly chosen, the same on all days; of no use where shares matter. */
export function fewer({ line, clouds }: Ahead, particles: number): Ahead {
  const all = clouds[0]?.count ?? 0;
  if (particles >= all) return { line, clouds };
  const chosen = Int32Array.from({ length: particles }, (_, i) => Math.floor(((i + 1 / 2) * all) / particles));
  return { line, clouds: clouds.map((cloud) => onlyOf(cloud, chosen)) };
}

/** The same particles, until so many days ahead; no line is drawn there. */
export function furtherOn(setup: EngineSetup, { line, clouds }: Ahead, days: number, seed: number): Ahead {
  const all = [...clouds];
  while (all.length <= days) {
    const last = all.at(-1)!;
    all.push(goOn(setup, last, last.day + 1, seed));
  }
  return { line, clouds: all };
}

/** No cells for the eggs of the day. */
function hemmedIn(c: EngineConstants, day: number, values: Float64Array, at: number): boolean {
  if (!chainStates[values[at + part.queen]!]!.queenLays) return false;
  const eggs = eggsOn(c, shareOn(c, day, values, at), adultsOfParticle(values, at), values, at);
  return freeCells(c, values, at) * c.room.found < eggs * Math.exp(values[at + part.sealedScale]!);
}

function isBuilt(values: Float64Array, at: number): boolean {
  return values[at + part.comb]! >= values[at + part.combMost]!;
}

/** What would settle each question, the most telling first. */
const settles: Readonly<Record<'hemmedIn' | 'troughFull' | 'starving' | 'swarm', readonly Sign[]>> = {
  hemmedIn: ['empty cells in the brood', 'bare bars being built'],
  troughFull: ['bare bars being built', 'empty cells in the brood', 'bees covering the last comb'],
  starving: ['honey'],
  swarm: ['queen cells', 'eggs', 'empty cells in the brood'],
};

export function comingOf(c: EngineConstants, { clouds }: Ahead, horizonDays: number, next: number): Coming {
  const within = clouds.slice(0, horizonDays + 1);
  const first = firstDays(c, within);
  const of = (what: Comes): Chance => chanceOf(within, first[what], settles[what], next);
  return {
    horizonDays,
    hemmedIn: of('hemmedIn'),
    troughFull: of('troughFull'),
    starving: of('starving'),
    swarm: of('swarm'),
  };
}

type Comes = keyof typeof settles;

/** For each particle the first of the days on which it comes to that, -1 where it does not. */
function firstDays(c: EngineConstants, clouds: readonly Cloud[]): Readonly<Record<Comes, Int32Array>> {
  const [today] = clouds;
  const none = (): Int32Array => new Int32Array(today?.count ?? 0).fill(-1);
  const first = { hemmedIn: none(), troughFull: none(), starving: none(), swarm: none() };
  clouds.forEach(({ day, count, values }, i) => {
    for (let particle = 0; particle < count; particle += 1) {
      const at = particle * particleSize;
      const note = (what: Comes): void => void (first[what][particle] = i);
      const fills = first.troughFull[particle]! < 0 && isBuilt(values, at);
      if ((fills || first.hemmedIn[particle]! < 0) && hemmedIn(c, day, values, at)) {
        if (first.hemmedIn[particle]! < 0) note('hemmedIn');
        if (fills) note('troughFull');
      }
      if (first.starving[particle]! < 0 && values[at + part.honeyKg]! <= c.stores.hungryKg) note('starving');
      // That it has swarmed already is not what is coming.
      const swarmed = values[at + part.queen] === stateIndex.swarmed && today!.values[at + part.queen] !== stateIndex.swarmed;
      if (swarmed && first.swarm[particle]! < 0) note('swarm');
    }
  });
  return first;
}

/** `next`: a chance so small that no day is told. */
function chanceOf(clouds: readonly Cloud[], first: Int32Array, settledBy: readonly Sign[], next: number): Chance {
  const last = clouds.at(-1)!;
  const byDay = clouds.map(() => 0);
  for (let particle = 0; particle < last.count; particle += 1) {
    const on = first[particle]!;
    if (on >= 0) byDay[on]! += Math.exp(last.logShares[particle]!);
  }
  const chance = byDay.reduce((a, b) => a + b, 0);
  if (chance < next) return { chance, window: null, settledBy };
  const dayAt = (share: number): number => {
    let reached = 0;
    const index = byDay.findIndex((one) => (reached += one) >= share * chance);
    return last.day - clouds.length + 1 + Math.max(0, index);
  };
  return {
    chance,
    window: { earliest: dayFromNumber(dayAt(tails.wide)), latest: dayFromNumber(dayAt(1 - tails.wide)) },
    settledBy,
  };
}
