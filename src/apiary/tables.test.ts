/** Tables read back by another reader are the journal's own rows; nothing unknown becomes a zero, and no cell runs. */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import fc from 'fast-check';
import { readJournal } from '../apiary.ts';
import { sampleYard } from '../colony/for-tests.ts';
import { readLines } from '../journal/lines.ts';
import type { Entry } from '../journal/entry.ts';
import { type Cell, csvText } from '../sheets/csv.ts';
import { readCsv } from '../../tools/score/csv.ts';
import { tableNames, tableOf } from './tables.ts';

const demo = readLines(readFileSync('examples/ferry-road.jsonl', 'utf8')).flatMap((line) =>
  line.ok ? [line.value as Entry] : [],
);

test('Z20 each table of the demo yard, read back by the reader of scores, has the cells it was made of, and a row for each thing', () => {
  const { state } = readJournal(demo);
  const faces = [...state.visits.values()].flatMap((visit) => visit.readings.flatMap((row) => row.body.faces));
  const expected = {
    visits: state.visits.size,
    faces: faces.length,
    colonies: state.colonies.size,
    reigns: [...state.reigns.values()].flat().length,
  };
  for (const name of tableNames) {
    const table = tableOf(name, demo);
    assert.equal(table.rows.length, expected[name], name);
    assert.ok(table.rows.length > 0 && table.rows.every((row) => row.length === table.columns.length), name);
    const read = readCsv(csvText(table), name);
    assert.ok(read.ok, JSON.stringify(read));
    assert.deepEqual(read.value.columns, table.columns);
    for (const [i, row] of table.rows.entries()) {
      const cells: readonly string[] = Object.values(read.value.rows[i]!.cells);
      assert.deepEqual(cells, row.map(shown), `${name} ${i}`);
    }
  }
});

/** As the reader hands a cell out: trimmed, and with the apostrophe before what would run. */
function shown(cell: Cell): string {
  const text = cell === null ? '' : String(cell);
  return (typeof cell === 'string' && /^[=+\-@\t\r]/.test(text) ? `'${text}` : text).trim();
}

test('Z21 what was not read is empty, and nothing read is 0', () => {
  const yard = sampleYard();
  const hive = yard.hive('2014-05-01');
  const colony = yard.colony('2014-05-01', hive);
  yard.visit('2014-05-05', colony, hive, { 1: { brood: 0, food: null, eggs: 'not looked' } });
  const { columns, rows } = tableOf('faces', yard.entries);
  const at = (name: string): Cell => rows[0]![columns.indexOf(name)]!;
  assert.deepEqual(
    [at('brood_eighths'), at('food_eighths'), at('bees_eighths'), at('queen_cells_open'), at('eggs')],
    [0, null, null, null, 'not looked'],
  );
});

test('Z22 any text comes back as it was, and none begins as a formula does', () => {
  fc.assert(
    fc.property(
      fc.array(fc.string({ unit: 'grapheme' }), { minLength: 1, maxLength: 4 }),
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      (texts, number) => {
        const columns = [...texts.map((_, i) => `c${i}`), 'n'];
        const csv = csvText({ columns, rows: [[...texts, number]] });
        const read = readCsv(csv, 'x');
        assert.ok(read.ok);
        const [first] = read.value.rows;
        const cells: Readonly<Record<string, string>> = first!.cells;
        texts.forEach((text, i) => {
          const cell = cells[`c${i}`]!;
          assert.doesNotMatch(cell, /^[=+\-@]/);
          assert.equal(cell, shown(text));
        });
        assert.equal(Number(cells['n']), number === 0 ? 0 : number);
      },
    ),
    { seed: 88, numRuns: 300 },
  );
  assert.equal(csvText({ columns: ['a'], rows: [['=1+2'], [-3]] }), "a\r\n'=1+2\r\n-3\r\n");
});
