/**
 * The day of the model written once more, to be read: a colony as named numbers and lists, each day a new one,
 * nothing in place. Figures come from the same constants; what is worked out of them is written out anew.
 */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../../figures/book.ts';
import { newStream, nextNormal, nextUnit, type Stream } from '../../numbers/streams.ts';
import { type ChainStateName, chainStates, stateIndex } from '../queen-chain/states.ts';
import type { ChainEvent, Way } from '../queen-chain/ways.ts';
import type { EngineConstants } from './constants.ts';
import { may, setupOn } from './for-tests.ts';
import { colonyModel } from './model.ts';
import { adultsAt, broodAt, broodDays, droneBroodAt, eyeGapAt, eyeVarianceAt, part, type Part } from './particle.ts';
import { eyeWanderers, quickWanderers, slowWanderers, type Wanderer } from './taken/wander.ts';

interface Plain {
  readonly is: Readonly<Record<Part, number>>;
  readonly gaps: readonly number[];
  readonly variances: readonly number[];
  readonly brood: readonly number[];
  readonly droneBrood: readonly number[];
  readonly bees: readonly number[];
}

const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);
const within = (low: number, high: number, x: number): number => Math.min(high, Math.max(low, x));

function readPlain(values: Float64Array): Plain {
  const run = (from: number, to: number): number[] => [...values.slice(from, to)];
  return {
    is: Object.fromEntries(Object.entries(part).map(([name, at]) => [name, values[at]!])) as Record<Part, number>,
    gaps: run(eyeGapAt, eyeVarianceAt),
    variances: run(eyeVarianceAt, broodAt),
    brood: run(broodAt, droneBroodAt),
    droneBrood: run(droneBroodAt, adultsAt),
    bees: run(adultsAt, values.length),
  };
}

const numbersOf = (p: Plain): number[] => [
  ...Object.values(p.is),
  ...p.gaps,
  ...p.variances,
  ...p.brood,
  ...p.droneBrood,
  ...p.bees,
];

function yearDayOf(c: EngineConstants, day: number): number {
  const year = 365.2425;
  return (((day + c.season.turn) % year) + year) % year;
}

function seasonOf(c: EngineConstants, day: number, { rise, fall, depth }: Plain['is']): number {
  const between = (table: Float64Array, t: number): number => {
    const place = within(0, table.length - 1, t);
    const [before, after] = [table[Math.floor(place)]!, table[Math.ceil(place)]!];
    return before + (place - Math.floor(place)) * (after - before);
  };
  const t = yearDayOf(c, day);
  const floor = Math.min(0.5, c.season.floor * Math.exp((fall - rise) / (2 * c.season.floorDays)));
  return floor + (1 - floor) * Math.min(between(c.season.rise, t - rise), between(c.season.fall, t - fall)) ** Math.exp(depth);
}

function freeOf(c: EngineConstants, { is, brood }: Plain): number {
  const usable = is.comb * c.room.usable;
  const honey = Math.min(is.honeyKg / c.room.honeyKgPerCell, usable * c.room.honeyMost);
  return Math.max(0, usable - sum(brood) * Math.exp(is.sealedScale) - honey - is.breadKg / c.room.breadKgPerCell);
}

function urgeOf(c: EngineConstants, day: number, share: number, p: Plain, could: number, free: number): number {
  const q = c.queen;
  const counted = sum(p.bees) * Math.exp(p.is.beesScale);
  const roomy = could > 0 ? Math.min(1, free / could / q.roomyDays) : 1;
  const comb = Math.max(p.is.comb, p.is.combMost / 2);
  const dense = c.ground.comb === null ? 1 : Math.min(2, counted / comb / q.coverBees);
  const power = yearDayOf(c, day) > c.season.peak ? q.urgeAfter : q.urgeSeason;
  const crowded = (Math.min(1, counted / q.urgeBees) * dense) ** 2;
  return share ** power * crowded * (q.crowdedUrge * (1 - roomy) + q.roomyUrge * roomy);
}

