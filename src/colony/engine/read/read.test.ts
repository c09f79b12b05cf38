/** What the model takes from a journal, worked by hand: counts, shares of combs left shut, hands, happenings, refusals. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook, value } from '../../../figures/book.ts';
import { dayNumber } from '../../../numbers/day.ts';
import { type SampleYard, sampleYard } from '../../for-tests.ts';
import type { Happening } from '../happening.ts';
import type { Visited } from '../run.ts';
import { groundOf } from './ground-of.ts';
import { recordBook } from './record-book.ts';
import { soundVisits } from './sound.ts';
import { storesFrom } from './told-of.ts';
import { type VisitsRead, visitedOf } from './visited-of.ts';

const start = '2014-04-20';
/** One face of the sample hive's comb, from the closed form by hand: see the tests of the view. */
const faceDm2 = (255 * (421.5248 + 127.0762)) / 2 / 1e4;
const combCells = 2 * faceDm2 * 400;
const book = printedBook;

function near(found: number | undefined, expected: number, share = 1e-4): void {
  assert.ok(found !== undefined && Math.abs(found - expected) <= share * Math.abs(expected), `${found} is not ${expected}`);
}

function settled(): { yard: SampleYard; hive: string; colony: string } {
  const yard = sampleYard();
  const hive = yard.hive(start);
  return { yard, hive, colony: yard.colony(start, hive) };
}

function read(yard: SampleYard, colony: string, until = '2014-12-31'): VisitsRead {
  const { draft, faults } = yard.fold();
  assert.deepEqual(faults, []);
  return visitedOf(recordBook(draft, colony, until, book));
}

function happened(yard: SampleYard, colony: string, until = '2014-12-31'): (readonly [string, Happening['kind']])[] {
  const { draft, faults } = yard.fold();
  assert.deepEqual(faults, []);
  const { told } = groundOf(recordBook(draft, colony, until, book)).ground;
  return [...told].flatMap(([day, list]) => list.map((one) => [String(day - dayNumber('2014-05-01')), one.kind] as const));
}

const brood = { brood: 4, food: 2, eggs: 'seen', cellsLooked: 'none seen' } as const;

test('E100 what a visit counted comes out as worked by hand', () => {
  const { yard, hive, colony } = settled();
  const honey = { brood: 0, food: 8, face: { sealedFood8: 8, bees8: 4 } };
  yard.visit('2014-05-01', colony, hive, { 1: honey, 2: { ...brood, face: { bees8: 8 } } }, { beesBars: 2 });
  const [visited] = read(yard, colony).visits;
  const seen = visited?.seen ?? {};
  near(seen.sealed?.count, (combCells * 0.5 * 12) / 21);
  near(seen.open?.count, (combCells * 0.5 * 9) / 21);
  near(seen.honeyKg?.count, faceDm2 * 0.128 * 2.7 * (1 + 0.25 * 0.7 * (0.6 + 0.4 * 0.5)));
  near(seen.built?.cells, 2 * combCells);
  near(seen.bees?.count, 1.5 * 2 * faceDm2 * value(book, 'bees-per-dm2'));
  near(seen.bars?.count, 2 * 2 * faceDm2 * value(book, 'bees-per-dm2') * value(book, 'bees-bar-cover'));
  assert.deepEqual(seen.brood, { eggs: 'seen', youngest: 'egg', share: 1 });
  assert.deepEqual(seen.cells, { cells: { open: 0, sealed: 0, torn: 0, emerged: 0 }, share: 1 });
  assert.equal(seen.queen, undefined);
  assert.equal(seen.sealed?.share, undefined);
});

test('E101 a count of part of the combs goes with the share of the whole that was to be expected on them', () => {
  const { yard, hive, colony } = settled();
  const fuller = { ...brood, brood: 6, food: 1 };
  yard.visit('2014-05-01', colony, hive, { 1: brood, 2: fuller, 3: fuller });
  yard.visit('2014-05-02', colony, hive, { 1: brood });
  yard.visit('2014-05-03', colony, hive, { 4: { brood: 0, food: 8 } });
  const [all, part, other] = read(yard, colony).visits;
  assert.equal(all?.seen.sealed?.share, undefined);
  near(part?.seen.sealed?.share, 4 / 16, 0.03);
  near(part?.seen.honeyKg?.share, 2 / 4, 0.03);
  // The fourth comb is new to everybody: it is taken to be as full as the mean of the others.
  near(other?.seen.sealed?.share, 1 / 4, 0.03);
  assert.equal(part?.seen.built?.atLeast, undefined);
});

