/** The cheapest assignment and what each other match costs more, held against trying all of them. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { leastAssignment, type LeftOut } from './assignment.ts';

interface Tried {
  readonly total: number;
  /** The cheapest that holds the match; the last of a row: that leaves it out. */
  readonly cheapest: readonly (readonly number[])[];
}

/** Every way, one after the other. */
function tried(costs: readonly (readonly number[])[], columns: number, leftOut?: LeftOut): Tried {
  const rows = costs.length;
  const least = leftOut === undefined ? Math.min(rows, columns) : 0;
  const cheapest = costs.map(() => Array<number>(columns + 1).fill(Infinity));
  const taken = Array<number>(rows).fill(columns);
  const goOn = (row: number, used: ReadonlySet<number>, sum: number): void => {
    if (used.size + rows - row < least) return;
    if (row < rows) {
      goOn(row + 1, used, sum + (leftOut?.row ?? 0));
      costs[row]!.forEach((cost, column) => {
        if (used.has(column)) return;
        taken[row] = column;
        goOn(row + 1, new Set([...used, column]), sum + cost);
        taken[row] = columns;
      });
      return;
    }
    const all = sum + (leftOut?.column ?? 0) * (columns - used.size);
    taken.forEach((column, at) => (cheapest[at]![column] = Math.min(cheapest[at]![column]!, all)));
  };
  goOn(0, new Set(), 0);
  return { total: Math.min(Infinity, ...(cheapest[0] ?? [columns * (leftOut?.column ?? 0)])), cheapest };
}

function agrees(costs: readonly (readonly number[])[], columns: number, leftOut?: LeftOut): void {
  const { total, cheapest } = tried(costs, columns, leftOut);
  const found = leastAssignment(costs, columns, leftOut);
  const near = (a: number, b: number): boolean => a === b || Math.abs(a - b) < 1e-9;
  assert.ok(near(found.total, total), `${found.total} is not ${total}`);
  const used = found.columnOf.filter((column) => column !== null);
  assert.equal(new Set(used).size, used.length, 'no column twice');
  found.dearer.forEach((row, at) => {
    const own = found.columnOf[at] ?? columns;
    row.forEach((more, to) => assert.ok(near(total + more, cheapest[at]![to]!), `row ${at} to ${to}: ${more}`));
    const gap = Math.min(...cheapest[at]!.filter((_, to) => to !== own)) - total;
    assert.ok(near(found.gaps[at]!, gap), `gap of row ${at}: ${found.gaps[at]} is not ${gap}`);
  });
}

/** Whole numbers have many ties; Infinity is a match that must not be. */
const cost = fc.oneof(fc.integer({ min: -2, max: 3 }), fc.double({ min: -5, max: 5, noNaN: true }));
const matrix = (most: number, of: fc.Arbitrary<number>) =>
  fc
    .tuple(fc.integer({ min: 0, max: most }), fc.integer({ min: 0, max: most }))
    .chain(([rows, columns]) =>
      fc.tuple(
        fc.array(fc.array(of, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
        fc.constant(columns),
      ),
    );

test('E170 an assignment, and by how much each other match is dearer, is what trying all of them finds, ties and rectangles too', () => {
  fc.assert(
    fc.property(matrix(7, cost), ([costs, columns]) => agrees(costs, columns)),
    { seed: 170, numRuns: 400 },
  );
  for (const [rows, columns] of [7, 6, 5].flatMap((n) => [[n, 7] as const, [7, n] as const])) {
    const costs = Array.from({ length: rows }, (_, r) => Array.from({ length: columns }, (_, c) => (r * 37 + c * 53) % 11));
    agrees(costs, columns);
  }
});

test('E170 with prices for what is left out, and matches that must not be, too', () => {
  const some = fc.oneof({ weight: 5, arbitrary: cost }, { weight: 1, arbitrary: fc.constant(Infinity) });
  fc.assert(
    fc.property(matrix(6, some), cost, cost, ([costs, columns], row, column) => agrees(costs, columns, { row, column })),
    { seed: 1700, numRuns: 300 },
  );
  const seven = Array.from({ length: 7 }, (_, r) => Array.from({ length: 7 }, (_, c) => (r * r * 7 + c * 5) % 13));
  agrees(seven, 7, { row: 2, column: 1 });
});

test('E170 where nothing can be matched completely it stops', () => {
  assert.throws(() => leastAssignment([[Infinity]], 1));
  assert.throws(() => leastAssignment([[1, 2], [1]], 2));
});
