/**
 * Splits in a second made-up world that shares no structure with the model scored: bees of the house and bees
 * afield as two pools with recruitment (after D. S. Khoury and others 2011), brood as a chain of stages that
 * leak into one another, forage as a wave with a gap in summer, laying by forage and bees, queens by one date.
 */
import { type Chance, chanceOf } from '../world/chance.ts';
import type { QueenWay, SplitPlan } from './split-plan.ts';

const stages = 7;
const broodDays = 21;
const perDay = 4;
const yearDays = 365;

interface Place {
  readonly peak: number;
  readonly gapDay: number;
  readonly gapDepth: number;
  readonly laying: number;
  readonly halfBees: number;
  readonly fieldLoss: number;
  readonly room: number;
}

/** Bees on each of `days` after the split, in order. */
export function liveInPools(
  plan: SplitPlan,
  colony: string,
  way: QueenWay,
  splitOn: number,
  days: readonly number[],
): readonly number[] {
  const place = placeOf(plan, chanceOf(plan.seed, `${plan.name}|place`));
  const luck = chanceOf(plan.seed, `${plan.name}|${colony}`);
  const laying = place.laying * Math.exp(0.2 * luck.normal());
  const loss = place.fieldLoss * Math.exp(0.15 * luck.normal());
  const bees = plan.bees * Math.exp(plan.beesSpread * luck.normal());
  const queenFrom = firstEggs(way, luck);
  const brood = new Array<number>(stages).fill((bees * luck.between(0.4, 1.6)) / stages);
  let [house, field] = [bees * 0.75, bees * 0.25];
  let spell = 0;
  const seen = [house + field];
  for (let day = 0; day < Math.max(...days); day += 1) {
    spell = 0.9 * spell + 0.12 * luck.normal();
    const forage = forageOn(place, splitOn + day) * Math.exp(spell);
    for (let part = 0; part < perDay; part += 1) {
      const all = house + field;
      const held = brood.reduce((a, b) => a + b, 0);
      const free = Math.max(0, 1 - held / place.room);
      const eggs = day < queenFrom ? 0 : (laying * Math.min(1.1, forage) * free * all) / (place.halfBees + all);
      const out = brood.map((cells) => (cells * stages) / broodDays);
      const recruited = house * (0.22 - (0.75 * field) / Math.max(1, all));
      const emerged = 0.86 * out[stages - 1]!;
      brood.forEach((_, i) => (brood[i]! += ((i === 0 ? eggs : out[i - 1]!) - out[i]!) / perDay));
      house += (emerged - recruited - 0.006 * house) / perDay;
      field += (recruited - loss * (0.6 + 0.4 * Math.min(1, forage)) * field) / perDay;
      house = Math.max(1, house);
      field = Math.max(0, field);
    }
    seen.push(house + field);
  }
  return days.map((day) => seen[day]!);
}

function placeOf(plan: SplitPlan, luck: Chance): Place {
  return {
    peak: 172 - plan.early + luck.whole(-10, 10),
    gapDay: 205 - plan.early,
    gapDepth: luck.between(0, 0.55),
    laying: luck.between(1300, 2100),
    halfBees: luck.between(6000, 16000),
    fieldLoss: luck.between(0.1, 0.17),
    room: luck.between(18000, 50000),
  };
}

function forageOn({ peak, gapDay, gapDepth }: Place, day: number): number {
  const wave = Math.min(1, Math.max(0, 0.4 + 0.75 * Math.cos((2 * Math.PI * (day - peak)) / yearDays)));
  return wave * (1 - gapDepth * Math.exp(-(((day - gapDay) / 22) ** 2)));
}

/** Days from the split to eggs; never, where she fails. */
function firstEggs(way: QueenWay, luck: Chance): number {
  if (way === 'own') return 0;
  if (luck.happens(way === 'given' ? 0.05 : 0.12)) return yearDays;
  if (way === 'given') return luck.whole(3, 9);
  return way === 'cell' ? luck.whole(9, 20) : luck.whole(22, 36);
}
