/**
 * Queens of the made-up world: cells begun, sealed, torn and emerged, the prime swarm, the virgin's
 * days, mating by the weather, loss, and the laying workers of a colony that has waited too long.
 */
import { dayOfYear } from '../../src/numbers/day.ts';
import type { Chance } from './chance.ts';
import { roomOf, sumOf, workersAged } from './comb.ts';
import { freeInNest } from './laying.ts';
import { settings } from './settings.ts';
import type { SkyDay } from './sky.ts';
import { adults, fromHeart, newQueen, row, type Happening, type Society, type World } from './society.ts';

const { queen: q, swarm } = settings;

/** One day of queens and cells. `leave` is called when the prime swarm goes, with the bees that go. */
export function queenDay(world: World, society: Society, sky: SkyDay, luck: Chance): void {
  const tell = (what: Happening['what'], bees?: number): void => {
    world.happened.push({ day: sky.day, society: society.id, what, ...(bees === undefined ? {} : { bees }) });
  };
  if (society.queen !== null) {
    society.queen.age += 1;
    if (society.queen.mated !== null) society.queen.mated += 1;
  }
  ageCells(society);
  if (world.natural) wishToSwarm(society, sky, luck, tell);
  beginSwarmCells(society, luck);
  swarmIfDue(society, sky, luck, tell);
  emergeIfDue(society, sky, luck, tell);
  mateIfAble(society, sky, luck, tell);
  emergency(society, luck, tell);
  waitTooLong(society, tell);
}

export function growingCells(society: Society): readonly { age: number; comb: string }[] {
  return society.cells.filter((cell) => cell.fate === 'growing');
}

type Tell = (what: Happening['what'], bees?: number) => void;

function ageCells(society: Society): void {
  for (const cell of society.cells) {
    if (cell.fate === 'growing') cell.age += 1;
    else cell.stale += 1;
  }
  society.cells = society.cells.filter((cell) => cell.stale < 16);
}

function wishToSwarm(society: Society, sky: SkyDay, luck: Chance, tell: Tell): void {
  const d = dayOfYear(sky.day);
  if ((society.queen?.mated ?? null) === null || society.preparing > 0 || growingCells(society).length > 0) return;
  if (d < swarm.from || d > swarm.to || adults(society) < 12000) return;
  const room = society.combs.reduce((all, comb) => all + roomOf(comb) * 2, 0);
  const crowded = adults(society) / (room * 0.32) + (freeInNest(society, sky.day) < 1500 ? 0.25 : 0);
  if (crowded > swarm.crowding && luck.happens(swarm.hazard)) {
    society.preparing = 6;
    tell('swarm cells begun');
  }
}

function beginSwarmCells(society: Society, luck: Chance): void {
  if (society.preparing === 0) return;
  society.preparing -= 1;
  const combs = fromHeart(society).slice(0, 6);
  const more = luck.whole(1, 3);
  for (let i = 0; i < more; i += 1) {
    const comb = combs[luck.whole(0, combs.length - 1)];
    if (comb !== undefined) society.cells.push({ comb: comb.id, age: 0, fate: 'growing', stale: 0 });
  }
}

function swarmIfDue(society: Society, sky: SkyDay, luck: Chance, tell: Tell): void {
  if ((society.queen?.mated ?? 0) < q.eggsAfter) return;
  const ripe = growingCells(society).some((cell) => cell.age >= q.sealAge);
  if (!ripe || society.preparing > 0 || sky.highC < 18 || sky.rainMm > 2) return;
  if (!luck.happens(0.8)) return;
  tell('swarm left', takeBees(society, swarm.share));
  society.queen = null;
  society.orphaned = 0;
}

/** Takes that share of the bees away, mostly those of middle age, and the honey they carry; returns how many. */
export function takeBees(society: Society, share: number): number {
  let gone = 0;
  for (let age = 0; age < society.summer.length; age += 1) {
    const part = (society.summer[age] ?? 0) * (age < 4 ? share * 0.5 : Math.min(0.92, share * 1.06));
    society.summer[age] = (society.summer[age] ?? 0) - part;
    gone += part;
  }
  gone += society.winter * share;
  society.winter *= 1 - share;
  let cells = (gone * swarm.carries) / settings.food.perCell;
  for (const comb of row(society)) {
    for (const face of comb.faces) {
      const n = Math.min(cells, face.nectar + face.honey * 0.3);
      const nectar = Math.min(n, face.nectar);
      face.nectar -= nectar;
      face.honey -= n - nectar;
      cells -= n;
    }
  }
  return gone;
}

function emergeIfDue(society: Society, sky: SkyDay, luck: Chance, tell: Tell): void {
  if (society.queen !== null) return;
  const first = society.cells.find((cell) => cell.fate === 'growing' && cell.age >= q.emergeAge);
  if (first === undefined) return;
  first.fate = 'emerged';
  for (const cell of society.cells) if (cell.fate === 'growing') cell.fate = 'torn';
  society.queen = newQueen(`${society.id}-${sky.day}`, luck.between(0.85, 1.08), null);
  tell('virgin emerged');
}

function mateIfAble(society: Society, sky: SkyDay, luck: Chance, tell: Tell): void {
  const queen = society.queen;
  if (queen === null) return;
  if (queen.mated === q.eggsAfter) tell('first eggs');
  if (queen.mated !== null || queen.age < q.mateAge) return;
  if (queen.age > q.tooOld) {
    queen.mated = q.eggsAfter - 1;
    queen.drones = 1;
    queen.vigour = 0.4;
    return;
  }
  if (sky.highC < 19.5 || sky.rainMm > 1 || sky.windMs > 8 || !luck.happens(q.mates)) return;
  if (!society.spared && luck.happens(q.lost)) {
    society.queen = null;
    tell('virgin lost');
    return;
  }
  queen.mated = 0;
  tell('mated');
}

/** Within two days of the loss some young larvae are fed as queens; half of the cells are torn later. */
function emergency(society: Society, luck: Chance, tell: Tell): void {
  if (society.queen !== null || growingCells(society).length > 0) {
    society.orphaned = society.queen === null ? society.orphaned + 1 : 0;
    if (society.orphaned === 5 && growingCells(society).length > 3) {
      for (const cell of society.cells) if (cell.fate === 'growing' && luck.happens(0.35)) cell.fate = 'torn';
    }
    return;
  }
  society.orphaned += 1;
  if (society.orphaned > 3) return;
  const young = row(society).filter((comb) => workersAged(comb, 2, 5) > 150);
  if (young.length === 0 || society.orphaned < 2 || adults(society) < 1200) return;
  const many = luck.whole(4, 9);
  for (let i = 0; i < many; i += 1) {
    const comb = young[luck.whole(0, young.length - 1)];
    if (comb !== undefined) society.cells.push({ comb: comb.id, age: luck.whole(3, 5), fate: 'growing', stale: 0 });
  }
  tell('emergency cells begun');
}

function waitTooLong(society: Society, tell: Tell): void {
  const open = society.combs.reduce((all, comb) => all + comb.faces.reduce((a, f) => a + sumOf(f.worker, 0, 8), 0), 0);
  society.sinceOpenBrood = open > 60 ? 0 : society.sinceOpenBrood + 1;
  const helpless = society.queen === null && growingCells(society).length === 0;
  if (!helpless) society.layingWorkers = false;
  else if (!society.layingWorkers && society.sinceOpenBrood >= q.layingWorkers && adults(society) > 1000) {
    society.layingWorkers = true;
    tell('laying workers');
  }
}