/** The way taken, if any, and the log of its chance over the chance with which it was proposed. */
function wayOf(c: EngineConstants, p: Plain, share: number, urge: number, unit: number): readonly [Way | null, number] {
  const name = chainStates[p.is.queen]!.name;
  const ways = c.chain.ways.filter(({ from }) => from === name);
  const by = { none: 1, 'swarm urge': urge, season: share, loss: 1 };
  const raw = ways.map((w) => w.hazardByDaysIn[Math.min(w.hazardByDaysIn.length - 1, p.is.queenDays)]! * by[w.scaledBy]);
  const chances = raw.map((chance) => chance / Math.max(1, sum(raw)));
  const rare = sum(chances.filter((_, i) => ways[i]!.rare));
  const room = (1 - sum(chances.filter((_, i) => !ways[i]!.rare))) / 2;
  const push = rare === 0 ? 1 : within(1, Math.max(1, c.queen.guided), room / rare);
  const proposed = chances.map((chance, i) => (ways[i]!.rare ? push * chance : chance));
  const taken = proposed.findIndex((_, i) => unit < sum(proposed.slice(0, i + 1)));
  if (taken >= 0) return [ways[taken]!, Math.log(chances[taken]! / proposed[taken]!)];
  return [null, push === 1 ? 0 : Math.log((1 - sum(chances)) / (1 - sum(proposed)))];
}

const leaving: Partial<Record<ChainEvent, (c: EngineConstants) => number>> = {
  'swarm leaves': (c) => c.queen.swarmLogit,
  'after-swarm leaves': (c) => Math.log(c.queen.afterSwarmShare / (1 - c.queen.afterSwarmShare)),
};

function afterQueen(c: EngineConstants, day: number, p: Plain, way: Way | null, stream: Stream): Plain {
  if (way === null) return { ...p, is: { ...p.is, queenDays: p.is.queenDays + 1 } };
  const middle = leaving[way.event]?.(c);
  const stays = middle === undefined ? 1 : 1 / (1 + Math.exp(middle + c.queen.swarmSpread * nextNormal(stream)));
  const load = (1 - stays) * sum(p.bees) * c.queen.swarmHoneyKg;
  const youngest = p.brood.findIndex((cells) => cells >= 1);
  const broodless = youngest < 0 ? p.brood.length : youngest;
  const tooOld = broodless > c.chain.rescueDays;
  const to: ChainStateName = way.to === 'orphaned' && tooOld ? 'none' : way.to;
  const is = {
    ...p.is,
    queen: stateIndex[to],
    queenDays: to === 'none' ? Math.max(0, broodless - c.chain.rescueDays) : 0,
    queenFrom: way.event === 'eggs begin' ? day : p.is.queenFrom,
    drones: p.is.drones * stays,
    honeyKg: Math.max(0, p.is.honeyKg - load),
  };
  return { ...p, is, bees: p.bees.map((bees) => bees * stays) };
}

/** Shares of what a queen could lay: eggs by the one there is, and drone eggs laid in worker cells. */
function layingOf(c: EngineConstants, day: number, { is }: Plain): { readonly eggs: number; readonly misplaced: number } {
  const { name, queenLays, dronesOnly } = chainStates[is.queen]!;
  const slim = name === 'swarm cells sealed' || (name === 'swarm cells open' && is.queenDays >= c.chain.slows.fromDay);
  const best = slim ? c.chain.slows.share : name === 'failing' ? c.chain.slows.failing : 1;
  const few = name === 'drone layer' ? c.chain.slows.failing : c.chain.slows.share;
  return {
    eggs: queenLays ? best * Math.min(1, (day - is.queenFrom + 1) / c.queen.rampDays) : 0,
    misplaced: dronesOnly ? few : 0,
  };
}

