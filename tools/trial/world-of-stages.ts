/**
 * The second world of the trial: bees in a few classes that move on by binomial chance, laying by the least of
 * power, care and room, a flow that comes in spells with a dearth, and swarming not by a hazard but by a
 * restlessness that builds up while the queen's scent is thin and the nest full, until the colony bears no more.
 */
import { newStream, nextNormal, nextUnit, type Stream } from '../../src/numbers/streams.ts';
import { binomial, poisson } from './binomial.ts';
import { type Act, type Befell, relieved, type TrialWorld, type TrueCell, type Truth } from './hive.ts';
import { beesOf, broodOf, purpose, type StageCell, type StageHive, total } from './stage-hive.ts';
import { giveQueen, queensDay } from './stage-queens.ts';
import { stageSettings as w } from './stage-settings.ts';

export const worldOfStages: TrialWorld<StageHive> = {
  name: 'stages',
  begin,
  live: liveDay,
  fits: ({ fair }) => fair,
  truth: truthOf,
  act: actOn,
};

function begin(seed: number): StageHive {
  const { colony: c, adults } = w;
  const s = newStream(seed, purpose.begin, 0, 0);
  const between = ([low, high]: readonly [number, number]): number => low + (high - low) * nextUnit(s);
  const spread = (sd: number): number => Math.exp(sd * nextNormal(s));
  const bees = Math.round(between(c.bees));
  const brood = Math.round(bees * 0.9);
  const built = between(c.builtCells);
  const power = c.power * spread(c.powerSpread);
  return {
    seed,
    care: c.care * spread(c.careSpread),
    life: spread(c.lifeSpread),
    site: spread(w.flow.siteSpread),
    bears: w.swarm.bears * spread(c.bearsSpread),
    old: nextUnit(s) < c.oldQueens,
    eggs: [0, 1, 2].map(() => Math.round((0.15 * brood) / 3)),
    larvae: [0, 1, 2].map(() => Math.round((0.25 * brood) / 3)),
    pupae: [0, 1, 2, 3, 4, 5].map(() => Math.round((0.6 * brood) / 6)),
    misplaced: 0,
    house: Math.round(bees * (1 - adults.oldShare)),
    field: 0,
    winter: Math.round(bees * adults.oldShare),
    honeyG: between(c.honeyKg) * 1000,
    fedG: 0,
    built,
    most: Math.min(c.mostCells, built + between(c.bareCells)),
    fair: true,
    flow: 0,
    queen: { age: 300, mated: 290, power, dronesOnly: false },
    mother: null,
    cells: [],
    restless: 0,
    calm: 0,
    begins: 0,
    orphaned: 0,
    broodless: 0,
    layingWorkers: false,
    hungry: false,
    alive: true,
  };
}

function liveDay(hive: StageHive, day: number): Befell {
  skyDay(hive, day);
  const s = newStream(hive.seed, purpose.bees, 0, day);
  const emerged = broodDay(hive, s);
  adultsDay(hive, day, emerged, s);
  const starved = foodDay(hive, s);
  const swarms = queensDay(hive, day);
  const laid = layDay(hive, day, s);
  if (beesOf(hive) < 400) hive.alive = false;
  return { swarms, starved, laid, alive: hive.alive };
}

/** Weather and flow of the yard: the same for one seed whatever the bees and the keeper do. */
function skyDay(hive: StageHive, day: number): void {
  const s = newStream(hive.seed, purpose.weather, 0, day);
  hive.fair = nextUnit(s) < (hive.fair ? w.weather.fairStays : w.weather.fairComes);
  const changes = nextUnit(s) >= w.flow.stays;
  const draw = nextUnit(s);
  if (!changes && day > 0) return;
  const [none, weak] = (w.flow.parts.find(({ until }) => day < until) ?? w.flow.parts[4]).odds;
  hive.flow = draw < none ? 0 : draw < none + weak ? 1 : 2;
}

function broodDay(hive: StageHive, s: Stream): number {
  const { brood: b } = w;
  const lost = hive.hungry ? b.hungryLost : 0;
  const [egg0 = 0, egg1 = 0, egg2 = 0] = hive.eggs;
  hive.eggs = [0, egg0, egg1];
  let moving = binomial(egg2, 1 - b.eggLost, s);
  for (const [stage, chance, loss] of [
    [hive.larvae, b.larvaMoves, b.larvaLost + lost],
    [hive.pupae, b.pupaMoves, b.pupaLost],
  ] as const) {
    for (let i = 0; i < stage.length; i += 1) {
      const out = binomial(stage[i]!, chance, s);
      stage[i] = stage[i]! - out + moving;
      moving = binomial(out, 1 - loss, s);
    }
  }
  hive.misplaced -= binomial(hive.misplaced, 1 / 24, s);
  return moving;
}

function adultsDay(hive: StageHive, day: number, emerged: number, s: Stream): void {
  const { adults: a } = w;
  const bees = Math.max(1, beesOf(hive));
  const longLived = Math.min(1, Math.max(0, (day - a.winterFrom) / (a.winterFull - a.winterFrom)));
  const winter = binomial(emerged, longLived, s);
  const turn = Math.min(0.15, Math.max(0.005, a.turns - (a.held * (hive.field + hive.winter * 0.5)) / bees));
  const turned = binomial(hive.house, turn, s);
  const loss = hive.fair ? a.fieldLossFair : a.fieldLossFoul;
  hive.house += emerged - winter - turned - binomial(hive.house - turned, a.houseLoss * hive.life, s);
  hive.field += turned - binomial(hive.field, loss * hive.life, s);
  hive.winter += winter - binomial(hive.winter, (day < a.winterFrom ? a.oldLoss : a.winterLoss) * hive.life, s);
}

