/**
 * Made-up colonies to which one thing happens between two visits while nobody looks: the worlds on which the
 * model's explanations are judged. The bees are those of the made-up yard, which are not the model's; a visit is
 * counts with a person's lean and scatter. What is true here is never shown to the model.
 */
import { engineConstants, unknownGround } from '../../src/colony/engine/constants.ts';
import type { Happening } from '../../src/colony/engine/happening.ts';
import { beginColony, engineSetup, meet, type Seen } from '../../src/colony/engine/run.ts';
import { type BarPart, barPartOf, type BarSeen } from '../../src/colony/engine/surprise/bar-seen.ts';
import { surpriseConstants } from '../../src/colony/engine/surprise/surprise-constants.ts';
import { plainContext, surprisesOf } from '../../src/colony/engine/surprise/surprises-of.ts';
import type { Cause, Surprise } from '../../src/colony/foreseen.ts';
import { printedBook } from '../../src/figures/book.ts';
import { addDays, type Day, dayNumber } from '../../src/numbers/day.ts';
import { goOn } from '../../src/numbers/particle-filter.ts';
import { wintering } from '../world/acts.ts';
import { type Chance, chanceOf } from '../world/chance.ts';
import { combBrood, combFood, roomOf, workersAged } from '../world/comb.ts';
import { honeyKg } from '../world/larder.ts';
import { settings } from '../world/settings.ts';
import type { SkyDay } from '../world/sky.ts';
import { adults, type Society, type World } from '../world/society.ts';
import { step } from '../world/step.ts';

export interface SurpriseWorld {
  readonly name: string;
  /** The last visit, before which it happened; earlier ones were made every so many days. */
  readonly visitOn: Day;
  readonly everyDays: number;
  readonly visits: number;
  /** Days before the last visit on which it happens. */
  readonly daysBefore: number;
  readonly happens: (world: World, society: Society, luck: Chance) => void;
  /** The sky as it was where only weather makes the thing. */
  readonly sky?: (sky: SkyDay, daysToLast: number) => SkyDay;
  /** Of the honey, the share taken at the last visit but one; the journal says so. */
  readonly harvest?: number;
  /** Who makes the last visit. */
  readonly lastEye?: CountingEye;
}

/** How a person counts: leans of the logarithm, and the scatter of each count. */
export interface CountingEye {
  readonly bees: number;
  readonly brood: number;
  readonly food: number;
  readonly scatter: number;
}

export interface SurpriseVisit {
  readonly day: number;
  readonly seen: Seen;
  readonly bars: readonly BarSeen[];
  /** Share of the honey taken after this visit, as the journal says. */
  readonly taken: number;
}

const usualEye: CountingEye = { bees: 0.05, brood: 0.08, food: -0.05, scatter: 0.1 };

/** The visits of one colony, the last one after the thing had happened. */
export function visitsIn(world: SurpriseWorld, sky: ReadonlyMap<Day, SkyDay>, seed: number): readonly SurpriseVisit[] {
  const luck = chanceOf(seed, world.name);
  const colony: World = { day: '2012-12-31', societies: new Map(), happened: [], natural: false };
  const society = wintering(colony, startOf(luck), luck);
  const first = addDays(world.visitOn, -(world.visits - 1) * world.everyDays);
  const found: SurpriseVisit[] = [];
  let before: BarsRead = new Map();
  for (let day: Day = '2013-01-01'; day <= world.visitOn; day = addDays(day, 1)) {
    const toLast = dayNumber(world.visitOn) - dayNumber(day);
    const usual = sky.get(day);
    if (usual === undefined) throw new Error(`no weather for ${day}`);
    step(colony, world.sky?.(usual, toLast) ?? usual, seed);
    if (toLast === world.daysBefore) world.happens(colony, society, luck);
    if (day < first || toLast % world.everyDays !== 0) continue;
    const eye = toLast === 0 ? (world.lastEye ?? usualEye) : usualEye;
    const taken = toLast === world.everyDays ? (world.harvest ?? 0) : 0;
    const read = barsRead(eye, society, luck);
    found.push({
      day: dayNumber(day),
      seen: countedBy(eye, society, luck),
      bars: barsSeen(before, read, world.everyDays),
      taken,
    });
    for (const face of society.combs.flatMap((comb) => comb.faces)) {
      face.honey *= 1 - taken;
      face.nectar *= 1 - taken;
    }
    before = taken > 0 ? new Map() : read;
  }
  return found;
}

type BarsRead = ReadonlyMap<number, { readonly brood: number; readonly food: number }>;

/** Shares of each comb as the eye reads them, to half an eighth. */
function barsRead(eye: CountingEye, society: Society, luck: Chance): BarsRead {
  const eighths = (share: number, lean: number): number =>
    Math.min(1, Math.round(share * Math.exp(lean + eye.scatter * luck.normal()) * 16) / 16);
  return new Map(
    society.combs
      .filter((comb) => comb.built > 0.97)
      .map((comb) => {
        const room = 2 * roomOf(comb);
        return [
          comb.place,
          { brood: eighths(combBrood(comb) / room, eye.brood), food: eighths(combFood(comb) / room, eye.food) },
        ];
      }),
  );
}

