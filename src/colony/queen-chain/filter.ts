/**
 * The exact filter: chances of every state, day in it and day since the last fertile egg, carried forward day by
 * day and weighed by what was seen. Nothing is drawn, so it is the measure for anything that draws; it knows no
 * numbers of bees, only the season and how crowded the colony is said to be.
 */
import { assert } from '../../numbers/assert.ts';
import { arrivesAt, type Drives, fitting, layingShare, type QueenChain, wayChance } from './chain.ts';
import { chainStates, reportedIndex, reportedStates, stateIndex } from './states.ts';

/** Days since the last fertile egg that are told apart; older brood has all emerged by then. */
export const sinceMost = 24;

/** Chances of all cells of the chain, flat: for a state its days, for a day the days since an egg. They sum to 1. */
export interface Belief {
  readonly at: Int32Array;
  readonly chances: Float64Array;
}

export function emptyBelief(chain: QueenChain): Belief {
  const sizes = Array.from(chain.memory, (days) => days * (sinceMost + 1));
  const at = Int32Array.from(sizes, (_, state) => sizes.slice(0, state).reduce((a, b) => a + b, 0));
  return { at, chances: new Float64Array(sizes.reduce((a, b) => a + b, 0)) };
}

export function cellOf(belief: Belief, state: number, daysIn: number, since: number): number {
  return belief.at[state]! + daysIn * (sinceMost + 1) + since;
}

/** Calls back for every cell with any chance in it. */
export function eachCell(
  chain: QueenChain,
  belief: Belief,
  call: (state: number, daysIn: number, since: number, chance: number, cell: number) => void,
): void {
  for (let state = 0; state < chainStates.length; state += 1) {
    for (let daysIn = 0; daysIn < chain.memory[state]!; daysIn += 1) {
      for (let since = 0; since <= sinceMost; since += 1) {
        const cell = cellOf(belief, state, daysIn, since);
        const chance = belief.chances[cell]!;
        if (chance > 0) call(state, daysIn, since, chance, cell);
      }
    }
  }
}

/**
 * A day on. `lays` is the chance, 0 … 1, that a sound queen lays at all at this time of the year: in the depth of
 * winter a pause tells nothing.
 */
export function dayOn(chain: QueenChain, belief: Belief, drives: Drives, lays: number): Belief {
  const next = emptyBelief(chain);
  const { urge, season, loss } = drives;
  const put = (state: number, daysIn: number, since: number, chance: number): void => {
    const kept = Math.min(daysIn, chain.memory[state]! - 1);
    const laying = layingShare(chain, state, kept) >= fewEggs ? lays : 0;
    next.chances[cellOf(next, state, kept, 0)]! += chance * laying;
    next.chances[cellOf(next, state, kept, Math.min(since + 1, sinceMost))]! += chance * (1 - laying);
  };
  eachCell(chain, belief, (state, daysIn, since, chance) => {
    const scale = fitting(chain, state, daysIn, urge, season, loss, 1);
    let left = 1;
    for (let way = chain.firstWay[state]!; way < chain.firstWay[state + 1]!; way += 1) {
      const part = scale * wayChance(chain, way, daysIn, urge, season, loss);
      left -= part;
      if (part > 0) put(arrivesAt(chain, chain.to[way]!, since), 0, since, chance * part);
    }
    if (left > 0) put(state, daysIn + 1, since, chance * left);
  });
  return next;
}

/** Laying at less than half of what she could leaves so few eggs that the days since the last one run on. */
const fewEggs = 1 / 2;

/** Weighs every cell by a density, and returns the logarithm of what the whole was worth before evening out. */
export function weigh(
  chain: QueenChain,
  belief: Belief,
  logDensity: (state: number, daysIn: number, since: number) => number,
): { readonly belief: Belief; readonly logLikelihood: number } {
  const weighed = { at: belief.at, chances: new Float64Array(belief.chances.length) };
  let sum = 0;
  eachCell(chain, belief, (state, daysIn, since, chance, cell) => {
    const weight = chance * Math.exp(logDensity(state, daysIn, since));
    weighed.chances[cell] = weight;
    sum += weight;
  });
  assert(sum > 0, 'a note leaves some state possible');
  for (let cell = 0; cell < weighed.chances.length; cell += 1) weighed.chances[cell]! /= sum;
  return { belief: weighed, logLikelihood: Math.log(sum) };
}

/** Chances of the nine states that are told, in their order. */
export function reportedChances(chain: QueenChain, belief: Belief): Float64Array {
  const chances = new Float64Array(reportedStates.length);
  eachCell(chain, belief, (state, _, __, chance) => {
    chances[reportedIndex[state]!]! += chance;
  });
  return chances;
}

/** A colony whose queen has laid for long. */
export function believedLaying(chain: QueenChain): Belief {
  const belief = emptyBelief(chain);
  belief.chances[cellOf(belief, stateIndex.laying, chain.memory[stateIndex.laying]! - 1, 0)] = 1;
  return belief;
}

/** With a share of doubt, spread evenly over states that come by themselves, their days and, where nobody lays, the days since an egg. */
export function doubted(chain: QueenChain, belief: Belief, doubt: number): Belief {
  const mixed = { at: belief.at, chances: belief.chances.map((chance) => chance * (1 - doubt)) };
  const open = chainStates.filter(({ byKeeper }) => !byKeeper).length;
  chainStates.forEach(({ queenLays, byKeeper }, state) => {
    if (byKeeper) return;
    const days = chain.memory[state]!;
    const sinces = queenLays ? 1 : sinceMost + 1;
    for (let daysIn = 0; daysIn < days; daysIn += 1) {
      for (let since = 0; since < sinces; since += 1) {
        mixed.chances[cellOf(mixed, state, daysIn, since)]! += doubt / open / days / sinces;
      }
    }
  });
  return mixed;
}
