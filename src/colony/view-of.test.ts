/** Views of small yards whose numbers are worked by hand. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../figures/book.ts';
import { addDays } from '../numbers/day.ts';
import { bookOf } from './book-of.ts';
import { type BarSeen, sampleYard, type SampleYard } from './for-tests.ts';
import type { ColonyView } from './view.ts';
import { viewOf } from './view-of.ts';

const start = '2014-04-20';

/** One face of the sample hive's comb, from the closed form by hand: 421.525 mm at the bar, 127.076 mm below, 255 mm deep. */
const faceDm2 = (255 * (421.5248 + 127.0762)) / 2 / 1e4;
const combCells = 2 * faceDm2 * 400;

function near(found: number, expected: number, share = 1e-4): void {
  assert.ok(Math.abs(found - expected) <= share * Math.abs(expected), `${found} is not ${expected}`);
}

function settled(): { yard: SampleYard; hive: string; colony: string; view: (day: string) => ColonyView } {
  const yard = sampleYard();
  const hive = yard.hive(start);
  const colony = yard.colony(start, hive);
  const view = (day: string): ColonyView => {
    const { draft, faults } = yard.fold();
    assert.deepEqual(faults, []);
    return viewOf(draft, colony, day, bookOf(draft));
  };
  return { yard, hive, colony, view };
}
const brood: BarSeen = { brood: 4, food: 2, eggs: 'seen', cellsLooked: 'none seen' };

test('C30 cells, laying and honey of two combs read today come out as worked by hand', () => {
  const { yard, hive, colony, view } = settled();
  yard.visit('2014-05-01', colony, hive, { 1: { brood: 0, food: 8, face: { sealedFood8: 8 } }, 2: brood });
  const { totals, layingPerDay } = view('2014-05-01');
  near(totals.sealed.total.likely + totals.emerging.total.likely, (combCells * 0.5 * 12) / 21);
  near(totals.egg.total.likely, (combCells * 0.5 * 3) / 21);
  near(totals.workerCells.total.likely, 2 * combCells);
  near(layingPerDay?.likely ?? NaN, (combCells * 0.5 * 12) / 21 / 12 / 0.8575);
  // Comb 27 mm thick: .128 kg a dm² of comb and cm; comb 2 has a quarter food: 70 of 100 not bread,
  // 60 of these sealed, nectar half its weight.
  const perDm2 = 0.128 * 2.7;
  near(totals.honeyKg.total.likely, faceDm2 * perDm2 * (1 + 0.25 * 0.7 * (0.6 + 0.4 * 0.5)));
  near(totals.emptyInBrood.total.likely, combCells * 0.25);
  for (const total of Object.values(totals)) {
    assert.ok(total.total.low <= total.total.likely && total.total.likely <= total.total.high);
    near(total.seen.likely + total.carried.likely + 1, total.total.likely + 1);
  }
});

test('C31 a bar not opened is unknown in the film, expected today, and carried forward in the sums', () => {
  const { yard, hive, colony, view } = settled();
  yard.visit('2014-05-01', colony, hive, { 1: brood, 2: brood, 3: brood });
  yard.visit('2014-05-08', colony, hive, { 3: brood });
  const found = view('2014-05-08');
  assert.deepEqual(
    found.film.map((frame) => frame.bars.slice(0, 3).map((bar) => bar.kind)),
    [
      ['comb', 'comb', 'comb'],
      ['unknown', 'unknown', 'comb'],
    ],
  );
  assert.deepEqual(
    found.bars.slice(0, 4).map((bar) => [bar.kind, bar.ink]),
    [
      ['comb', 'worked out'],
      ['comb', 'worked out'],
      ['comb', 'seen'],
      ['unknown', 'guessed'],
    ],
  );
  const { sealed } = found.totals;
  near(sealed.seen.likely, (combCells * 0.5 * 10) / 21);
  assert.ok(sealed.carried.likely > 0);
  assert.ok(sealed.carried.high - sealed.carried.low > 2 * (sealed.seen.high - sealed.seen.low));
});

test('C32 nine days after a swarm was hived on bare bars nothing is sealed, and bees emerge from the twenty-first on', () => {
  const yard = sampleYard();
  const hive = yard.hive(start);
  const child = yard.id();
  yard.add('swarm', '2014-05-01', {
    what: 'hived',
    from: null,
    window: { earliest: '2014-05-01', latest: '2014-05-01' },
    child,
    childName: 'Rowan',
    into: { hive, bay: null, bars: 6 },
  });
  yard.visit('2014-05-10', child, hive, {
    1: { brood: 4, food: 2, eggs: 'seen', built8: 5 },
    2: { brood: 5, food: 1, built8: 4 },
  });
  const { draft, faults } = yard.fold();
  assert.deepEqual(faults, []);
  const on = (day: string): ColonyView => viewOf(draft, child, day, printedBook);
  const { sealed, emerging, egg } = on('2014-05-10').totals;
  assert.deepEqual([sealed.total.likely, emerging.total.likely], [0, 0]);
  assert.ok(egg.total.likely > 0);
  assert.ok(on('2014-05-11').totals.sealed.total.likely > 0, 'the first are sealed the day after');
  assert.equal(on('2014-05-20').totals.emerging.total.likely, 0);
  assert.ok(on('2014-05-22').totals.emerging.total.likely > 0, 'and about to emerge in the third week');
  assert.deepEqual(
    on('2014-05-02').bars.map((bar) => bar.kind),
    Array.from({ length: 6 }, () => 'bare'),
  );
  assert.equal(on('2014-05-02').queen.state, 'unknown');
  assert.equal(on('2014-05-12').queen.state, 'laying');
});

