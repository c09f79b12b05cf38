/**
 * One made-up colony through two years with a keeper who looks now and then: what its queen truly is on each day,
 * and the notes that the keeper would write. Queens are lost, swarms leave, cells are cut, queens are given; some
 * looks are at half of the combs only. The world knows nothing of the filter that is scored on it.
 */
import { type QueenLook, emptyLook, type Stage } from '../../src/colony/queen-chain/seen.ts';
import type { QueenNote } from '../../src/colony/queen-chain/story.ts';
import type { QueenState } from '../../src/colony/queen-state.ts';
import type { CellCounts } from '../../src/colony/reading.ts';
import { addDays, type Day, dayOfYear, daysBetween } from '../../src/numbers/day.ts';
import { cutCells, introduce, loseQueen, wintering } from '../world/acts.ts';
import { type Chance, chanceOf } from '../world/chance.ts';
import { combBrood } from '../world/comb.ts';
import { type Eye, readBar, whereQueen } from '../world/observe.ts';
import { growingCells } from '../world/queens.ts';
import { settings } from '../world/settings.ts';
import type { SkyDay } from '../world/sky.ts';
import { adults, row, type Society, type World } from '../world/society.ts';
import { step } from '../world/step.ts';

export interface QueenColony {
  /** True states by day, from the first of spring of the first year; ends when the colony dies. */
  readonly truth: ReadonlyMap<Day, QueenState>;
  /** The same on days of visits, after the keeper's hand. */
  readonly afterVisit: ReadonlyMap<Day, QueenState>;
  readonly notes: readonly QueenNote[];
}

/** Chances that are the keeper's and fate's, not the bees': our choice, so that every state is met. */
const fate = {
  lostADay: 1 / 700,
  cutsCells: 0.3,
  seesSwarm: 0.5,
  halfLook: 0.25,
  givesQueen: 0.35,
  looksForQueen: 0.4,
  givesRoom: 0.6,
};

export function queenColony(seed: number, sky: ReadonlyMap<Day, SkyDay>): QueenColony {
  const luck = chanceOf(seed, 'queen-colony');
  const world: World = { day: addDays([...sky.keys()][0] ?? '', -1), societies: new Map(), happened: [], natural: true };
  const society = wintering(world, startOf(luck), luck);
  const eye: Eye = {
    name: 'keeper',
    broodLean: 0,
    foodLean: 0,
    scatter: 0.12,
    seesCell: luck.between(0.55, 0.85),
    seesEggs: luck.between(0.85, 0.98),
  };
  const keeper: Keeper = { eye, roomy: luck.happens(fate.givesRoom), next: addDays(world.day, 90 + luck.whole(0, 15)) };
  const truth = new Map<Day, QueenState>();
  const afterVisit = new Map<Day, QueenState>();
  const notes: QueenNote[] = [];
  const firstEggs = new Map<string, Day>([[society.queen?.id ?? '', addDays(world.day, -200)]]);
  for (const [day, today] of sky) {
    step(world, today, seed);
    if (!society.alive) break;
    happen(world, society, chanceOf(seed, `fate|${day}`));
    const queen = society.queen;
    const lays = queen !== null && queen.mated !== null && queen.mated >= settings.queen.eggsAfter && queen.rests === 0;
    if (lays && !firstEggs.has(queen.id)) firstEggs.set(queen.id, day);
    const eyes = chanceOf(seed, `look|${day}`);
    const swarmed = world.happened.some((one) => one.day === day && one.what === 'swarm left');
    if (swarmed && eyes.happens(fate.seesSwarm)) notes.push({ day, look: null, act: 'swarmed' });
    // The truth of a day is that before the keeper's hand changes it; the look is at the same bees.
    truth.set(day, truthOf(society, day, firstEggs));
    if (day !== keeper.next) continue;
    notes.push(...visit(society, keeper, day, eyes));
    afterVisit.set(day, truthOf(society, day, firstEggs));
    keeper.next = nextVisit(day, eyes);
  }
  return { truth, afterVisit, notes };
}

interface Keeper {
  readonly eye: Eye;
  readonly roomy: boolean;
  next: Day;
}

function startOf(luck: Chance): Parameters<typeof wintering>[1] {
  const combs = luck.whole(8, 11);
  const strong = { bees: luck.whole(10000, 17000), honeyKg: luck.between(16, 24), vigour: luck.between(0.9, 1.1) };
  return { id: 'one', from: 1, to: combs, combs, ...strong, queenDays: luck.whole(150, 700), temper: 0.2 };
}

