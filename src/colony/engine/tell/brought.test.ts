/** Combs and bees given by other colonies are not told as daughters of the queen who reigns, however young they are. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Cloud } from '../../../numbers/particle-filter.ts';
import { stateIndex } from '../../queen-chain/states.ts';
import type { AgeClass, Ages } from '../../foreseen.ts';
import { beesOf, broodOf, live, may, plainParticle, setupOn } from '../for-tests.ts';
import type { Happening } from '../happening.ts';
import { adultDays, adultsAt, broodAt, broodDays, part } from '../particle.ts';
import type { EngineSetup } from '../run.ts';
import { agesOf, turnoverOf } from './ages.ts';
import { beliefOn } from './belief.ts';
import { broughtTo, nothingBrought } from './brought.ts';

/** Since when the young queen of these colonies lays. */
const began = may - 18;
const comb: Happening = { kind: 'joined', bees: 0, broodCells: 3500, honeyKg: 0, comb: 0 };
const alone = setupOn();
const given = setupOn({ told: new Map([[may, [comb, comb, comb]]]) });
const behind = [beliefOn(given.constants, cloudOn(may, young()), 'after the visit')];

function young(): Float64Array {
  const values = plainParticle(alone.constants, 12_000, 6000);
  values[part.queen] = stateIndex['new queen laying'];
  values[part.queenFrom] = began;
  return values;
}

function cloudOn(day: number, values: Float64Array): Cloud {
  return { day, count: 1, values, logShares: Float64Array.of(0), roots: Int32Array.of(0) };
}

/** As it lives on, counted by an eye without a lean. */
function after(setup: EngineSetup, days: number): Float64Array {
  const values = live(setup, young(), may, days);
  for (const name of ['beesScale', 'sealedScale'] as const) values[part[name]] = 0;
  return values;
}

function hers(ages: Ages): number {
  return [...ages.brood, ...ages.adults].reduce((sum: number, row: AgeClass) => sum + row.ofNew, 0);
}

/** Brood and bees of a particle on a day that were laid since the queen began and until the combs came. */
function laidBefore(values: Float64Array, day: number): number {
  const brood = [...values.subarray(broodAt, broodAt + broodDays)];
  const all = [...brood, ...values.subarray(adultsAt, adultsAt + adultDays)];
  return all.reduce((sum, bees, age) => {
    const laidOn = day - 1 - age;
    return began <= laidOn && laidOn < may ? sum + bees : sum;
  }, 0);
}

for (const days of [1, 8, 16, 24])
  test(`E153 bees of three combs from another colony are not told as the queen's daughters, ${days} days after they were given`, () => {
    const c = given.constants;
    const values = after(given, days);
    const cloud = cloudOn(may + days, values);
    const told = agesOf(c, cloud, broughtTo(c, behind));
    const all = [...told.brood, ...told.adults].reduce((sum, row) => sum + row.ofOld + row.ofNew, 0);
    assert.ok(Math.abs(all / (beesOf(values) + broodOf(values)) - 1) < 1e-9, 'nobody is lost');
    // What came is what the same colony without the combs lacks.
    const came = laidBefore(values, may + days) - laidBefore(after(alone, days), may + days);
    const taken = hers(agesOf(c, cloud)) - hers(told);
    assert.ok(came > 4000 && Math.abs(taken / came - 1) < 0.03, `${taken}, not ${came}`);
  });

test('E153 a visit on the very day tells of the colony as it was, and a colony to which nothing came of its own', () => {
  const brought = broughtTo(given.constants, behind);
  assert.equal(brought(may, may - 5), 0);
  assert.ok(brought(may + 1, may - 5) > 0.5);
  assert.equal(brought(may + 30, may), 0);
  assert.equal(broughtTo(alone.constants, behind), nothingBrought);
  assert.equal(broughtTo(given.constants, []), nothingBrought);
});

test('E153 bees that were joined keep their share among those that were there, and what comes twice counts twice', () => {
  const bees = behind[0]!.values.bees.likely;
  const union: Happening = { ...comb, kind: 'joined', bees, broodCells: 0 };
  const { constants: c } = setupOn({
    told: new Map([
      [may, [union]],
      [may + 1, [union]],
    ]),
  });
  const brought = broughtTo(c, behind);
  assert.ok(Math.abs(brought(may + 1, may - 30) - 1 / 2) < 1e-9);
  assert.ok(Math.abs(brought(may + 2, may - 30) - 3 / 4) < 1e-9);
  assert.equal(brought(may + 2, may - 5), 0);
});

test('E153 given brood puts off the days on which her daughters are half of the bees', () => {
  const clouds = Array.from({ length: 50 }, (_, i) => cloudOn(may + i, after(given, i)));
  const c = given.constants;
  const told = (brought = nothingBrought) => turnoverOf(c, { clouds, line: [] }, 60, brought);
  const [later, without] = [told(broughtTo(c, behind)), told()];
  assert.ok(later !== null && without !== null);
  assert.ok(later.half.earliest > without.half.earliest, `${later.half.earliest} after ${without.half.earliest}`);
  assert.deepEqual(later.firstDaughters, without.firstDaughters);
});
