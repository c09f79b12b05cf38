/** Moves by hand through the fold: contents go with the comb, a late correction re-runs what came after, the impossible is refused. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../figures/book.ts';
import type { Move } from '../hive/row.ts';
import type { Entry, Id } from '../journal/entry.ts';
import { type BarSeen, type SampleYard, sampleYard } from './for-tests.ts';
import { viewOf } from './view-of.ts';

const start = '2014-05-01';
const on = '2014-05-05';
const brood = (eighths: number): BarSeen => ({ brood: eighths, food: 1, eggs: 'seen' });

interface Row {
  readonly yard: SampleYard;
  readonly hive: Id;
  readonly colony: Id;
  readonly move: (
    move: Move,
    change?: { readonly hive?: Id; readonly outward?: 'first' | 'last'; readonly day?: string },
  ) => Entry;
}

/** Places 1 to 5, read with as many eighths of brood. */
function fiveBars(): Row {
  const yard = sampleYard();
  const hive = yard.hive(start);
  const bay = yard.id();
  yard.add('bay', start, { bay, hive, from: 1, to: 5 });
  const colony = yard.colony(start, hive, { bay });
  yard.visit(on, colony, hive, { 1: brood(1), 2: brood(2), 3: brood(3), 4: brood(4), 5: brood(5) }, null);
  const move: Row['move'] = (done, { hive: other = hive, outward = 'last', day = `${on}T18:00` } = {}) =>
    yard.add('move', day, { hive: other, visit: null, outward, move: done });
  return { yard, hive, colony, move };
}

/** Eighths of brood by place, `-` where nothing was read. */
function row({ yard, colony }: Row): string {
  const { draft } = yard.fold();
  return viewOf(draft, colony, on, printedBook)
    .bars.map(({ shares, readOn }) => {
      if (shares === null || readOn === null) return '-';
      return String(Math.round(8 * (shares.egg + shares.larva + shares.sealed + shares.emerging)));
    })
    .join(' ');
}

function codes({ yard }: Row): readonly string[] {
  return yard.fold().faults.map(({ code }) => code);
}

test('C90 what was read travels with the comb: swapped, shifted, put elsewhere, made way for', () => {
  const swapped = fiveBars();
  swapped.move({ do: 'swap', place: 2, with: 3 });
  assert.equal(row(swapped), '1 3 2 4 5');
  const shifted = fiveBars();
  shifted.move({ do: 'shift', place: 4, by: 1 });
  assert.equal(row(shifted), '1 2 3 - 4 5');
  const bare = fiveBars();
  bare.move({ do: 'put', place: 3, what: { kind: 'bare' }, room: 'make way' });
  assert.equal(row(bare), '1 2 - 3 4 5');
  const put = fiveBars();
  const taken = put.move({ do: 'take', place: 1, to: 'hand' });
  put.move({ do: 'put', place: 4, what: { kind: 'taken', entry: taken.id }, room: 'make way' });
  assert.equal(row(put), '- 2 3 1 4 5');
  for (const one of [swapped, shifted, bare, put]) assert.deepEqual(codes(one), []);
});

test('C91 a comb put away keeps what is known of it, and hangs again in another hive with it', () => {
  const here = fiveBars();
  const other = here.yard.hive(start);
  const bay = here.yard.id();
  here.yard.add('bay', start, { bay, hive: other, from: 1, to: 3 });
  const weak = here.yard.colony(start, other, { bay });
  const taken = here.move({ do: 'take', place: 5, to: 'box' });
  here.move({ do: 'put', place: 2, what: { kind: 'taken', entry: taken.id }, room: 'make way' }, { hive: other });
  assert.deepEqual(codes(here), []);
  assert.equal(row(here), '1 2 3 4 -');
  assert.equal(row({ ...here, colony: weak }), '- 5 - -');
});

test('C92 the follower board and turned combs: the bay ends where the board stands, and a comb turned twice hangs as built', () => {
  const board = fiveBars();
  board.move({ do: 'follower', place: 4 });
  const { draft } = board.yard.fold();
  assert.deepEqual(viewOf(draft, board.colony, on, printedBook).bay, { from: 1, to: 4 });
  const turned = fiveBars();
  turned.move({ do: 'turn', place: 2 });
  const facing = (): unknown => [...turned.yard.fold().draft.combs.values()][1]?.at;
  assert.deepEqual(facing(), { kind: 'place', hive: turned.hive, place: 2, facing: 'turned' });
  turned.move({ do: 'turn', place: 2 });
  assert.deepEqual(facing(), { kind: 'place', hive: turned.hive, place: 2, facing: 'as built' });
});

