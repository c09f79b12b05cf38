/** The book in force, and the figures that are worked out from others. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { type FigureBook, isFigureKey, printed, printedBook, rangeOf, value } from './book.ts';
import type { FigureKey } from './list.ts';

const at = (key: FigureKey): number => value(printedBook, key);
const agrees = (key: FigureKey, expected: number, by: number): void => {
  assert.ok(Math.abs(at(key) - expected) <= by, `${key}: ${at(key)}, worked out ${expected}`);
};

test('F8 survivals multiply: eggs to larvae to sealed to bees', () => {
  agrees(
    'survival-egg-to-adult',
    at('survival-egg-to-larva') * at('survival-larva-to-sealed') * at('survival-sealed-to-adult'),
    0.0005,
  );
  const sealed = at('survival-egg-to-larva') * at('survival-larva-to-sealed');
  agrees('survival-to-sealed', (sealed + sealed * at('survival-sealed-to-adult')) / 2, 0.0005);
});

test('F8 stages add up to the whole development within its range', () => {
  for (const caste of ['worker', 'drone', 'queen'] as const) {
    const sum = at(`${caste}-egg-days`) + at(`${caste}-larva-days`) + at(`${caste}-sealed-days`);
    const { low, high } = rangeOf(printedBook, `${caste}-total-days`);
    assert.ok(low <= sum && sum <= high, `${caste}: ${sum}`);
  }
});

test('F8 the parts of the brood area sum to the whole', () => {
  const parts = ['egg', 'larva', 'sealed', 'empty', 'food'] as const;
  assert.ok(Math.abs(parts.reduce((sum, part) => sum + at(`brood-mix-${part}`), 0) - 1) < 1e-9);
  agrees('normal-open-cells', 100 * (at('brood-mix-empty') + at('brood-mix-food')), 1e-9);
});

test('F8 death rates are one over the life, and the tagged rate gives the tagged share', () => {
  agrees('daily-loss-summer', 1 / at('summer-life-days'), 0.001);
  agrees('daily-loss-winter', 1 / at('winter-life-days'), 0.0001);
  agrees('before-foraging-death-share', 1 - (1 - at('house-bee-loss-tagged')) ** 18, 0.002);
});

test('F8 the loss of house bees and of foragers gives the summer life that was measured', () => {
  let alive = 1;
  let life = 0.5;
  for (let day = 1; day < 400; day += 1) {
    alive *= 1 - (day <= at('house-bee-days') ? at('house-bee-loss') : at('forager-loss'));
    life += alive;
  }
  assert.ok(Math.abs(life - 28.48) < 0.01, `${life}`);
  const { low, high } = rangeOf(printedBook, 'summer-life-days');
  assert.ok(low <= life && life <= high);
});

test("F8 days after a loss are sums of the queen's own days", () => {
  const ready = rangeOf(printedBook, 'emergency-queen-emerges');
  const egg = rangeOf(printedBook, 'queen-first-egg-age');
  const eggs = rangeOf(printedBook, 'emergency-first-eggs');
  assert.deepEqual([eggs.low, eggs.high], [ready.low + egg.low, ready.high + egg.high]);
  agrees('emergency-first-eggs', ready.likely + egg.likely, 0.5);
  agrees('give-up-waiting', ready.high + egg.high, 0);
  agrees('rescue-window', at('worker-egg-days') + at('oldest-larva-for-queen'), 0);
  assert.equal(ready.low, at('queen-total-days') - at('rescue-window'));
  agrees('virgin-emerges-after-sealing', at('queen-total-days') - at('queen-sealing-age'), 0);
  agrees('requeened-first-workers', at('worker-total-days') + at('queen-mated-to-egg'), 0);
});

test('F8 cells by width, honey by share and thickness, syrup by its parts', () => {
  agrees('worker-cells-per-dm2-natural', 20000 / (Math.sqrt(3) * at('worker-cell-width') ** 2), 0.05);
  agrees('honey-kg-per-dm2-cm', at('honey-share') * 1.417 * 0.1, 0.001);
  agrees('honey-share-eighths', (2 * at('food-kg-per-dm2-face')) / (0.25 * 1.417), 0.01);
  agrees('comb-thickness-honey', at('bar-width') - at('bee-space'), 0);
  const yields = rangeOf(printedBook, 'syrup-yield');
  const kept = rangeOf(printedBook, 'syrup-kept-share');
  for (const end of ['low', 'likely', 'high'] as const) {
    assert.ok(Math.abs(yields[end] - at('syrup-conversion') * kept[end]) < 1e-9, end);
  }
});

test('F8 rounding to half eighths errs by half an eighth over √12', () => {
  const { likely, high } = rangeOf(printedBook, 'eighth-rounding');
  assert.ok(Math.abs(likely - 1 / 16 / Math.sqrt(12)) < 1e-5 && Math.abs(high - 1 / 8 / Math.sqrt(12)) < 1e-5);
});

test("F9 the keeper's own figure is in force, the others stay as printed", () => {
  const own: FigureBook = { overrides: new Map([['bar-width', { key: 'bar-width', value: 38, low: 37, high: 39, entry: 'e' }]]) };
  assert.equal(value(own, 'bar-width'), 38);
  assert.deepEqual(rangeOf(own, 'bar-width'), { low: 37, likely: 38, high: 39 });
  assert.equal(printed('bar-width').value, 35);
  assert.equal(value(own, 'bee-space'), 8);
});

test('F9 a key that does not exist is no key, and asking for it stops the program', () => {
  assert.ok(!isFigureKey('bar-colour'));
  assert.throws(() => printed('bar-colour' as FigureKey), /bar-colour/);
});
