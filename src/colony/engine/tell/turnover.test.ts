/**
 * The turnover as the model tells it, day by day, against the closed form of a colony that stands still: after g
 * days without eggs the new queen's daughters are F(t) = ∫l(0…t−21−g) / (∫l(0…t−21−g) + ∫l(t−21…)) of the bees.
 */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { dayFromNumber } from '../../../numbers/day.ts';
import type { Cloud } from '../../../numbers/particle-filter.ts';
import { stateIndex } from '../../queen-chain/states.ts';
import { ageAdults, ageBrood } from '../ageing.ts';
import type { EngineConstants } from '../constants.ts';
import { plainParticle, setupOn } from '../for-tests.ts';
import { broodDays, part } from '../particle.ts';
import { turnoverOf } from './ages.ts';

interface Survival {
  readonly name: string;
  readonly forageAge: number;
  readonly house: number;
  readonly field: number;
}

/** Survival of adult bees in two phases; shares lost in a day. */
const sets: readonly Survival[] = [
  { name: 'benign', forageAge: 21, house: 0.005, field: 0.1 },
  { name: 'average', forageAge: 18, house: 0.005, field: 0.154 },
  { name: 'tagged', forageAge: 18, house: 0.028, field: 0.36 },
];
const perDay = 1000;
const settled = 200;

function constantsOf(c: EngineConstants, set: Survival): EngineConstants {
  const hazard = (share: number): number => -Math.log(1 - share);
  return {
    ...c,
    hatches: 1,
    isSealed: 1,
    emerges: 1,
    forageAge: set.forageAge,
    houseLoss: hazard(set.house),
    fieldLoss: hazard(set.field),
  };
}

function walk(c: EngineConstants, gap: number): readonly Cloud[] {
  const values = plainParticle(c, 0, 0);
  values[part.flightAge] = c.forageAge;
  const day = (eggs: number): void => ageAdults(c, values, 0, 1, 0, ageBrood(c, values, 0, eggs));
  for (let i = 0; i < settled; i += 1) day(perDay);
  values[part.queen] = stateIndex.introduced;
  const clouds: Cloud[] = [];
  // The old queen's last egg is laid at the moment at which day 0 begins, where the first of these clouds stands.
  for (let today = 0; today <= 70; today += 1) {
    clouds.push({
      day: today,
      count: 1,
      values: values.slice(),
      logShares: Float64Array.of(0),
      roots: Int32Array.of(0),
    });
    const lays = today >= gap;
    if (today === gap) {
      values[part.queen] = stateIndex['new queen laying'];
      values[part.queenFrom] = gap;
    }
    day(lays ? perDay : 0);
  }
  return clouds;
}

/** Share of the new queen's daughters on day t, by small steps of the integral. */
function closedForm(set: Survival, gap: number, t: number): number {
  const lives = (age: number): number =>
    (1 - set.house) ** Math.min(age, set.forageAge) * (1 - set.field) ** Math.max(0, age - set.forageAge);
  const area = (from: number, to: number): number => {
    let sum = 0;
    for (let age = from; age < to; age += 0.05) sum += 0.05 * lives(age + 0.025);
    return sum;
  };
  const hers = area(0, Math.max(0, t - broodDays - gap));
  return hers / (hers + area(Math.max(0, t - broodDays), 300));
}

function dayOfShare(set: Survival, gap: number, share: number): number {
  let t = 0;
  while (closedForm(set, gap, t) < share) t += 0.1;
  return t;
}

const { constants } = setupOn();
const number = (day: string): number => Array.from({ length: 100 }, (_, i) => dayFromNumber(i)).indexOf(day);

for (const set of sets) {
  for (const gap of [3, 12]) {
    test(`E140 turnover of bees that live as the ${set.name} ones, ${gap} days without eggs: within a day of the closed form`, () => {
      const c = constantsOf(constants, set);
      const told = turnoverOf(c, { clouds: walk(c, gap), line: [] }, 60);
      assert.ok(told);
      assert.equal(number(told.firstDaughters.earliest), broodDays + gap);
      for (const [window, share] of [
        [told.half, 1 / 2],
        [told.nineTenths, 9 / 10],
      ] as const) {
        const expected = dayOfShare(set, gap, share);
        assert.ok(Math.abs(number(window.earliest) - expected) <= 1, `${share}: ${number(window.earliest)}, not ${expected}`);
      }
    });
  }
}

test('E141 a colony that stands still has as many bees as eggs a day times the days that a bee lives', () => {
  const set = sets[0]!;
  const c = constantsOf(constants, set);
  const [first] = walk(c, 3);
  assert.ok(first);
  // Bees of age 0, 1, 2 …: the sum of what is left of each day's, by hand for two phases of a geometric row.
  const a = 1 - set.house;
  const b = 1 - set.field;
  const expected = (perDay * (1 - a ** set.forageAge)) / (1 - a) + (perDay * a ** set.forageAge) / (1 - b);
  const bees = first.values.slice(-80).reduce((x, y) => x + y, 0);
  assert.ok(Math.abs(bees / expected - 1) < 0.002, `${bees}, not ${expected}`);
});