function olderBees(c: EngineConstants, p: Plain, worn: number, emerging: number): number[] {
  const hungry = p.is.honeyKg < c.stores.hungryKg ? c.stores.hungryLoss : 0;
  const times = Math.exp(p.is.lossLevel + p.is.loss);
  const left = (summer: number): number => Math.exp(-hungry - times * (worn * summer + (1 - worn) * c.winterLoss));
  const [house, field] = [left(c.houseLoss), left(c.fieldLoss)];
  const oldest = p.bees.length - 1;
  const flying = within(0, 1, (p.bees.length - p.is.flightAge) / c.oldestSpread);
  return p.bees.map((bees, age) => {
    if (age === 0) return emerging;
    const younger = p.bees[age - 1]!;
    if (age === oldest) return (bees + younger) * (flying * field + (1 - flying) * house);
    return younger * (age > Math.round(p.is.flightAge) ? field : house);
  });
}

interface Food {
  readonly share: number;
  readonly bees: number;
  readonly reared: number;
  readonly free: number;
  readonly cells: number;
}

function afterStores(c: EngineConstants, is: Plain['is'], { share, bees, reared, free, cells }: Food): Plain['is'] {
  const [s, r] = [c.stores, c.room];
  const season = Math.max(0, (share - s.leastShare) / (1 - s.leastShare));
  const flow = Math.exp(is.flow - s.flowMean);
  const eaten = bees * s.eatKg + reared * s.rearKg;
  const space = Math.max(0, (free - cells) * r.honeyKgPerCell, bees * c.queen.swarmHoneyKg - is.honeyKg);
  const honeyKg = Math.max(0, is.honeyKg - eaten + Math.min(bees * season * flow * s.nectarKg, eaten + space));
  const bread = is.breadKg + bees * season * Math.sqrt(flow) * s.breadKg - reared * s.rearBreadKg;
  const breadKg = within(0, Math.min(r.breadMostKg, is.comb * r.breadMostKgPerCell), bread);
  if (is.comb >= is.combMost) return { ...is, honeyKg, breadKg };
  const crowd = Math.min(1, bees / r.builderBees) * Math.min(1, share * Math.exp(is.flow));
  const wish = r.builtPerDay * crowd * (1 - Math.min(1, free / Math.max(1, cells * c.queen.roomyDays)));
  const built = Math.min(wish, is.combMost - is.comb, Math.max(0, honeyKg - 2 * s.hungryKg) / r.waxKgPerCell);
  return { ...is, breadKg, comb: is.comb + built, honeyKg: honeyKg - built * r.waxKgPerCell };
}

/** Every eighth day what is slow moves by eight days at once. */
function afterWandering(day: number, p: Plain, stream: Stream): Plain {
  const is = { ...p.is };
  const pushed = ({ part: name, middle, spread, days }: Wanderer, by: number): { kept: number; sd: number; push: number } => {
    const kept = Math.exp(-by / days);
    const sd = spread * Math.sqrt(1 - kept ** 2);
    const push = sd * nextNormal(stream);
    is[name] = middle * (1 - kept) + kept * is[name] + push;
    return { kept, sd, push };
  };
  for (const one of quickWanderers(printedBook)) pushed(one, 1);
  if (day % 8 !== 0) return { ...p, is };
  for (const one of slowWanderers(printedBook)) pushed(one, 8);
  const known = eyeWanderers(printedBook).map((one) => pushed(one, 8));
  return {
    ...p,
    is,
    gaps: p.gaps.map((gap, i) => known[i]!.kept * gap - known[i]!.push),
    variances: p.variances.map((variance, i) => known[i]!.kept ** 2 * variance + known[i]!.sd ** 2),
  };
}

