/**
 * What a person reads from a comb of the made-up world: eighths with that person's lean and scatter,
 * eggs that a tired eye misses, cells hidden under bees. Only what is returned here may reach a journal.
 */
import type { Reading } from '../../src/colony/reading.ts';
import type { Chance } from './chance.ts';
import { combBrood, combFood, roomOf, sum, workersAged, type WorldComb } from './comb.ts';
import { settings } from './settings.ts';
import { clamp } from './sky.ts';
import { adults, fromHeart, row, type Society } from './society.ts';

export interface Eye {
  readonly name: string;
  /** Leans of the person, log scale: +0.1 reads a tenth too much. */
  readonly broodLean: number;
  readonly foodLean: number;
  /** Scatter from comb to comb, log scale. [own] .08 to .12 for practised people, .2 for a learner. */
  readonly scatter: number;
  /** Chance that one queen cell on a comb looked at is seen; with bees brushed off it is higher. */
  readonly seesCell: number;
  readonly seesEggs: number;
}

export type Seen = Pick<
  Reading,
  | 'combClass'
  | 'faces'
  | 'built8'
  | 'eggs'
  | 'youngest'
  | 'cells'
  | 'cellsLooked'
  | 'queen'
  | 'brushed'
  | 'signs'
  | 'method'
  | 'light'
  | 'patch'
>;

export interface Look {
  readonly brushed: boolean;
  /** Whether bees on the comb and sealed food are read too. */
  readonly fine: boolean;
  readonly cells: boolean;
  readonly queenOn: string | null;
  /** The comb on which a hundred cells of sealed brood are counted, or null. */
  readonly countOn: string | null;
  readonly light: Reading['light'];
}

/** One bar as that person reads it; `comb` is null for a bare bar. */
export function readBar(society: Society, comb: WorldComb | null, eye: Eye, look: Look, luck: Chance): Seen {
  if (comb === null) return bare(look);
  const room = 2 * roomOf(comb);
  const broodPatch = Math.min(1, combBrood(comb) / ((1 - settings.laying.gaps) * soundOf(society)) / room);
  const brood8 = eighths(broodPatch, eye.broodLean, eye.scatter, luck);
  const food8 = Math.min(8 - brood8, eighths(combFood(comb) / room, eye.foodLean, eye.scatter, luck));
  const drone = comb.faces.reduce((all, f) => all + settings.brood.droneArea * sum(f.drone) + sum(f.misplaced), 0) / room;
  const drone8 = Math.min(brood8, eighths(drone, eye.broodLean, eye.scatter, luck));
  const sealed = comb.faces.reduce((all, f) => all + f.honey, 0) / room;
  const built8 = Math.max(0.5, Math.round(comb.built * 16 + luck.normal(0, 0.4)) / 2);
  const covered = coverOf(society, comb);
  return {
    combClass: classOf(comb, brood8, food8, drone8),
    faces: [
      {
        face: 'both',
        brood8,
        food8,
        ...(drone8 >= 0.5 ? { drone8 } : {}),
        ...(look.fine
          ? {
              sealedFood8: Math.min(food8, eighths(sealed, eye.foodLean, eye.scatter, luck)),
              bees8: eighths(covered, 0, eye.scatter, luck),
            }
          : {}),
      },
    ],
    ...(comb.built < 0.97 || look.fine ? { built8: Math.min(8, built8) } : {}),
    ...stages(comb, eye, luck),
    ...cellsSeen(society, comb, eye, look, luck),
    queen: look.queenOn === comb.id ? 'seen' : look.cells || broodPatch > 0.1 ? 'none seen' : 'not looked',
    brushed: look.brushed,
    ...(look.countOn === comb.id ? { patch: patchOf(society, luck) } : {}),
    signs: signsOf(society, comb),
    method: 'eighths',
    light: look.light,
  };
}

/** Share of the comb's faces that bees cover: the heart first, thinner outward. */
export function coverOf(society: Society, comb: WorldComb): number {
  const at = fromHeart(society).indexOf(comb);
  const combs = adults(society) / (settings.adults.perDm2 * 16 * 0.85);
  return clamp((combs - at * 0.8) / 3 + 0.15, 0.03, 1);
}

/** The comb on which this person finds the queen, or null. */
export function whereQueen(society: Society, chance: number, luck: Chance): string | null {
  if (society.queen === null || !luck.happens(society.queen.mated === null ? chance * 0.3 : chance)) return null;
  const combs = row(society).filter((comb) => combBrood(comb) > 200);
  return combs[luck.whole(0, Math.max(0, combs.length - 1))]?.id ?? null;
}