function happen(world: World, society: Society, luck: Chance): void {
  const d = dayOfYear(world.day);
  if ((society.queen?.mated ?? null) !== null && d > 90 && d < 270 && luck.happens(fate.lostADay)) loseQueen(world, society);
}

/** Every nine to sixteen days in the season, none in winter. */
function nextVisit(day: Day, luck: Chance): Day {
  const next = addDays(day, luck.whole(6, 16));
  return dayOfYear(next) > 275 ? addDays(`${Number(next.slice(0, 4)) + 1}-03-20`, luck.whole(0, 20)) : next;
}

function truthOf(society: Society, day: Day, firstEggs: ReadonlyMap<string, Day>): QueenState {
  const { queen } = society;
  const cells = growingCells(society);
  const sealed = cells.some((cell) => cell.age >= settings.queen.sealAge);
  if (queen === null) {
    if (cells.length > 0) return sealed ? 'cells sealed' : 'cells open';
    return society.layingWorkers ? 'laying workers' : 'none';
  }
  if (queen.mated === null) return 'virgin';
  if (queen.drones > 0.5) return 'drone layer';
  if (cells.length > 0) return sealed ? 'cells sealed' : 'cells open';
  const since = firstEggs.get(queen.id);
  // A queen that has mated and not begun is still a virgin to whoever looks; one given in a cage is a new queen.
  if (since === undefined) return queen.age > settings.queen.tooOld ? 'new queen laying' : 'virgin';
  return daysBetween(since, day) < settings.brood.emergeAge ? 'new queen laying' : 'laying';
}

function visit(society: Society, keeper: Keeper, day: Day, luck: Chance): readonly QueenNote[] {
  const look = lookAt(society, keeper.eye, luck);
  const counted = look.cells;
  if (keeper.roomy && society.combs.every((comb) => comb.built > 0.5)) society.to += 2;
  const found = counted !== null && (counted.open ?? 0) + (counted.sealed ?? 0) > 0;
  if (found && look.eggs === 'seen' && luck.happens(fate.cutsCells)) {
    cutCells(society);
    return [{ day, look, act: 'cells-cut' }];
  }
  const hopeless = look.eggs === 'none seen' && (look.youngest === 'none' || look.youngest === 'sealed') && !found;
  if (hopeless && look.shareLooked === 1 && adults(society) > 3000 && luck.happens(fate.givesQueen)) {
    introduce(society, `given-${day}`, luck.between(0.9, 1.1), luck);
    return [{ day, look, act: 'introduced' }];
  }
  return [{ day, look, act: null }];
}

const order: readonly Stage[] = ['egg', 'larva', 'sealed', 'none'];

/** All combs, or the outer half of them only, read bar by bar and added up as a journal adds them. */
function lookAt(society: Society, eye: Eye, luck: Chance): QueenLook {
  const all = row(society);
  const read = luck.happens(fate.halfLook) ? all.slice(Math.floor(all.length / 2)) : all;
  const brood = all.filter((comb) => combBrood(comb) > 100);
  const among = brood.length > 0 ? brood : all;
  const share = among.filter((comb) => read.includes(comb)).length / among.length;
  const looksForQueen = luck.happens(fate.looksForQueen);
  const queenOn = looksForQueen ? whereQueen(society, 0.5, luck) : null;
  const seen = read.map((comb) =>
    readBar(society, comb, eye, { brushed: false, fine: false, cells: true, queenOn, countOn: null, light: 'sun' }, luck),
  );
  const youngest = seen.map(({ youngest: one }) => (one === 'young larva' ? 'larva' : (one ?? 'none')) as Stage);
  const cells = seen.reduce<CellCounts>((sum, one) => added(sum, one.cells), { open: 0, sealed: 0, torn: 0, emerged: 0 });
  const signs = new Set(seen.flatMap((one) => one.signs));
  return {
    ...emptyLook,
    eggs: seen.some((one) => one.eggs === 'seen') ? 'seen' : 'none seen',
    youngest: order.find((stage) => youngest.includes(stage)) ?? 'none',
    cells,
    queenSeen: looksForQueen ? seen.some((one) => one.queen === 'seen') : null,
    shareLooked: share,
    cellShare: read.length / all.length,
    manyEggs: signs.has('several eggs in a cell'),
    domedCaps: signs.has('domed caps on worker cells'),
  };
}

function added(a: CellCounts, b: CellCounts | null): CellCounts {
  if (b === null) return a;
  return { open: a.open + b.open, sealed: a.sealed + b.sealed, torn: a.torn + b.torn, emerged: a.emerged + b.emerged };
}
