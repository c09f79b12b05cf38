/** A colony lived through from its journal: honest ranges where little was seen, steps from what was kept, replays. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { serialize } from 'node:v8';
import { type FigureBook, type Override, printedBook } from '../../figures/book.ts';
import type { FigureKey } from '../../figures/list.ts';
import { addDays, type Day } from '../../numbers/day.ts';
import type { Range } from '../../numbers/range.ts';
import type { Foreseen, Quantity } from '../foreseen.ts';
import { type BarSeen, type SampleYard, sampleYard } from '../for-tests.ts';
import { type KeptColony, liveColony, type LivedColony } from './live-colony.ts';
import { beliefToday } from './outlook-of.ts';

const start = '2014-04-20';

/** Fewer particles than a keeper's, so that the tests are quick. */
const book: FigureBook = few({ 'engine-particles': 300, 'engine-particles-first': 600, 'engine-ahead-particles': 150 });

function few(numbers: Readonly<Partial<Record<FigureKey, number>>>): FigureBook {
  const rows = Object.entries(numbers) as [FigureKey, number][];
  const override = (key: FigureKey, value: number): Override => ({ key, value, low: value, high: value, entry: 'test' });
  return { overrides: new Map(rows.map(([key, value]) => [key, override(key, value)])) };
}

function lived(yard: SampleYard, colony: string, day: Day, kept: KeptColony | null = null, by = book): LivedColony {
  const { draft, faults } = yard.fold(day);
  assert.deepEqual(faults, []);
  const look = { changesAct: 0, questions: [], openOn: null, openFor: null, harms: false };
  return liveColony(draft, colony, day, by, kept, { daysIssued: [7, 21], lookOf: () => look });
}

function rangeOf(foreseen: Foreseen, what: Quantity): Range {
  const row = beliefToday(foreseen);
  assert.ok(row);
  return row.values[what];
}

function settled(): { yard: SampleYard; hive: string; colony: string } {
  const yard = sampleYard();
  const hive = yard.hive(start);
  return { yard, hive, colony: yard.colony(start, hive) };
}

const brood: BarSeen = { brood: 4, food: 2, eggs: 'seen', cellsLooked: 'none seen', face: { bees8: 6 } };
const whole = { 1: { brood: 0, food: 6, face: { bees8: 4 } }, 2: brood, 3: brood, 4: brood, 5: { brood: 0, food: 5 } };

function visitedYard(days: readonly Day[]): { yard: SampleYard; hive: string; colony: string } {
  const made = settled();
  for (const day of days) made.yard.visit(day, made.colony, made.hive, whole);
  return made;
}

test('E110 a colony that nobody has seen, or once, gets an honest wide answer', () => {
  const { yard, hive, colony } = settled();
  const none = lived(yard, colony, '2014-05-20');
  const unseen = rangeOf(none.foreseen, 'bees');
  assert.ok(unseen.low > 0 && unseen.high > 4 * unseen.low, JSON.stringify(unseen));
  assert.equal(none.kept, null);
  assert.equal(none.foreseen.cloud.visits, 0);
  assert.deepEqual(none.foreseen.surprises, []);
  yard.visit('2014-05-19', colony, hive, whole);
  const once = lived(yard, colony, '2014-05-20').foreseen;
  const seen = rangeOf(once, 'bees');
  assert.ok(seen.high / seen.low < unseen.high / unseen.low && seen.high > 1.2 * seen.low, JSON.stringify(seen));
  assert.deepEqual(once.surprises, []);
  for (const { values, half, queen } of once.line) {
    for (const { low, likely, high } of [...Object.values(values), ...Object.values(half)])
      assert.ok(low <= likely && likely <= high && low >= 0 && Number.isFinite(high));
    assert.ok(Math.abs(queen.reduce((a, b) => a + b, 0) - 1) < 1e-9);
  }
});

test('E111 a bar that was not opened is not an empty bar: sealed brood is known less well, not thought to be less', () => {
  const days = ['2014-05-01', '2014-05-10'];
  const all = visitedYard(days);
  all.yard.visit('2014-05-20', all.colony, all.hive, whole);
  const part = visitedYard(days);
  part.yard.visit('2014-05-20', part.colony, part.hive, { 2: brood });
  const known = rangeOf(lived(all.yard, all.colony, '2014-05-20').foreseen, 'sealed');
  const guessed = rangeOf(lived(part.yard, part.colony, '2014-05-20').foreseen, 'sealed');
  assert.ok(guessed.likely > 0.7 * known.likely, `${guessed.likely} of ${known.likely}`);
  assert.ok(guessed.high / guessed.low > known.high / known.low, JSON.stringify({ known, guessed }));
});