/** The comb with the most sealed brood, if it is worth counting a hundred cells on it. */
export function whereSealed(society: Society): string | null {
  const most = [...society.combs].sort((a, b) => workersAged(b, 9, 20) - workersAged(a, 9, 20))[0];
  return most !== undefined && workersAged(most, 9, 20) > 600 ? most.id : null;
}

function soundOf(society: Society): number {
  return society.queen?.sound ?? 1;
}

/** A hundred cells inside the sealed patch, one after the other. */
function patchOf(society: Society, luck: Chance): { occupied: number; cells: number } {
  let occupied = 0;
  for (let i = 0; i < 100; i += 1) if (luck.happens(0.94 * soundOf(society))) occupied += 1;
  return { occupied, cells: 100 };
}

function eighths(share: number, lean: number, scatter: number, luck: Chance): number {
  const seen = share * 8 * Math.exp(lean + luck.normal(0, scatter));
  return share * 8 < 0.08 ? 0 : clamp(Math.round(seen * 2) / 2, share * 8 > 0.3 ? 0.5 : 0, 8);
}

function classOf(comb: WorldComb, brood8: number, food8: number, drone8: number): Seen['combClass'] {
  if (comb.built < 0.6) return 'building';
  if (drone8 > 0 && drone8 >= brood8 * 0.6) return 'mostly drone';
  if (brood8 >= 5) return 'brood';
  if (brood8 > 0) return 'food and brood';
  return food8 > 0 ? 'food' : null;
}

function bare(look: Look): Seen {
  return {
    combClass: 'bare',
    faces: [{ face: 'both', brood8: 0, food8: 0 }],
    built8: 0,
    eggs: 'none seen',
    youngest: 'none',
    cells: null,
    cellsLooked: 'not looked',
    queen: 'not looked',
    brushed: null,
    signs: [],
    method: 'eighths',
    light: look.light,
  };
}

function stages(comb: WorldComb, eye: Eye, luck: Chance): Pick<Seen, 'eggs' | 'youngest'> {
  const misplaced = (from: number, to: number): number =>
    comb.faces.reduce((all, f) => all + sum(f.misplaced.slice(from, to)) + sum(f.drone.slice(from, to)), 0);
  const eggs = workersAged(comb, 0, 2) + misplaced(0, 3);
  const young = workersAged(comb, 3, 5) + misplaced(3, 6);
  const old = workersAged(comb, 6, 8) + misplaced(6, 10);
  const sealed = workersAged(comb, 9, 20) + misplaced(10, 24);
  if (eggs + young + old + sealed < 15) return { eggs: 'none seen', youngest: 'none' };
  // Who reads brood where there is nothing else has seen the eggs.
  const saw = young + old + sealed < 15 || (eggs > 25 && luck.happens(eggs > 150 ? eye.seesEggs : eye.seesEggs * 0.7));
  const youngest = saw ? 'egg' : young > 20 ? 'young larva' : old > 20 ? 'larva' : 'sealed';
  return { eggs: saw ? 'seen' : 'none seen', youngest };
}

function cellsSeen(society: Society, comb: WorldComb, eye: Eye, look: Look, luck: Chance): Pick<Seen, 'cells' | 'cellsLooked'> {
  if (!look.cells) return { cells: null, cellsLooked: 'not looked' };
  const sees = look.brushed ? Math.min(0.97, eye.seesCell + 0.2) : eye.seesCell;
  const cells = { open: 0, sealed: 0, torn: 0, emerged: 0 };
  for (const cell of society.cells) {
    if (cell.comb !== comb.id || cell.age < 3 || !luck.happens(sees)) continue;
    if (cell.fate === 'growing') cells[cell.age >= settings.queen.sealAge ? 'sealed' : 'open'] += 1;
    else cells[cell.fate] += 1;
  }
  const any = cells.open + cells.sealed + cells.torn + cells.emerged > 0;
  return { cells, cellsLooked: any ? 'seen' : 'none seen' };
}

function signsOf(society: Society, comb: WorldComb): string[] {
  const misplaced = comb.faces.reduce((all, f) => all + sum(f.misplaced), 0);
  const eggs = comb.faces.reduce((all, f) => all + sum(f.misplaced.slice(0, 3)), 0);
  return [
    ...(society.layingWorkers && eggs > 40 ? ['several eggs in a cell'] : []),
    ...(misplaced > 120 ? ['domed caps on worker cells'] : []),
  ];
}
