/**
 * What a look at the combs says of the queen of one particle: eggs and the youngest stage by the brood that it
 * holds, queen cells and the queen met by her state. The densities are those of the exact chain (queen-chain/seen);
 * here they meet cohorts instead of days since the last egg.
 */
import type { Observation } from '../../../numbers/particle-filter.ts';
import { nextUnit, type Stream } from '../../../numbers/streams.ts';
import { cellKinds } from '../../queen-chain/cells-there.ts';
import {
  broodLogDensity,
  type BroodThere,
  cellsLogDensity,
  type QueenLook,
  queenSeenChance,
  signChance,
  type Stage,
  stageThere,
} from '../../queen-chain/seen.ts';
import { chainStates } from '../../queen-chain/states.ts';
import type { EngineConstants } from '../constants.ts';
import { broodAt, broodDays, cohorts, droneBroodAt, part } from '../particle.ts';

export interface BroodLook {
  readonly eggs: QueenLook['eggs'];
  readonly youngest: Stage | null;
  /** Of the combs that matter, 0 … 1. */
  readonly share: number;
}

export interface CellsLook {
  readonly cells: NonNullable<QueenLook['cells']>;
  readonly share: number;
}

export interface QueenMet {
  readonly seen: boolean;
  readonly share: number;
}

/** Signs that were noted: several eggs in a cell, drone caps over worker cells. What was not noted says nothing. */
export interface SignsLook {
  readonly manyEggs: boolean;
  readonly domedCaps: boolean;
}

type Look<Seen> = Observation<EngineConstants, Seen>;

/** Drawn as 1 for eggs seen, 0 for none seen. */
export const broodLooked: Look<BroodLook> = {
  density: (c, values, at, { eggs, youngest, share }) => broodLogDensity(c.looks, thereOf(c, values, at), eggs, youngest, share),
  draw: (c, values, at, stream, like) => {
    const seen = broodLogDensity(c.looks, thereOf(c, values, at), 'seen', null, like?.share ?? 1);
    return Number(nextUnit(stream) < Math.exp(seen));
  },
};

/** Drawn as the number of cells of all kinds, for a look that counts them. */
export const cellsLooked: Look<CellsLook> = {
  density: (c, values, at, { cells, share }) =>
    cellsLogDensity(c.looks, values[at + part.queen]!, values[at + part.queenDays]!, cells, share),
  draw: (c, values, at, stream, like) => drawnCells(c, values, at, like?.share ?? 1, stream).reduce((a, b) => a + b, 0),
};

/** Drawn as 1 for met. */
export const queenMet: Look<QueenMet> = {
  density: (c, values, at, { seen, share }) => {
    const chance = queenSeenChance(c.looks, values[at + part.queen]!, share);
    return Math.log(seen ? chance : 1 - chance);
  },
  draw: (c, values, at, stream, like) =>
    Number(nextUnit(stream) < queenSeenChance(c.looks, values[at + part.queen]!, like?.share ?? 1)),
};

/** Drawn as 1 where several eggs in a cell are noted. */
export const signsNoted: Look<SignsLook> = {
  density: (c, values, at, { manyEggs, domedCaps }) => {
    const { workersLay, dronesOnly } = chainStates[values[at + part.queen]!]!;
    const eggs = manyEggs ? Math.log(signChance(c.looks, workersLay)) : 0;
    return eggs + (domedCaps ? Math.log(signChance(c.looks, dronesOnly)) : 0);
  },
  draw: (c, values, at, stream) =>
    Number(nextUnit(stream) < signChance(c.looks, chainStates[values[at + part.queen]!]!.workersLay)),
};

/** A count of each kind of cell, in the order of `cellKinds`. */
export function drawnCells(c: EngineConstants, values: Float64Array, at: number, share: number, stream: Stream): number[] {
  const state = values[at + part.queen]!;
  const day = Math.min(values[at + part.queenDays]!, c.looks.memory[state]! - 1) * cellKinds.length;
  return cellKinds.map((_, kind) => {
    const mean = c.looks.cells[state]![day + kind]! * c.looks.cellSeen * share + c.looks.slip;
    return negativeBinomial(mean, c.looks.shape, stream);
  });
}

/** By going through the chances from 0 on, each from the last. */
function negativeBinomial(mean: number, shape: number, stream: Stream): number {
  const more = mean / (shape + mean);
  let left = nextUnit(stream);
  let chance = (shape / (shape + mean)) ** shape;
  let count = 0;
  while (left > chance && chance > 0) {
    left -= chance;
    chance *= ((shape + count) / (count + 1)) * more;
    count += 1;
  }
  return count;
}

/** Chance that a look at the whole nest finds eggs. */
export function eggsFoundChance(c: EngineConstants, values: Float64Array, at: number): number {
  const egg = stageThere(c.looks, lookedLike(values, at, 0, c.hatchAge));
  return Math.exp(broodLogDensity(c.looks, { egg, larva: 0, sealed: 0 }, 'seen', null, 1));
}

function thereOf(c: EngineConstants, values: Float64Array, at: number): BroodThere {
  return {
    egg: stageThere(c.looks, lookedLike(values, at, 0, c.hatchAge)),
    larva: stageThere(c.looks, lookedLike(values, at, c.hatchAge, c.sealAge)),
    sealed: stageThere(c.looks, lookedLike(values, at, c.sealAge, broodDays)),
  };
}

/** Cells with worker brood of these ages, to whoever looks: drone eggs in worker cells are eggs too. */
function lookedLike(values: Float64Array, at: number, from: number, to: number): number {
  const workers = cohorts(values, at + broodAt, from, to);
  return chainStates[values[at + part.queen]!]!.dronesOnly ? workers + cohorts(values, at + droneBroodAt, from, to) : workers;
}
