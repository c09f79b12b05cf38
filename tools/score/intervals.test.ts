/** What is foreseen of a row comes from the rows before it; which rows are scored. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../../src/figures/book.ts';
import { casesOf } from './intervals.ts';
import { foreseeColony, methods } from './methods.ts';
import { type ColonyCounts, readCounts } from './read-counts.ts';

const effort = { particles: 60, seed: 1, book: printedBook };

function read(rows: readonly string[], starts: string | null = null): readonly ColonyCounts[] {
  const result = readCounts(['colony,date,round,adult_bees,capped_worker_cells', ...rows].join('\n'), starts);
  assert.ok(result.ok, JSON.stringify(result));
  return result.value;
}

const rows = ['A,2021-04-01,1,6000,9000', 'A,2021-04-22,2,7000,', 'A,2021-05-13,3,8000,12000', 'A,2021-06-03,4,9000,8000'];

test('E10 a later row changes nothing that was foreseen before it', () => {
  const before = foreseeColony(read(rows, 'colony,split_date\nA,2021-03-25')[0]!, effort);
  const other = [...rows.slice(0, 2), 'A,2021-05-20,3,150,0', 'A,2021-09-01,4,0,4000'];
  const after = foreseeColony(read(other, 'colony,split_date\nA,2021-03-25')[0]!, effort);
  assert.deepEqual(after.slice(0, 2), before.slice(0, 2));
  for (const method of methods) assert.notDeepEqual(after[2]!.adult_bees![method], before[2]!.adult_bees![method]);
  const cut = foreseeColony(read(rows.slice(0, 3), 'colony,split_date\nA,2021-03-25')[0]!, effort);
  assert.deepEqual(cut, before.slice(0, 3));
});

test('E10 what is counted on the day itself is not seen before it is foreseen', () => {
  const before = foreseeColony(read(rows)[0]!, effort);
  const other = foreseeColony(read([...rows.slice(0, 3), 'A,2021-06-03,4,2000,20000'])[0]!, effort);
  assert.deepEqual(other, before);
});

test('E11 other colonies of the file change nothing', () => {
  const seedOf = (name: string): number => name.length;
  const alone = casesOf(read(rows), effort, seedOf);
  const beside = casesOf(read([...rows, 'BB,2021-04-01,1,100,100', 'BB,2021-04-20,2,50000,']), effort, seedOf);
  assert.deepEqual(
    beside.filter(({ colony }) => colony === 'A'),
    alone,
  );
});

test('E12 an interval leads from a count to the next; first counts have none, and days run from the split', () => {
  const bees = (cases: ReturnType<typeof casesOf>): unknown => cases.map(({ target, k, from, to }) => [target, k, from, to]);
  assert.deepEqual(bees(casesOf(read(rows, 'colony,split_date\nA,2021-03-25'), effort, () => 1)), [
    ['adult_bees', 1, 7, 28],
    ['adult_bees', 2, 28, 49],
    ['adult_bees', 3, 49, 70],
    ['capped_worker_cells', 1, 7, 49],
    ['capped_worker_cells', 3, 49, 70],
  ]);
  const cells = casesOf(read(rows), effort, () => 1).filter(({ target }) => target === 'adult_bees');
  assert.deepEqual(
    cells.map(({ from, to }) => [from, to]),
    [
      [0, 21],
      [21, 42],
      [42, 63],
    ],
  );
});

test('E12 a round that a colony missed but others had breaks its interval', () => {
  const skipped = [rows[0]!, rows[2]!, 'B,2021-04-01,1,5000,', 'B,2021-04-22,2,5000,', 'B,2021-05-13,3,5000,'];
  const cases = casesOf(read(skipped), effort, () => 1).filter(({ target }) => target === 'adult_bees');
  assert.deepEqual(
    cases.map(({ colony, k }) => `${colony}${k}`),
    ['B1', 'B2'],
  );
});

test('E8 a count of nothing, and one after it, is a case without marks', () => {
  const dead = ['A,2021-04-01,1,6000,', 'A,2021-04-22,2,0,', 'A,2021-05-13,3,500,', 'A,2021-06-03,4,900,'];
  const cases = casesOf(read(dead), effort, () => 1);
  assert.deepEqual(
    cases.map(({ marks }) => marks === null),
    [true, true, false],
  );
});
