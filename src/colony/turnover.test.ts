/** Turnover and steady colonies against tables and sums on paper, and the closed integrals against plain adding up. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { printedBook } from '../figures/book.ts';
import { steadyColony } from './steady-colony.ts';
import { allLive, meanLife, type Survival, survivalOf, survivalSets, twoPhases } from './survival.ts';
import { turnover } from './turnover.ts';

const close = (a: number | null, b: number, to: number, what = ''): void =>
  assert.ok(a !== null && Math.abs(a - b) <= to, `${what} ${a} ${b}`);

/** Workers whose risk of death grows with age, integrated by small steps. */
function gompertz(first: number, growth: number): Survival {
  const share = (age: number): number => Math.exp((-first / growth) * Math.expm1(growth * age));
  const days = (from: number, to: number): number => {
    const end = Math.min(to, 200);
    const steps = Math.max(1, Math.ceil((end - from) * 50));
    const width = Math.max(0, end - from) / steps;
    return Array.from({ length: steps }, (_, i) => share(from + (i + 0.5) * width) * width).reduce((a, b) => a + b, 0);
  };
  return { share, days };
}

test('E61 where all workers live 35 days the days of turnover are those of the published table, by delay of the new queen', () => {
  for (const [delay, first, day10, day50, day90, day99, old50, old90] of [
    [3, 24, 27.2, 40.0, 52.8, 55.7, 47.0, 54.2],
    [0, 21, 24.5, 38.5, 52.5, 55.6, 45.5, 53.9],
    [12, 33, 35.3, 44.5, 53.7, 55.8, 51.5, 55.1],
    [28, 49, 49.7, 52.5, 55.3, 55.9, null, null],
  ] as const) {
    const { firstDaughterDay, dayOf, shareOn } = turnover(allLive(35), 21, delay);
    assert.equal(firstDaughterDay, first);
    close(dayOf(0.1), day10, 0.051);
    close(dayOf(0.5), day50, 0.051);
    close(dayOf(0.9), day90, 0.051);
    close(dayOf(0.99), day99, 0.06);
    if (old50 !== null) close(dayOf(0.5, 14), old50, 0.051);
    if (old90 !== null) close(dayOf(0.9, 14), old90, 0.051);
    assert.equal(shareOn(first), 0);
  }
  const { shareOn } = turnover(allLive(35), 21, 3);
  [
    [28, 0.125],
    [35, 0.344],
    [42, 0.562],
    [49, 0.781],
    [56, 1],
  ].forEach(([day, share]) => close(shareOn(day!), share!, 0.0006));
});

test('E61 where the risk of death grows with age the published days come out within a tenth of a day', () => {
  const survival = gompertz(0.004, 0.12);
  close(meanLife(survival), 24.6, 0.1);
  const { dayOf } = turnover(survival, 21, 3);
  close(dayOf(0.1), 26.2, 0.1);
  close(dayOf(0.5), 35.4, 0.1);
  close(dayOf(0.9), 48.3, 0.1);
  close(dayOf(0.99), 56.7, 0.1);
  close(dayOf(0.5, 14), 43.8, 0.1);
  close(dayOf(0.9, 14), 52.0, 0.1);
});

test('E62 the three sets of survival have their printed shares and mean lives, and closed integrals equal to adding up', () => {
  const printed = {
    benign: { 10: 0.951, 20: 0.905, 30: 0.349, 40: 0.122, life: 28.48 },
    average: { 10: 0.951, 20: 0.654, 30: 0.123, 40: 0.023, life: 22.69 },
    rfid: { 10: 0.753, 20: 0.246, 30: 0.003, 40: 0, life: 15.46 },
  };
  for (const set of survivalSets) {
    const survival = survivalOf(set, printedBook);
    for (const age of [10, 20, 30, 40] as const) close(survival.share(age), printed[set][age], 0.0006, `${set} ${age}`);
    // The printed life counts whole days and half of the last; the integral is of the smooth curve.
    close(meanLife(survival), printed[set].life, 0.06, set);
  }
  fc.assert(
    fc.property(fc.double({ min: 0, max: 50, noNaN: true }), fc.double({ min: 0, max: 50, noNaN: true }), (from, more) => {
      const survival = twoPhases(21, 0.005, 0.1);
      const steps = 4000;
      const width = more / steps;
      const sum = Array.from({ length: steps }, (_, i) => survival.share(from + (i + 0.5) * width) * width).reduce(
        (a, b) => a + b,
        0,
      );
      close(survival.days(from, from + more), sum, 1e-4);
    }),
    { seed: 421, numRuns: 40 },
  );
});

test('E63 her share never falls, is nothing before her first daughter, and each day asked for has the share asked for', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...survivalSets),
      fc.double({ min: 0, max: 30, noNaN: true }),
      fc.double({ min: 0.01, max: 0.99, noNaN: true }),
      fc.constantFrom(0, 14),
      (set, delay, share, age) => {
        const { firstDaughterDay, dayOf, shareOn } = turnover(survivalOf(set, printedBook), 21, delay);
        assert.equal(shareOn(firstDaughterDay - 0.5), 0);
        const day = dayOf(share, age);
        assert.ok(day !== null && day >= firstDaughterDay + age);
        if (day > firstDaughterDay + age + 1e-9) close(shareOn(day, age), share, 1e-9);
        let last = 0;
        for (let at = 0; at < 120; at += 3) {
          const now = shareOn(at, age) ?? last;
          assert.ok(now >= last - 1e-12 && now <= 1);
          last = now;
        }
      },
    ),
    { seed: 422, numRuns: 60 },
  );
});

test('E63 a colony whose bees die out before the first daughter has no share for a while, and then only hers', () => {
  const { shareOn, dayOf } = turnover(allLive(10), 21, 28);
  assert.equal(shareOn(40), null);
  assert.equal(shareOn(50), 1);
  close(dayOf(0.5), 49, 1e-9);
  assert.equal(dayOf(0.5, 14), null);
});

test('E64 a constant colony stands at eggs, larvae, sealed brood and bees that a sum on paper gives', () => {
  // 1000 eggs a day: 3 days of eggs; 942 larvae for 6 days; 942 × .917 sealed for 12; × .985 emerge and live 30 days.
  const colony = steadyColony(1000, allLive(30), printedBook);
  close(colony.eggs, 3000, 1e-9);
  close(colony.larvae, 5652, 1e-6);
  close(colony.sealed, 10365.77, 0.01);
  close(colony.emergingPerDay, 850.86, 0.01);
  close(colony.adults, 25525.7, 0.1);
});
