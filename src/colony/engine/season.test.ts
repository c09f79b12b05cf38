/** The season of a place: its shares, shifts, depth and what is left in winter, by hand; the challenger against its closed form. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook, value } from '../../figures/book.ts';
import { dayNumber } from '../../numbers/day.ts';
import { challengerBegins, challengerForesees, type ChallengerNumbers, challengerOn, challengerSees } from './challenger.ts';
import { seasonShare, seasonTables } from './season.ts';

const north = seasonTables(printedBook, 45);
const on = (day: string, rise = 0, fall = 0, depth = 0, tables = north): number =>
  seasonShare(tables, dayNumber(day), rise, fall, depth);

test('E15 at its peak a place is at 1, and elsewhere between the floor and 1', () => {
  const days = Array.from({ length: 365 }, (_, i) => seasonShare(north, dayNumber('2021-01-01') + i, 0, 0, 0));
  assert.ok(Math.abs(Math.max(...days) - 1) < 0.01);
  assert.ok(Math.min(...days) >= value(printedBook, 'engine-season-floor'));
});

test('E15 a late spring is the same spring later, and leaves autumn as it was but for the floor', () => {
  const floor = value(printedBook, 'engine-season-floor');
  const above = (share: number, left: number): number => (share - left) / (1 - left);
  const less = floor * Math.exp(-20 / 2 / value(printedBook, 'engine-season-floor-days'));
  assert.ok(Math.abs(above(on('2021-05-05', 20), less) - above(on('2021-04-15'), floor)) < 0.01);
  assert.ok(Math.abs(above(on('2021-09-15', 20), less) - above(on('2021-09-15'), floor)) < 1e-12);
});

test('E15 where spring is early and autumn late winter keeps laying; where both are short it stops', () => {
  const mild = on('2021-12-20', -20, 20);
  const harsh = on('2021-12-20', 20, -20);
  assert.ok(mild > 5 * on('2021-12-20') && harsh < on('2021-12-20') / 2);
  assert.ok(on('2021-12-20', -200, 200, 3) <= 1);
});

test('E15 a deeper season cuts into spring and autumn and leaves the peak', () => {
  assert.ok(on('2021-04-15', 0, 0, 0.5) < on('2021-04-15'));
  assert.ok(Math.abs(on('2021-06-15', 0, 0, 0.5) - 1) < 0.01);
});

test('E15 south of the equator the year is turned by half', () => {
  const south = seasonTables(printedBook, -35);
  assert.ok(Math.abs(on('2021-12-15', 0, 0, 0, south) - on('2021-06-15')) < 0.02);
});

const numbers: ChallengerNumbers = {
  level: 9,
  levelSpread: 0.5,
  returnDays: 60,
  wander: 0.4,
  start: -0.8,
  startSpread: 0.3,
  noise: 0.2,
};

test('E16 before any count the challenger’s split returns to its level as the wander does', () => {
  const { mean, sd } = challengerForesees(numbers, challengerOn(numbers, challengerBegins(numbers, 0, true), 60));
  const kept = Math.exp(-1);
  assert.ok(Math.abs(mean - (9 - 0.8 * kept)) < 1e-12);
  const variance = 0.25 + 0.09 * kept ** 2 + 0.16 * (1 - kept ** 2) + 0.04;
  assert.ok(Math.abs(sd ** 2 - variance) < 1e-12);
});

test('E16 two counts give the mean and spread of the normal law that all three share', () => {
  const [first, second, third] = [9.4, 9.1, 40];
  let state = challengerBegins(numbers, 0, false);
  state = challengerSees(numbers, state, first);
  state = challengerSees(numbers, challengerOn(numbers, state, 20), second);
  const told = challengerForesees(numbers, challengerOn(numbers, state, third));
  // Counts on days 0, 20, 40: covariance .25 + .16 exp(−gap/60), and .04 of noise on the diagonal.
  const c = (gap: number): number => 0.25 + 0.16 * Math.exp(-gap / 60) + (gap === 0 ? 0.04 : 0);
  const [a, b] = [c(0), c(20)];
  const [u, v] = [c(40), c(20)];
  const determinant = a * a - b * b;
  const [w1, w2] = [(a * u - b * v) / determinant, (a * v - b * u) / determinant];
  assert.ok(Math.abs(told.mean - (9 + w1 * (first - 9) + w2 * (second - 9))) < 1e-9);
  assert.ok(Math.abs(told.sd ** 2 - (a - w1 * u - w2 * v)) < 1e-9);
});