test('E166 of a count, the share on combs that were only said to be as expected is told, and all of it where all were', () => {
  const { yard, hive, colony } = settled();
  const said = { ...brood, method: 'as expected' } as const;
  yard.visit('2014-05-01', colony, hive, { 1: brood, 2: { ...brood, brood: 6, food: 1 } });
  yard.visit('2014-05-02', colony, hive, { 1: brood, 2: { ...said, brood: 6, food: 1 } });
  yard.visit('2014-05-03', colony, hive, { 1: said, 2: said });
  yard.visit('2014-05-04', colony, hive, { 1: { ...said, brood: 0, food: 0 }, 2: { ...said, brood: 0, food: 0 } });
  const [plain, part, all, nothing] = read(yard, colony).visits;
  assert.equal(plain?.seen.sealed?.asExpected, undefined);
  near(part?.seen.sealed?.asExpected, 6 / 10, 0.03);
  near(part?.seen.honeyKg?.asExpected, 1 / 3, 0.03);
  near(all?.seen.sealed?.asExpected, 1);
  near(nothing?.seen.sealed?.asExpected, 1);
});

test('E102 learners never count; the hand that had read most by then is the first, the others the second', () => {
  const { yard, hive, colony } = settled();
  const [ines, learner] = [yard.id(), yard.id()];
  yard.add('observer', start, { observer: ines, name: 'Ines', role: 'helper' });
  yard.add('observer', start, { observer: learner, name: 'Tom', role: 'learner' });
  yard.visit('2014-05-01', colony, hive, { 1: brood, 2: brood });
  yard.visit('2014-05-08', colony, hive, { 1: { ...brood, by: ines } });
  yard.visit('2014-05-15', colony, hive, { 1: { ...brood, by: learner }, 2: { ...brood, by: learner } });
  yard.visit('2014-05-22', colony, hive, { 1: { ...brood, by: ines }, 2: { ...brood, by: ines } });
  const { visits } = read(yard, colony);
  assert.deepEqual(
    visits.map(({ day, seen }) => [day - dayNumber('2014-05-01'), seen.sealed?.hand]),
    [
      [0, 0],
      [7, 1],
      [21, 0],
    ],
  );
});

test('E103 a swarm that a visit found out about comes before it, one that was seen to leave that day after it', () => {
  const { yard, hive, colony } = settled();
  const swarm = (earliest: string, latest: string): void =>
    void yard.add('swarm', latest, {
      what: 'left',
      from: colony,
      window: { earliest, latest },
      child: null,
      childName: null,
      into: null,
    });
  yard.visit('2014-05-11', colony, hive, { 1: brood });
  swarm('2014-05-05', '2014-05-11');
  yard.visit('2014-06-11', colony, hive, { 1: brood });
  swarm('2014-06-11', '2014-06-11');
  const left = happened(yard, colony).filter(([, kind]) => kind === 'swarm left');
  assert.deepEqual(left, [
    ['9', 'swarm left'],
    ['41', 'swarm left'],
  ]);
});