function plainDay(c: EngineConstants, day: number, was: Plain, stream: Stream): readonly [Plain, number] {
  const share = seasonOf(c, day, was.is);
  const crowd = sum(was.bees);
  const could = (c.capacity * Math.exp(was.is.capacity + was.is.laying) * share * crowd) / (c.halfBees + crowd);
  const free = freeOf(c, was);
  const urge = urgeOf(c, day, share, was, could, free);
  const [way, weight] = wayOf(c, was, share, urge, nextUnit(stream));
  const p = afterQueen(c, day, was, way, stream);
  const { eggs, misplaced } = layingOf(c, day, p);
  const laid = Math.min(could * eggs, (free * c.room.found) / Math.exp(p.is.sealedScale));
  const height = share >= c.drones.fromShare;
  const drones = height && crowd >= c.drones.leastBees ? laid * c.drones.share : 0;
  const fed = sum(was.brood.slice(0, c.sealAge)) / Math.max(1, crowd);
  const worn = Math.min(1, Math.max(share * c.wornLeast, (fed - c.wornFrom) / (c.wornBrood - c.wornFrom)));
  const survive = (age: number): number => (age === c.hatchAge ? c.hatches : age === c.sealAge ? c.isSealed : 1);
  const brood = [laid - drones, ...p.brood.slice(0, -1)].map((cells, age) => cells * survive(age));
  const grown = p.is.drones * (height ? c.drones.kept : c.drones.drivenKept);
  const is = {
    ...p.is,
    drones: grown + p.droneBrood.at(-1)! * c.drones.survives,
    flightAge: p.is.flightAge * (1 - worn / c.forageAge) + 1,
  };
  const cells = could * Math.exp(is.sealedScale);
  const older = {
    ...p,
    is: afterStores(c, is, { share, bees: crowd, reared: brood[c.sealAge]!, free, cells }),
    brood,
    droneBrood: [drones + could * misplaced, ...p.droneBrood.slice(0, -1)],
    bees: olderBees(c, p, worn, p.brood[broodDays - 1]! * c.emerges),
  };
  return [afterWandering(day, older, stream), weight];
}

for (const [ground, guided] of [
  ['a trough half built', true],
  ['a hive nobody knows', true],
  ['a trough half built', false],
] as const) {
  test(`E20 over 200 days the model's day is the plain one: ${ground}, ${guided ? 'guided' : 'as it happens'}`, () => {
    const own = setupOn(ground === 'a hive nobody knows' ? { comb: null } : {}).constants;
    const c = guided ? own : { ...own, queen: { ...own.queen, guided: 1 } };
    const states = new Set<number>();
    let swarms = 0;
    for (let seed = 1; seed <= 12; seed += 1) {
      const values = new Float64Array(colonyModel.size);
      colonyModel.initial(c, may, values, 0, newStream(seed, 0, 0, may));
      // Every third one is close to hunger, where wax and bees are lost by other rules.
      if (seed % 3 === 0) values[part.honeyKg] = (seed / 6) * c.stores.hungryKg;
      let plain = readPlain(values);
      for (let day = may; day < may + 200; day += 1) {
        const before = sum(plain.bees);
        const [next, plainWeight] = plainDay(c, day, plain, newStream(seed, 1, 0, day));
        const weight = colonyModel.step(c, day, values, 0, newStream(seed, 1, 0, day));
        plain = next;
        states.add(plain.is.queen);
        swarms += Number(sum(plain.bees) < before / 2);
        const where = `seed ${seed}, day ${day - may}`;
        assert.ok(Math.abs(weight - plainWeight) < 1e-9, `${where}: weight ${weight}, not ${plainWeight}`);
        const fast = numbersOf(readPlain(values));
        numbersOf(plain).forEach((one, i) => {
          assert.ok(Math.abs(fast[i]! - one) <= 1e-9 * Math.max(1, Math.abs(one)), `${where}: ${i} is ${fast[i]}, not ${one}`);
        });
      }
    }
    // So that what is rare was compared as well.
    if (guided) assert.ok(states.size >= 8 && swarms >= 1, `${states.size} states, ${swarms} swarms`);
  });
}
