/** A sheet typed in: what was written is read as it was meant, what was left free stays unknown, a fault names row and field. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../../../figures/book.ts';
import { sampleYard } from '../../../colony/for-tests.ts';
import { viewOf } from '../../../colony/view-of.ts';
import { freeRow, sheetEntries, type TypedRow } from './typed-sheet.ts';

const of = { visit: 'visit', colony: 'alder', hive: 'hive', sentence: 'Typed in from paper.' };
const typed = (rows: Readonly<Record<number, Partial<TypedRow>>>) =>
  sheetEntries(
    { day: '2014-05-12', rows: new Map(Object.entries(rows).map(([place, row]) => [Number(place), { ...freeRow, ...row }])) },
    of,
  );

test('R43 a row is read as it was written; what was left free was not looked at, and a free row was not opened', () => {
  const made = typed({
    1: {},
    2: { brood: '4', food: '2,5', eggs: 's', youngest: 'E', cells: '3+1', queen: 'n', note: ' heavy ' },
    3: { food: '8' },
  });
  assert.ok(made.ok);
  const [second, third] = made.value.readings;
  assert.deepEqual(
    [second?.place, second?.faces, second?.eggs, second?.youngest, second?.cells, second?.cellsLooked, second?.queen],
    [
      2,
      [{ face: 'both', brood8: 4, food8: 2.5 }],
      'seen',
      'egg',
      { open: 3, sealed: 1, torn: 0, emerged: 0 },
      'seen',
      'none seen',
    ],
  );
  assert.deepEqual(
    [third?.faces, third?.eggs, third?.cells, third?.cellsLooked, third?.queen],
    [[{ face: 'both', brood8: null, food8: 8 }], 'not looked', null, 'not looked', 'not looked'],
  );
  assert.equal(made.value.readings.length, 2);
  assert.deepEqual(made.value.notes, [{ place: 2, text: 'heavy' }]);
  const none = typed({ 2: { cells: '0', brood: '0' } });
  assert.ok(none.ok && none.value.readings[0]?.cellsLooked === 'none seen' && none.value.readings[0].cells === null);
});

test('R44 what is not understood is named by row and field with what is expected, and nothing is made', () => {
  const made = typed({
    2: { brood: '9', food: 'much' },
    3: { brood: '5', food: '5', eggs: 'x' },
    4: { brood: '1.3', youngest: 'z', cells: 'many', queen: 'yes' },
  });
  assert.ok(!made.ok);
  assert.deepEqual(
    made.issues.map(({ path, found }) => `${path}: ${found}`),
    [
      'place 2, brood: 9',
      'place 2, food: much',
      'place 3, food: 5 and 5',
      'place 3, eggs: x',
      'place 4, brood: 1.3',
      'place 4, queen: yes',
      'place 4, youngest: z',
      'place 4, cells: many',
    ],
  );
  for (const { expected } of made.issues) assert.ok(expected.length > 0);
  assert.ok(!typed({ 1: {} }).ok, 'a sheet without a bar that was read is no visit');
});

test('R45 the entries are those of a visit: the journal takes them, and the colony holds what was typed', () => {
  const yard = sampleYard();
  const hive = yard.hive('2014-05-01');
  const colony = yard.colony('2014-05-01', hive);
  const visit = yard.id();
  const made = sheetEntries(
    { day: '2014-05-12', rows: new Map([[2, { ...freeRow, food: '8' }]]) },
    { ...of, visit, colony, hive },
  );
  assert.ok(made.ok);
  for (const reading of made.value.readings) yard.add('reading', '2014-05-12', reading);
  yard.add('visit', '2014-05-12', made.value.visit);
  const { draft, faults } = yard.fold();
  assert.deepEqual(faults, []);
  const bar = viewOf(draft, colony, '2014-05-12', printedBook).bars.find(({ place }) => place === 2);
  assert.ok(bar?.shares && Math.abs(bar.shares.honey + bar.shares.nectar + bar.shares.bread - 1) < 1e-9);
});