test('E104 combs that went take their part of the nest, combs taken out leave their bees, the side of the queen is kept', () => {
  const { yard, hive, colony } = settled();
  yard.visit('2014-05-01', colony, hive, {
    1: { ...brood, face: { bees8: 8 } },
    2: { brood: 6, food: 0, face: { bees8: 4 } },
    3: { brood: 0, food: 6, face: { bees8: 4 } },
  });
  const combs = [...yard.fold().draft.combs.values()].map((comb) => comb.id);
  const other = yard.hive('2014-05-01');
  const child = yard.id();
  yard.add('split', '2014-05-02', {
    from: colony,
    child,
    childName: 'Birch',
    into: { hive: other, bay: null },
    combs: [{ comb: combs[1], place: 1 }],
    queenSide: 'went',
  });
  yard.visit('2014-05-03', colony, hive, {}, { taken: [3] });
  const { told } = groundOf(recordBook(yard.fold().draft, colony, '2014-12-31', book)).ground;
  const [split] = told.get(dayNumber('2014-05-02')) ?? [];
  assert.ok(split?.kind === 'part left' && split.queen === 'went');
  near(split.bees, 4 / 16);
  near(split.brood, 6 / 10, 0.02);
  near(split.food, 0, 1);
  near(split.comb, 1 / 3);
  const taken = (told.get(dayNumber('2014-05-03')) ?? []).find((one) => one.kind === 'part left');
  assert.ok(taken?.kind === 'part left' && taken.bees === 0 && taken.queen === 'stayed');
  // Of food beside brood 70 of 100 are not bread, of food by itself 95.
  near(taken.food, (6 * 0.95) / (6 * 0.95 + 2 * 0.7), 0.02);
  assert.deepEqual(
    happened(yard, child).filter(([, kind]) => kind !== 'bars'),
    [['1', 'queen found']],
  );
});

test('E128 a split begins with what its combs last held and its part of the bees that were counted', () => {
  const { yard, hive, colony } = settled();
  const full = { ...brood, face: { bees8: 8 } };
  yard.visit('2014-05-02', colony, hive, { 1: full, 2: full, 3: { brood: 0, food: 8, face: { sealedFood8: 8, bees8: 8 } } });
  const combs = [...yard.fold().draft.combs.values()].map((comb) => comb.id);
  const child = yard.id();
  yard.add('split', '2014-05-03', {
    from: colony,
    child,
    childName: 'Birch',
    into: { hive: yard.hive('2014-05-01'), bay: null },
    combs: [
      { comb: combs[0], place: 1 },
      { comb: combs[2], place: 2 },
    ],
    queenSide: 'unknown',
  });
  const { beginning } = groundOf(recordBook(yard.fold().draft, child, '2014-12-31', book)).ground;
  assert.ok(beginning.kind === 'split' && beginning.from !== undefined);
  // A day older: none has emerged yet of brood laid evenly over 21 days but the oldest day's, and as much is laid again.
  near(beginning.from.broodCells ?? 0, combCells * 0.5, 0.05);
  near(beginning.from.honeyKg ?? 0, faceDm2 * 0.128 * 2.7 * (1 + 0.25 * 0.7 * (0.6 + 0.4 * 0.5)));
  near(beginning.from.bees ?? 0, (2 / 3) * 3 * 2 * faceDm2 * value(book, 'bees-per-dm2'));
});

test('E105 sugar becomes stores by the figures; of an amount that nobody noted nothing is known', () => {
  const syrup = value(book, 'syrup-kg-per-l') * value(book, 'syrup-sugar-share') * value(book, 'syrup-yield');
  near(storesFrom('sugar syrup', { value: 2, unit: 'l' }, book) ?? 0, 2 * syrup);
  near(storesFrom('dry sugar', { value: 500, unit: 'g' }, book) ?? 0, 0.5 * value(book, 'syrup-yield'));
  near(storesFrom('own honey', { value: 1, unit: 'kg' }, book) ?? 0, 1);
  assert.equal(storesFrom('sugar syrup', null, book), null);
  assert.equal(storesFrom('pollen', { value: 1, unit: 'kg' }, book), null);
  const { yard, colony } = settled();
  yard.add('feeding', '2014-05-01', { colony, what: 'sugar syrup', amount: null });
  yard.add('feeding', '2014-05-03', { colony, what: 'candy', amount: { value: 1, unit: 'kg' } });
  assert.deepEqual(
    happened(yard, colony).filter(([, kind]) => kind === 'fed'),
    [['2', 'fed']],
  );
});

test('E106 the bars of the bay are the room there is, from the day on which its ends moved', () => {
  const { yard, hive, colony } = settled();
  yard.visit('2014-05-01', colony, hive, { 1: brood }, { followerAfter: 6 });
  yard.visit('2014-05-11', colony, hive, { 1: brood }, { given: [7] });
  const { told, comb } = groundOf(recordBook(yard.fold().draft, colony, '2014-12-31', book)).ground;
  const bars = [...told].flatMap(([day, list]) =>
    list.flatMap((one) => (one.kind === 'bars' ? [[day, one.cells] as const] : [])),
  );
  assert.deepEqual(
    bars.map(([day]) => day - dayNumber('2014-05-01')),
    [-11, 0, 10],
  );
  near(bars[1]?.[1], 6 * combCells);
  near(bars[2]?.[1], 7 * combCells);
  near(comb?.built, combCells);
});

