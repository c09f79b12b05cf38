/** What the queen's day takes from the figures. */
import { type FigureBook, value } from '../../../figures/book.ts';
import { perCombDm2 } from '../../../hive/hive-measures.ts';

export interface QueenConstants {
  readonly urgeBees: number;
  /** Power of the season's share that the urge follows. */
  readonly urgeSeason: number;
  /** The same past the year's peak. */
  readonly urgeAfter: number;
  /** Bees on a built cell when they cover the comb so far that the urge is what its figure says. */
  readonly coverBees: number;
  readonly crowdedUrge: number;
  readonly roomyUrge: number;
  readonly roomyDays: number;
  readonly guided: number;
  readonly rampDays: number;
  readonly swarmLogit: number;
  readonly swarmSpread: number;
  readonly swarmHoneyKg: number;
  readonly afterSwarmShare: number;
  readonly cutMissed: number;
}

const gramsInKg = 1000;

export function queenConstants(book: FigureBook): QueenConstants {
  const full = perCombDm2(book);
  return {
    urgeBees: value(book, 'engine-swarm-bees-urge'),
    urgeSeason: value(book, 'engine-swarm-season'),
    urgeAfter: value(book, 'engine-swarm-season-after'),
    coverBees: (value(book, 'engine-swarm-cover') * full.bees.likely) / full.workerCells.likely,
    crowdedUrge: value(book, 'engine-crowded-urge'),
    roomyUrge: value(book, 'engine-roomy-urge'),
    roomyDays: value(book, 'engine-roomy-days'),
    guided: value(book, 'engine-guided-times'),
    rampDays: value(book, 'engine-new-queen-ramp'),
    swarmLogit: logit(value(book, 'swarm-share')),
    swarmSpread: value(book, 'engine-swarm-share-spread'),
    swarmHoneyKg: value(book, 'engine-swarm-honey') / gramsInKg,
    afterSwarmShare: value(book, 'engine-after-swarm-bees'),
    cutMissed: value(book, 'queen-cut-missed'),
  };
}

/** Logarithm of the odds of a share. */
export function logit(share: number): number {
  return Math.log(share / (1 - share));
}
