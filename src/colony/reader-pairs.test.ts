/** Readers held against each other: closed forms, worlds in which the bias is known, and what counts as a pair. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { printedBook, value } from '../figures/book.ts';
import { reading, sampleYard } from './for-tests.ts';
import { estimated, readerBiases } from './reader-pairs.ts';
import { viewOf } from './view-of.ts';
import { rowsByComb } from './visits-of.ts';

const near = (a: number | undefined, b: number, by = 1e-9): void => assert.ok(Math.abs((a ?? NaN) - b) <= by, `${a} and ${b}`);

test('C130 the estimate is the closed form: mean drawn toward none, spread drawn toward its prior', () => {
  const differences = [1, 0.5, 1.5, 1];
  const [weight, sd, tau] = [
    value(printedBook, 'reader-pair-prior'),
    value(printedBook, 'reader-pair-sd'),
    value(printedBook, 'reader-bias-sd'),
  ];
  const variance = (weight * sd ** 2 + 0.5) / (weight + 3);
  const { bias, spread } = estimated(differences, printedBook);
  near(spread ?? NaN, Math.sqrt(variance));
  near(bias?.likely, (4 / variance / (4 / variance + 1 / tau ** 2)) * 1);
  near((bias?.high ?? NaN) - (bias?.low ?? NaN), (2 * 1.2816) / Math.sqrt(4 / variance + 1 / tau ** 2), 1e-3);
});

test('C130 with many pairs it is the plain mean, with few it is nearly none, below the least it is not told', () => {
  const many = estimated(
    Array.from({ length: 4000 }, (_, i) => 1 + (i % 2 === 0 ? 0.5 : -0.5)),
    printedBook,
  );
  near(many.bias?.likely, 1, 0.01);
  const few = estimated([2, 2, 2], printedBook);
  assert.ok(few.bias !== null && few.bias.likely < 2 && few.bias.likely > 0);
  assert.deepEqual(estimated([2, 2], printedBook), { bias: null, spread: null });
});

test('C131 in made-up worlds whose biases are drawn as the prior says, ranges of eight of ten hold about that often', () => {
  const generator = xoroshiro128plus(20140516);
  const unit = (): number => uniformFloat64(generator);
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - unit())) * Math.cos(2 * Math.PI * unit());
  const tau = value(printedBook, 'reader-bias-sd');
  let held = 0;
  const worlds = 2000;
  for (let world = 0; world < worlds; world += 1) {
    const truth = tau * normal();
    const sd = 0.6 + 0.8 * unit();
    const pairs = Array.from({ length: 3 + Math.floor(unit() * 12) }, () => truth + sd * normal());
    const { bias } = estimated(pairs, printedBook);
    if (bias !== null && bias.low <= truth && truth <= bias.high) held += 1;
  }
  assert.ok(held / worlds > 0.76 && held / worlds < 0.84, String(held / worlds));
});

test('C132 a pair is one comb read by both on one day, in one visit or two; a comb that moved is the same comb', () => {
  const yard = sampleYard();
  const hive = yard.hive('2014-05-01');
  const colony = yard.colony('2014-05-01', hive);
  const [ines, keeper] = [yard.id(), yard.entries[0]!.by];
  yard.add('observer', '2014-05-01', { observer: keeper, name: 'Keeper', role: 'keeper' });
  yard.add('observer', '2014-05-01', { observer: ines, name: 'Ines', role: 'helper' });
  const bars = { 1: { brood: 4, food: 2 }, 2: { brood: 5, food: 1 }, 3: { brood: 6, food: null }, 4: { brood: 2, food: 2 } };
  yard.visit('2014-05-05', colony, hive, bars, null);
  yard.visit(
    '2014-05-05',
    colony,
    hive,
    { 1: { brood: 5, food: 2, by: ines }, 2: { brood: 6, food: 2, by: ines }, 3: { brood: 7, food: 1, by: ines } },
    null,
  );
  yard.visit('2014-05-06', colony, hive, { 4: { brood: 8, food: 0, by: ines } }, null);
  const found = readerBiases(yard.fold().draft, printedBook);
  assert.deepEqual(
    found.map(({ reader, against, content, pairs, bias }) => [reader, against, content, pairs, bias !== null && bias.likely > 0]),
    [
      [ines, keeper, 'brood', 3, true],
      [ines, keeper, 'food', 2, false],
    ],
  );
});

test('C133 two people who read the whole comb at one visit count as their mean, one person who read it twice as the last', () => {
  const yard = sampleYard();
  const hive = yard.hive('2014-05-01');
  const colony = yard.colony('2014-05-01', hive);
  const ines = yard.id();
  yard.add('observer', '2014-05-01', { observer: ines, name: 'Ines', role: 'helper' });
  const visit = yard.id();
  const read = (food8: number, more: object = {}, by?: string) =>
    yard.add('reading', '2014-05-05T14:05', { ...reading(visit, hive, 1, { brood: 0, food: food8 }), ...more }, by);
  const cells = (open: number) => ({ open, sealed: 0, torn: 0, emerged: 0 });
  read(2);
  read(4, { cells: cells(2), cellsLooked: 'seen' });
  read(8, { cells: cells(5), cellsLooked: 'seen', queen: 'seen' }, ines);
  const { draft, faults } = yard.fold();
  assert.deepEqual(faults, []);
  const [row] = rowsByComb(draft.visits.get(visit)!.readings).values();
  assert.equal(row?.body.faces[0]?.food8, 6);
  assert.deepEqual([row.body.cells, row.body.queen], [cells(5), 'seen']);
  assert.equal(viewOf(draft, colony, '2014-05-05', printedBook).visits[0]?.barsOpened, 1);
});