test('E112 a new visit costs one step and tells what living it all through again tells', () => {
  const days = ['2014-05-01', '2014-05-09', '2014-05-18', '2014-05-29'];
  const { yard, hive, colony } = visitedYard(days);
  const before = lived(yard, colony, '2014-06-03');
  assert.equal(before.steps, 4);
  yard.visit('2014-06-08', colony, hive, whole);
  yard.add('feeding', '2014-06-08', { colony, what: 'candy', amount: { value: 1, unit: 'kg' } });
  const next = lived(yard, colony, '2014-06-10', before.kept);
  assert.equal(next.steps, 1);
  const replay = lived(yard, colony, '2014-06-10');
  assert.equal(replay.steps, 5);
  assert.deepEqual(next.foreseen, replay.foreseen);
  assert.deepEqual(next.kept, replay.kept);
  const again = lived(yard, colony, '2014-06-10', next.kept);
  assert.equal(again.steps, 0);
  assert.deepEqual(again.foreseen, replay.foreseen);
});

test('E113 an older visit corrected late, or a figure of one’s own, replays; what came in before it does not count', () => {
  const days = ['2014-05-01', '2014-05-09', '2014-05-18'];
  const { yard, colony } = visitedYard(days);
  const before = lived(yard, colony, '2014-05-20');
  const wrong = yard.entries.findLast((entry) => entry.kind === 'reading' && entry.at.startsWith('2014-05-09'));
  assert.ok(wrong);
  const taken = yard.add('void', '2014-05-20', { why: 'another hive', knew: [] });
  yard.entries[yard.entries.indexOf(taken)] = { ...taken, corrects: wrong.id };
  const mended = yard.fold();
  assert.deepEqual(mended.faults, []);
  const after = lived(yard, colony, '2014-05-20', before.kept);
  assert.equal(after.steps, 3);
  assert.notEqual(after.foreseen.digest, before.foreseen.digest);
  assert.deepEqual(after.foreseen, lived(yard, colony, '2014-05-20').foreseen);
  const own = few({
    'engine-particles': 300,
    'engine-particles-first': 600,
    'engine-ahead-particles': 150,
    'engine-capacity': 1500,
  });
  assert.equal(lived(yard, colony, '2014-05-20', after.kept, own).steps, 3);
  // Of an earlier day than what was kept: it is not gone back on.
  assert.equal(lived(yard, colony, '2014-05-12', after.kept).steps, 2);
});

test('E114 what is kept of a colony is at most a megabyte, with all particles and a year behind it', () => {
  const days = Array.from({ length: 4 }, (_, i) => addDays('2014-05-01', 8 * i));
  const { yard, colony } = visitedYard(days);
  const { kept } = lived(yard, colony, '2014-06-01', null, printedBook);
  assert.ok(kept);
  const { behind, ...rest } = kept;
  const row = serialize(behind).length / behind.length;
  // A year of weekly visits has two rows for each, and the season's days between them.
  const rows = 2 * 52 + 120 / 3;
  assert.ok(serialize(rest).length + rows * row <= 1e6, `${serialize(rest).length} and ${rows} rows of ${row} bytes`);
});

test('E115 what the journal cannot mean is refused with its field, and the colony is told of all the same', () => {
  const yard = sampleYard();
  const hive = yard.hive('2014-04-01');
  const colony = yard.id();
  const began = { earliest: start, latest: start };
  yard.add('colony', '2014-04-01', { colony, name: 'Alder', origin: 'bought', parent: null, began, hive, bay: null });
  for (const day of ['2014-04-10', '2014-05-01', '2014-05-09']) yard.visit(day, colony, hive, whole);
  const { foreseen, issues } = lived(yard, colony, '2014-05-20');
  assert.deepEqual(
    issues.map(({ code, found }) => [code, found]),
    [['before-the-colony', '2014-04-10']],
  );
  assert.equal(foreseen.cloud.visits, 2);
});

test('E179 where a surprise may be combs that were moved it is told which hangs where, and kept; after a quiet visit it is not', () => {
  const comb = (held: number, food: number): BarSeen => ({ ...brood, brood: held, food });
  const usual = { 1: comb(0, 7), 2: comb(1, 5), 3: comb(5, 2), 4: comb(7, 0.5), 5: comb(3, 4), 6: comb(0, 4) };
  const { yard, hive, colony } = settled();
  for (const day of ['2014-05-01', '2014-05-08', '2014-05-15']) yard.visit(day, colony, hive, usual);
  assert.deepEqual(lived(yard, colony, '2014-05-16').foreseen.moved, []);
  yard.visit('2014-05-21', colony, hive, { ...usual, 1: usual[4], 4: usual[1] });
  const after = lived(yard, colony, '2014-05-22');
  assert.ok(after.foreseen.surprises.some(({ because }) => because.some(({ cause }) => cause === 'combs moved')));
  assert.deepEqual(
    after.foreseen.moved.map(({ today, last }) => [today, last]),
    [
      [1, 4],
      [4, 1],
    ],
  );
  assert.deepEqual(lived(yard, colony, '2014-05-23', after.kept).foreseen.moved, after.foreseen.moved);
});
