/** The rule by which a hive is opened, case by case, and the reasons as chances of particles set by hand. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../../figures/book.ts';
import type { Cloud } from '../../numbers/particle-filter.ts';
import { stateIndex } from '../queen-chain/states.ts';
import { type ChoiceConstants, type LooksBefore, opensToday, reasonsToOpen, type ReasonsToOpen } from './choice.ts';
import { type EngineConstants, engineConstants, type Ground, unknownGround } from './constants.ts';
import { adultsAt, broodAt, part, particleSize } from './particle.ts';

const choice: ChoiceConstants = {
  chance: 0.05,
  vainShare: 0.2,
  cutShare: 2,
  looksDays: 90,
  soonest: 4,
  latest: 35,
  clearDays: 6,
  cellDays: 3,
  storesDays: 7,
  eatKg: 8e-6,
  storesChance: 0.5,
  storesSoonest: 6,
  broodlessChance: 0.2,
  broodlessDays: 7,
  harm: 0.35,
};
const nothing: ReasonsToOpen = { cells: 0, sealed: 0, stores: 0, eggs: 0, any: 0, harm: 0, cellsFrom: choice.chance };
const noLooks: LooksBefore = { days: [], honeyKg: null };
const day = 15_800;

test('E80 a hive is opened when cells or stores are likely enough, never just after an opening, by the latest after weeks', () => {
  assert.equal(opensToday(choice, null, nothing), true);
  assert.equal(opensToday(choice, 34, nothing), false);
  assert.equal(opensToday(choice, 35, nothing), true);
  const cells = { ...nothing, cells: 0.06 };
  assert.equal(opensToday(choice, 5, cells), false);
  assert.equal(opensToday(choice, 6, cells), true);
  assert.equal(opensToday(choice, 6, { ...cells, cells: 0.05 }), false);
  assert.equal(opensToday(choice, 4, { ...cells, sealed: 0.06 }), true);
  assert.equal(opensToday(choice, 3, { ...cells, sealed: 0.06 }), false);
  assert.equal(opensToday(choice, 6, { ...nothing, stores: 0.5 }), true);
  assert.equal(opensToday(choice, 5, { ...nothing, stores: 1 }), false);
  assert.equal(opensToday(choice, 6, { ...nothing, stores: 0.4 }), false);
});

test('E81 missing brood waits longer and asks for more than a small chance', () => {
  const eggs = { ...nothing, eggs: 0.5, any: 0.5 };
  assert.equal(opensToday(choice, 6, eggs), false);
  assert.equal(opensToday(choice, 7, eggs), true);
  assert.equal(opensToday(choice, 7, { ...eggs, eggs: 0.1 }), false);
});

test('E82 where a virgin is likely it waits, but not for hunger, and not for ever', () => {
  const virgin = { ...nothing, harm: 0.5, cells: 0.3, eggs: 0.9 };
  assert.equal(opensToday(choice, 10, virgin), false);
  assert.equal(opensToday(choice, 10, { ...virgin, stores: 0.6 }), true);
  assert.equal(opensToday(choice, 35, virgin), true);
});

const engine = (told: Ground['told'] = new Map()): EngineConstants =>
  engineConstants(printedBook, { ...unknownGround, comb: { built: 45_000, most: 90_000 }, told });

interface One {
  readonly queen: number;
  readonly days: number;
  readonly kg: number;
  readonly brood: number;
}

/** Particles of like weight with 10 000 bees each. */
function cloudOf(all: readonly One[]): Cloud {
  const values = new Float64Array(all.length * particleSize);
  all.forEach(({ queen, days, kg, brood }, i) => {
    const at = i * particleSize;
    values[at + part.queen] = queen;
    values[at + part.queenDays] = days;
    values[at + part.honeyKg] = kg;
    values[at + adultsAt] = 10_000;
    values[at + broodAt] = brood;
  });
  const logShares = new Float64Array(all.length).fill(-Math.log(all.length));
  return { day, count: all.length, values, logShares, roots: Int32Array.from(all.keys()) };
}

const calm: One = { queen: stateIndex.laying, days: 30, kg: 10, brood: 100 };
/** What 10 000 bees eat in a day. */
const eats = 10_000 * choice.eatKg;

test('E83 reasons are the shares of particles with swarm cells to be found and a queen, with food for few days, without brood', () => {
  const c = engine();
  const young = { ...calm, queen: stateIndex['swarm cells open'], days: 2 };
  const found = reasonsToOpen(
    c,
    cloudOf([
      { ...young, days: 3 },
      { ...young, queen: stateIndex['swarm cells sealed'] },
      { ...calm, queen: stateIndex['supersedure cells open'], days: 9 },
      { ...calm, queen: stateIndex.virgin, days: 4, brood: 0 },
      // What its bees eat in 7 days, and no more.
      { ...calm, kg: 7 * eats, brood: 1e-3 },
      { ...young, kg: 7 * eats + 1 },
    ]),
    choice,
    noLooks,
  );
  const sixths = (n: number, of: number): void => assert.ok(Math.abs(of - n / 6) < 1e-12, `${of} is not ${n}/6`);
  sixths(2, found.cells);
  sixths(1, found.sealed);
  sixths(1, found.stores);
  sixths(2, found.eggs);
  sixths(4, found.any);
  sixths(1, found.harm);
});

test('E83 food is reckoned from what was read last and fed since, as though nothing came in; less where the model has less', () => {
  const stores = (readKg: number | null, days: number, modelKg = 10, fed: Ground['told'] = new Map()): number =>
    reasonsToOpen(engine(fed), cloudOf([{ ...calm, kg: modelKg }]), choice, { days: [day - 40, day - days], honeyKg: readKg })
      .stores;
  // Eaten by the day itself and the seven to come; bees starve a little before the last of it.
  const lasts = (days: number): number => (days + 7) * eats + engine().stores.hungryKg;
  assert.equal(stores(lasts(12) + 0.01, 12), 0);
  assert.equal(stores(lasts(12) - 0.01, 12), 1);
  assert.equal(stores(lasts(12) + 0.01, 12, lasts(0) - 0.01), 1);
  assert.equal(stores(null, 12, lasts(0) + 0.01), 0);
  const fed = (on: number): Ground['told'] => new Map([[on, [{ kind: 'fed', kg: 1 }]]]);
  assert.equal(stores(lasts(12) - 0.9, 12, 10, fed(day - 12)), 0);
  assert.equal(stores(lasts(12) - 0.9, 12, 10, fed(day - 13)), 1);
});

test('E84 each look in vain raises the chance from which it is opened, cells that were cut lower it, for months', () => {
  const from = (openedAgo: readonly number[], cutAgo: readonly number[] = []): number => {
    const told: Ground['told'] = new Map(cutAgo.map((ago) => [day - ago, [{ kind: 'cells cut' }]]));
    const looks = { days: openedAgo.map((ago) => day - ago), honeyKg: null };
    return reasonsToOpen(engine(told), cloudOf([calm]), choice, looks).cellsFrom;
  };
  const is = (found: number, expected: number): void =>
    assert.ok(Math.abs(found - expected) < 1e-12, `${found} is not ${expected}`);
  is(from([]), 0.05);
  is(from([90, 12]), 0.05 * 1.4);
  is(from([91, 12]), 0.05 * 1.2);
  is(from([12], [12]), 0.05 / 3);
  is(from([30, 20, 12], [20]), (0.05 * 1.4) / 3);
  is(from([30, 20], [30, 20]), 0.05 / 5);
  is(from([100], [100]), 0.05);
});