/** Income, what is eaten, comb; true on the day on which the stores run out. */
function foodDay(hive: StageHive, s: Stream): boolean {
  const { food: f, flow, weather } = w;
  const flight = hive.fair ? 1 : weather.foulFlight;
  const room = Math.max(0, hive.built * 0.97 - broodOf(hive)) * f.cellGrams - hive.honeyG;
  const wish = (hive.field + 0.4 * hive.winter) * flow.grams[hive.flow] * hive.site * flight;
  const fed = Math.min(hive.fedG, f.takesDown);
  hive.fedG -= fed;
  const income = Math.min(Math.max(0, room), wish) + fed;
  const eaten = beesOf(hive) * f.beeGrams + total(hive.larvae) * f.larvaGrams;
  hive.honeyG = Math.max(0, hive.honeyG + income - eaten);
  if (hive.flow > 0 && hive.fair && income > eaten)
    hive.built = Math.min(hive.most, hive.built + w.comb.dayCells * (hive.flow / 2) * Math.min(1, hive.house / w.comb.builders));
  const empty = hive.honeyG < f.emptyKg * 1000;
  if (empty) for (const kind of ['house', 'field', 'winter'] as const) hive[kind] -= binomial(hive[kind], f.starvedLoss, s);
  const starved = empty && !hive.hungry;
  hive.hungry = empty || (hive.hungry && hive.honeyG < f.againKg * 1000);
  return starved;
}

function layDay(hive: StageHive, day: number, s: Stream): boolean {
  const layer = hive.mother ?? hive.queen;
  const brood = broodOf(hive);
  const free = Math.max(0, hive.built * 0.97 - brood - hive.honeyG / w.food.cellGrams);
  if (hive.layingWorkers) hive.misplaced += poisson(Math.min(200, beesOf(hive) * 0.02, free), s);
  if (layer === null || layer.mated === null || layer.mated < w.queen.laysAfter) return false;
  const since = layer.mated - w.queen.laysAfter;
  const slim = hive.cells.some(({ fate, why, age }) => fate === 'growing' && why === 'swarm' && age >= w.swarm.slims);
  const power = layer.power * seasonOn(day) * (hive.flow === 0 ? w.dearthLaying : 1) * (slim ? w.swarm.slim : 1);
  const reared = Math.max(0, hive.care * (hive.house + 0.7 * hive.winter) - brood) / 3;
  const eggs = poisson(Math.min(power * Math.min(1, (since + 1) / w.queen.fullAfter), reared, free * 0.5), s);
  if (layer.dronesOnly) hive.misplaced += eggs;
  else hive.eggs[0] = eggs;
  return !layer.dronesOnly && eggs > 20;
}

function seasonOn(day: number): number {
  for (let i = 1; i < w.season.length; i += 1) {
    const [from, low] = w.season[i - 1]!;
    const [to, high] = w.season[i]!;
    if (day <= to) return low + ((high - low) * (day - from)) / (to - from);
  }
  return w.season[w.season.length - 1]![1];
}

function truthOf(hive: StageHive): Truth {
  const young = hive.misplaced / 8;
  return {
    bees: hive.house + hive.winter + 0.55 * hive.field,
    eggs: total(hive.eggs) + young,
    larvae: total(hive.larvae) + 2 * young,
    sealed: total(hive.pupae) + 5 * young,
    honeyKg: hive.honeyG / 1000,
    built: hive.built,
    most: hive.most,
    cells: hive.cells.map(trueCell),
    queenHere: hive.queen !== null || hive.mother !== null,
    queenYoung: hive.mother === null && (hive.queen?.mated ?? 0) < 14,
    dronesOnly: hive.layingWorkers || (hive.queen?.dronesOnly ?? false),
  };
}

function trueCell({ age, fate }: StageCell): TrueCell {
  return { what: fate !== 'growing' ? fate : age >= w.queen.sealed ? 'sealed' : 'open', age };
}

function actOn(hive: StageHive, day: number, act: Act): void {
  if (act.kind === 'feed') hive.fedG += act.kg * 1000;
  else if (act.kind === 'bars') hive.most = Math.min(w.colony.mostCells, hive.most + act.bars * w.colony.barCells);
  else if (act.kind === 'give queen') giveQueen(hive, day, act.taken);
  else relieve(hive, act.holds);
}

function relieve(hive: StageHive, holds: boolean): void {
  const growing = hive.cells.filter(({ fate }) => fate === 'growing').sort((a, b) => a.age - b.age);
  const missed = holds ? null : (growing[0] ?? null);
  hive.cells = hive.cells.filter((cell) => cell.fate !== 'growing' || cell === missed);
  for (const kind of ['house', 'field', 'winter'] as const) hive[kind] = Math.round(hive[kind] * (1 - relieved.bees));
  for (const stage of [hive.eggs, hive.larvae, hive.pupae])
    stage.forEach((n, i) => (stage[i] = Math.round(n * (1 - relieved.brood))));
  if (!holds) return;
  hive.begins = 0;
  hive.restless = 0;
  hive.calm = w.swarm.calmDays;
}
