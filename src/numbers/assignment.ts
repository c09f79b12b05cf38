/**
 * Rows matched to columns so that the sum of their costs is least, and by how much each other match would make it dearer.
 * Shortest augmenting paths over potentials: Jonker R., Volgenant A. 1987, Computing 38, 325–340; rectangles are
 * made square with rows and columns that stand for "left out". n³ steps for n rows and columns together.
 */
import { assert } from './assert.ts';

export interface Assignment {
  readonly total: number;
  /** For each row its column; null when it is left out. */
  readonly columnOf: readonly (number | null)[];
  /**
   * For each row and column, by how much the cheapest assignment that holds this match is dearer; the last of a row
   * is for leaving it out. 0 for its own; Infinity for what cannot be.
   */
  readonly dearer: readonly (readonly number[])[];
  /** For each row, by how much the cheapest assignment is dearer in which it is matched otherwise. */
  readonly gaps: readonly number[];
}

/** What it costs to leave out a row or a column. */
export interface LeftOut {
  readonly row: number;
  readonly column: number;
}

/**
 * `costs`: rows × columns, any size; Infinity for a match that must not be. Without `leftOut` as many are matched as
 * there are of the fewer, and leaving out the others costs nothing. Throws when no such assignment exists.
 */
export function leastAssignment(costs: readonly (readonly number[])[], columns: number, leftOut?: LeftOut): Assignment {
  const rows = costs.length;
  assert(
    costs.every((row) => row.length === columns && row.every((cost) => cost > -Infinity)),
    'each row has a cost for each column',
  );
  const size = leftOut === undefined ? Math.max(rows, columns) : rows + columns;
  const square = squareOf(costs, columns, size, leftOut ?? { row: 0, column: 0 });
  const solved = solve(square, size);
  const inReality = (column: number): number | null => (column < columns ? column : null);
  const columnOf = costs.map((_, row) => inReality(solved.columnOf[row]!));
  const reduced = reducedOf(square, size, solved);
  const dearer = costs.map((_, row) => {
    const all = dearerOf(reduced, size, solved, row);
    return [...all.slice(0, columns), Math.min(Infinity, ...all.slice(columns))];
  });
  const gaps = dearer.map((all, row) => {
    const own = columnOf[row] ?? columns;
    return Math.min(Infinity, ...all.filter((_, column) => column !== own));
  });
  const total = Array.from(solved.columnOf).reduce((sum, column, row) => sum + square[row * size + column]!, 0);
  return { total, columnOf, dearer, gaps };
}

function squareOf(costs: readonly (readonly number[])[], columns: number, size: number, leftOut: LeftOut): Float64Array {
  const rows = costs.length;
  return Float64Array.from({ length: size * size }, (_, at) => {
    const [row, column] = [Math.floor(at / size), at % size];
    if (row < rows) return column < columns ? costs[row]![column]! : leftOut.row;
    return column < columns ? leftOut.column : 0;
  });
}

interface Solved {
  readonly columnOf: Int32Array;
  readonly rowOf: Int32Array;
  /** cost − ofRow − ofColumn is nowhere below 0, and 0 for what is matched. */
  readonly ofRow: Float64Array;
  readonly ofColumn: Float64Array;
}

function solve(square: Float64Array, size: number): Solved {
  const [ofRow, ofColumn] = [new Float64Array(size), new Float64Array(size)];
  const [columnOf, rowOf] = [new Int32Array(size).fill(-1), new Int32Array(size).fill(-1)];
  const solved = { columnOf, rowOf, ofRow, ofColumn };
  for (let row = 0; row < size; row += 1) augment(square, size, solved, row);
  return solved;
}

/** Matches one row more, along the shortest path from it to a column that is free. */
function augment(square: Float64Array, size: number, { columnOf, rowOf, ofRow, ofColumn }: Solved, start: number): void {
  const far = new Float64Array(size).fill(Infinity);
  const from = new Int32Array(size).fill(-1);
  const reached: number[] = [];
  const isReached = new Uint8Array(size);
  let [row, way, last] = [start, 0, -1];
  while (last < 0) {
    let next = -1;
    for (let column = 0; column < size; column += 1) {
      if (isReached[column] === 1) continue;
      const there = way + square[row * size + column]! - ofRow[row]! - ofColumn[column]!;
      if (there < far[column]!) {
        far[column] = there;
        from[column] = row;
      }
      if (next < 0 || far[column]! < far[next]!) next = column;
    }
    way = far[next]!;
    assert(way < Infinity, 'an assignment exists');
    isReached[next] = 1;
    if (rowOf[next]! < 0) last = next;
    else {
      reached.push(next);
      row = rowOf[next]!;
    }
  }
  ofRow[start]! += way;
  for (const column of reached) {
    ofRow[rowOf[column]!]! += way - far[column]!;
    ofColumn[column]! -= way - far[column]!;
  }
  for (let column = last; column >= 0;) {
    const taker = from[column]!;
    const before = columnOf[taker]!;
    [columnOf[taker], rowOf[column]] = [column, taker];
    column = before;
  }
}

/** What each match costs beyond the potentials; a hair below 0 by rounding counts as 0. */
function reducedOf(square: Float64Array, size: number, { ofRow, ofColumn }: Solved): Float64Array {
  return square.map((cost, at) => Math.max(0, cost - ofRow[Math.floor(at / size)]! - ofColumn[at % size]!));
}

/**
 * For one row, what each column instead of its own costs more: the row whose column it takes takes another, and so on
 * until one takes the column that the first left. Shortest paths back from that column.
 */
function dearerOf(reduced: Float64Array, size: number, { columnOf, rowOf }: Solved, given: number): readonly number[] {
  const own = columnOf[given]!;
  const far = Float64Array.from({ length: size }, (_, row) => reduced[row * size + own]!);
  const isDone = new Uint8Array(size);
  isDone[given] = 1;
  for (;;) {
    let near = -1;
    for (let row = 0; row < size; row += 1) if (isDone[row] === 0 && (near < 0 || far[row]! < far[near]!)) near = row;
    if (near < 0 || far[near] === Infinity) break;
    isDone[near] = 1;
    const [way, through] = [far[near]!, columnOf[near]!];
    for (let row = 0; row < size; row += 1) {
      const there = way + reduced[row * size + through]!;
      if (there < far[row]! && isDone[row] === 0) far[row] = there;
    }
  }
  return Array.from(rowOf, (row, column) => (column === own ? 0 : reduced[given * size + column]! + far[row]!));
}
