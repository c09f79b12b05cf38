/** What a look is worth, on which bars and on which day: hand-worked. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../../../figures/book.ts';
import { bareShares, type Shares } from '../../../hive/contents.ts';
import { addDays, dayFromNumber } from '../../../numbers/day.ts';
import type { Cloud } from '../../../numbers/particle-filter.ts';
import { stateIndex } from '../../queen-chain/states.ts';
import type { BarView } from '../../view.ts';
import { cloudOf, may, plainParticle, setupOn } from '../for-tests.ts';
import { part, particleSize } from '../particle.ts';
import { lookConstants } from './look-constants.ts';
import { lookOf } from './look-of.ts';
import { placesFor } from './look-places.ts';

const setup = setupOn();
const look = lookConstants(printedBook);
const day = dayFromNumber(may);

const comb = (place: number, shares: Partial<Shares>, built = 1): BarView => ({
  place,
  comb: `comb-${place}`,
  mark: null,
  widthMm: 35,
  kind: 'comb',
  built,
  shares: { ...bareShares, ...shares },
  ink: 'worked out',
  bees: null,
  cells: null,
  queenSeen: false,
  readOn: null,
  spot: null,
});
const brood = { sealed: 0.4, larva: 0.1, egg: 0.05 };
const bars: readonly BarView[] = [
  comb(1, { honey: 0.8 }),
  comb(2, { honey: 0.4 }),
  ...[3, 4, 5, 6, 7].map((place) =>
    comb(place, place === 5 ? { ...brood, egg: 0.2 } : place === 6 ? { ...brood, egg: 0.15 } : brood),
  ),
  comb(8, { honey: 0.6 }),
  comb(9, { honey: 0.2 }, 0.5),
];
const nest = { bars, entrance: 'first' } as const;

/** Particles all alike, but for so many of a hundred in which something else is so. */
function cloud(of: number, change: (values: Float64Array) => void, on = may): Cloud {
  const made = cloudOf(setup, 100, 5, on);
  for (let i = 0; i < 100; i += 1) {
    const one = plainParticle(setup.constants);
    one[part.comb] = 70_000;
    if (i < of) change(one);
    made.values.set(one, i * particleSize);
  }
  return made;
}
const ripening = (values: Float64Array): void => {
  values[part.queen] = stateIndex['swarm cells open'];
  values[part.queenDays] = look.choice.cellDays;
};
const days = (clouds: readonly number[], change = ripening): readonly Cloud[] =>
  clouds.map((of, ahead) => cloud(of, change, may + ahead));

test('E92 a look is worth the chance that something waits inside that would be acted on; the strongest question first', () => {
  const told = lookOf(setup.constants, days([10]), { day, opened: [addDays(day, -9)], lastHoneyKg: null, nest, look });
  assert.ok(Math.abs(told.changesAct - 0.1) < 1e-9);
  assert.deepEqual([told.questions[0]!.ask, told.openOn, told.harms], ['cells', day, false]);
  assert.ok(Math.abs(told.questions[0]!.chance - 0.1) < 1e-9);
});

test('E93 opened on the first day on which the chance is large enough, not sooner than some days after the last, and by the latest', () => {
  const on = (chances: readonly number[], opened: number): string | null =>
    lookOf(setup.constants, days(chances), { day, opened: [addDays(day, -opened)], lastHoneyKg: null, nest, look }).openOn;
  assert.equal(on([0, 0, 1, 9, 9], 9), addDays(day, 3));
  assert.equal(on([9, 9, 9, 9, 9], look.choice.clearDays - 2), addDays(day, 2));
  assert.equal(on([0, 0, 0], look.choice.latest - 1), addDays(day, 1));
  assert.equal(on([0, 0, 0], 9), null);
  assert.equal(lookOf(setup.constants, days([0]), { day, opened: [], lastHoneyKg: null, nest, look }).openOn, day);
});

test('E93 the days of a virgin are days on which a look does harm', () => {
  const virgin = days([60], (values) => (values[part.queen] = stateIndex.virgin));
  const told = lookOf(setup.constants, virgin, { day, opened: [addDays(day, -9)], lastHoneyKg: null, nest, look });
  assert.equal(told.harms, true);
  assert.equal(told.openOn, null);
});

test('E94 the fewest bars that tell: ends of the brood, most eggs, food beside the nest, its edge', () => {
  assert.deepEqual(placesFor('cells', nest, look), [7, 3]);
  assert.deepEqual(placesFor('eggs', nest, look), [6, 5]);
  assert.deepEqual(placesFor('stores', nest, look), [8, 2]);
  assert.deepEqual(placesFor('room', nest, look), [9, 7]);
  assert.deepEqual(placesFor('room', { bars, entrance: 'last' }, look), [1, 3]);
  assert.deepEqual(placesFor('cells', { bars: [], entrance: 'first' }, look), []);
});

test('E94 without eggs anywhere the brood, and without brood the middle, is where eggs are looked for', () => {
  const noEggs = bars.map((bar) => ({ ...bar, shares: { ...bar.shares!, egg: 0 } }));
  assert.ok(placesFor('eggs', { bars: noEggs, entrance: 'first' }, look).every((place) => place >= 3 && place <= 7));
  const bare = [1, 2, 3, 4, 5].map((place) => comb(place, { honey: 0.1 }));
  assert.ok(placesFor('eggs', { bars: bare, entrance: 'first' }, look).includes(3));
});
