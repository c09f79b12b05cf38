/** What every sum must satisfy, whatever it adds up: its fields, its input, its answer. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { type FigureBook, isFigureKey, printedBook } from '../figures/book.ts';
import type { Field } from '../figures/sum.ts';
import { dayFromNumber } from '../numbers/day.ts';
import { runSum, sumHelp, sums } from './sums.ts';

function anyValue(field: Field): fc.Arbitrary<unknown> {
  if (field.kind === 'day') return fc.integer({ min: 0, max: 40000 }).map(dayFromNumber);
  if (field.kind === 'choice') return fc.constantFrom(...field.choices);
  if (field.kind === 'text') return fc.string({ minLength: 1, maxLength: field.longest });
  if (field.kind === 'flag') return fc.boolean();
  if (field.kind === 'record') return anyInput(field.of);
  if (field.kind === 'records') return fc.array(anyInput(field.of), { maxLength: 5 });
  const { low, high } = field;
  const number = fc.double({ min: low + (field.aboveLow === true ? (high - low) / 1e6 : 0), max: high, noNaN: true });
  if (field.kind === 'integer') return fc.integer({ min: low, max: high });
  return field.kind === 'numbers' ? fc.array(number, { maxLength: 40 }) : number;
}

/** Any good input: optional fields given or not, one of each group of alternatives. */
function anyInput(fields: readonly Field[]): fc.Arbitrary<Record<string, unknown>> {
  return fc
    .record(Object.fromEntries(fields.map((field) => [field.name, fc.option(anyValue(field), { nil: undefined })])), {})
    .chain((some) =>
      fc.nat().chain((pick) =>
        fc.record(
          Object.fromEntries(
            fields.flatMap((field) => {
              const group = fields.filter((other) => other.oneOf !== undefined && other.oneOf === field.oneOf);
              const chosen = group.length === 0 || group[pick % group.length] === field;
              const leftOut = field.without !== undefined && some[field.name] === undefined;
              return chosen && !leftOut ? [[field.name, anyValue(field)] as const] : [];
            }),
          ),
        ),
      ),
    );
}

/** The field that a fault names, by the first part of its path. */
const only = (fields: readonly Field[], path: string): Field => {
  const found = fields.find((field) => field.name === path.split('.')[0]);
  assert.ok(found);
  return found;
};

test('S1 keys are unique and every sum has a line, a formula, fields and figures that exist', () => {
  assert.equal(new Set(sums.map((sum) => sum.key)).size, sums.length);
  for (const sum of sums) {
    assert.ok(sum.line !== '' && sum.formula !== '' && sum.fields.length > 0, sum.key);
    assert.ok(sum.sources.every(isFigureKey), sum.key);
    assert.equal(new Set(sum.fields.map((field) => field.name)).size, sum.fields.length);
  }
});

test('S2 any input within the fields is answered or refused with a fault of a field, and never with a number that is none', () => {
  for (const sum of sums) {
    fc.assert(
      fc.property(anyInput(sum.fields), (input) => {
        const result = sum.run(input, printedBook);
        if (!result.ok) {
          for (const issue of result.issues) assert.ok(only(sum.fields, issue.path) && issue.code === 'out-of-range', issue.path);
          return;
        }
        assert.doesNotMatch(JSON.stringify(result.value), /NaN|Infinity/);
        const numbers = JSON.stringify(result.value, (_, value: unknown) => {
          assert.ok(typeof value !== 'number' || Number.isFinite(value), sum.key);
          return value;
        });
        assert.ok(numbers.length > 2);
      }),
      { seed: 81, numRuns: 150 },
    );
  }
});

test('S3 a field left out is repeated under assumed, and one that was given is not', () => {
  for (const sum of sums) {
    fc.assert(
      fc.property(anyInput(sum.fields), (input) => {
        const result = sum.run(input, printedBook);
        if (!result.ok) return;
        const standIns = sum.fields
          .filter((field) => field.without?.kind === 'figure' && !(field.name in input))
          .map((field) => field.name);
        assert.deepEqual(Object.keys(result.value['assumed'] as object), standIns);
      }),
      { seed: 82, numRuns: 60 },
    );
  }
});

test('S4 the figures named are those the answer rests on: a field that was given leaves its figure out', () => {
  const left = runSum('laying-rate', { sealedWorkerCells: 1200 }, printedBook);
  assert.ok(left.ok);
  assert.deepEqual(left.value['sources'], ['worker-sealed-days', 'survival-to-sealed']);
  const given = runSum('laying-rate', { sealedWorkerCells: 1200, sealedDays: 11 }, printedBook);
  assert.ok(given.ok);
  assert.deepEqual(given.value['sources'], ['survival-to-sealed']);
  const dates = runSum('brood-dates', { caste: 'queen', stage: 'egg', seenOn: '2025-05-01' }, printedBook);
  assert.ok(dates.ok);
  assert.deepEqual(dates.value['sources'], ['queen-egg-age', 'queen-sealing-age', 'queen-emerging-age']);
});

test("S5 the keeper's own figure takes the place of the printed one", () => {
  const own: FigureBook = {
    overrides: new Map([['bees-per-dm2', { key: 'bees-per-dm2', value: 110, low: 100, high: 120, entry: 'e' }]]),
  };
  const result = runSum('bees-on-face', { faceDm2: 1, coveredFraction: 1 }, own);
  assert.ok(result.ok);
  assert.equal(result.value['bees'], 110);
  assert.deepEqual(result.value['assumed'], { beesPerDm2: 110 });
});