test('E107 what cannot be (counts, numbers, visits before the colony or out of order) is refused with its field, the rest stands', () => {
  const first = dayNumber(start);
  const visited = (day: number, seen: Visited['seen']): Visited => ({ day, visit: `visit-${day}`, seen });
  const rows = [
    visited(first - 1, { bees: { count: 1000 } }),
    visited(first, { bees: { count: 1e7 }, sealed: { count: 4000 } }),
    visited(first + 9, { bees: { count: NaN }, honeyKg: { count: -1 }, open: { count: 10, share: 0 } }),
    visited(first + 5, { bees: { count: 1000 } }),
    visited(first + 10, { cells: { cells: { open: 0.5, sealed: 0, torn: 0, emerged: 0 }, share: 1 }, bars: { count: 5000 } }),
    visited(NaN, { bees: { count: 1000 } }),
  ];
  const { visits, issues } = soundVisits(rows, first, book);
  assert.deepEqual(
    issues.map(({ code, path }) => `${code} ${path}`),
    [
      'before-the-colony visits.0.day',
      'impossible-count visits.1.bees.count',
      'impossible-count visits.2.bees.count',
      'impossible-count visits.2.open.share',
      'impossible-count visits.2.honeyKg.count',
      'out-of-order visits.3.day',
      'impossible-count visits.4.cells.open',
      'not-a-day visits.5.day',
    ],
  );
  assert.deepEqual(
    visits.map(({ seen }) => Object.keys(seen)),
    [['sealed'], [], ['bars']],
  );
  for (const issue of issues) assert.ok(issue.found !== '' && issue.expected !== '' && issue.entry !== undefined);
});

test('E108 a hived swarm begins on its day without comb; a colony that stood there begins weeks before anybody looked', () => {
  const { yard, hive, colony } = settled();
  yard.visit('2014-06-01', colony, hive, { 1: brood });
  const standing = groundOf(recordBook(yard.fold().draft, colony, '2014-12-31', book));
  assert.deepEqual(standing.ground.beginning, { kind: 'standing' });
  assert.equal(standing.begins, dayNumber(start) - value(book, 'engine-start-days'));
  const swarm = sampleYard();
  const trough = swarm.hive(start);
  const child = swarm.id();
  swarm.add('swarm', '2014-05-20', {
    what: 'hived',
    from: null,
    window: { earliest: '2014-05-20', latest: '2014-05-20' },
    child,
    childName: 'Rowan',
    into: { hive: trough, bay: null, bars: 6 },
  });
  const hived = groundOf(recordBook(swarm.fold().draft, child, '2014-12-31', book));
  assert.deepEqual(hived.ground.beginning, { kind: 'swarm', bees: null });
  assert.equal(hived.begins, dayNumber('2014-05-20'));
  assert.equal(hived.ground.comb?.built, 0);
  near(hived.ground.comb?.most, 6 * combCells);
});

test('E109 every face of the bay covered says that there were at least so many; looks from outside are taken with their entry', () => {
  const { yard, hive, colony } = settled();
  yard.visit('2014-05-01', colony, hive, { 1: brood }, { followerAfter: 3, beesBars: 3 });
  yard.visit('2014-05-08', colony, hive, { 1: brood }, { beesBars: 3 });
  const look = yard.add('look', '2014-05-09', { hive, colony, flight: 'few', pollenIn: true, seen: [] });
  const { visits } = read(yard, colony);
  assert.deepEqual(
    visits.map(({ seen }) => seen.bars?.atLeast),
    [undefined, true, undefined],
  );
  assert.deepEqual(visits[2], {
    day: dayNumber('2014-05-09'),
    visit: look.id,
    seen: { flight: { flight: 'few' }, pollen: { seen: true, day: dayNumber('2014-05-09') } },
  });
});
