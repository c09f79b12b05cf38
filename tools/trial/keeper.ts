/**
 * What the keeper does on what an opening showed: the same for every policy, so that policies differ only in the
 * days on which they look. Cells beside eggs in the swarm season: relieved. Little food: fed. Crowded: bars.
 * No eggs: waits for a daughter where cells were, less long where none were, then gives a queen. Our choice, as
 * handbooks have it.
 */
import { newStream, nextUnit } from '../../src/numbers/streams.ts';
import type { Act } from './hive.ts';
import type { Opening } from './reader.ts';

export interface KeeperMemory {
  readonly lastDay: number | null;
  readonly last: Opening | null;
  /** First of the openings in a row that showed no eggs. */
  readonly noEggsSince: number | null;
  /** Queen cells or what is left of them were seen in that row of openings. */
  readonly daughterMay: boolean;
}

export const newMemory: KeeperMemory = { lastDay: null, last: null, noEggsSince: null, daughterMay: false };

export const habits = {
  /** Last day of the trial on which swarms are thought of: 15 July. */
  swarmSeasonEnds: 105,
  lowKg: 5,
  fedKg: 4,
  /** Bees on a built cell, cells in use of those built, and built of all, from which a hive is crowded. */
  beesPerCell: 0.25,
  used: 0.8,
  full: 0.9,
  kgPerCell: 0.00037,
  barsGiven: 2,
  relieveHolds: 0.85,
  waitsForDaughter: 21,
  waitsWithout: 7,
  queenTaken: 0.8,
} as const;

/** What the simple rule and the keeper's hands go by. */
export interface Signs {
  readonly crowded: boolean;
  readonly cells: boolean;
  readonly noEggs: boolean;
  readonly storesLow: boolean;
}

export function signsOf(opening: Opening, day: number): Signs {
  const h = habits;
  const used = opening.sealed + opening.open + opening.honeyKg / h.kgPerCell;
  const tight = opening.bees > h.beesPerCell * opening.built || used > h.used * opening.built;
  return {
    crowded: day <= h.swarmSeasonEnds && (tight || opening.built > h.full * opening.most),
    cells: opening.cells.open + opening.cells.sealed > 0,
    noEggs: opening.eggs === 'none seen',
    storesLow: opening.honeyKg < h.lowKg,
  };
}

const purpose = { relieve: 62, queen: 63 } as const;

export function actsOn(
  memory: KeeperMemory,
  day: number,
  opening: Opening,
  seed: number,
): { readonly acts: readonly Act[]; readonly memory: KeeperMemory } {
  const signs = signsOf(opening, day);
  const acts: Act[] = [];
  const lucky = (what: number, chance: number): boolean => nextUnit(newStream(seed, what, 0, day)) < chance;
  if (signs.cells && !signs.noEggs && day <= habits.swarmSeasonEnds)
    acts.push({ kind: 'relieve', holds: lucky(purpose.relieve, habits.relieveHolds) });
  if (signs.storesLow) acts.push({ kind: 'feed', kg: habits.fedKg });
  if (signs.crowded) acts.push({ kind: 'bars', bars: habits.barsGiven });
  const anyCell = signs.cells || opening.cells.torn + opening.cells.emerged > 0;
  const since = signs.noEggs ? (memory.noEggsSince ?? day) : null;
  const daughterMay = signs.noEggs && (memory.daughterMay || anyCell);
  const waits = daughterMay ? habits.waitsForDaughter : habits.waitsWithout;
  const spent = since !== null && day - since >= waits && !signs.cells;
  const gives = spent || (opening.dronesOnly && !signs.cells);
  if (gives) acts.push({ kind: 'give queen', taken: lucky(purpose.queen, habits.queenTaken) });
  return {
    acts,
    memory: { lastDay: day, last: opening, noEggsSince: gives ? day : since, daughterMay: gives ? false : daughterMay },
  };
}
