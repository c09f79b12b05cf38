/** Combs grown together, pieces, the comb on the board, two combs on a bar, a bee escape: through the fold, by worked examples. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../figures/book.ts';
import type { Id } from '../journal/entry.ts';
import { type BarSeen, sampleYard } from './for-tests.ts';
import { viewOf } from './view-of.ts';

const start = '2014-05-01';
const brood: BarSeen = { brood: 4, food: 2, eggs: 'seen' };

function row(places = 5) {
  const yard = sampleYard();
  const hive = yard.hive(start);
  const colony = yard.colony(start, hive);
  const bars = Object.fromEntries(Array.from({ length: places }, (_, i) => [i + 1, brood]));
  yard.visit('2014-05-05', colony, hive, bars, { followerAfter: places });
  const join = (...at: number[]): Id =>
    yard.add('combs-joined', '2014-05-06T10:00', {
      hive,
      visit: null,
      how: 'across bars',
      bars: at.map((place) => ({ place, comb: yard.id() })),
    }).id;
  const part = (joined: Id, places: readonly number[], stopped: string | null = null) =>
    yard.add('combs-parted', '2014-05-06T11:00', { hive, visit: null, joined, places, stopped });
  const move = (move: unknown, at = '2014-05-06T12:00') => yard.add('move', at, { hive, visit: null, outward: 'last', move });
  const told = () => yard.fold().faults.map(({ code, path }) => `${code} ${path}`);
  const hung = (): Readonly<Record<number, Id>> => Object.fromEntries(yard.fold().draft.placed.get(hive) ?? []);
  const view = (day = '2014-05-06') => viewOf(yard.fold().draft, colony, day, printedBook);
  return { yard, hive, colony, join, part, move, told, hung, view };
}

test('H40 combs that have grown together are lifted together and hung again in their order', () => {
  const it = row();
  const before = it.hung();
  it.join(2, 3);
  const taken = it.move({ do: 'take', place: 3, to: 'hand' });
  assert.deepEqual(it.hung(), { 1: before[1], 4: before[4], 5: before[5] });
  it.move({ do: 'put', place: 4, what: { kind: 'taken', entry: taken.id }, room: 'make way' });
  assert.deepEqual(it.told(), []);
  assert.deepEqual(it.hung(), { 1: before[1], 4: before[2], 5: before[3], 6: before[4], 7: before[5] });
});

test('H41 what would tear them is refused and moves nothing: swapped, turned, a bar between them, the board between them', () => {
  for (const move of [
    { do: 'swap', place: 1, with: 2 },
    { do: 'turn', place: 3 },
    { do: 'put', place: 3, what: { kind: 'bare' }, room: 'make way' },
    { do: 'shift', place: 3, by: 1 },
    { do: 'follower', place: 2 },
  ]) {
    const it = row();
    it.join(2, 3);
    const before = it.hung();
    it.move(move);
    assert.deepEqual([move.do, it.told(), it.hung()], [move.do, ['joined-torn move.place'], before]);
  }
});

test('H42 cut apart they hang alone, one by one; with one left nothing hangs together', () => {
  const it = row();
  const joined = it.join(2, 3, 4);
  it.part(joined, [4], 'too warm');
  it.move({ do: 'swap', place: 4, with: 5 });
  assert.deepEqual(it.told(), []);
  it.move({ do: 'turn', place: 3 }, '2014-05-06T12:01');
  assert.deepEqual(it.told(), ['joined-torn move.place']);
  it.yard.add('combs-parted', '2014-05-07', { hive: it.hive, visit: null, joined, places: [2], stopped: null });
  it.move({ do: 'turn', place: 3 }, '2014-05-07T12:00');
  assert.deepEqual(it.told(), ['joined-torn move.place']);
});

test('H43 what cannot be joined or cut apart is refused with its field', () => {
  const it = row();
  const joined = it.join(2, 3);
  it.join(3, 4);
  it.join(1, 4);
  it.part(joined, [5]);
  it.part(joined, []);
  it.part(it.yard.id(), [2]);
  it.part(joined, [2, 3]);
  it.part(joined, [2]);
  assert.deepEqual(it.told(), [
    'joined-twice bars.0.place',
    'not-neighbours bars',
    'not-joined places.0',
    'nothing-parted places',
    'unknown-joined joined',
    'parted-already joined',
  ]);
});

test('H44 a bar that nobody had read becomes a comb, when it has grown together with its neighbour', () => {
  const it = row();
  it.join(5, 6);
  assert.deepEqual(it.told(), []);
  assert.equal(Object.keys(it.hung()).length, 6);
});

test('C150 read as one, every comb of the set holds what was read, and what was counted on it is counted once', () => {
  const it = row();
  it.join(2, 3, 4);
  const cells = { open: 3, sealed: 0, torn: 0, emerged: 0 };
  const visit = it.yard.visit('2014-05-12', it.colony, it.hive, {
    3: { brood: 0, food: 8, of: 'set', queen: 'seen', cellsLooked: 'seen', cells },
  });
  const { draft, faults } = it.yard.fold();
  assert.deepEqual(faults, []);
  const rows = draft.visits.get(visit)!.readings;
  assert.deepEqual(rows.map(({ body }) => body.place).sort(), [2, 3, 4]);
  assert.equal(new Set(rows.map(({ comb }) => comb)).size, 3);
  assert.deepEqual(
    rows.flatMap((one) => one.body.cells ?? []),
    [cells],
  );
  assert.equal(rows.filter(({ body }) => body.queen === 'seen').length, 1);
  const bars = it
    .view('2014-05-12')
    .bars.filter(({ shares }) => shares?.sealed === 0)
    .map(({ place }) => place);
  assert.deepEqual(bars, [2, 3, 4]);
});

test('C151 the rounding of a set is one rounding: its range is wider than that of bars read apart', () => {
  const width = (together: boolean): number => {
    const it = row(3);
    it.join(1, 2, 3);
    const seen: BarSeen = { brood: 0, food: 4 };
    it.yard.visit('2014-05-12', it.colony, it.hive, together ? { 1: { ...seen, of: 'set' } } : { 1: seen, 2: seen, 3: seen });
    const { low, high, likely } = it.view('2014-05-12').totals.honeyKg.seen;
    return (high - low) / likely;
  };
  assert.ok(width(true) > width(false) + 0.003, `${width(true)} and ${width(false)}`);
});

test('C152 a bar alone cannot be read as a set', () => {
  const it = row();
  it.yard.visit('2014-05-12', it.colony, it.hive, { 3: { brood: 0, food: 8, of: 'set' } }, null);
  assert.deepEqual(it.told(), ['not-joined of']);
});

test('C153 a piece takes its part of what the comb held, and what is left holds the rest', () => {
  const it = row(2);
  const whole = it.view().totals.honeyKg.total.likely;
  it.yard.add('comb-piece', '2014-05-06', {
    hive: it.hive,
    visit: null,
    place: 2,
    comb: it.yard.id(),
    share8: 2,
    to: { kind: 'place', place: 4 },
  });
  assert.deepEqual(it.told(), []);
  const { bars, totals } = it.view();
  assert.deepEqual(
    [1, 2, 4].map((place) => bars.find((bar) => bar.place === place)?.built),
    [1, 0.75, 0.25],
  );
  assert.ok(Math.abs(totals.honeyKg.total.likely - whole) < 1e-9 * whole);
});

test('C153 a piece of a piece, and a piece put away', () => {
  const it = row(2);
  const whole = it.view().totals.honeyKg.total.likely;
  const cut = (at: string, place: number, share8: number, to: unknown) =>
    it.yard.add('comb-piece', at, { hive: it.hive, visit: null, place, comb: it.yard.id(), share8, to });
  cut('2014-05-06T10:00', 2, 4, { kind: 'place', place: 3 });
  cut('2014-05-06T11:00', 3, 4, { kind: 'away', where: 'tub' });
  assert.deepEqual(it.told(), []);
  const { bars, totals } = it.view();
  assert.deepEqual(
    [2, 3].map((place) => bars.find((bar) => bar.place === place)?.built),
    [0.5, 0.25],
  );
  assert.ok(Math.abs(totals.honeyKg.total.likely - whole * 0.875) < 1e-9 * whole);
});

test('C154 read anew without its size, what is left stays as large as it was cut; measured anew, it is as measured', () => {
  const it = row(2);
  it.yard.add('comb-piece', '2014-05-06', {
    hive: it.hive,
    visit: null,
    place: 2,
    share8: 4,
    to: { kind: 'away', where: 'box' },
  });
  const built = (): number | undefined => it.view('2014-05-20').bars.find(({ place }) => place === 2)?.built;
  it.yard.visit('2014-05-12', it.colony, it.hive, { 2: { ...brood, built8: null } });
  assert.equal(built(), 0.5);
  it.yard.visit('2014-05-19', it.colony, it.hive, { 2: { ...brood, built8: 6 } });
  assert.equal(built(), 0.75);
});

test('C153 a bar that nobody had read becomes a comb, when a piece of it is cut', () => {
  const it = row(2);
  it.yard.visit('2014-05-06', it.colony, it.hive, {}, { followerAfter: 5 });
  it.yard.add('comb-piece', '2014-05-07', {
    hive: it.hive,
    visit: null,
    place: 4,
    comb: it.yard.id(),
    share8: 2,
    to: { kind: 'away', where: 'box' },
  });
  assert.deepEqual(it.told(), []);
  assert.equal(Object.keys(it.hung()).length, 3);
});

test('C155 a piece of no comb, onto a comb, or beyond the trough is refused', () => {
  const it = row(2);
  const cut = (place: number, to: unknown) =>
    it.yard.add('comb-piece', '2014-05-06', { hive: it.hive, visit: null, place, comb: it.yard.id(), share8: 2, to });
  cut(7, { kind: 'away', where: 'box' });
  cut(1, { kind: 'place', place: 2 });
  cut(1, { kind: 'place', place: 40 });
  assert.deepEqual(it.told(), ['no-comb-there place', 'place-occupied to.place', 'place-beyond-trough to.place']);
});

test('C156 comb on the follower board counts, is no bar of the row, goes with the board, and is gone when read as bare', () => {
  const it = row(3);
  const without = it.view().totals.honeyKg.total.likely;
  it.yard.visit('2014-05-06', it.colony, it.hive, { 3: { brood: 0, food: 8, of: 'follower' } });
  assert.deepEqual(it.told(), []);
  assert.deepEqual([it.view().bars.length, it.view().board?.shares?.honey === undefined], [3, false]);
  assert.ok(it.view().totals.honeyKg.total.likely > without);
  it.yard.visit('2014-05-07', it.colony, it.hive, {}, { followerAfter: 5 });
  assert.equal(it.view('2014-05-07').board?.place, 6);
  it.yard.visit('2014-05-08', it.colony, it.hive, { 5: { combClass: 'bare', built8: 0, of: 'follower' } });
  assert.deepEqual([it.told(), it.view('2014-05-08').board], [[], undefined]);
});

test('C156 away from the board nothing is read of it', () => {
  const it = row(3);
  it.yard.visit('2014-05-06', it.colony, it.hive, { 2: { food: 8, of: 'follower' } });
  assert.deepEqual(it.told(), ['not-at-follower place']);
});

test('C157 two combs side by side on one bar count twice, until they were seen to be one', () => {
  const it = row(1);
  const built = () => it.view('2014-06-01').bars[0]?.built;
  it.yard.visit('2014-05-12', it.colony, it.hive, { 1: { ...brood, double: true } });
  assert.equal(built(), 2);
  it.yard.visit('2014-05-19', it.colony, it.hive, { 1: brood });
  assert.equal(built(), 2);
  it.yard.visit('2014-05-26', it.colony, it.hive, { 1: { ...brood, double: false } });
  assert.equal(built(), 1);
});

test('C158 a bee escape is set once and taken out once', () => {
  const it = row(3);
  const escape = (day: string, what: string, after: number | null = 2) =>
    it.yard.add('bee-escape', day, { colony: it.colony, hive: it.hive, visit: null, what, after });
  escape('2014-05-06', 'taken out');
  escape('2014-05-07', 'set');
  escape('2014-05-08', 'set');
  escape('2014-05-09', 'taken out', 30);
  escape('2014-05-10', 'taken out');
  assert.deepEqual(it.told(), ['bee-escape-twice what', 'bee-escape-twice what', 'place-beyond-trough after']);
});
