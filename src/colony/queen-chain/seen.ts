/**
 * What a look at the combs says of the queen: densities of eggs seen or not, the youngest stage, queen cells
 * counted and the queen met, given the state she is in and what brood there is. The exact filter and the particles
 * of the colony's model call the same functions; a few notes are wrong without a reason, so no note is proof.
 */
import { type FigureBook, value } from '../../figures/book.ts';
import { cellKinds, type CellTable, cellTable } from './cells-there.ts';
import type { QueenChain } from './chain.ts';
import { chainStates } from './states.ts';

export const stages = ['egg', 'larva', 'sealed', 'none'] as const;
export type Stage = (typeof stages)[number];

export interface QueenLook {
  readonly eggs: 'seen' | 'none seen' | 'not looked';
  /** Youngest worker brood that was seen; null when nobody noted it. */
  readonly youngest: Stage | null;
  /** Null when nobody looked for cells, or for one kind of them; all zero when none were seen. */
  readonly cells: Readonly<Record<(typeof cellKinds)[number], number | null>> | null;
  /** Null when nobody looked for her. */
  readonly queenSeen: boolean | null;
  /** Of the combs that matter, the share that was looked at for brood and for cells, 0 … 1. */
  readonly shareLooked: number;
  readonly cellShare: number;
  /** Several eggs in a cell; drone caps over worker cells. Null when nobody would have noted it. */
  readonly manyEggs: boolean | null;
  readonly domedCaps: boolean | null;
}

export const emptyLook: QueenLook = {
  eggs: 'not looked',
  youngest: null,
  cells: null,
  queenSeen: null,
  shareLooked: 1,
  cellShare: 1,
  manyEggs: null,
  domedCaps: null,
};

/** Chances that there is anything of each stage to be seen. */
export interface BroodThere {
  readonly egg: number;
  readonly larva: number;
  readonly sealed: number;
}

export interface SeenConstants {
  readonly cells: CellTable;
  readonly memory: Int32Array;
  readonly combs: number;
  readonly eggsSeen: number;
  readonly larvaeSeen: number;
  readonly slip: number;
  readonly queenSeen: number;
  readonly youngSeen: number;
  readonly cellSeen: number;
  readonly shape: number;
  readonly signsNoted: number;
  readonly fewCells: number;
}

export function seenConstants(chain: QueenChain, book: FigureBook): SeenConstants {
  return {
    cells: cellTable(book, chain.memory),
    memory: chain.memory,
    combs: value(book, 'queen-look-egg-combs'),
    eggsSeen: value(book, 'queen-look-eggs-seen'),
    larvaeSeen: value(book, 'queen-look-larvae-seen'),
    slip: value(book, 'queen-look-slip'),
    queenSeen: value(book, 'queen-look-queen-seen'),
    youngSeen: value(book, 'queen-look-virgin-seen'),
    cellSeen: value(book, 'cell-seen-chance'),
    shape: value(book, 'queen-look-cells-shape'),
    signsNoted: value(book, 'queen-look-signs-noted'),
    fewCells: value(book, 'queen-look-few-cells'),
  };
}

/** Logarithm of the density of a look; what was not looked for says nothing. */
export function lookLogDensity(c: SeenConstants, state: number, daysIn: number, there: BroodThere, look: QueenLook): number {
  return (
    broodLogDensity(c, there, look.eggs, look.youngest, look.shareLooked) +
    (look.cells === null ? 0 : cellsLogDensity(c, state, daysIn, look.cells, look.cellShare)) +
    (look.queenSeen === null ? 0 : Math.log(either(queenSeenChance(c, state, look.shareLooked), look.queenSeen))) +
    (look.manyEggs === null ? 0 : Math.log(either(signChance(c, chainStates[state]!.workersLay), look.manyEggs))) +
    (look.domedCaps === null ? 0 : Math.log(either(signChance(c, chainStates[state]!.dronesOnly), look.domedCaps)))
  );
}

/** That many eggs, larvae or sealed cells as a chance that there is anything to be seen: for particles that count brood. */
export function stageThere(c: SeenConstants, cells: number): number {
  return 1 - Math.exp(-cells / c.fewCells);
}

/** Eggs and youngest stage together: eggs that were seen are the youngest stage, eggs not seen leave it to the rest. */
export function broodLogDensity(
  c: SeenConstants,
  there: BroodThere,
  eggs: QueenLook['eggs'],
  youngest: Stage | null,
  share: number,
): number {
  const found = 1 - (1 - share) ** c.combs;
  const egg = guarded(c, there.egg * c.eggsSeen * found);
  if (eggs === 'seen') {
    const other = c.slip / (stages.length - 1);
    return Math.log(egg) + (youngest === null ? 0 : Math.log(youngest === 'egg' ? 1 - c.slip : other));
  }
  const noEgg = eggs === 'none seen' ? Math.log(1 - egg) : 0;
  if (youngest === null) return noEgg;
  if (youngest === 'egg') return noEgg + Math.log(eggs === 'none seen' ? c.slip : egg);
  const larva = guarded(c, there.larva * c.larvaeSeen * found);
  const sealed = guarded(c, there.sealed * found);
  const rest = youngest === 'larva' ? larva : (1 - larva) * (youngest === 'sealed' ? sealed : 1 - sealed);
  return noEgg + Math.log(rest) + Math.log(eggs === 'none seen' ? 1 - c.slip : 1 - egg);
}

/** Counts of each kind as negative binomials about what is there and can be seen, with a floor for the unforeseen. */
export function cellsLogDensity(
  c: SeenConstants,
  state: number,
  daysIn: number,
  cells: NonNullable<QueenLook['cells']>,
  share: number,
): number {
  const day = Math.min(daysIn, c.memory[state]! - 1) * cellKinds.length;
  let sum = 0;
  let any = 0;
  let kinds = 0;
  for (let kind = 0; kind < cellKinds.length; kind += 1) {
    const count = cells[cellKinds[kind]!];
    if (count === null) continue;
    kinds += 1;
    const mean = c.cells[state]![day + kind]! * c.cellSeen * share + c.slip;
    sum += countLogChance(count, mean, c.shape);
    any += count;
  }
  // The unforeseen: any number of any kinds, fewer being likelier.
  const floor = Math.log(c.slip) - (any + kinds) * Math.LN2;
  const large = Math.max(sum, floor);
  return large + Math.log(Math.exp(sum + Math.log1p(-c.slip) - large) + Math.exp(floor - large));
}

export function queenSeenChance(c: SeenConstants, state: number, share: number): number {
  const { queenHere, youngQueen } = chainStates[state]!;
  return guarded(c, queenHere ? share * c.queenSeen * (youngQueen ? c.youngSeen : 1) : 0);
}

/** Negative binomial of that mean and shape. */
export function countLogChance(count: number, mean: number, shape: number): number {
  let log = shape * Math.log(shape / (shape + mean));
  for (let i = 0; i < count; i += 1) log += Math.log(((shape + i) / (i + 1)) * (mean / (shape + mean)));
  return log;
}

/** Chance that a sign is noted, where what it stands for is there or not. */
export function signChance(c: SeenConstants, is: boolean): number {
  return is ? c.signsNoted : c.slip;
}

function either(chance: number, happened: boolean): number {
  return happened ? chance : 1 - chance;
}

/** Never certain: a note can be wrong. */
function guarded(c: SeenConstants, chance: number): number {
  return c.slip + (1 - 2 * c.slip) * chance;
}
