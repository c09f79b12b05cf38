/** Queens of the second world: restlessness and swarms, quiet replacement, sudden loss, virgins and their flights, workers who lay. */
import { newStream, nextUnit, type Stream } from '../../src/numbers/streams.ts';
import { binomial } from './binomial.ts';
import { beesOf, purpose, type StageCell, type StageHive, type StageQueen, total, useOf } from './stage-hive.ts';
import { stageSettings as w } from './stage-settings.ts';

const { queen: q, swarm } = w;

/** Lives the queens' day; hands back the swarms that left. */
export function queensDay(hive: StageHive, day: number): number {
  const s = newStream(hive.seed, purpose.queens, 0, day);
  // Drawn first, so that one colony's luck of the day does not hang on what it has come to.
  const [leaves, after, gone, peace, share] = [nextUnit(s), nextUnit(s), nextUnit(s), nextUnit(s), nextUnit(s)];
  for (const one of [hive.queen, hive.mother]) {
    if (one === null) continue;
    one.age += 1;
    if (one.mated !== null) one.mated += 1;
  }
  for (const cell of hive.cells) {
    if (cell.fate === 'growing') cell.age += 1;
    else cell.stale += 1;
  }
  hive.cells = hive.cells.filter(({ stale }) => stale < 12);
  lose(hive, day, gone, peace, s);
  growRestless(hive, day, s);
  let swarms = primeSwarm(hive, leaves, share, s);
  swarms += emerge(hive, after, s);
  fly(hive, s);
  raise(hive, s);
  waitTooLong(hive);
  return swarms;
}

/** A caged queen; where one lays well, or workers lay, she is killed. */
export function giveQueen(hive: StageHive, day: number, taken: boolean): void {
  const laysWell = hive.mother !== null || (hive.queen !== null && hive.queen.mated !== null && !hive.queen.dronesOnly);
  if (!taken || laysWell || hive.layingWorkers) return;
  const s = newStream(hive.seed, purpose.given, 0, day);
  hive.queen = { age: 30, mated: -2, power: w.colony.power * (0.8 + 0.4 * nextUnit(s)), dronesOnly: false };
  for (const cell of hive.cells) if (cell.fate === 'growing') cell.fate = 'torn';
}

function growing({ cells }: StageHive): readonly StageCell[] {
  return cells.filter(({ fate }) => fate === 'growing');
}

function begin(hive: StageHive, why: StageCell['why'], age: number): void {
  hive.cells.push({ age, fate: 'growing', stale: 0, why });
}

function laysNow({ queen, mother }: StageHive): boolean {
  return mother !== null || (queen !== null && queen.mated !== null && queen.mated >= q.laysAfter);
}

function lose(hive: StageHive, day: number, gone: number, peace: number, s: Stream): void {
  if (!laysNow(hive) || hive.mother !== null) return;
  if (gone < q.lost) hive.queen = null;
  else if (growing(hive).length === 0 && day > 20 && peace < (hive.old ? q.superseded.old : q.superseded.young)) {
    const cells = 1 + Math.floor(3 * nextUnit(s));
    for (let i = 0; i < cells; i += 1) begin(hive, 'peace', 0);
    hive.old = false;
  }
}

/** No hazard: the unrest of each day adds up, and calms by itself. */
function growRestless(hive: StageHive, day: number, s: Stream): void {
  const many = nextUnit(s);
  if (hive.begins > 0) {
    hive.begins -= 1;
    const cells = Math.ceil(many * swarm.mostCellsADay);
    for (let i = 0; i < cells; i += 1) begin(hive, 'swarm', 0);
    return;
  }
  const giving = growing(hive).length > 0 && growing(hive).every(({ why }) => why === 'swarm') && hive.queen !== null;
  if (giving && !hive.fair && many < swarm.givenUp)
    for (const cell of hive.cells) if (cell.fate === 'growing') cell.fate = 'torn';
  if (hive.calm > 0) hive.calm -= 1;
  if (!laysNow(hive) || hive.queen?.mated === null || growing(hive).length > 0 || day < swarm.from || day > swarm.to) {
    hive.restless = 0;
    return;
  }
  const bees = beesOf(hive);
  const unrest =
    swarm.crowdGain * Math.max(0, bees / hive.built - swarm.crowd) +
    swarm.fullGain * Math.max(0, useOf(hive) - swarm.full) +
    swarm.reachGain * Math.max(0, bees / swarm.reach - 1) +
    (hive.fair ? 0 : swarm.foulGain);
  hive.restless = Math.max(0, hive.restless + (hive.calm > 0 ? 0 : unrest) - swarm.calms);
  if (hive.restless > hive.bears) {
    hive.begins = swarm.cellsDays;
    hive.restless = 0;
  }
}

