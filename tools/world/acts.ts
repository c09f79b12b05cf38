/**
 * What people and fate do to the made-up colonies: start them, hive a swarm, split, give and take bars,
 * change a queen, cut cells, feed, bring bad luck. Each act changes the world and returns what it made.
 */
import type { Chance } from './chance.ts';
import { broodCells, newComb, roomOf, type WorldComb } from './comb.ts';
import { settings } from './settings.ts';
import { adults, newQueen, newSociety, row, type Society, type World } from './society.ts';

export interface Start {
  readonly id: string;
  readonly from: number;
  readonly combs: number;
  readonly to: number;
  readonly bees: number;
  readonly honeyKg: number;
  readonly queenDays: number;
  readonly vigour: number;
  readonly temper: number;
}

/** A colony in mid-winter: a cluster of old bees, food over and beside them, no brood. */
export function wintering(world: World, start: Start, luck: Chance): Society {
  const society = newSociety(start.id, start.from, start.to);
  society.winter = start.bees;
  society.temper = start.temper;
  society.queen = newQueen(`${start.id}-q`, start.vigour, start.queenDays);
  for (let i = 0; i < start.combs; i += 1) {
    society.combsBegun += 1;
    const drone = i > 2 && i < 8 ? luck.between(0.04, 0.16) : luck.between(0, 0.05);
    society.combs.push(newComb(`${start.id}-c${society.combsBegun}`, start.from + i, luck.between(0.94, 1), drone, '2011-06-15'));
  }
  const weights = row(society).map((_, i) => 0.25 + 0.75 * Math.min(1, Math.abs(i - 3) / 4) + luck.between(0, 0.2));
  const all = weights.reduce((a, b) => a + b, 0);
  row(society).forEach((comb, i) => {
    const cells = (((weights[i] ?? 0) / all) * start.honeyKg * 1000) / settings.food.perCell / 2;
    for (const face of comb.faces) {
      face.honey = Math.min(cells, roomOf(comb) * 0.93);
      face.bread = roomOf(comb) * luck.between(0.01, 0.05);
    }
  });
  world.societies.set(society.id, society);
  return society;
}

/** A swarm on bare bars: bees of all ages with honey in them, a queen who rests a day or two. */
export function hiveSwarm(
  world: World,
  id: string,
  from: number,
  to: number,
  bees: number,
  queenDays: number,
  luck: Chance,
): Society {
  const society = newSociety(id, from, to);
  const ages: number[] = society.summer.map((_, age) => (age < 2 ? 0.3 : age < 25 ? 1 : age < 38 ? 0.4 : 0));
  const all = ages.reduce((a, b) => a + b, 0);
  ages.forEach((share, age) => {
    society.summer[age] = (bees * share) / all;
  });
  society.queen = newQueen(`${id}-q`, luck.between(0.85, 1), queenDays);
  society.queen.rests = 3;
  society.zeal = 16;
  society.combsBegun = 1;
  const first = newComb(`${id}-c1`, from, 0.05, 0, world.day);
  society.combs.push(first);
  for (const face of first.faces) face.nectar = roomOf(first) * 0.3;
  society.fedGrams = bees * settings.swarm.carries * 0.6;
  world.societies.set(id, society);
  return society;
}

/** Combs of these places go with their bees to a new colony; the queen stays. */
export function splitOff(
  world: World,
  from: Society,
  id: string,
  places: readonly number[],
  to: { from: number; to: number },
  share: number,
): Society {
  const child = newSociety(id, to.from, to.to);
  child.temper = from.temper;
  const gone = row(from).filter((comb) => places.includes(comb.place));
  from.combs = from.combs.filter((comb) => !gone.includes(comb));
  gone.forEach((comb, i) => {
    comb.place = to.from + i;
    child.combs.push(comb);
  });
  from.summer.forEach((bees, age) => {
    const part = bees * (age < 18 ? share : share * 0.25);
    child.summer[age] = part;
    from.summer[age] = bees - part;
  });
  world.societies.set(id, child);
  return child;
}

/** Close the gaps that taken combs left, towards the entrance; returns who moved from where. */
export function closeUp(society: Society): readonly { comb: WorldComb; was: number }[] {
  const moved: { comb: WorldComb; was: number }[] = [];
  row(society).forEach((comb, i) => {
    const place = society.from + i;
    if (comb.place !== place) {
      moved.push({ comb, was: comb.place });
      comb.place = place;
    }
  });
  return moved;
}

/** A bare bar between combs: those behind move one place out. Returns who moved, outermost first. */
export function makeRoomAt(society: Society, place: number): readonly { comb: WorldComb; was: number }[] {
  const moved = row(society)
    .filter((comb) => comb.place >= place)
    .reverse()
    .map((comb) => ({ comb, was: comb.place }));
  for (const { comb } of moved) comb.place += 1;
  society.to += 1;
  return moved;
}

/** The last comb, when it is well filled and without brood; it leaves the hive. Null when it is not ripe. */
export function takeHoney(society: Society, leastFull: number): WorldComb | null {
  const last = row(society).at(-1);
  if (last === undefined || last.faces.some((face) => broodCells(face) > 5)) return null;
  const full = last.faces.reduce((all, face) => all + face.honey, 0) / (2 * roomOf(last));
  if (full < leastFull) return null;
  society.combs = society.combs.filter((comb) => comb !== last);
  return last;
}

export function loseQueen(world: World, society: Society): void {
  society.queen = null;
  society.orphaned = 0;
  world.happened.push({ day: world.day, society: society.id, what: 'queen lost' });
}

/** Every queen cell that a careful look finds is cut; returns how many. */
export function cutCells(society: Society): number {
  const found = society.cells.filter((cell) => cell.fate === 'growing');
  for (const cell of found) cell.fate = 'torn';
  society.preparing = 0;
  return found.length;
}

export function introduce(society: Society, id: string, vigour: number, luck: Chance): void {
  cutCells(society);
  society.queen = newQueen(id, vigour, 40);
  society.queen.rests = luck.whole(5, 7);
  society.orphaned = 0;
}

export function isThriving(society: Society): boolean {
  return society.alive && adults(society) > 3000;
}