test("C33 a learner's reading is in the visit and not in the sums", () => {
  const { yard, hive, colony, view } = settled();
  const learner = yard.id();
  yard.add('observer', start, { observer: learner, name: 'Ada', role: 'learner' });
  yard.visit('2014-05-01', colony, hive, { 1: brood, 2: { ...brood, brood: 8, food: 0, by: learner } });
  const found = view('2014-05-01');
  near(found.totals.egg.seen.likely, (combCells * 0.5 * 3) / 21);
  assert.equal(found.visits[0]?.barsOpened, 2);
  assert.deepEqual(
    found.bars.slice(0, 2).map((bar) => bar.kind),
    ['comb', 'unknown'],
  );
});

test('C34 a visit that was never closed is a visit', () => {
  const { yard, hive, colony, view } = settled();
  yard.visit('2014-05-01', colony, hive, { 1: brood }, null);
  const found = view('2014-05-02');
  assert.deepEqual(
    found.visits.map((visit) => [visit.kind, visit.barsOpened]),
    [['not closed', 1]],
  );
  assert.equal(found.film[0]?.kind, 'not closed');
});

test('C35 bars given lengthen the bay and are bare, bars taken leave it, and the film keeps where the follower stood', () => {
  const yard = sampleYard();
  const hive = yard.hive(start);
  const bay = yard.id();
  yard.add('bay', start, { bay, hive, from: 1, to: 4 });
  const colony = yard.colony(start, hive, { bay });
  yard.visit('2014-05-01', colony, hive, { 1: brood, 2: brood, 3: brood, 4: brood }, { given: [5], followerAfter: 5 });
  yard.visit('2014-05-03', colony, hive, { 1: brood, 4: brood }, { taken: [4, 5], followerAfter: 3 });
  const { draft, faults } = yard.fold();
  assert.deepEqual(faults, []);
  const first = viewOf(draft, colony, '2014-05-02', printedBook);
  assert.deepEqual(
    first.bars.map((bar) => bar.kind),
    ['comb', 'comb', 'comb', 'comb', 'bare'],
  );
  const second = viewOf(draft, colony, '2014-05-03', printedBook);
  assert.deepEqual([second.bay.to, second.bars.length], [3, 3]);
  assert.deepEqual(
    second.film.map((frame) => frame.follower),
    [5, 3],
  );
  assert.equal(second.film[1]?.bars.find((bar) => bar.place === 4)?.kind, 'comb', 'a bar that was taken out had been read');
  assert.equal([...draft.combs.values()].filter((comb) => comb.at?.kind === 'away').length, 1);
});

test('C36 the view of a day does not know what came after', () => {
  const { yard, hive, colony } = settled();
  for (let i = 0; i < 5; i += 1)
    yard.visit(addDays('2014-05-01', 7 * i), colony, hive, { 1: { ...brood, brood: i }, 2: brood, [3 + i]: brood });
  yard.add('swarm', '2014-05-25', {
    what: 'left',
    from: colony,
    window: { earliest: '2014-05-24', latest: '2014-05-25' },
    child: null,
    childName: null,
    into: null,
  });
  const all = yard.fold().draft;
  for (const day of ['2014-04-25', '2014-05-01', '2014-05-12', '2014-05-24', '2014-05-29']) {
    assert.deepEqual(viewOf(all, colony, day, printedBook), viewOf(yard.fold(day).draft, colony, day, printedBook), day);
  }
});

test('C37 bees come from faces covered or bars counted, and without a count only from what the combs can hold', () => {
  const { yard, hive, colony, view } = settled();
  assert.equal(view(start).totals.adults.total.low, 0);
  assert.equal(view(start).totals.adults.ink, 'guessed');
  near(view(start).totals.adults.total.high, 2 * 12 * faceDm2 * 137.6);
  yard.visit('2014-05-01', colony, hive, { 1: { ...brood, face: { bees8: 8 } }, 2: { ...brood, face: { bees8: 4 } } });
  near(view('2014-05-01').totals.adults.seen.likely, 3 * faceDm2 * 125);
  yard.visit('2014-05-08', colony, hive, {}, { visitKind: 'glance', beesBars: 6 });
  near(view('2014-05-08').totals.adults.seen.likely, 12 * faceDm2 * 125 * 0.6);
  yard.add('swarm', '2014-05-12', {
    what: 'left',
    from: colony,
    window: { earliest: '2014-05-12', latest: '2014-05-12' },
    child: null,
    childName: null,
    into: null,
  });
  near(view('2014-05-12').totals.adults.total.likely, 12 * faceDm2 * 125 * 0.6 * 0.25);
});

test("C38 the keeper's own cells along ten centimetres change every sum of cells", () => {
  const { yard, hive, colony, view } = settled();
  yard.visit('2014-05-01', colony, hive, { 1: brood });
  const before = view('2014-05-01').totals.egg.total.likely;
  yard.add('measurement', '2014-05-02', { what: 'cells along 10 cm', typed: { value: 20, unit: 'cells' } });
  near(view('2014-05-01').totals.egg.total.likely / before, 20000 / (Math.sqrt(3) * 25) / 400);
});
