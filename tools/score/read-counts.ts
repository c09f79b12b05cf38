/**
 * Reads the two tables that are scored, counts and starts, and refuses what cannot be, by line and column. A
 * colony's rows must stand in the order of their dates; colonies may be mixed. Columns not named are ignored.
 */
import { printedBook, value } from '../../src/figures/book.ts';
import { dayNumber, isDay } from '../../src/numbers/day.ts';
import { bad, good, type Issue, type Result } from '../../src/numbers/result.ts';
import { readCsv, type Row, type Table } from './csv.ts';

export const targets = ['adult_bees', 'capped_worker_cells'] as const;
export type Target = (typeof targets)[number];

export interface CountRow {
  readonly day: number;
  readonly round: number | null;
  /** Null where it was not counted; 0 is a count. */
  readonly counts: Readonly<Record<Target, number | null>>;
}

export interface ColonyCounts {
  readonly colony: string;
  readonly yard: string | null;
  readonly splitOn: number | null;
  /** By day, each day once. */
  readonly rows: readonly CountRow[];
}

/** Days between a colony's first and last row that are believed: no colony of one queen's line is watched longer. */
const longestDays = 3660;

export function readCounts(counts: string, starts: string | null): Result<readonly ColonyCounts[]> {
  const table = withColumns(counts, 'counts', ['colony', 'date', ...targets]);
  if (!table.ok) return table;
  const splits = starts === null ? good(new Map<string, number>()) : readStarts(starts);
  if (!splits.ok) return splits;
  const issues: Issue[] = [];
  const colonies = new Map<string, { yard: string | null; splitOn: number | null; rows: CountRow[] }>();
  const hasRounds = table.value.columns.includes('round');
  for (const row of table.value.rows) {
    const fault = (column: string, code: string, expected: string): void => {
      const found = row.cells[column] === '' ? 'nothing' : (row.cells[column] ?? 'nothing');
      issues.push({ code, path: `counts line ${row.line}, column ${column}`, found, expected });
    };
    const read = readRow(row, hasRounds, fault);
    if (read === null) continue;
    const { colony = '', yard = '' } = row.cells;
    const known = colonies.get(colony) ?? {
      yard: yard === '' ? null : yard,
      splitOn: splits.value.get(colony) ?? null,
      rows: [],
    };
    colonies.set(colony, known);
    if (known.yard !== null && yard !== '' && yard !== known.yard)
      fault('yard', 'two-yards', `${known.yard}, as on the colony's first row`);
    if (known.splitOn !== null && read.day < known.splitOn) fault('date', 'before-split', 'a day on or after the split');
    joinRow(known.rows, read, fault);
  }
  if (issues.length > 0) return bad(...issues);
  return good([...colonies].map(([colony, known]) => ({ colony, ...known })));
}

type FaultOf = (column: string, code: string, expected: string) => void;

function readRow(row: Row, hasRounds: boolean, fault: FaultOf): CountRow | null {
  const { colony = '', date = '', round = '' } = row.cells;
  let fine = true;
  const wrong: FaultOf = (...what) => {
    fine = false;
    fault(...what);
  };
  if (colony === '') wrong('colony', 'no-colony', 'the name of a colony');
  if (!isDay(date)) wrong('date', 'no-day', 'a day YYYY-MM-DD');
  if (hasRounds && !/^\d{1,6}$/.test(round)) wrong('round', 'no-round', 'a whole number');
  const most = value(printedBook, 'engine-most-count');
  const count = (column: Target): number | null => {
    const text = row.cells[column] ?? '';
    if (text === '') return null;
    const number = /^[+]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text) ? Number(text) : NaN;
    if (!(number >= 0 && number <= most)) wrong(column, 'no-count', `a number from 0 to ${most}, or nothing`);
    return number;
  };
  const counts = { adult_bees: count('adult_bees'), capped_worker_cells: count('capped_worker_cells') };
  return fine ? { day: dayNumber(date), round: hasRounds ? Number(round) : null, counts } : null;
}

/** Puts a row after the colony's others; a second row of one day may bring what the first left open. */
function joinRow(rows: CountRow[], row: CountRow, fault: FaultOf): void {
  const last = rows.at(-1);
  if (last === undefined) {
    rows.push(row);
    return;
  }
  if (row.day < last.day) fault('date', 'out-of-order', "a day not before the colony's row above");
  else if (row.day - rows[0]!.day > longestDays)
    fault('date', 'too-far', `a day at most ${longestDays} days after the colony's first`);
  else if (row.day === last.day) {
    const twice = targets.find((target) => row.counts[target] !== null && last.counts[target] !== null);
    if (twice !== undefined) fault(twice, 'counted-twice', 'one count of a colony on a day');
    else if (row.round !== last.round) fault('round', 'two-rounds', 'one round on a day');
    else rows[rows.length - 1] = { ...row, counts: joined(last.counts, row.counts) };
  } else if (row.round !== null && last.round !== null && row.round <= last.round) {
    fault('round', 'rounds-out-of-order', "a round after that of the colony's row above");
  } else rows.push(row);
}

function joined(a: CountRow['counts'], b: CountRow['counts']): CountRow['counts'] {
  return { adult_bees: a.adult_bees ?? b.adult_bees, capped_worker_cells: a.capped_worker_cells ?? b.capped_worker_cells };
}

function readStarts(text: string): Result<ReadonlyMap<string, number>> {
  const table = withColumns(text, 'starts', ['colony', 'split_date']);
  if (!table.ok) return table;
  const splits = new Map<string, number>();
  const issues: Issue[] = [];
  for (const { line, cells } of table.value.rows) {
    const { colony = '', split_date: date = '' } = cells;
    const at = (column: string): string => `starts line ${line}, column ${column}`;
    if (colony === '') issues.push({ code: 'no-colony', path: at('colony'), found: 'nothing', expected: 'the name of a colony' });
    else if (splits.has(colony))
      issues.push({ code: 'split-twice', path: at('colony'), found: colony, expected: 'each colony once' });
    // An empty day is a colony whose beginning is not known.
    else if (date !== '' && !isDay(date))
      issues.push({ code: 'no-day', path: at('split_date'), found: date, expected: 'a day YYYY-MM-DD' });
    else if (date !== '') splits.set(colony, dayNumber(date));
  }
  return issues.length > 0 ? bad(...issues) : good(splits);
}

/** `targets` need not both be there, but one of them must. */
function withColumns(text: string, file: string, wanted: readonly string[]): Result<Table> {
  const table = readCsv(text, file);
  if (!table.ok) return table;
  const counted: readonly string[] = targets;
  const missing = wanted.filter((name) => !table.value.columns.includes(name));
  const bare = missing.filter((name) => !counted.includes(name));
  const gone =
    bare.length > 0 ? bare : wanted.some((name) => counted.includes(name)) && missing.length === counted.length ? missing : [];
  if (gone.length === 0) return table;
  return bad(
    ...gone.map((name) => ({
      code: 'no-column',
      path: `${file} line 1, column ${name}`,
      found: table.value.columns.join(', '),
      expected: `a column ${name}`,
    })),
  );
}
