/**
 * One day of the made-up world: brood ages, bees die, queens and cells go on, food comes and is eaten,
 * comb is built, eggs are laid. Each colony has its own luck for each day, so no colony's day hangs on another's.
 */
import { addDays, dayOfYear } from '../../src/numbers/day.ts';
import { chanceOf, type Chance } from './chance.ts';
import { ageFace, combFood, faceDm2, newComb, roomOf, workersAged, type WorldComb } from './comb.ts';
import { feedDay, honeyKg } from './larder.ts';
import { freeInNest, lay, layAsWorkers } from './laying.ts';
import { queenDay } from './queens.ts';
import { settings } from './settings.ts';
import { clamp, flying, type SkyDay } from './sky.ts';
import { adults, row, type Society, type World } from './society.ts';

/** Takes the world to the end of `sky.day`, which must be the day after the world's. */
export function step(world: World, sky: SkyDay, seed: number): void {
  if (addDays(world.day, 1) !== sky.day) throw new Error(`the day after ${world.day} is wanted, not ${sky.day}`);
  world.day = sky.day;
  for (const society of world.societies.values()) {
    if (!society.alive) continue;
    const luck = chanceOf(seed, `${society.id}|${sky.day}`);
    dayOf(world, society, sky, luck);
  }
}

function dayOf(world: World, society: Society, sky: SkyDay, luck: Chance): void {
  const bees = adults(society);
  const care = clamp(0.55 + (0.45 * bees) / 1500);
  let workers = 0;
  let drones = 0;
  for (const comb of society.combs) {
    for (const face of comb.faces) {
      const out = ageFace(face, care, society.queen?.sound ?? 1);
      workers += out.workers;
      drones += out.drones;
    }
  }
  ageBees(society, sky, workers, drones);
  queenDay(world, society, sky, luck);
  const net = feedDay(society, sky, luck);
  build(society, sky, net, luck);
  lay(society, sky.day, luck);
  layAsWorkers(society, sky.day, luck);
  dieIfMust(world, society, sky);
}

function ageBees(society: Society, sky: SkyDay, workers: number, drones: number): void {
  const { adults: a } = settings;
  const d = dayOfYear(sky.day);
  const fly = flying(sky);
  const bees = society.summer;
  const larvae = society.combs.reduce((all, comb) => all + workersAged(comb, 3, 8), 0);
  const worn = clamp(a.restedShare + ((1 - a.restedShare) * larvae) / (a.larvaePerBee * Math.max(1, adults(society))), 0, 1);
  for (let age = bees.length - 1; age > 0; age -= 1) {
    const death = age < a.forageAge ? a.inHiveDeath : (a.fieldDeath + a.fieldDeathFlying * fly) * worn;
    bees[age] = (bees[age - 1] ?? 0) * (1 - Math.min(0.9, death * society.ailing));
  }
  const toWinter = clamp((d - a.winterFrom) / (a.winterFull - a.winterFrom)) + (d < 32 ? 1 : 0);
  bees[0] = workers * (1 - Math.min(1, toWinter));
  const spring =
    d >= a.springAging && d < 190 ? Math.min(a.springMost, a.winterDeath + (d - a.springAging) * a.springStep) : a.winterDeath;
  society.winter =
    society.winter * (1 - Math.min(0.9, (d > 190 && d < 320 ? a.winterDeath * 2.1 : spring) * society.ailing)) +
    workers * Math.min(1, toWinter);
  society.drones = society.drones * (d > 230 ? 0.8 : 0.955) + drones;
}

/** Comb grows where bars hang bare, beside the last comb, in flow or with a new swarm's zeal, when cells run short. */
function build(society: Society, sky: SkyDay, net: number, luck: Chance): void {
  const { comb: c } = settings;
  if (society.zeal > 0) society.zeal -= 1;
  const d = dayOfYear(sky.day);
  const flow = d < 100 || d > 250 ? 0 : clamp(net / 260);
  const stimulus = Math.max(flow, society.zeal > 0 ? 0.75 * clamp(sky.highC / 20) : 0);
  if (stimulus <= 0.02) return;
  const room = society.combs.reduce((all, comb) => all + 2 * roomOf(comb), 0);
  const food = society.combs.reduce((all, comb) => all + combFood(comb), 0);
  const short = clamp(1.6 - (freeInNest(society, sky.day) + Math.max(0, room * 0.55 - food)) / Math.max(1, room * 0.5), 0.25, 1);
  let grow =
    (c.buildDm2 * clamp(adults(society) / c.buildBees, 0.15, 1.2) * stimulus * short * luck.between(0.75, 1.2)) / (2 * faceDm2);
  const open = building(society, sky, luck);
  for (const [i, comb] of open.entries()) {
    const part = i === open.length - 1 ? grow : grow * 0.6;
    const add = Math.min(part, 1 - comb.built);
    comb.built += add;
    grow -= add;
  }
}

function building(society: Society, sky: SkyDay, luck: Chance): WorldComb[] {
  const unbuilt = row(society).filter((comb) => comb.built < 1);
  const taken = new Set(society.combs.map((comb) => comb.place));
  for (let place = society.from; place <= society.to && unbuilt.length < settings.comb.atOnce; place += 1) {
    if (taken.has(place)) continue;
    if (unbuilt.some((comb) => comb.built < 0.22)) break;
    society.combsBegun += 1;
    const drone = adults(society) > 4000 && society.combs.length > 3 ? luck.between(0.05, 0.3) : luck.between(0, 0.04);
    const begun = newComb(`${society.id}-c${society.combsBegun}`, place, 0.01, drone, sky.day);
    society.combs.push(begun);
    unbuilt.push(begun);
    break;
  }
  return unbuilt;
}

function dieIfMust(world: World, society: Society, sky: SkyDay): void {
  const bees = adults(society);
  const starved = honeyKg(society) < 0.02 && sky.highC < 14;
  if (starved) {
    society.winter *= 0.8;
    society.summer.forEach((n, age) => (society.summer[age] = n * 0.8));
  }
  if (bees >= 350) return;
  society.alive = false;
  society.queen = null;
  society.summer.fill(0);
  society.winter = 0;
  world.happened.push({ day: sky.day, society: society.id, what: 'died' });
}