test('C93 a move corrected late re-runs those after it; where that is impossible they are refused, and the comb stays where it is', () => {
  const late = fiveBars();
  const taken = late.move({ do: 'take', place: 2, to: 'hand' });
  const put = late.move({ do: 'put', place: 2, what: { kind: 'bare' }, room: 'free' });
  late.move({ do: 'put', place: 5, what: { kind: 'taken', entry: taken.id }, room: 'make way' });
  assert.equal(row(late), '1 - 3 4 2 5');
  const correct = (place: number): Entry => ({
    ...late.yard.add('correction', '2014-05-09', {
      body: { hive: late.hive, visit: null, outward: 'last', move: { do: 'take', place, to: 'hand' } },
      why: 'it was another',
      knew: [],
    }),
  });
  const correction = correct(3);
  const index = late.yard.entries.indexOf(late.yard.entries.find(({ id }) => id === correction.id)!);
  late.yard.entries[index] = { ...correction, corrects: taken.id };
  // Place 2 was not emptied after all: the bare bar has no room there, the comb of place 3 hangs at 5.
  assert.deepEqual(
    late.yard.fold().faults.map(({ code, entry }) => [code, entry]),
    [['place-occupied', put.id]],
  );
  assert.equal(row(late), '1 2 - 4 3 5');
});

test('C94 what cannot be is refused with its field: no bar, two places, no room, another bay, not yet begun, beyond the trough', () => {
  const refused = (make: (here: Row) => unknown): readonly string[] => {
    const here = fiveBars();
    make(here);
    return here.yard.fold().faults.map(({ code, path }) => `${code} ${path}`);
  };
  assert.deepEqual(
    refused(({ move }) => move({ do: 'take', place: 9, to: 'hand' })),
    ['no-bar-there move.place'],
  );
  assert.deepEqual(
    refused(({ move }) => {
      const taken = move({ do: 'take', place: 2, to: 'hand' });
      for (const place of [2, 6]) move({ do: 'put', place, what: { kind: 'taken', entry: taken.id }, room: 'free' });
    }),
    ['comb-in-two-places move.what.entry'],
  );
  assert.deepEqual(
    refused(({ move }) => move({ do: 'put', place: 3, what: { kind: 'bare' }, room: 'free' })),
    ['place-occupied move.place'],
  );
  assert.deepEqual(
    refused(({ move }) => move({ do: 'shift', place: 1, by: 9 })),
    ['place-beyond-trough move.by'],
  );
  assert.deepEqual(
    refused(({ move }) => move({ do: 'take', place: 13, to: 'hand' })),
    ['place-beyond-trough move.place'],
  );
  assert.deepEqual(
    refused(({ yard, hive, move }) => {
      const bay = yard.id();
      yard.add('bay', start, { bay, hive, from: 6, to: 9 });
      yard.colony(start, hive, { bay });
      move({ do: 'put', place: 3, what: { kind: 'bare' }, room: 'make way' }, { day: '2014-05-06' });
    }),
    ['bays-overlap move.place'],
  );
  assert.deepEqual(
    refused(({ yard, hive, move }) => {
      const comb = yard.id();
      yard.add('comb', on, { comb, born: { earliest: '2014-06-01', latest: '2014-06-03' } });
      move({ do: 'put', place: 6, what: { kind: 'comb', comb }, room: 'free' });
      yard.add('placing', on, { comb, to: { kind: 'place', hive, place: 7, facing: 'as built' } });
    }),
    ['placed-before-born to.place', 'placed-before-born move.what.comb'],
  );
});

test('C94 a comb that was melted or given away is hung by nobody', () => {
  for (const where of ['melted', 'given away']) {
    const here = fiveBars();
    const comb = here.yard.fold().draft.placed.get(here.hive)?.get(2) ?? '';
    here.yard.add('placing', `${on}T17:00`, { comb, to: { kind: 'away', where } });
    here.move({ do: 'put', place: 6, what: { kind: 'comb', comb }, room: 'free' });
    assert.deepEqual(codes(here), ['comb-ended'], where);
  }
});

test('C95 strips of wood and bars that stand out of the trough by more than a bar are refused once its length was measured', () => {
  const here = fiveBars();
  here.move({ do: 'spacer', place: 3, widthMm: 100 });
  assert.deepEqual(codes(here), []);
  const barMm = 12 * here.yard.fold().draft.hives.get(here.hive)!.barWidth.value;
  here.yard.add('measurement', `${on}T19:00`, { what: 'box length', typed: { value: barMm, unit: 'mm' }, hive: here.hive });
  here.move({ do: 'spacer', place: 4, widthMm: 10 }, { day: `${on}T20:00` });
  assert.deepEqual(codes(here), ['wider-than-trough']);
  assert.equal(here.yard.fold().faults[0]?.path, 'move.widthMm');
  // What is there already is never kept in by the refusal.
  here.move({ do: 'spacer', place: 3, widthMm: 5 }, { day: `${on}T21:00` });
  here.move({ do: 'put', place: 6, what: { kind: 'bare' }, room: 'free' }, { day: `${on}T22:00` });
  assert.deepEqual(codes(here), ['wider-than-trough']);
  assert.deepEqual([...(here.yard.fold().draft.spacers.get(here.hive) ?? [])], [[3, 5]]);
});