function primeSwarm(hive: StageHive, leaves: number, share: number, s: Stream): number {
  if (hive.queen === null || hive.queen.mated === null || !hive.fair || hive.begins > 2 || leaves >= swarm.leaves) return 0;
  if (!growing(hive).some(({ why, age }) => why === 'swarm' && age >= q.sealed)) return 0;
  const [low, high] = swarm.share;
  leave(hive, low + (high - low) * share, s);
  hive.queen = null;
  hive.begins = 0;
  return 1;
}

function leave(hive: StageHive, share: number, s: Stream): void {
  const before = beesOf(hive);
  for (const kind of ['house', 'field', 'winter'] as const) hive[kind] -= binomial(hive[kind], share, s);
  hive.honeyG = Math.max(0, hive.honeyG - (before - beesOf(hive)) * swarm.honeyGrams);
}

/** The first of the cells opens; in peace the mother may go on until her daughter lays. */
function emerge(hive: StageHive, after: number, s: Stream): number {
  const first = growing(hive).find(({ age }) => age >= q.emerges);
  const motherStays = nextUnit(s) < q.motherStays;
  if (first === undefined) return 0;
  if (hive.queen !== null && first.why === 'swarm') return 0;
  const second = after < swarm.after && first.why === 'swarm' && growing(hive).length > 3 && beesOf(hive) > 9000 && hive.fair;
  first.fate = 'emerged';
  if (second) leave(hive, swarm.afterShare, s);
  else for (const cell of hive.cells) if (cell.fate === 'growing') cell.fate = 'torn';
  if (second) {
    const next = growing(hive)[0];
    if (next !== undefined) next.fate = 'emerged';
    for (const cell of hive.cells) if (cell.fate === 'growing') cell.fate = 'torn';
  }
  hive.mother = hive.queen !== null && motherStays ? hive.queen : null;
  hive.queen = virgin(s);
  return second ? 1 : 0;
}

function virgin(s: Stream): StageQueen {
  return { age: 0, mated: null, power: w.colony.power * (0.75 + 0.5 * nextUnit(s)), dronesOnly: false };
}

function fly(hive: StageHive, s: Stream): void {
  const { queen } = hive;
  const [mates, lost] = [nextUnit(s), nextUnit(s)];
  if (queen === null) return;
  if (queen.mated === q.laysAfter) hive.mother = null;
  if (queen.mated !== null || queen.age < q.flies) return;
  if (queen.age > q.tooOld) hive.queen = { ...queen, mated: q.laysAfter, power: queen.power * 0.4, dronesOnly: true };
  else if (hive.fair && mates < q.mates) {
    if (lost < q.flightLost) {
      hive.queen = hive.mother;
      hive.mother = null;
    } else queen.mated = 0;
  }
}

/** Without a queen: cells over young brood within some days, or none. */
function raise(hive: StageHive, s: Stream): void {
  const [fails, many] = [nextUnit(s), nextUnit(s)];
  hive.orphaned = hive.queen === null && growing(hive).length === 0 ? hive.orphaned + 1 : 0;
  if (hive.orphaned !== 2 || fails < q.emergencyFails) return;
  if ((hive.eggs[2] ?? 0) + (hive.larvae[0] ?? 0) < 100) return;
  for (let i = 0; i < 3 + Math.floor(7 * many); i += 1) begin(hive, 'loss', 4 + Math.floor(3 * nextUnit(s)));
}

function waitTooLong(hive: StageHive): void {
  const open = total(hive.eggs) + total(hive.larvae);
  hive.broodless = open > 60 ? 0 : hive.broodless + 1;
  const helpless = hive.queen === null && growing(hive).length === 0;
  hive.layingWorkers = helpless && (hive.layingWorkers || hive.broodless >= q.layingWorkers);
}
