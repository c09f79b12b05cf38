/**
 * One made-up colony followed by the filter as a keeper's would be, and where the truth lies in what the filter
 * says: a place of 0 … 1 for each thing asked, even over many colonies if and only if the ranges mean what they say.
 */
import { colonyModel } from '../../src/colony/engine/model.ts';
import { adultsOfParticle, type Part, part } from '../../src/colony/engine/particle.ts';
import { beginColony, type Crowd, crowdOf, engineSetup, meet } from '../../src/colony/engine/run.ts';
import { printedBook } from '../../src/figures/book.ts';
import { type Cloud, foresee, goOn } from '../../src/numbers/particle-filter.ts';
import { newStream, nextUnit } from '../../src/numbers/streams.ts';
import { filterConstants, type Plan, tell } from './truth.ts';

/** What a colony is like and how its counts are read, on the day of the last visit. */
export const asked = [
  'capacity',
  'lossLevel',
  'beesScale',
  'sealedScale',
  'openScale',
  'honeyScale',
] as const satisfies readonly Part[];

export const questions = ['bees', 'next count', ...asked] as const;
export type Question = (typeof questions)[number];

export interface Placed {
  readonly places: Readonly<Record<Question, number>>;
  /** Of the particles that began, those with a descendant after the last visit. */
  readonly ancestors: number;
  /** Smallest effective number over the visits, before resampling. */
  readonly effective: number;
  /** The queen of the truth was not as she was at the beginning, at one visit or more. */
  readonly eventful: boolean;
}

export interface Effort {
  readonly plan: Plan;
  /** Particles once the colony is known a little; before that as many times more as the figures say. */
  readonly particles: number;
  readonly seed: number;
}

const drawsEach = 2;
const constants = filterConstants();
const setup = engineSetup(constants, printedBook);

export function replicate({ plan, particles, seed }: Effort, index: number): Placed {
  const story = tell(plan, constants, seed, index);
  const own = Math.imul(seed + 1, 0x9e3779b1) ^ index;
  const crowd = crowdFor(particles);
  let left = beginColony(setup, plan.beginsOn, crowd, own);
  let effective = Infinity;
  for (const { day, seen } of story.visits) {
    left = meet(setup, left, { day, visit: `${day}`, seen }, crowd, own).left;
    effective = Math.min(effective, left.info!.effective);
  }
  const { cloud } = left;
  const truth = story.found[plan.visits - 1]!;
  // A tie, as among colonies that are gone, is broken by chance.
  const ties = newStream(own, 30, index, 0);
  const of = (what: (values: Float64Array, at: number) => number): number =>
    placeOf(valuesOf(cloud, what), sharesOf(cloud), what(truth, 0), nextUnit(ties));
  const later = goOn(setup, cloud, cloud.day + plan.everyDays, own);
  const next = foresee(setup, later, 'bees', drawsEach, own);
  const ofPart = (name: Part): number => of((values, at) => values[at + part[name]]!);
  return {
    places: {
      bees: of(adultsOfParticle),
      'next count': placeOf(next.values, next.shares, story.nextCount, nextUnit(ties)),
      capacity: ofPart('capacity'),
      lossLevel: ofPart('lossLevel'),
      beesScale: ofPart('beesScale'),
      sealedScale: ofPart('sealedScale'),
      openScale: ofPart('openScale'),
      honeyScale: ofPart('honeyScale'),
    },
    ancestors: new Set(cloud.roots).size,
    effective,
    eventful: story.found.some((values) => values[part.queen] !== story.found[0]![part.queen]),
  };
}

export function crowdFor(particles: number): Crowd {
  const crowd = crowdOf(printedBook);
  return { ...crowd, usual: particles, wide: Math.round((particles * crowd.wide) / crowd.usual) };
}

/** Share of what lies below the truth, and of what equals it that part which chance says. */
export function placeOf(values: Float64Array, shares: Float64Array, truth: number, unit: number): number {
  let below = 0;
  values.forEach((value, i) => {
    if (value < truth) below += shares[i]!;
    else if (value === truth) below += unit * shares[i]!;
  });
  return below;
}

function valuesOf(cloud: Cloud, what: (values: Float64Array, at: number) => number): Float64Array {
  return Float64Array.from({ length: cloud.count }, (_, particle) => what(cloud.values, particle * colonyModel.size));
}

function sharesOf(cloud: Cloud): Float64Array {
  return cloud.logShares.map((share) => Math.exp(share));
}
