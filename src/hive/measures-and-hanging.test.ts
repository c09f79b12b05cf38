/** Measures of a trough and the hanging of combs in it, by worked examples. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../figures/book.ts';
import type { Entry } from '../journal/entry.ts';
import { bring, combAt, newComb, spotOn } from './hanging.ts';
import { barWidthMm, faceDm2, hiveMeasures, outlineOf, perCombDm2 } from './hive-measures.ts';
import { hiveKind } from './kind-hive.ts';
import { emptyHives, type Hive, type HiveDraft, type Spot } from './state.ts';
import { bayOn, freeStretch, moveBay, newBay, overlapping } from './stretch.ts';
import { typicalHive } from './typical-hive.ts';

const hive: Hive = {
  id: 'h',
  name: 'Alder',
  bars: 12,
  barWidth: { value: 3.5, unit: 'cm', how: 'measured' },
  topWidth: { value: 440, unit: 'mm', how: 'measured' },
  depth: { value: 27.5, unit: 'cm', how: 'measured' },
  wallAngleDeg: 30,
  wallAngleHow: 'typical',
  entrance: 'first',
  since: '2014-04-01',
};

function on(day: string): Entry {
  return {
    id: `e-${day}`,
    yard: 'y',
    at: day,
    noted: `${day}T10:00:00Z`,
    by: 'k',
    kind: 'placing',
    version: 1,
    body: {},
  };
}

function hung(): { draft: HiveDraft; hang: (comb: string, place: number, day: string) => void } {
  const draft = emptyHives();
  const hang = (comb: string, place: number, day: string): void => {
    const known = draft.combs.get(comb) ?? newComb(comb);
    draft.combs.set(comb, known);
    bring(draft, known, { kind: 'place', hive: 'h', place, facing: 'as built' }, on(day));
  };
  return { draft, hang };
}

test('H10 three answers make a hive; what was not asked is typical and says so', () => {
  const made = typicalHive(
    '00000000-0000-7000-8000-000000000001',
    'Alder',
    { bars: 20, topWidth: { value: 17, unit: 'in' }, depth: null },
    printedBook,
  );
  assert.deepEqual(
    [made.bars, made.topWidth, made.depth.how, made.barWidth.how, made.wallAngleHow],
    [20, { value: 17, unit: 'in', how: 'measured' }, 'typical', 'typical', 'typical'],
  );
  assert.ok(hiveKind.schema.safeParse(made).success);
});

test('H11 measures come in any unit, and one typical value makes the whole typical', () => {
  const measures = hiveMeasures(hive, printedBook);
  // 440 − 16/cos 30° = 421.525 at the bar; 255 deep; 421.525 − 510 tan 30° = 127.076 below.
  assert.ok(Math.abs(measures.fullFaceDm2 - (255 * (421.5248 + 127.0762)) / 2e4) < 1e-4);
  assert.equal(measures.how, 'typical');
  assert.equal(barWidthMm(measures, null), 35);
  assert.equal(barWidthMm(measures, { id: 'b', mark: null, width: { value: 38, unit: 'mm', how: 'measured' } }), 38);
});

test('H12 area goes with the built share, and the drawn outline has the same area', () => {
  const measures = hiveMeasures(hive, printedBook);
  for (const built of [0.1, 0.5, 1]) {
    const outline = outlineOf(measures, built);
    assert.ok(outline !== null && Math.abs(outline.faceDm2 - faceDm2(measures, built)) < 1e-6);
  }
  assert.deepEqual(hiveMeasures({ ...hive, depth: { value: 10, unit: 'mm', how: 'measured' } }, printedBook).fullFaceDm2, 0);
});

test('H13 a square decimetre of comb counts both faces', () => {
  const per = perCombDm2(printedBook);
  assert.equal(per.workerCells.likely, 800);
  assert.equal(per.bees.likely, 250);
  assert.ok(Math.abs(per.honeyKg.likely - 0.128 * 2.7) < 1e-12);
});

test('H14 a comb hangs in one place: it leaves the old one, and its placings are remembered by day', () => {
  const { draft, hang } = hung();
  hang('a', 3, '2014-05-01');
  hang('a', 5, '2014-05-10');
  assert.equal(combAt(draft, 'h', 3), null);
  assert.equal(combAt(draft, 'h', 5)?.id, 'a');
  const comb = draft.combs.get('a');
  assert.ok(comb);
  const place = (spot: Spot | null): number | null => (spot?.kind === 'place' ? spot.place : null);
  assert.deepEqual(
    ['2014-04-30', '2014-05-01', '2014-05-09', '2014-05-10'].map((day) => place(spotOn(comb, day))),
    [null, 3, 3, 5],
  );
});

test('H15 a comb that is hung where another hangs takes its place, and the other is not lost from the record', () => {
  const { draft, hang } = hung();
  hang('a', 3, '2014-05-01');
  hang('b', 3, '2014-05-10');
  assert.equal(combAt(draft, 'h', 3)?.id, 'b');
  assert.deepEqual(draft.combs.get('a')?.at, { kind: 'away', where: 'lost' });
});

test('H16 bays of living colonies do not overlap; the free stretch is the longest, and its ends are known for every day', () => {
  const draft = emptyHives();
  draft.hives.set('h', hive);
  const bay = newBay('one', 'h', 4, 8, on('2014-05-01'));
  draft.bays.set('one', bay);
  assert.deepEqual(freeStretch(draft, hive), { from: 1, to: 12 }, 'a bay without a colony keeps nobody out');
  bay.held = true;
  assert.equal(overlapping(draft, 'h', 8, 9, null)?.id, 'one');
  assert.equal(overlapping(draft, 'h', 9, 12, null), null);
  assert.deepEqual(freeStretch(draft, hive), { from: 9, to: 12 });
  moveBay(bay, 4, 10, on('2014-05-10'));
  assert.deepEqual(freeStretch(draft, hive), { from: 1, to: 3 });
  assert.deepEqual([bayOn(bay, '2014-05-09').to, bayOn(bay, '2014-05-10').to], [8, 10]);
});
