/** The rule by which a hive is opened, case by case, and the reasons as chances of particles set by hand. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../../figures/book.ts';
import type { Cloud } from '../../numbers/particle-filter.ts';
import { stateIndex } from '../queen-chain/states.ts';
import { type ChoiceConstants, opensToday, reasonsToOpen, type ReasonsToOpen } from './choice.ts';
import { engineConstants, unknownGround } from './constants.ts';
import { adultsAt, broodAt, part, particleSize } from './particle.ts';

const choice: ChoiceConstants = {
  chance: 0.02,
  soonest: 4,
  latest: 35,
  cellDays: 6,
  storesDays: 7,
  broodlessChance: 0.2,
  broodlessDays: 7,
  harm: 0.35,
};
const nothing: ReasonsToOpen = { cells: 0, stores: 0, eggs: 0, any: 0, urgent: 0, harm: 0 };

test('E80 a hive is opened when cells or stores are likely enough, never just after an opening, by the latest after weeks', () => {
  assert.equal(opensToday(choice, null, nothing), true);
  assert.equal(opensToday(choice, 34, nothing), false);
  assert.equal(opensToday(choice, 35, nothing), true);
  const cells = { ...nothing, cells: 0.03, urgent: 0.03 };
  assert.equal(opensToday(choice, 3, cells), false);
  assert.equal(opensToday(choice, 4, cells), true);
  assert.equal(opensToday(choice, 4, { ...cells, cells: 0.02, urgent: 0.02 }), false);
});

test('E81 missing brood waits longer and asks for more than a small chance', () => {
  const eggs = { ...nothing, eggs: 0.5, any: 0.5 };
  assert.equal(opensToday(choice, 6, eggs), false);
  assert.equal(opensToday(choice, 7, eggs), true);
  assert.equal(opensToday(choice, 7, { ...eggs, eggs: 0.1 }), false);
});

test('E82 where a virgin is likely it waits, but not for hunger, and not for ever', () => {
  const virgin = { ...nothing, harm: 0.5, cells: 0.3, urgent: 0.3, eggs: 0.9 };
  assert.equal(opensToday(choice, 10, virgin), false);
  assert.equal(opensToday(choice, 10, { ...virgin, stores: 0.03 }), true);
  assert.equal(opensToday(choice, 35, virgin), true);
});

test('E83 reasons are the shares of particles with old swarm cells and a queen, with food for few days, without brood', () => {
  const c = engineConstants(printedBook, { ...unknownGround, comb: { built: 45_000, most: 90_000 } });
  const cases = [
    { queen: stateIndex['swarm cells open'], days: 6, kg: 10, brood: 100 },
    { queen: stateIndex['swarm cells open'], days: 5, kg: 10, brood: 100 },
    { queen: stateIndex['supersedure cells open'], days: 9, kg: 10, brood: 100 },
    { queen: stateIndex.virgin, days: 4, kg: 10, brood: 0 },
  ];
  // The last has what its bees eat in 7 days, and no more.
  const eats = 7 * 10_000 * c.stores.eatKg;
  const all = [...cases, { queen: stateIndex.laying, days: 30, kg: eats, brood: 1e-3 }, { ...cases[1]!, kg: eats + 1 }];
  const values = new Float64Array(all.length * particleSize);
  all.forEach(({ queen, days, kg, brood }, i) => {
    const at = i * particleSize;
    values[at + part.queen] = queen;
    values[at + part.queenDays] = days;
    values[at + part.honeyKg] = kg;
    values[at + adultsAt] = 10_000;
    values[at + broodAt] = brood;
  });
  const cloud: Cloud = {
    day: 15_800,
    count: all.length,
    values,
    logShares: new Float64Array(all.length).fill(-Math.log(all.length)),
    roots: Int32Array.from(all.keys()),
  };
  const found = reasonsToOpen(c, cloud, choice);
  const sixths = (n: number, of: number): void => assert.ok(Math.abs(of - n / 6) < 1e-12, `${of} is not ${n}/6`);
  sixths(1, found.cells);
  sixths(1, found.stores);
  sixths(2, found.eggs);
  sixths(2, found.urgent);
  sixths(3, found.any);
  sixths(1, found.harm);
});
