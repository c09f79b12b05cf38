/**
 * What somebody reads of a colony when it is opened: amounts with that person's lean and the scatter of the day,
 * now and then one that is plainly wrong; eggs that a tired eye misses, queen cells that hide under bees. The eye
 * is drawn for each colony-season; its numbers are our choice, of the size of `tools/world/observe.ts`.
 */
import { newStream, nextNormal, nextUnit, type Stream } from '../../src/numbers/streams.ts';
import type { Truth } from './hive.ts';

export interface Opening {
  readonly bees: number;
  readonly sealed: number;
  readonly open: number;
  readonly honeyKg: number;
  readonly built: number;
  readonly most: number;
  readonly eggs: 'seen' | 'none seen';
  readonly youngest: 'egg' | 'larva' | 'sealed' | 'none';
  readonly cells: { readonly open: number; readonly sealed: number; readonly torn: number; readonly emerged: number };
  readonly queenSeen: boolean;
  /** Domed caps on worker cells, or several eggs in a cell, were noted. */
  readonly dronesOnly: boolean;
}

/** Leans are logarithms: .1 reads a tenth too much. */
interface Eye {
  readonly bees: number;
  readonly brood: number;
  readonly honey: number;
  readonly scatter: number;
  readonly seesCell: number;
  readonly seesEggs: number;
}

const eyes = {
  leanSpread: { bees: 0.12, brood: 0.12, honey: 0.1 },
  scatter: [0.1, 0.2],
  seesCell: [0.65, 0.85],
  seesEggs: [0.9, 0.98],
  seesQueen: 0.35,
  youngQueen: 0.3,
  notesDrones: 0.7,
  /** A row mistaken, a comb left out: one amount of the opening is off by a factor of about three. */
  wrong: 0.015,
  wrongSpread: 1.1,
  /** A note of eggs or of a cell without a reason. */
  slip: 0.005,
} as const;

const purpose = { eye: 60, look: 61 } as const;

export function readOpening(truth: Truth, seed: number, day: number): Opening {
  const eye = eyeOf(seed);
  const s = newStream(seed, purpose.look, 0, day);
  const wrong = nextUnit(s) < eyes.wrong ? Math.floor(nextUnit(s) * 4) : -1;
  const amount = (what: number, of: number, lean: number): number =>
    of * Math.exp(lean + eye.scatter * nextNormal(s) + (what === wrong ? eyes.wrongSpread * nextNormal(s) : 0));
  const bees = Math.round(amount(0, truth.bees, eye.bees));
  const sealed = Math.round(amount(1, truth.sealed, eye.brood));
  const open = Math.round(amount(2, truth.eggs + truth.larvae, eye.brood));
  const honeyKg = amount(3, truth.honeyKg, eye.honey);
  const built = truth.built * Math.exp(0.03 * nextNormal(s));
  const cells = { open: 0, sealed: 0, torn: 0, emerged: 0 };
  for (const cell of truth.cells) if (cell.age >= 3 && nextUnit(s) < eye.seesCell) cells[cell.what] += 1;
  if (nextUnit(s) < eyes.slip) cells.open += 1;
  const { eggs, youngest } = stages(truth, eye, s);
  const queenSeen = nextUnit(s) < (truth.queenHere ? eyes.seesQueen * (truth.queenYoung ? eyes.youngQueen : 1) : 0);
  const dronesOnly = nextUnit(s) < (truth.dronesOnly && truth.eggs + truth.larvae > 100 ? eyes.notesDrones : 0);
  return { bees, sealed, open, honeyKg, built, most: truth.most, eggs, youngest, cells, queenSeen, dronesOnly };
}

function stages(truth: Truth, eye: Eye, s: Stream): Pick<Opening, 'eggs' | 'youngest'> {
  const seesEggs = truth.eggs < 25 ? 0 : truth.eggs > 150 ? eye.seesEggs : eye.seesEggs * 0.7;
  const saw = nextUnit(s) < eyes.slip + (1 - 2 * eyes.slip) * seesEggs;
  if (saw) return { eggs: 'seen', youngest: 'egg' };
  return { eggs: 'none seen', youngest: truth.larvae > 30 ? 'larva' : truth.sealed > 30 ? 'sealed' : 'none' };
}

function eyeOf(seed: number): Eye {
  const s = newStream(seed, purpose.eye, 0, 0);
  const between = ([low, high]: readonly [number, number]): number => low + (high - low) * nextUnit(s);
  return {
    bees: eyes.leanSpread.bees * nextNormal(s),
    brood: eyes.leanSpread.brood * nextNormal(s),
    honey: eyes.leanSpread.honey * nextNormal(s),
    scatter: between(eyes.scatter),
    seesCell: between(eyes.seesCell),
    seesEggs: between(eyes.seesEggs),
  };
}
