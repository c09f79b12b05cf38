/** The queen and her cells by dates, each example worked by hand from the figures. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../figures/book.ts';
import { type BarSeen, sampleYard, type SampleYard } from './for-tests.ts';
import type { CellCounts } from './reading.ts';
import type { ColonyView } from './view.ts';
import { viewOf } from './view-of.ts';

const start = '2014-04-01';
const eggs: BarSeen = { brood: 5, food: 2, eggs: 'seen', youngest: 'egg', cellsLooked: 'none seen' };
const noEggs = (youngest: BarSeen['youngest'] & string, brood = 4): BarSeen => ({
  brood,
  food: 2,
  eggs: 'none seen',
  youngest,
  cellsLooked: 'none seen',
});
const cells = (open: number, sealed = 0, emerged = 0, torn = 0): Partial<BarSeen> => ({
  cells: { open, sealed, torn, emerged } satisfies CellCounts,
  cellsLooked: 'seen',
});
const day = (date: string) => ({ earliest: date, latest: date });

function colonyWith(
  make: (yard: SampleYard, colony: string, hive: string, visit: (date: string, ...bars: BarSeen[]) => void) => void,
): (date: string) => ColonyView {
  const yard = sampleYard();
  const hive = yard.hive(start);
  const colony = yard.colony(start, hive);
  make(yard, colony, hive, (date, ...bars) =>
    yard.visit(date, colony, hive, Object.fromEntries(bars.map((bar, i) => [i + 1, bar]))),
  );
  const { draft, faults } = yard.fold();
  assert.deepEqual(faults, []);
  return (date) => viewOf(draft, colony, date, printedBook);
}

test('C40 eggs seen are three days of proof: last laid within them, and she is laying', () => {
  const { queen } = colonyWith((_y, _c, _h, visit) => {
    visit('2014-05-10', eggs, eggs);
  })('2014-05-12');
  assert.deepEqual(queen.lastLaid, { earliest: '2014-05-07', latest: '2014-05-10' });
  assert.deepEqual([queen.state, queen.nextTelling, queen.contradictory], ['laying', null, false]);
});

test('C41 windows of two visits are intersected: eggs on the first, only larvae on the second', () => {
  // Eggs on 1 May: laid on 28 April or later. Old larvae and no eggs on 8 May: last laid between 29 April and 5 May.
  const { queen } = colonyWith((_y, _c, _h, visit) => {
    visit('2014-05-01', eggs);
    visit('2014-05-08', noEggs('larva'));
  })('2014-05-08');
  assert.deepEqual(queen.lastLaid, { earliest: '2014-04-29', latest: '2014-05-05' });
  assert.equal(queen.contradictory, false);
  assert.equal(queen.state, 'unknown', 'no eggs for once is not a queen lost');
  assert.equal(queen.virginDays, null);
  assert.equal(queen.nextTelling, '2014-05-12', 'a few days tell');
});

test('C42 stages that contradict each other are reported: eggs, and three days later nothing but sealed brood', () => {
  const view = colonyWith((_y, _c, _h, visit) => {
    visit('2014-05-01', eggs);
    visit('2014-05-04', noEggs('sealed'));
  });
  assert.equal(view('2014-05-01').queen.contradictory, false);
  assert.equal(view('2014-05-04').queen.contradictory, true);
});

test('C43 a look at one brood comb of five does not say that laying is over', () => {
  const { queen } = colonyWith((_y, _c, _h, visit) => {
    visit('2014-05-01', eggs, eggs, eggs, eggs, eggs);
    visit('2014-05-08', noEggs('larva'));
  })('2014-05-08');
  assert.equal(queen.lastLaid?.latest, '2014-05-08');
});

test("C44 a queen taken away: cells, then a virgin from the tenth day, and none only when her daughter's days are over", () => {
  const view = colonyWith((yard, colony, _h, visit) => {
    const queen = yard.id();
    yard.add('queen', start, { queen, name: null, mark: 'red', emerged: null, clipped: null, motherColony: null });
    yard.add('reign', start, { colony, queen, change: { kind: 'began', how: 'found', window: null } });
    visit('2014-05-01', eggs);
    yard.add('reign', '2014-05-02', {
      colony,
      queen,
      change: { kind: 'ended', how: 'removed', window: day('2014-05-02') },
    });
    visit('2014-06-20', noEggs('none', 0));
  });
  assert.equal(view('2014-05-01').queenMark, 'red');
  assert.equal(view('2014-05-03').queenMark, null);
  const on = (date: string) => view(date).queen;
  assert.deepEqual(
    ['2014-05-03', '2014-05-08', '2014-05-12', '2014-06-08'].map((date) => on(date).state),
    ['cells open', 'cells sealed', 'virgin', 'virgin'],
  );
  // 10 to 16 days to the virgin, 14 to 38 to her eggs; half of all queens lay by eleven days.
  assert.deepEqual(on('2014-05-12').firstEggs, { earliest: '2014-05-16', latest: '2014-06-09' });
  assert.equal(on('2014-05-12').virginDays?.earliest, '2014-05-12');
  assert.equal(on('2014-06-15').state, 'unknown', 'nobody has looked');
  assert.equal(on('2014-06-20').state, 'none');
  assert.equal(view('2014-05-12').layingPerDay, null);
});

test("C45 eggs that can only be a new queen's end the wait; she is new until her first workers emerge", () => {
  const view = colonyWith((yard, colony, _h, visit) => {
    visit('2014-05-01', eggs);
    yard.add('swarm', '2014-05-10', {
      what: 'left',
      from: colony,
      window: day('2014-05-10'),
      child: null,
      childName: null,
      into: null,
    });
    visit('2014-05-12', eggs);
    visit('2014-06-01', eggs);
    visit('2014-06-20', eggs);
  });
  const on = (date: string) => view(date).queen.state;
  assert.equal(on('2014-05-12'), 'cells sealed', "eggs two days after the swarm are the old queen's");
  assert.equal(on('2014-05-17'), 'virgin');
  assert.deepEqual(['2014-06-01', '2014-06-24', '2014-06-25'].map(on), ['new queen laying', 'new queen laying', 'laying']);
});

test('C46 swarm cells are told by number and ages, with the days that follow; a search before bounds them', () => {
  const view = colonyWith((_y, _c, _h, visit) => {
    visit('2014-05-01', eggs, eggs);
    visit('2014-05-08', { ...eggs, ...cells(8) }, { ...eggs, ...cells(3) });
  });
  const found = view('2014-05-08').cells;
  assert.deepEqual(found?.counts, { open: 11, sealed: 0, torn: 0, emerged: 0 });
  assert.equal(found.likelyKind, 'swarm');
  // At most an egg on the 1st: sealed 7 to 9 days after laying, so not before the 8th; open today, so at the latest on the 17th.
  assert.deepEqual(found.sealed, { earliest: '2014-05-08', latest: '2014-05-17' });
  assert.deepEqual(found.leaves, { earliest: '2014-05-08', latest: '2014-05-18' });
  assert.deepEqual(found.virginEmerges, { earliest: '2014-05-15', latest: '2014-05-26' });
  assert.deepEqual(found.places, [1, 2]);
  assert.equal(view('2014-05-08').queen.state, 'cells open');
  assert.equal(view('2014-05-30').queen.state, 'unknown', 'nobody has looked since, and their days are over');
});

test("C47 two cells of one age beside eggs are a supersedure's; one cell of each age is not told; cells cut are gone", () => {
  const after = (...seen: Partial<BarSeen>[]) =>
    colonyWith((_y, _c, _h, visit) => {
      visit('2014-05-08', ...seen.map((one) => ({ ...eggs, ...one })));
    })('2014-05-08');
  assert.equal(after(cells(2)).cells?.likelyKind, 'supersedure');
  assert.equal(after(cells(2)).queen.state, 'failing');
  assert.equal(after(cells(1, 1)).cells?.likelyKind, null);
  assert.equal(after(cells(0, 0, 0, 5)).cells?.virginEmerges, null);
  assert.equal(after(cells(0, 0, 0, 5)).queen.state, 'laying');
  const cut = colonyWith((yard, colony, hive) =>
    yard.visit('2014-05-08', colony, hive, { 1: { ...eggs, ...cells(9) } }, { cellsCut: true }),
  )('2014-05-08');
  assert.equal(cut.cells, null);
  assert.equal(cut.visits[0]?.cellsCut, true);
});

test('C48 many eggs in a cell under domed caps are laying workers, much drone under single eggs a drone layer', () => {
  const workers = colonyWith((_y, _c, _h, visit) => {
    visit('2014-06-08', { ...eggs, signs: ['several eggs in a cell', 'domed caps on worker cells'] });
  })('2014-06-08');
  assert.deepEqual([workers.queen.state, workers.queen.virginDays, workers.layingPerDay], ['laying workers', null, null]);
  const drones = colonyWith((_y, _c, _h, visit) => {
    visit('2014-06-08', { ...eggs, face: { drone8: 4 } });
  })('2014-06-08');
  assert.equal(drones.queen.state, 'drone layer');
});

test('C49 the chance to have missed cells falls with what was looked at', () => {
  const view = colonyWith((_y, _c, _h, visit) => {
    visit('2014-05-01', eggs, eggs, eggs, eggs);
    visit('2014-05-08', eggs);
  });
  assert.deepEqual(
    view('2014-05-01').search?.missAll.map(({ cells: n, chance }) => [n, Math.round(chance * 1e4) / 1e4]),
    [
      [1, 0.3],
      [3, 0.027],
      [10, 0],
    ],
  );
  const part = view('2014-05-08').search;
  assert.deepEqual([part?.barsOpened, part?.barsInBay, part?.shareLooked], [1, 12, 0.25]);
  assert.ok(Math.abs((part?.missAll[0]?.chance ?? 0) - (1 - 0.25 * 0.7)) < 1e-12);
});
