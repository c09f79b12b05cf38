/** How combs, colonies and queens move through the fold, by worked examples. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook, value } from '../figures/book.ts';
import { bookOf } from './book-of.ts';
import { type BarSeen, reading, sampleYard } from './for-tests.ts';
import { colonyAt } from './whose.ts';
import { viewOf } from './view-of.ts';
import { currentQueen } from './visits-of.ts';

const start = '2014-05-01';
const brood: BarSeen = { brood: 4, food: 2, eggs: 'seen' };
const day = (date: string) => ({ earliest: date, latest: date });

test("C80 a reading without a comb's name finds the comb that hangs there, or begins one that bears the entry's id", () => {
  const yard = sampleYard();
  const hive = yard.hive(start);
  const colony = yard.colony(start, hive);
  yard.visit('2014-05-05', colony, hive, { 2: brood });
  yard.visit('2014-05-12', colony, hive, { 2: brood });
  const { draft } = yard.fold();
  const first = yard.entries.find((entry) => entry.kind === 'reading');
  assert.deepEqual([...draft.combs.keys()], [first?.id]);
  assert.deepEqual(
    [...draft.visits.values()].flatMap((visit) => visit.readings.map((row) => row.comb)),
    [first?.id, first?.id],
  );
});

test('C81 a split moves combs with what was read on them, and the queen when she went', () => {
  const yard = sampleYard();
  const hive = yard.hive(start);
  const other = yard.hive(start);
  const colony = yard.colony(start, hive);
  const queen = yard.id();
  yard.add('queen', start, { queen, name: null, mark: 'blue', emerged: null, clipped: null, motherColony: null });
  yard.add('reign', start, { colony, queen, change: { kind: 'began', how: 'found', window: null } });
  yard.visit('2014-05-05', colony, hive, { 1: { brood: 0, food: 6 }, 2: brood, 3: brood });
  const combs = [...(yard.fold().draft.placed.get(hive)?.entries() ?? [])]
    .filter(([place]) => place > 1)
    .map(([place, comb]) => ({ comb, place: place - 1 }));
  const child = yard.id();
  yard.add('split', '2014-05-06', {
    from: colony,
    child,
    childName: 'Birch',
    into: { hive: other, bay: null },
    combs,
    queenSide: 'went',
  });
  const { draft, faults } = yard.fold();
  assert.deepEqual(faults, []);
  const view = viewOf(draft, child, '2014-05-06', printedBook);
  assert.deepEqual([view.hive, view.bay, view.queenMark], [other, { from: 1, to: 2 }, 'blue']);
  assert.deepEqual(
    view.bars.map((bar) => [bar.kind, bar.ink, bar.readOn]),
    [
      ['comb', 'worked out', '2014-05-05'],
      ['comb', 'worked out', '2014-05-05'],
    ],
  );
  assert.ok(view.totals.sealed.carried.likely > 0 && view.totals.sealed.seen.likely === 0);
  assert.equal(currentQueen(draft, colony, '2014-05-06'), null);
  assert.equal(viewOf(draft, colony, '2014-05-06', printedBook).totals.sealed.total.likely, 0);
  assert.equal(viewOf(draft, colony, '2014-05-05', printedBook).queenMark, 'blue', 'the day before she was here');
});

test('C82 a swarm seen to leave and hived later is one swarm', () => {
  const yard = sampleYard();
  const hive = yard.hive(start);
  const other = yard.hive(start);
  const colony = yard.colony(start, hive);
  const child = yard.id();
  const swarm = (date: string, more: object): unknown =>
    yard.add('swarm', date, {
      from: colony,
      window: day('2014-05-10'),
      child: null,
      childName: null,
      into: null,
      ...more,
    });
  swarm('2014-05-10', { what: 'left' });
  swarm('2014-05-11', { what: 'hived', child, childName: 'Rowan', into: { hive: other, bay: null, bars: 5 } });
  const { draft, faults } = yard.fold();
  assert.deepEqual(faults, []);
  assert.deepEqual(
    draft.events.get(colony)?.map(({ event }) => event),
    [{ kind: 'swarm left', window: day('2014-05-10'), child, hived: true }],
  );
  assert.deepEqual([draft.colonies.get(child)?.parent, draft.colonies.get(child)?.origin], [colony, 'swarm']);
  assert.equal(colonyAt(draft, other, 5, '2014-05-12')?.id, child);
  assert.equal(colonyAt(draft, other, 6, '2014-05-12'), null);
});

test('C83 uniting in one trough joins the bays; the one that ended is not read any more', () => {
  const yard = sampleYard();
  const hive = yard.hive(start);
  const bays = [yard.id(), yard.id()] as const;
  yard.add('bay', start, { bay: bays[0], hive, from: 1, to: 6 });
  yard.add('bay', start, { bay: bays[1], hive, from: 8, to: 12 });
  const one = yard.colony(start, hive, { bay: bays[0] });
  const two = yard.colony(start, hive, { bay: bays[1] });
  yard.visit('2014-05-05', two, hive, { 9: brood });
  yard.add('unite', '2014-05-06', { from: two, into: one });
  const { draft, faults } = yard.fold();
  assert.deepEqual(faults, []);
  const view = viewOf(draft, one, '2014-05-07', printedBook);
  assert.deepEqual(view.bay, { from: 1, to: 12 });
  assert.equal(view.bars[8]?.kind, 'comb', 'what was read of the comb before is known still');
  assert.equal(viewOf(draft, two, '2014-05-07', printedBook).ended?.how, 'united');
});

test('C84 a closing folded before its readings takes nothing from them: the comb taken out is the one that was read', () => {
  const yard = sampleYard();
  const hive = yard.hive(start);
  const bay = yard.id();
  yard.add('bay', start, { bay, hive, from: 1, to: 3 });
  const colony = yard.colony(start, hive, { bay });
  yard.visit('2014-05-05', colony, hive, { 1: brood, 2: brood, 3: brood });
  const visit = yard.visit('2014-05-12', colony, hive, {}, { taken: [3], followerAfter: 2 });
  yard.add('reading', '2014-05-12T15:00', reading(visit, hive, 3, brood));
  const { draft, faults } = yard.fold();
  assert.deepEqual(faults, []);
  assert.equal(draft.combs.size, 3);
  const row = draft.visits.get(visit)?.readings[0];
  assert.deepEqual(draft.combs.get(row?.comb ?? '')?.at, { kind: 'away', where: 'box' });
});

test('C85 a colony that moves takes its combs along in their order', () => {
  const yard = sampleYard();
  const hive = yard.hive(start);
  const other = yard.hive(start);
  const colony = yard.colony(start, hive);
  yard.visit('2014-05-05', colony, hive, { 1: brood, 2: { brood: 0, food: 6 } });
  yard.colony('2014-05-08', other, { colony });
  const { draft, faults } = yard.fold();
  assert.deepEqual(faults, []);
  assert.deepEqual([...(draft.placed.get(hive)?.keys() ?? [])], []);
  const view = viewOf(draft, colony, '2014-05-09', printedBook);
  assert.deepEqual([view.hive, view.bars.slice(0, 2).map((bar) => bar.kind)], [other, ['comb', 'comb']]);
  assert.equal(view.film[0]?.bars[0]?.kind, 'comb', 'the film shows it where it was read');
  assert.equal(viewOf(draft, colony, '2014-05-06', printedBook).hive, hive);
});

test("C86 the keeper's measurements and choices stand on top of the printed figures, a choice above a measurement", () => {
  const yard = sampleYard();
  const hive = yard.hive(start);
  yard.add('measurement', start, { what: 'bees on a face', typed: { value: 700, unit: 'bees' }, hive });
  yard.add('measurement', start, { what: 'honey comb weight', typed: { value: 2.4, unit: 'kg' }, hive });
  const book = bookOf(yard.fold().draft);
  const face = (255 * (421.5248 + 127.0762)) / 2e4;
  assert.ok(Math.abs(value(book, 'bees-per-dm2') - 700 / face) < 1e-3);
  assert.ok(Math.abs(value(book, 'honey-kg-per-dm2-cm') - (2.4 - face * value(printedBook, 'wax-per-dm2')) / face / 2.7) < 1e-4);
  yard.add('figure-override', '2014-05-02', {
    figure: 'bees-per-dm2',
    value: 90,
    low: 80,
    high: 100,
    why: 'shaken and weighed',
  });
  assert.equal(value(bookOf(yard.fold().draft), 'bees-per-dm2'), 90);
});
