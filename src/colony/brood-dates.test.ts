/** Dates of brood and of a lost queen: hand-worked days, then what must hold for every stage and day. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { printedBook } from '../figures/book.ts';
import { dayFromNumber, daysBetween } from '../numbers/day.ts';
import { agesOf, broodDates, broodStages, castes } from './brood-dates.ts';
import { lastLaid, queenLoss, youngestStages } from './queen-loss.ts';

const anyDay = fc.integer({ min: 10000, max: 30000 }).map(dayFromNumber);

test('S21 a sealed worker cell seen on 10 May was laid 18 April to 2 May and emerges 7 to 24 May', () => {
  const { laid, sealed, emerges } = broodDates('worker', 'sealed', '2025-05-10', printedBook);
  assert.deepEqual(laid, { earliest: '2025-04-18', latest: '2025-05-02' });
  assert.deepEqual(sealed, { earliest: '2025-04-26', latest: '2025-05-11' });
  assert.deepEqual(emerges, { earliest: '2025-05-07', latest: '2025-05-24' });
});

test('S21 an egg in a queen cell on 1 June is sealed 5 to 10 June and the queen emerges 13 to 18 June', () => {
  const { sealed, emerges } = broodDates('queen', 'egg', '2025-06-01', printedBook);
  assert.deepEqual(sealed, { earliest: '2025-06-05', latest: '2025-06-10' });
  assert.deepEqual(emerges, { earliest: '2025-06-13', latest: '2025-06-18' });
});

test('S21 a drone larva across the end of February in a leap year', () => {
  const { laid } = broodDates('drone', 'larva', '2024-03-05', printedBook);
  assert.deepEqual(laid, { earliest: '2024-02-24', latest: '2024-03-02' });
});

test('S22 windows are in order, and follow laying by the ages of the stages', () => {
  fc.assert(
    fc.property(fc.constantFrom(...castes), fc.constantFrom(...broodStages), anyDay, (caste, stage, seenOn) => {
      const { laid, sealed, emerges } = broodDates(caste, stage, seenOn, printedBook);
      for (const window of [laid, sealed, emerges]) assert.ok(window.earliest <= window.latest);
      assert.ok(laid.latest <= seenOn);
      assert.ok(laid.earliest < sealed.earliest && sealed.earliest < emerges.earliest);
      assert.ok(laid.latest < sealed.latest && sealed.latest < emerges.latest);
      const ages = agesOf(caste, stage, printedBook);
      assert.equal(daysBetween(laid.earliest, laid.latest), ages.greatest - ages.least);
    }),
    { seed: 61 },
  );
});

test('S22 a later stage was never laid later than an earlier one seen on the same day', () => {
  fc.assert(
    fc.property(fc.constantFrom(...castes), anyDay, (caste, seenOn) => {
      const days = broodStages.map((stage) => broodDates(caste, stage, seenOn, printedBook).laid);
      for (const [at, window] of days.entries()) {
        const before = days[at - 1];
        if (before === undefined) continue;
        assert.ok(window.latest <= before.latest && window.earliest <= before.earliest);
      }
    }),
    { seed: 62 },
  );
});

test('S23 young larvae and no eggs on 20 June: laid 11 to 17 June, a virgin 21 June to 3 July, eggs 25 June to 25 July', () => {
  const loss = queenLoss(lastLaid('larva', null, '2025-06-20', printedBook), printedBook);
  assert.deepEqual(loss.lastLaid, { earliest: '2025-06-11', latest: '2025-06-17' });
  assert.deepEqual(loss.virginEmerges, { earliest: '2025-06-21', latest: '2025-07-03' });
  assert.deepEqual(loss.firstEggs, { earliest: '2025-06-25', latest: '2025-07-25' });
  assert.equal(loss.hopelessFrom, '2025-06-26');
});

test('S23 a larva of two days dates the last egg to the day', () => {
  assert.deepEqual(lastLaid('larva', 2, '2025-06-20', printedBook), { earliest: '2025-06-15', latest: '2025-06-15' });
});

test('S23 without any brood nothing is known of the beginning, and she stopped at least 19 days ago', () => {
  const loss = queenLoss(lastLaid('none', null, '2025-06-20', printedBook), printedBook);
  assert.deepEqual(loss.lastLaid, { earliest: null, latest: '2025-06-01' });
  assert.equal(loss.virginEmerges.earliest, null);
  assert.equal(loss.firstEggs.earliest, null);
  assert.ok(loss.hopelessFrom < '2025-06-20');
});

test('S24 an older youngest stage never moves the last egg later', () => {
  fc.assert(
    fc.property(anyDay, (seenOn) => {
      const latest = youngestStages.map((stage) => lastLaid(stage, null, seenOn, printedBook).latest);
      assert.deepEqual(latest, [...latest].sort().reverse());
    }),
    { seed: 63 },
  );
});