/** As last time, against today: the plainest expectation of single bars. */
function barsSeen(before: BarsRead, now: BarsRead, days: number): readonly BarSeen[] {
  return [...before].flatMap(([place, last]) => {
    const today = now.get(place);
    if (today === undefined) return [];
    const empty = Math.max(0, 1 - last.brood - last.food);
    const part = (what: 'brood' | 'food'): BarPart => barPartOf(last[what], empty, today[what], days, printedBook);
    return [{ place, brood: part('brood'), food: part('food') }];
  });
}

function startOf(luck: Chance): Parameters<typeof wintering>[1] {
  return {
    id: 'alder',
    from: 1,
    to: 24,
    combs: luck.whole(10, 12),
    bees: luck.between(9_000, 15_000),
    honeyKg: luck.between(14, 20),
    queenDays: 240,
    vigour: luck.between(0.85, 1.05),
    temper: 0.2,
  };
}

function countedBy(eye: CountingEye, society: Society, luck: Chance): Seen {
  const counted = (there: number, lean: number): { readonly count: number } => ({
    count: there * Math.exp(lean + eye.scatter * luck.normal()),
  });
  const workers = (from: number, to: number): number => society.combs.reduce((all, c) => all + workersAged(c, from, to), 0);
  return {
    bees: counted(adults(society), eye.bees),
    sealed: counted(workers(9, 20), eye.brood),
    open: counted(workers(0, 8), eye.brood),
    honeyKg: counted(honeyKg(society), eye.food),
    built: { cells: 2 * society.combs.reduce((all, comb) => all + roomOf(comb), 0) * Math.exp(0.04 * luck.normal()) },
    brood: lookedForEggs(workers(0, 2), workers(3, 8), workers(9, 20), luck),
    cells: { cells: cellsSeen(society, luck), share: 1 },
  };
}

function lookedForEggs(eggs: number, larvae: number, sealed: number, luck: Chance): NonNullable<Seen['brood']> {
  if (eggs > 60 && luck.happens(0.97)) return { eggs: 'seen', youngest: 'egg', share: 1 };
  return { eggs: 'none seen', youngest: larvae > 60 ? 'larva' : sealed > 60 ? 'sealed' : 'none', share: 1 };
}

function cellsSeen(society: Society, luck: Chance): NonNullable<Seen['cells']>['cells'] {
  const cells = { open: 0, sealed: 0, torn: 0, emerged: 0 };
  for (const cell of society.cells) {
    if (cell.age < 3 || !luck.happens(0.8)) continue;
    if (cell.fate !== 'growing') cells[cell.fate] += 1;
    else cells[cell.age >= settings.queen.sealAge ? 'sealed' : 'open'] += 1;
  }
  return cells;
}

/** What the model is told at the last visit of a world: in the order of surprise, with their explanations. */
export function surprisesIn(
  world: SurpriseWorld,
  sky: ReadonlyMap<Day, SkyDay>,
  seed: number,
  particles: number,
): readonly Surprise[] {
  const visits = visitsIn(world, sky, seed);
  const [first] = visits;
  const last = visits.at(-1);
  if (first === undefined || last === undefined) throw new Error('a world has visits');
  const taken = visits
    .filter((visit) => visit.taken > 0)
    .map((visit): [number, readonly Happening[]] => [visit.day, [harvested(visit.taken)]]);
  const built = first.seen.built?.cells ?? 0;
  const ground = { ...unknownGround, latitude: 40.7, told: new Map(taken), comb: { built, most: built * 2.2 } };
  const setup = engineSetup(engineConstants(printedBook, ground), printedBook);
  const crowd = { wide: particles, wideVisits: 1, usual: particles };
  let left = beginColony(setup, first.day - 42, crowd, seed);
  for (const visit of visits.slice(0, -1)) left = meet(setup, left, { ...visit, visit: 'earlier' }, crowd, seed).left;
  const before = goOn(setup, left.cloud, last.day, seed);
  const plain = plainContext(surpriseConstants(printedBook), world.everyDays);
  return surprisesOf(setup, before, last.seen, { ...plain, bars: last.bars, combs: last.bars.length }, seed);
}

function harvested(food: number): Happening {
  return { kind: 'part left', bees: 0, brood: 0, food, comb: 0, queen: 'stayed' };
}

/** The first explanation that a keeper would read beside "just chance"; null when nothing special is put first. */
export function namedFirst(surprises: readonly Surprise[]): Cause | null {
  return surprises.map(({ because }) => because[0]?.cause).find((cause) => cause !== 'just chance') ?? null;
}
