/**
 * Splits in the world of the made-up yard (`tools/world`): combs with brood and bees put into a trough, a queen
 * by one of four ways, real weather, its own swarms and losses. The season of a place that is earlier is made by
 * living on later days of the weather file than are written down.
 */
import { addDays, dayOfYear } from '../../src/numbers/day.ts';
import { type Chance, chanceOf } from '../world/chance.ts';
import { introduce } from '../world/acts.ts';
import { newComb, roomOf } from '../world/comb.ts';
import { settings } from '../world/settings.ts';
import type { SkyDay } from '../world/sky.ts';
import { adults, newQueen, newSociety, type Society, type World } from '../world/society.ts';
import { step } from '../world/step.ts';
import type { QueenWay, SplitPlan } from './split-plan.ts';

/** Bees on each of `days` after the split, in order. */
export function liveInSociety(
  plan: SplitPlan,
  colony: string,
  way: QueenWay,
  splitOn: number,
  days: readonly number[],
  sky: ReadonlyMap<string, SkyDay>,
): readonly number[] {
  const luck = chanceOf(plan.seed, `${plan.name}|${colony}`);
  const first = [...sky.keys()].find((day) => dayOfYear(day) === splitOn + plan.early)!;
  const world: World = { day: first, societies: new Map(), happened: [], natural: true };
  const society = split(colony, plan, luck);
  queened(society, way, luck);
  world.societies.set(colony, society);
  const last = Math.max(...days);
  const bees = [adults(society)];
  for (let day = 1; day <= last; day += 1) {
    step(world, sky.get(addDays(first, day))!, plan.seed);
    bees.push(adults(society));
  }
  return days.map((day) => bees[day]!);
}

/** Bees and brood of all ages; combs of brood, of food, and some that stand empty or are not built yet. */
function split(id: string, plan: SplitPlan, luck: Chance): Society {
  const society = newSociety(id, 1, luck.whole(10, 20));
  const bees = plan.bees * Math.exp(plan.beesSpread * luck.normal());
  const { forageAge } = settings.adults;
  const ages = society.summer.map((_, age) => 0.994 ** age * 0.91 ** Math.max(0, age - forageAge));
  const all = ages.reduce((a, b) => a + b, 0);
  ages.forEach((share, age) => (society.summer[age] = (bees * share) / all));
  const brooded = luck.whole(2, 4);
  const combs = brooded + luck.whole(2, 6);
  const brood = bees * luck.between(0.5, 1.6);
  for (let i = 0; i < combs; i += 1) {
    society.combsBegun += 1;
    const comb = newComb(`${id}-c${society.combsBegun}`, 1 + i, 1, luck.between(0, 0.06), '2012-06-01');
    society.combs.push(comb);
    for (const face of comb.faces) {
      const room = roomOf(comb);
      if (i < brooded) {
        const cells = Math.min(brood / (2 * brooded), room * 0.7);
        face.worker.fill(cells / face.worker.length);
        face.honey = room * 0.15;
        face.bread = room * 0.06;
      } else if (i < brooded + 2) face.honey = room * luck.between(0.3, 0.8);
    }
  }
  society.fedGrams = luck.between(0, 3000);
  return society;
}

function queened(society: Society, way: QueenWay, luck: Chance): void {
  if (way === 'own') society.queen = newQueen(`${society.id}-q`, luck.between(0.75, 1.05), luck.whole(100, 400));
  else if (way === 'given' && luck.happens(0.92)) introduce(society, `${society.id}-q`, luck.between(0.8, 1.08), luck);
  else if (way === 'cell') society.cells.push({ comb: society.combs[0]!.id, age: luck.whole(10, 15), fate: 'growing', stale: 0 });
  // Else they raise one from the brood that they have.
}
