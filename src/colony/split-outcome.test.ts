/** Halves of a split against sums on paper: nothing appears, brood becomes bees by the calendar, a published week comes out. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { runSum } from '../apiary/sums.ts';
import { type FigureBook, printedBook } from '../figures/book.ts';
import { type Colony, courseOf, halves, storyOf } from './split-outcome.ts';
import { allLive, survivalOf } from './survival.ts';

const colony: Colony = {
  on: '2025-05-15',
  bees: 30000,
  brood: { eggs: 4500, larvae: 9000, sealed: 18000 },
  survival: allLive(500),
};
const close = (a: number, b: number, to = 1e-6): void => assert.ok(Math.abs(a - b) <= to, `${a} ${b}`);
const total = (bees: readonly number[]): number => bees.reduce((a, b) => a + b, 0);
const unit = fc.double({ min: 0, max: 1, noNaN: true });

/** The printed figures, but no brood is lost. */
const lossless: FigureBook = {
  overrides: new Map(
    (['survival-egg-to-larva', 'survival-larva-to-sealed', 'survival-sealed-to-adult'] as const).map((key) => [
      key,
      { key, value: 1, low: 1, high: 1, entry: 'e' },
    ]),
  ),
};

test('E66 nothing is lost between the halves, and bees that fly go back to the stand they know', () => {
  fc.assert(
    fc.property(fc.record({ bees: unit, eggs: unit, larvae: unit, sealed: unit, driftsBack: unit }), (share) => {
      const own = { ...colony, survival: survivalOf('benign', printedBook) };
      const [moved, stayed] = halves(own, share, 21);
      close(total(moved.bees) + total(stayed.bees), 30000, 1e-6);
      close(moved.eggs + stayed.eggs, 4500);
      close(moved.larvae, 9000 * share.larvae);
      close(moved.sealed + stayed.sealed, 18000);
      assert.ok(total(moved.bees) <= 30000 * share.bees + 1e-6);
      close(
        total(moved.bees.slice(0, 21)),
        share.bees * total(stayed.bees.slice(0, 21).map((one, age) => one + moved.bees[age]!)),
        1e-6,
      );
    }),
    { seed: 431, numRuns: 50 },
  );
});

test('E67 with no queen and no deaths all brood is bees after 21 days, less what is lost at the end of each stage', () => {
  const half = { bees: [1000], eggs: 300, larvae: 600, sealed: 1200 };
  const rows = courseOf(half, colony, null, 21, printedBook);
  close(rows[21]!.bees, 1000 + 300 * 0.942 * 0.917 * 0.985 + 600 * 0.917 * 0.985 + 1200 * 0.985);
  close(rows[21]!.eggs + rows[21]!.larvae + rows[21]!.sealed, 0);
  assert.ok(rows[3]!.eggs === 0 && rows[9]!.larvae === 0 && rows[8]!.larvae > 0 && rows[20]!.sealed > 0);
});

test('E67 a published week: 12 000 bees left, 18 000 sealed, 9 000 larvae, no eggs; seven days on 22 500 and 16 500', () => {
  const half = { bees: [12000], eggs: 0, larvae: 9000, sealed: 18000 };
  const rows = courseOf(half, colony, null, 7, lossless);
  close(rows[7]!.bees, 22500);
  close(rows[7]!.sealed, 16500);
  close(rows[7]!.larvae, 0);
  close(rows[7]!.eggs, 0);
});

test('E68 an undivided colony goes on as it was: as many eggs on the next day as its sealed brood tells', () => {
  const [whole] = halves(colony, { bees: 1, eggs: 1, larvae: 1, sealed: 1, driftsBack: 0 }, 21);
  const rows = courseOf(whole, { ...colony, on: '2025-06-15' }, '2025-06-15', 1, printedBook);
  // Laid on the first day: 18 000 / 12 / .8575 = 1749.3, a little more with the bees that emerged, less as June passes.
  close(rows[1]!.eggs - (4500 * 2) / 3, 1749.3, 25);
});

test('E68 the lowest day and the recovery are those of the rows, and later first eggs never leave more bees', () => {
  const rows = [5, 4, 3, 4, 5, 6].map((bees, i) => ({ day: `2025-05-1${i}`, bees, eggs: 0, larvae: 0, sealed: 0 }));
  assert.deepEqual(storyOf(rows), { lowestBees: 3, lowestOn: '2025-05-12', recoversOn: '2025-05-14' });
  const input = { on: '2025-05-15', bees: 30000, eggs: 4500, larvae: 8000, sealed: 16000 };
  const shares = { movedBees: 0.5, movedEggs: 0.4, movedLarvae: 0.4, movedSealed: 0.5 };
  const result = runSum('split', { ...input, ...shares, queen: 'unknown', newQueen: 'own-cells' }, printedBook);
  assert.ok(result.ok);
  type Told = { cases: { firstEggs: string; lowestBees: number }[] };
  type Side = { withQueen: Told; withoutQueen: Told };
  for (const side of [result.value['moved'], result.value['stayed']] as Side[]) {
    const lowest = side.withoutQueen.cases.map((one) => one.lowestBees);
    assert.deepEqual(
      lowest,
      [...lowest].sort((a, b) => b - a),
    );
    assert.ok(side.withQueen.cases[0]!.lowestBees >= lowest[0]!);
    assert.equal(side.withoutQueen.cases[1]!.firstEggs, '2025-06-08');
  }
});

test('E68 a half without eggs and larvae cannot raise a queen, and is told so', () => {
  const result = runSum(
    'split',
    {
      ...{ on: '2025-05-15', bees: 20000, eggs: 3000, larvae: 6000, sealed: 12000, queen: 'stayed', newQueen: 'own-cells' },
      ...{ movedBees: 0.5, movedEggs: 0, movedLarvae: 0, movedSealed: 0.5 },
    },
    printedBook,
  );
  assert.ok(result.ok);
  const { layingChance, cases } = (
    result.value['moved'] as { withoutQueen: { layingChance: number; cases: { firstEggs: unknown }[] } }
  ).withoutQueen;
  assert.equal(layingChance, 0);
  assert.equal(cases.length, 1);
  assert.equal(cases[0]!.firstEggs, null);
});