test('S6 unknown, missing, mistyped and out-of-range fields are each named, all at once', () => {
  const result = runSum(
    'hive-box',
    { floorWidthMm: '200', heightMm: -1, wallAngleDeg: 30, bars: 2.5, colour: 'red' },
    printedBook,
  );
  assert.ok(!result.ok);
  assert.deepEqual(
    result.issues.map(({ path, code }) => [path, code]),
    [
      ['colour', 'unknown-field'],
      ['floorWidthMm', 'wrong-type'],
      ['heightMm', 'out-of-range'],
      ['bars', 'wrong-type'],
      ['barWidthMm', 'missing'],
    ],
  );
});

test('S6 both of two alternatives are a fault, and so is neither', () => {
  const both = runSum('cells-per-area', { cellWidthMm: 5, cellsPer10cm: 20 }, printedBook);
  assert.ok(!both.ok);
  assert.deepEqual(
    both.issues.map(({ path, code }) => [path, code]),
    [['cellsPer10cm', 'both-alternatives']],
  );
  const neither = runSum('cells-per-area', {}, printedBook);
  assert.ok(!neither.ok);
  assert.deepEqual(
    neither.issues.map(({ path, code }) => [path, code]),
    [['cellWidthMm', 'missing']],
  );
});

test('S6 a fault inside a list names its place and asks for one number', () => {
  const input = { emptyWorkerCellsInBrood: 1, emergingPerDay: [1, 'x', -3], laidPerDay: 1, nectarCellsPerDay: 0 };
  const result = runSum('room', input, printedBook);
  assert.ok(!result.ok);
  assert.deepEqual(
    result.issues.map(({ path, found }) => [path, found]),
    [
      ['emergingPerDay.1', '"x"'],
      ['emergingPerDay.2', '-3'],
    ],
  );
  assert.match(result.issues[0]?.expected ?? '', /^a number /);
});

test('S6 faults seen only when fields are read together name the field', () => {
  for (const [key, input, path] of [
    ['pattern', { occupied: 3, cells: 2 }, 'occupied'],
    ['queen-loss', { youngestStage: 'egg', larvaAgeDays: 1, seenOn: '2025-05-01' }, 'larvaAgeDays'],
    ['comb-face', { topWidthMm: 400, depthMm: 15, wallAngleDeg: 0 }, 'floorGapMm'],
    ['comb-face', { topWidthMm: 12, depthMm: 200, wallAngleDeg: 0 }, 'sideGapMm'],
  ] as const) {
    const result = runSum(key, input, printedBook);
    assert.ok(!result.ok && result.issues[0]?.path === path, key);
  }
});

test("S6 nothing that is no object is taken for input, and names of every object's own methods are no fields", () => {
  for (const input of [null, [], 'x', 3, undefined]) {
    const result = runSum('pattern', input, printedBook);
    assert.ok(!result.ok && result.issues[0]?.path === 'input');
  }
  const hidden = runSum('pattern', JSON.parse('{"__proto__": 1, "constructor": 2}'), printedBook);
  assert.ok(!hidden.ok);
  assert.deepEqual(
    hidden.issues.map((issue) => issue.code),
    ['unknown-field', 'unknown-field', 'missing', 'missing'],
  );
});

test('S7 the help of a sum shows each field with what takes its place', () => {
  assert.equal(sumHelp('no-such', printedBook), null);
  const help = sumHelp('comb-face', printedBook);
  assert.ok(help);
  assert.deepEqual(
    help.fields.map(({ field, required, standIn }) => [field.name, required, standIn?.value ?? null]),
    [
      ['topWidthMm', true, null],
      ['depthMm', true, null],
      ['wallAngleDeg', true, null],
      ['sideGapMm', false, 8],
      ['floorGapMm', false, 20],
    ],
  );
});

test('S8 an unknown sum is refused with the list of those there are', () => {
  const result = runSum('no-such', {}, printedBook);
  assert.ok(!result.ok && result.issues[0]?.expected.includes('comb-face'));
});

test('S9 faults inside records name the way to them, all at once', () => {
  const input = {
    days: [{ date: '2025-05-01', eggs: 'many', cells: { open: -1, huge: 2 } }, { eggs: 'seen', queenSeen: 'yes' }, 7],
    on: '2025-05-02',
  };
  const result = runSum('queen-state', input, printedBook);
  assert.ok(!result.ok);
  assert.deepEqual(
    result.issues.map(({ path, code }) => [path, code]),
    [
      ['days.0.eggs', 'wrong-type'],
      ['days.0.cells.huge', 'unknown-field'],
      ['days.0.cells.open', 'out-of-range'],
      ['days.1.date', 'missing'],
      ['days.1.queenSeen', 'wrong-type'],
      ['days.2', 'wrong-type'],
    ],
  );
  const many = runSum('queen-state', { days: Array(401).fill({ date: '2025-05-01' }), on: '2025-05-02' }, printedBook);
  assert.ok(!many.ok && many.issues[0]?.path === 'days');
  const late = runSum('queen-state', { days: [{ date: '2025-05-03' }], on: '2025-05-02' }, printedBook);
  assert.ok(!late.ok && late.issues[0]?.path === 'days.0.date');
});
