/**
 * The first world of the trial: the made-up colony of `tools/world` with its faces, cells and nectar by the
 * weather, swarming of its own accord. Colonies differ in bees, queen, food, losses, comb and bars, seasons in
 * their weather; queens are lost or begin to fail by chance. The spreads are our choice for this world.
 */
import { addDays, type Day } from '../../src/numbers/day.ts';
import { wintering } from '../world/acts.ts';
import { chanceOf } from '../world/chance.ts';
import { combBrood, roomOf, sum, workersAged } from '../world/comb.ts';
import { honeyKg } from '../world/larder.ts';
import { takeBees } from '../world/queens.ts';
import { settings } from '../world/settings.ts';
import { flying, type SkyDay, suitsOpening } from '../world/sky.ts';
import { adults, newQueen, type Society, type World } from '../world/society.ts';
import { step } from '../world/step.ts';
import { type Act, type Befell, firstDay, relieved, seasonDays, type TrialWorld, type TrueCell, type Truth } from './hive.ts';
import { resampledSky } from './resampled-sky.ts';

const spread = {
  bees: [4500, 12000],
  vigour: [0.65, 1.15],
  honeyKg: [6, 16],
  losses: [0.8, 1.3],
  combs: [7, 11],
  bareBars: [1, 4],
  queenDays: [200, 800],
  /** Chance a day that a queen is lost, and that the share of her eggs that lives falls by a tenth part. */
  queenLost: 0.0006,
  queenFails: 0.0015,
} as const;
/** Bars of the trough. */
const bars = 26;
const begins: Day = '2013-03-01';
const emptyKg = 0.05;
const fedAgainKg = 1;

export interface CombsHive {
  readonly seed: number;
  readonly world: World;
  readonly sky: readonly SkyDay[];
  hungry: boolean;
}

export function worldOfCombs(real: ReadonlyMap<Day, SkyDay>): TrialWorld<CombsHive> {
  const skyOn = (hive: CombsHive, day: number): SkyDay => hive.sky[day + before]!;
  const before = 31;
  return {
    name: 'combs',
    begin: (seed) => {
      const luck = chanceOf(seed, 'trial');
      const sky = resampledSky(real, begins, addDays(firstDay, seasonDays), chanceOf(seed, 'trial sky'));
      const world: World = { day: addDays(begins, -1), societies: new Map(), happened: [], natural: true };
      const combs = luck.whole(...spread.combs);
      const society = wintering(
        world,
        {
          id: 'colony',
          from: 1,
          combs,
          to: combs + luck.whole(...spread.bareBars),
          bees: luck.between(...spread.bees),
          honeyKg: luck.between(...spread.honeyKg),
          queenDays: luck.whole(...spread.queenDays),
          vigour: luck.between(...spread.vigour),
          temper: luck.unit(),
        },
        luck,
      );
      society.ailing = luck.between(...spread.losses);
      for (let day = 0; day < before; day += 1) step(world, sky[day]!, seed);
      return { seed, world, sky, hungry: false };
    },
    live: (hive, day) => liveDay(hive, day, skyOn(hive, day)),
    fits: (hive, day) => suitsOpening(skyOn(hive, day), 14),
    truth: (hive, day) => truthOf(societyOf(hive), skyOn(hive, day)),
    act: (hive, day, act) => actOn(hive, day, act),
  };
}

function societyOf({ world }: CombsHive): Society {
  return world.societies.get('colony')!;
}

function liveDay(hive: CombsHive, day: number, sky: SkyDay): Befell {
  const society = societyOf(hive);
  const heard = hive.world.happened.length;
  step(hive.world, sky, hive.seed);
  const luck = chanceOf(hive.seed, `trial queen|${day}`);
  const queen = society.queen;
  if (queen !== null && queen.mated !== null) {
    if (luck.happens(spread.queenLost)) {
      society.queen = null;
      society.orphaned = 0;
    } else if (luck.happens(spread.queenFails)) queen.sound *= 0.9;
  }
  const honey = honeyKg(society);
  const starved = !hive.hungry && honey < emptyKg;
  hive.hungry = starved || (hive.hungry && honey < fedAgainKg);
  const happened = hive.world.happened.slice(heard);
  return {
    swarms: happened.filter(({ what }) => what === 'swarm left').length,
    starved,
    laid: society.combs.reduce((all, comb) => all + workersAged(comb, 0, 0), 0) > 20,
    alive: society.alive,
  };
}

function truthOf(society: Society, sky: SkyDay): Truth {
  const brood = (from: number, to: number): number =>
    society.combs.reduce((all, comb) => all + workersAged(comb, from, to), 0) + misplaced(society, from, to);
  const room = society.combs.reduce((all, comb) => all + 2 * roomOf(comb), 0);
  const whole =
    room /
    Math.max(
      0.01,
      society.combs.reduce((all, comb) => all + comb.built, 0),
    );
  const afield = 0.4 * flying(sky) * sum(society.summer.slice(settings.adults.forageAge));
  return {
    bees: adults(society) - afield,
    eggs: brood(0, 2),
    larvae: brood(3, 8),
    sealed: brood(9, 20),
    honeyKg: honeyKg(society),
    built: room,
    most: whole * (society.to - society.from + 1),
    cells: society.cells.map(trueCell),
    queenHere: society.queen !== null,
    queenYoung: society.queen !== null && (society.queen.mated ?? 0) < 14,
    dronesOnly: society.layingWorkers || (society.queen !== null && society.queen.drones > 0.5),
  };
}

function misplaced(society: Society, from: number, to: number): number {
  return society.combs.reduce((all, comb) => all + comb.faces.reduce((a, f) => a + sum(f.misplaced.slice(from, to + 1)), 0), 0);
}

function trueCell({ fate, age }: Society['cells'][number]): TrueCell {
  return { what: fate !== 'growing' ? fate : age >= settings.queen.sealAge ? 'sealed' : 'open', age };
}

function actOn(hive: CombsHive, day: number, act: Act): void {
  const society = societyOf(hive);
  if (act.kind === 'feed') society.fedGrams += act.kg * 1000;
  else if (act.kind === 'bars') society.to = Math.min(bars, society.to + act.bars);
  else if (act.kind === 'relieve') relieve(society, act.holds);
  else giveQueen(hive, society, day, act.taken);
}

function relieve(society: Society, holds: boolean): void {
  const growing = society.cells.filter((cell) => cell.fate === 'growing').sort((a, b) => a.age - b.age);
  const missed = holds ? null : (growing[0] ?? null);
  society.cells = society.cells.filter((cell) => cell.fate !== 'growing' || cell === missed);
  if (holds) society.preparing = 0;
  takeBees(society, relieved.bees);
  for (const comb of society.combs) {
    if (combBrood(comb) === 0) continue;
    for (const face of comb.faces) {
      for (const cohorts of [face.worker, face.drone, face.misplaced])
        cohorts.forEach((n, age) => (cohorts[age] = n * (1 - relieved.brood)));
    }
  }
}

/** A mated queen in a cage; where a laying one is, or workers lay, she is seldom taken. */
function giveQueen(hive: CombsHive, society: Society, day: number, taken: boolean): void {
  const laysWell = society.queen !== null && society.queen.mated !== null && society.queen.drones < 0.5;
  if (!taken || laysWell || society.layingWorkers) return;
  society.queen = newQueen(`given-${day}`, chanceOf(hive.seed, `given|${day}`).between(0.85, 1.1), 0);
  society.queen.rests = 2;
  for (const cell of society.cells) if (cell.fate === 'growing') cell.fate = 'torn';
}
