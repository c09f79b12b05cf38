/** Where combs probably hang after a visit, from journals of an invented yard. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../../../figures/book.ts';
import type { Id } from '../../../journal/entry.ts';
import { type Day, dayNumber } from '../../../numbers/day.ts';
import { type BarSeen, type SampleYard, sampleYard } from '../../for-tests.ts';
import type { MovedComb } from '../../foreseen.ts';
import { movedCombs } from './moved-combs.ts';
import { recordBook } from './record-book.ts';

type Nest = Readonly<Record<number, BarSeen>>;

const open = { eggs: 'seen', cellsLooked: 'none seen' } as const;
const usual: Nest = {
  1: { brood: 0, food: 7 },
  2: { brood: 1, food: 5, ...open },
  3: { brood: 5, food: 2, ...open },
  4: { brood: 7, food: 0.5, ...open },
  5: { brood: 3, food: 4, ...open },
  6: { brood: 0, food: 4 },
};

function visited(days: readonly (readonly [Day, Nest])[], more: (yard: SampleYard, hive: Id) => void = () => undefined) {
  const yard = sampleYard();
  const hive = yard.hive('2014-04-20');
  const colony = yard.colony('2014-04-20', hive);
  const visits = days.map(([day, nest], i) => {
    const made = yard.visit(day, colony, hive, nest);
    if (i === 0) more(yard, hive);
    return made;
  });
  const [last] = days.at(-1)!;
  const { draft, faults } = yard.fold(last);
  assert.deepEqual(faults, []);
  const found = movedCombs(recordBook(draft, colony, last, printedBook), { day: dayNumber(last), visit: visits.at(-1)! });
  return found;
}

const pairs = (found: readonly MovedComb[]) => found.map(({ today, last }) => [today, last]);
const [first, second] = ['2014-05-10', '2014-05-16'] as const;
const changed = (a: number, b: number): Nest => ({ ...usual, [a]: usual[b]!, [b]: usual[a]! });

test('E178 after a visit the combs that changed places are told with the places where they hung', () => {
  assert.deepEqual(
    visited([
      [first, usual],
      [second, usual],
    ]),
    [],
  );
  const found = visited([
    [first, usual],
    [second, changed(1, 4)],
  ]);
  assert.deepEqual(pairs(found), [
    [1, 4],
    [4, 1],
  ]);
  for (const { chance } of found) assert.ok(chance >= 0.5 && chance <= 1);
  // That all combs hold more or less is no move.
  const times = (by: number): Nest =>
    Object.fromEntries(
      Object.entries(usual).map(([place, bar]) => {
        const half = (eighths: number): number => Math.min(8, Math.round(2 * by * eighths) / 2);
        return [place, { ...bar, brood: half(bar.brood!), food: Math.min(8 - half(bar.brood!), half(bar.food!)) }];
      }),
    );
  for (const by of [0.4, 0.7, 1.5])
    assert.deepEqual(
      visited([
        [first, usual],
        [second, times(by)],
      ]),
      [],
    );
});

test('E178 a comb that came from a bar left shut is found there; bars left shut, or filled in as expected, are told nowhere else', () => {
  const { 4: heart, ...others } = usual;
  const found = visited([
    [first, usual],
    [second, { ...others, 1: heart! }],
  ]);
  assert.deepEqual(pairs(found), [[1, 4]]);
  const filled: Nest = {
    ...changed(1, 4),
    1: { ...usual[4]!, method: 'as expected' },
    4: { ...usual[1]!, method: 'as expected' },
  };
  assert.deepEqual(
    visited([
      [first, usual],
      [second, filled],
    ]),
    [],
  );
});

test('E178 a move that was written down is none, nor one of a comb on a marked bar, or named by the reading', () => {
  const written = (yard: SampleYard, hive: Id): void => {
    const [one, four] = [1, 4].map((place) => combAt(yard, place));
    yard.add('placing', '2014-05-12', { comb: one, to: { kind: 'away', where: 'box' } });
    yard.add('placing', '2014-05-12', { comb: four, to: { kind: 'place', hive, place: 1, facing: 'as built' } });
    yard.add('placing', '2014-05-12', { comb: one, to: { kind: 'place', hive, place: 4, facing: 'as built' } });
  };
  assert.deepEqual(
    visited(
      [
        [first, usual],
        [second, changed(1, 4)],
      ],
      written,
    ),
    [],
  );
  const marked = (yard: SampleYard): void => {
    [1, 4].forEach((place) => {
      const bar = yard.id();
      yard.add('bar', '2014-05-12', { bar, mark: `M${place}`, width: null });
      yard.add('comb', '2014-05-12', { comb: combAt(yard, place), bar });
    });
  };
  assert.deepEqual(
    visited(
      [
        [first, usual],
        [second, changed(1, 4)],
      ],
      marked,
    ),
    [],
  );
});

/** A comb that no entry begins bears the id of its first reading. */
function combAt(yard: SampleYard, place: number): Id {
  const found = yard.entries.find(({ kind, body }) => kind === 'reading' && (body as { place: number }).place === place);
  assert.ok(found);
  return found.id;
}
