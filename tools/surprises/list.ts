/** The worlds, by the cause that each is to be named for, and quiet ones in which nothing happens but the season. */
import type { Befalling } from '../../src/colony/engine/surprise/cause.ts';
import type { Day } from '../../src/numbers/day.ts';
import { loseQueen } from '../world/acts.ts';
import type { Chance } from '../world/chance.ts';
import { combBrood, combFood, type WorldComb } from '../world/comb.ts';
import { takeBees } from '../world/queens.ts';
import { settings } from '../world/settings.ts';
import { fromHeart, row, type Society } from '../world/society.ts';
import type { SurpriseWorld } from './worlds.ts';

const nothing: SurpriseWorld['happens'] = () => undefined;

function world(name: string, visitOn: Day, rest: Partial<SurpriseWorld>): SurpriseWorld {
  return { name, visitOn, everyDays: 9, visits: 6, daysBefore: 5, happens: nothing, ...rest };
}

/** A quiet colony on a day of the season. */
export function quietWorld(visitOn: Day): SurpriseWorld {
  return world(`quiet|${visitOn}`, visitOn, {});
}

export const surpriseWorlds: Readonly<Record<Befalling, SurpriseWorld>> = {
  swarmed: world('swarmed', '2013-06-04', {
    daysBefore: 3,
    happens: (_, society, luck) => {
      hangCells(society, luck, luck.whole(7, 12), [8, 10]);
      takeBees(society, settings.swarm.share);
      society.queen = null;
      society.orphaned = 0;
    },
  }),
  'queen lost': world('queen lost', '2013-09-02', { daysBefore: 7, happens: (all, society) => loseQueen(all, society) }),
  // Three cells of one age; a cold day keeps this world's bees from taking them for swarm cells.
  superseded: world('superseded', '2013-09-29', {
    happens: (_, society, luck) => hangCells(society, luck, 3, [3, 3]),
    sky: (sky, toLast) => (toLast === 0 ? poor(sky) : sky),
  }),
  robbed: world('robbed', '2013-08-14', {
    happens: (_, society, luck) => {
      const left = luck.between(0.08, 0.3);
      for (const face of society.combs.flatMap((comb) => comb.faces)) {
        face.honey *= left;
        face.nectar *= left;
      }
      const live = luck.between(0.8, 0.95);
      society.summer.forEach((bees, age) => (society.summer[age] = bees * live));
    },
  }),
  // Poor days until the last visit but one, at which honey is taken too early; then the finest of the year, and honeydew.
  'flow started': world('flow started', '2013-06-04', {
    everyDays: 12,
    visits: 5,
    daysBefore: 12,
    happens: (_, society) => honeydew(society, 14),
    sky: (sky, toLast) => (toLast < 12 ? fine(sky) : toLast < 36 ? poor(sky) : sky),
    harvest: 0.5,
  }),
  // Fine days with honeydew, the honey taken, then rain.
  'flow ended': world('flow ended', '2013-06-13', {
    everyDays: 14,
    visits: 5,
    daysBefore: 34,
    happens: (_, society) => honeydew(society, 18),
    sky: (sky, toLast) => (toLast < 14 ? poor(sky) : toLast < 34 ? fine(sky) : sky),
    harvest: 0.84,
  }),
  'counted by another hand': world('another hand', '2013-06-20', {
    lastEye: { bees: -0.7, brood: -1, food: -0.8, scatter: 0.1 },
  }),
  // Somebody hung two brood combs and two food combs the other way round.
  'combs moved': world('combs moved', '2013-06-04', {
    happens: (_, society) => {
      const [first, second] = fromHeart(society);
      const food = (comb: WorldComb): number => combFood(comb) - combBrood(comb);
      const [last, before] = row(society)
        .filter((comb) => comb.built > 0.97)
        .sort((a, b) => food(b) - food(a));
      swap(first, last);
      swap(second, before);
    },
  }),
  'brood dying': world('brood dying', '2013-07-06', {
    daysBefore: 1,
    happens: (_, society, luck) => {
      const live = luck.between(0.06, 0.15);
      for (const face of society.combs.flatMap((comb) => comb.faces))
        face.worker.forEach((cells, age) => (face.worker[age] = age < settings.brood.hatchAge ? cells : cells * live));
    },
  }),
};

/** More than this world's flowers give: it comes in as fast as bees carry it, for so many kilograms. */
function honeydew(society: Society, kg: number): void {
  society.fedGrams += kg * 1000;
}

function hangCells(society: Society, luck: Chance, many: number, [from, to]: readonly [number, number]): void {
  const combs = fromHeart(society).slice(0, 5);
  for (let i = 0; i < many; i += 1) {
    const comb = combs[i % combs.length];
    if (comb !== undefined) society.cells.push({ comb: comb.id, age: luck.whole(from, to), fate: 'growing', stale: 0 });
  }
}

function swap(a: WorldComb | undefined, b: WorldComb | undefined): void {
  if (a !== undefined && b !== undefined) [a.place, b.place] = [b.place, a.place];
}

function fine<S extends { readonly highC: number }>(sky: S): S {
  return { ...sky, highC: 25, lowC: 14, rainMm: 0, windMs: 2 };
}

function poor<S extends { readonly highC: number }>(sky: S): S {
  return { ...sky, highC: 13, lowC: 7, rainMm: 14, windMs: 5 };
}
