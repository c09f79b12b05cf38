/** The command itself: what it prints, that its JSON has the form that is promised, and what it refuses. */
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { printedBook } from '../../src/figures/book.ts';
import { scoredForm } from './d1.ts';
import { madeUpSplits, readWorldSky } from './made-up-splits.ts';
import { foreseeColony } from './methods.ts';
import { readCounts } from './read-counts.ts';
import { score } from './score.ts';
import { splitPlan } from './split-plan.ts';

const folder = mkdtempSync(join(tmpdir(), 'score-'));
after(() => rmSync(folder, { recursive: true }));
const write = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

const counts = write(
  'counts.csv',
  'colony,date,adult_bees,capped_worker_cells,yard\nA,2021-04-01,6000,,w\nA,2021-04-29,7000,,w\nB,2021-04-01,5000,,w\nB,2021-04-29,0,,w',
);
const starts = write('starts.csv', 'colony,split_date\nA,2021-03-25');
const few = ['--particles', '40'];
const asked = ['--file', counts, '--start', starts, '--json', ...few];

const numbers = ['logRmse', 'mae', 'crpsLog', 'cover50', 'cover80', 'cover90'];

test('E13 with --json there is JSON alone, of the form that is promised', () => {
  const { code, out, complaint } = score(asked);
  assert.deepEqual([code, complaint], [0, '']);
  const { targets } = JSON.parse(out) as Record<string, Record<string, Record<string, unknown>>>;
  assert.deepEqual(Object.keys(targets!), ['adult_bees', 'capped_worker_cells']);
  const { intervals, pooled, yards } = targets!['adult_bees'] as Record<string, Record<string, unknown>> & {
    intervals: unknown[];
  };
  for (const scores of [...(intervals as unknown as Record<string, unknown>[]), pooled!]) {
    for (const key of ['from', 'to', 'n', 'methods', 'difference']) assert.ok(key in scores, key);
    const methods = scores['methods'] as Record<string, Record<string, unknown>>;
    assert.deepEqual(Object.keys(methods), ['engine', 'challenger', 'blend', 'persistence']);
    for (const method of Object.values(methods)) assert.deepEqual(Object.keys(method), numbers);
    assert.deepEqual(Object.keys(scores['difference'] as object), ['method', 'value', 'lo95', 'hi95']);
    assert.equal((scores['difference'] as { method: string }).method, 'blend');
  }
  const [first] = intervals as unknown as Record<string, unknown>[];
  assert.deepEqual([first?.['k'], first?.['n'], first?.['zeros'], first?.['from'], first?.['to']], [1, 1, 1, 7, 35]);
  assert.deepEqual(Object.keys(yards!['w'] as object), ['n', 'difference']);
  assert.deepEqual((targets!['capped_worker_cells'] as unknown as { intervals: unknown[] }).intervals, []);
});

test('E13 the same seed prints the same, another seed does not', () => {
  assert.equal(score(asked).out, score(asked).out);
  assert.notEqual(score([...asked, '--seed', '2']).out, score(asked).out);
});

test('E3 orders and files that cannot be are refused on the error output, with code 2', () => {
  for (const args of [[], ['--file', 'nowhere.csv'], ['--file', counts, '--seed', 'x'], ['--file', starts], ['--what']]) {
    const { code, out, complaint } = score(args);
    assert.deepEqual([code, out], [2, '']);
    assert.ok(complaint.length > 0);
  }
});

test('E14 what is scored rests on the printed figures alone: no keeper’s figure, nothing fitted to the file', () => {
  const source = readFileSync('tools/score/score.ts', 'utf8');
  assert.ok(source.includes('book: printedBook'));
  const own = {
    overrides: new Map([['engine-capacity', { key: 'engine-capacity', value: 500, low: 400, high: 600, entry: '' }]]),
  };
  const read = readCounts(readFileSync(counts, 'utf8'), null);
  assert.ok(read.ok);
  const effort = { particles: 40, seed: 1 };
  const printed = foreseeColony(read.value[0]!, { ...effort, book: printedBook });
  const other = foreseeColony(read.value[0]!, { ...effort, book: own as typeof printedBook });
  assert.notDeepEqual(other[1]!.adult_bees!.engine, printed[1]!.adult_bees!.engine);
  assert.deepEqual(printed, foreseeColony(read.value[0]!, { ...effort, book: printedBook }));
});

test('E17 the published autumn counts come out with a year, autumn before winter', () => {
  const text = 'colony,date_dd_mon,adult_bees,capped_worker_cells\n17,19-Sep,7654.5,14295.6\n17,8-Feb,,3\n';
  assert.equal(scoredForm(text), 'colony,date,adult_bees,capped_worker_cells\n17,2021-09-19,7654.5,14295.6\n17,2022-02-08,,3');
  assert.throws(() => scoredForm('colony,date_dd_mon\n1,30 June'), /line 2, column date_dd_mon/);
});

test('E18 a made-up trial is in the form that is scored, the same for the same seed, in either world', () => {
  const sky = readWorldSky();
  for (const n of [0, 1]) {
    const plan = splitPlan(4, n, 3);
    const files = madeUpSplits(plan, sky);
    assert.deepEqual(madeUpSplits(plan, sky), files);
    const read = readCounts(files.counts, files.starts);
    assert.ok(read.ok);
    assert.deepEqual(
      read.value.map(({ rows, splitOn }) => [rows.length, splitOn !== null]),
      [
        [4, true],
        [4, true],
        [4, true],
      ],
    );
    const bees = read.value.flatMap(({ rows }) => rows.map(({ counts: count }) => count.adult_bees!));
    assert.ok(bees.every((count) => count >= 0 && count < 80_000) && bees.some((count) => count > 500));
  }
});
