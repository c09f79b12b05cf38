/** What the tables of counts and starts may say, and that everything else is refused by line and column. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { dayNumber } from '../../src/numbers/day.ts';
import { readCsv } from './csv.ts';
import { readCounts } from './read-counts.ts';

const head = 'colony,date,adult_bees,capped_worker_cells';

function faults(rows: readonly string[], starts: string | null = null, top = head): readonly string[] {
  const read = readCounts([top, ...rows].join('\n'), starts);
  return read.ok ? [] : read.issues.map(({ code, path }) => `${path}: ${code}`);
}

test('E1 a table is read with quotes, doubled quotes, either line end and a byte order mark', () => {
  const read = readCsv('\uFEFFname,said\r\n"a, b","""no""\nno"\r\n\nc,d', 'x');
  assert.ok(read.ok);
  assert.deepEqual(read.value.columns, ['name', 'said']);
  assert.deepEqual(read.value.rows, [
    { line: 2, cells: { name: 'a, b', said: '"no"\nno' } },
    { line: 5, cells: { name: 'c', said: 'd' } },
  ]);
});

test('E1 a table that is none is refused with its line', () => {
  const code = (text: string): string => {
    const read = readCsv(text, 'x');
    return read.ok ? 'good' : read.issues.map((issue) => `${issue.path}: ${issue.code}`).join();
  };
  assert.equal(code(''), 'x: empty-file');
  assert.equal(code('a,b\n1,"2\n3'), 'x line 2: quote-not-closed');
  assert.equal(code('a,b\n1,2\n3'), 'x line 3: uneven-row');
  assert.equal(code('a,b,a\n1,2,3'), 'x line 1, column a: column-twice');
});

test('E2 counts, rounds, yards and splits come out by colony; what is empty was not counted, and 0 was', () => {
  const text = `${head},round,yard,other\nA,2021-04-01,5000,,1,west,x\nB,2021-04-01,0,10,1,,y\nA,2021-05-01,,700,2,west,z\n`;
  const read = readCounts(text, 'colony,split_date\nA,2021-03-20\nC,2021-03-20\nB,');
  assert.ok(read.ok);
  const [a, b] = read.value;
  assert.deepEqual(a, {
    colony: 'A',
    yard: 'west',
    splitOn: dayNumber('2021-03-20'),
    rows: [
      { day: dayNumber('2021-04-01'), round: 1, counts: { adult_bees: 5000, capped_worker_cells: null } },
      { day: dayNumber('2021-05-01'), round: 2, counts: { adult_bees: null, capped_worker_cells: 700 } },
    ],
  });
  assert.deepEqual([b?.splitOn, b?.rows[0]?.counts], [null, { adult_bees: 0, capped_worker_cells: 10 }]);
});

test('E3 every fault is told with its line and column, all at once', () => {
  const rows = ['A,2021-02-30,1,1', ',2021-03-01,1,1', 'B,2021-03-01,-1,x', 'C,2021-03-01,NaN,Infinity', 'D,2021-03-01,200001,1'];
  assert.deepEqual(faults(rows), [
    'counts line 2, column date: no-day',
    'counts line 3, column colony: no-colony',
    'counts line 4, column adult_bees: no-count',
    'counts line 4, column capped_worker_cells: no-count',
    'counts line 5, column adult_bees: no-count',
    'counts line 5, column capped_worker_cells: no-count',
    'counts line 6, column adult_bees: no-count',
  ]);
});

test('E3 days out of order, a count before its split, two counts of a day and two yards are refused', () => {
  assert.deepEqual(faults(['A,2021-03-02,1,1', 'A,2021-03-01,1,1']), ['counts line 3, column date: out-of-order']);
  assert.deepEqual(faults(['A,2021-03-02,1,', 'A,2021-03-02,2,']), ['counts line 3, column adult_bees: counted-twice']);
  assert.deepEqual(faults(['A,2021-03-02,1,', 'A,2021-03-02,,2']), []);
  assert.deepEqual(faults(['A,2021-03-02,1,1'], 'colony,split_date\nA,2021-03-03'), ['counts line 2, column date: before-split']);
  assert.deepEqual(faults(['A,2021-03-02,1,1,west', 'A,2021-03-09,1,1,east'], null, `${head},yard`), [
    'counts line 3, column yard: two-yards',
  ]);
  assert.deepEqual(faults(['A,2021-03-02,1,1,2', 'A,2021-03-09,1,1,2', 'A,2021-03-10,1,1,x'], null, `${head},round`), [
    'counts line 3, column round: rounds-out-of-order',
    'counts line 4, column round: no-round',
  ]);
});

test('E3 a table without its columns, and splits that are none, are refused', () => {
  assert.deepEqual(faults(['A,1'], null, 'colony,adult_bees'), ['counts line 1, column date: no-column']);
  assert.deepEqual(faults(['A,2021-03-02'], null, 'colony,date'), [
    'counts line 1, column adult_bees: no-column',
    'counts line 1, column capped_worker_cells: no-column',
  ]);
  assert.deepEqual(faults(['A,2021-03-02,1,1'], 'colony,split_date\nA,soon\nA,2021-03-01\n,2021-03-01\nB,2021-03-01\nB,'), [
    'starts line 2, column split_date: no-day',
    'starts line 4, column colony: no-colony',
    'starts line 6, column colony: split-twice',
  ]);
});
