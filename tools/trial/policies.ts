/**
 * When to open: the policies that the trial compares. A policy is asked each day that suits opening and answers
 * from what the last openings showed; what is done at an opening is not its matter. The model's own choice is
 * one more policy (`festoon.ts`).
 */
import type { Act } from './hive.ts';
import { type KeeperMemory, signsOf } from './keeper.ts';
import type { Opening } from './reader.ts';

export interface Policy {
  readonly name: string;
  /** Begins a colony-season. */
  readonly begin: (seed: number) => Chooser;
}

export interface Chooser {
  /** Asked on days that suit opening, in their order. The first such day of a season is always taken. */
  readonly opens: (day: number, memory: KeeperMemory) => boolean;
  /** Told what was seen and what was done. */
  readonly opened: (day: number, opening: Opening, acts: readonly Act[]) => void;
}

function byDays(name: string, days: (memory: KeeperMemory) => number): Policy {
  const chooser: Chooser = {
    opens: (day, memory) => memory.lastDay === null || day - memory.lastDay >= days(memory),
    opened: () => undefined,
  };
  return { name, begin: () => chooser };
}

export function every(days: number): Policy {
  return byDays(`every ${days} days`, () => days);
}

/** 7 days after an opening that showed a crowd, cells or no eggs, 14 after one with little food, else 21. */
export const simpleRule: Policy = byDays('simple rule', ({ last, lastDay }) => {
  if (last === null || lastDay === null) return 0;
  const { crowded, cells, noEggs, storesLow } = signsOf(last, lastDay);
  return crowded || cells || noEggs ? 7 : storesLow ? 14 : 21;
});

/** Not a policy anybody keeps: the trial's own check that looking matters. */
export const never: Policy = { name: 'never', begin: () => ({ opens: () => false, opened: () => undefined }) };
