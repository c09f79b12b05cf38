/** One day of the line: each quantity with its two ranges, and the queen's states as chances. */
import { type DayBelief, quantities, type Quantity } from '../../foreseen.ts';
import { dayFromNumber } from '../../../numbers/day.ts';
import type { Cloud } from '../../../numbers/particle-filter.ts';
import type { Range } from '../../../numbers/range.ts';
import { reportedIndex, reportedStates } from '../../queen-chain/states.ts';
import type { EngineConstants } from '../constants.ts';
import { part, particleSize } from '../particle.ts';
import { drawnPlaces, rangeOfSorted, sortedOf, tails, tellers } from './told-range.ts';

export function beliefOn(c: EngineConstants, cloud: Cloud, when: DayBelief['when']): DayBelief {
  const places = drawnPlaces(cloud);
  const values: Partial<Record<Quantity, Range>> = {};
  const half: Partial<Record<Quantity, Range>> = {};
  for (const quantity of quantities) {
    const sorted = sortedOf(c, cloud, places, tellers[quantity]);
    values[quantity] = rangeOfSorted(sorted, tails.wide);
    half[quantity] = rangeOfSorted(sorted, tails.half);
  }
  return {
    day: dayFromNumber(cloud.day),
    when,
    values: values as Record<Quantity, Range>,
    half: half as Record<Quantity, Range>,
    queen: queenChancesOf(cloud),
  };
}

/** Chances in the order of the reported states. */
export function queenChancesOf(cloud: Cloud): readonly number[] {
  const chances = reportedStates.map(() => 0);
  for (let particle = 0; particle < cloud.count; particle += 1) {
    const state = cloud.values[particle * particleSize + part.queen]!;
    chances[reportedIndex[state]!]! += Math.exp(cloud.logShares[particle]!);
  }
  return chances;
}
