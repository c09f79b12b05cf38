/**
 * Laying in the made-up world: how many eggs on a day, and in which cells. The nest is a body that
 * leans to the entrance, with an arch of food over the brood; the queen fills it from the heart.
 */
import { type Day, dayOfYear } from '../../src/numbers/day.ts';
import type { Chance } from './chance.ts';
import { broodCells, combBrood, type Face, foodCells, roomOf, type WorldComb } from './comb.ts';
import { settings } from './settings.ts';
import { clamp } from './sky.ts';
import { adults, facesCovered, fromHeart, type Society } from './society.ts';

const { laying, brood } = settings;

/** Share of a face that brood may take, by the comb's place in the row from the entrance. */
const reach = [0.42, 0.64, 0.75, 0.79, 0.78, 0.75, 0.7, 0.6, 0.46, 0.28, 0.1, 0] as const;

/** 0…1: the season of laying by the day of the year. */
export function season(day: Day): number {
  const d = dayOfYear(day);
  const up = 1 / (1 + Math.exp((laying.rise - d) / laying.riseWidth));
  const down = 1 / (1 + Math.exp((d - laying.fall) / laying.fallWidth));
  const dip = 1 - laying.dip * Math.exp(-(((d - laying.dipDay) / laying.dipWidth) ** 2));
  const s = up * down * dip;
  return s < 0.012 ? 0 : s;
}

/** The share of this comb's faces that may hold brood on the day; it shrinks towards autumn. */
export function broodReach(society: Society, comb: WorldComb, day: Day): number {
  // Its place in the row, without sorting the row for every face.
  let at = 0;
  for (const other of society.combs) if (other.place < comb.place) at += 1;
  const whole = reach[Math.min(at, reach.length - 1)] ?? 0;
  const d = sameDay(day);
  return d < 225 ? whole : whole * clamp(1 - (d - 225) / 160, 0.35, 1);
}

/** The day of the year, worked out once for the thousands of faces that ask on one day. */
function sameDay(day: Day): number {
  if (day !== asked.day) asked = { day, ofYear: dayOfYear(day) };
  return asked.ofYear;
}

let asked: { readonly day: Day; readonly ofYear: number } = { day: '', ofYear: 0 };

/** Worker cells free for eggs on one face: inside the reach, not held by brood or by food that crowds it. */
export function freeOn(society: Society, comb: WorldComb, face: Face, day: Day): number {
  const all = roomOf(comb);
  const zone = broodReach(society, comb, day) * all;
  const foodInside = Math.max(0, foodCells(face) - (all - zone));
  return Math.max(0, zone * (1 - laying.gaps) - broodCells(face) - foodInside);
}

export function freeInNest(society: Society, day: Day): number {
  return society.combs.reduce((all, comb) => all + comb.faces.reduce((a, face) => a + freeOn(society, comb, face, day), 0), 0);
}

/** The queen's eggs of one day, put into cells; returns how many. */
export function lay(society: Society, day: Day, luck: Chance): number {
  society.mood = 0.93 * society.mood + 0.05 * luck.normal();
  const queen = society.queen;
  if (queen === null || queen.mated === null || queen.mated < settings.queen.eggsAfter) return 0;
  if (queen.rests > 0) {
    queen.rests -= 1;
    return 0;
  }
  const bees = adults(society);
  const held = society.combs.reduce((all, comb) => all + combBrood(comb), 0);
  const warmable = Math.max(0, laying.broodPerBee * bees - held);
  const young = clamp((queen.mated - settings.queen.eggsAfter + 2) / 10);
  const slim = society.preparing > 0 || growing(society) > 1 ? 0.4 : 1;
  const hungry = hunger(society);
  const wish =
    laying.best * queen.vigour * season(day) * (bees / (laying.halfBees + bees)) * young * slim * hungry * Math.exp(society.mood);
  return put(society, day, Math.min(wish, warmable), queen.drones);
}

/** 1 with food about, 0 with none. */
export function hunger(society: Society): number {
  const food = society.combs.reduce((all, comb) => all + comb.faces.reduce((a, f) => a + f.honey + f.nectar, 0), 0);
  return clamp(food / 2500);
}

function growing(society: Society): number {
  return society.cells.filter((cell) => cell.fate === 'growing').length;
}

function put(society: Society, day: Day, eggs: number, misplacedShare: number): number {
  const warmFaces = Math.max(1, Math.floor(facesCovered(society)));
  const faces = fromHeart(society)
    .flatMap((comb) => comb.faces.map((face) => ({ comb, face })))
    .slice(0, warmFaces);
  const drones = dronesWanted(society, day) * eggs;
  let left = eggs - drones;
  let dronesLeft = drones;
  for (const { comb, face } of faces) {
    const room = freeOn(society, comb, face, day);
    const here = Math.min(left, room * 0.7);
    face.worker[0] = (face.worker[0] ?? 0) + here * (1 - misplacedShare);
    face.misplaced[0] = (face.misplaced[0] ?? 0) + here * misplacedShare;
    left -= here;
    const droneRoom = Math.max(0, (comb.droneShare * roomOf(comb)) / brood.droneArea - face.drone.reduce((a, b) => a + b, 0));
    const there = Math.min(dronesLeft, droneRoom * 0.25, Math.max(0, room - here) / brood.droneArea);
    face.drone[0] = (face.drone[0] ?? 0) + there;
    dronesLeft -= there;
  }
  return eggs - left - dronesLeft;
}

function dronesWanted(society: Society, day: Day): number {
  const d = dayOfYear(day);
  if (d < 95 || d > 205 || adults(society) < 6000) return 0;
  return 0.07 * clamp((d - 95) / 25) * clamp((205 - d) / 20);
}

/** Eggs of laying workers: few, scattered, in worker cells near the heart. */
export function layAsWorkers(society: Society, day: Day, luck: Chance): number {
  if (!society.layingWorkers) return 0;
  const eggs = Math.min(260, adults(society) * 0.03) * luck.between(0.7, 1.3);
  return put(society, day, eggs, 1);
}
