/**
 * A visit sheet that was filled by pencil, typed in a row a bar, as the entries that the Visit would have made. What is
 * left free was not looked at; a row left free was not opened. A fault names its row and field, and nothing is written.
 */
import type { CellCounts, Reading, Stage } from '../../../colony/reading.ts';
import { nothingAnswered } from '../../../apiary/visit-terms.ts';
import type { VisitBody } from '../../../colony/visit.ts';
import type { Day } from '../../../numbers/day.ts';
import { bad, good, type Issue, type Result } from '../../../numbers/result.ts';
import type { Id } from '../../../journal/entry.ts';

export const typedFields = ['brood', 'food', 'eggs', 'youngest', 'cells', 'queen', 'note'] as const;
export type TypedField = (typeof typedFields)[number];
export type TypedRow = Readonly<Record<TypedField, string>>;

export const freeRow: TypedRow = { brood: '', food: '', eggs: '', youngest: '', cells: '', queen: '', note: '' };

export interface TypedSheet {
  readonly day: Day;
  readonly rows: ReadonlyMap<number, TypedRow>;
}

/** What a visit of the sheet is about. */
export interface SheetOf {
  readonly visit: Id;
  readonly colony: Id;
  readonly hive: Id;
  readonly sentence: string;
}

export interface SheetEntries {
  readonly readings: readonly Reading[];
  readonly notes: readonly { readonly place: number; readonly text: string }[];
  readonly visit: VisitBody;
}

const most8 = 8;
const mostCells = 200;
const stages: Readonly<Record<string, Stage>> = { e: 'egg', y: 'young larva', l: 'larva', c: 'sealed' };
const looked: Readonly<Record<string, Reading['eggs']>> = { '': 'not looked', s: 'seen', n: 'none seen' };

export function sheetEntries(sheet: TypedSheet, of: SheetOf): Result<SheetEntries> {
  const issues: Issue[] = [];
  const filled = [...sheet.rows].filter(([, row]) => typedFields.some((field) => row[field].trim() !== ''));
  if (filled.length === 0) issues.push(issue('rows', '', 'a bar that was read'));
  const readings = filled.flatMap(([place, row]) => readingOf(place, row, of, issues) ?? []);
  if (issues.length > 0) return bad(...issues);
  const notes = filled.flatMap(([place, row]) => (row.note.trim() === '' ? [] : [{ place, text: row.note.trim() }]));
  return good({ readings, notes, visit: visitOf(sheet.day, of) });
}

function readingOf(place: number, typed: TypedRow, of: SheetOf, issues: Issue[]): Reading | null {
  const row = Object.fromEntries(typedFields.map((field) => [field, typed[field].trim().toLowerCase()])) as TypedRow;
  const at = (field: TypedField) => `place ${place}, ${field}`;
  const before = issues.length;
  const brood8 = eighths(row.brood, at('brood'), issues);
  const food8 = eighths(row.food, at('food'), issues);
  if ((brood8 ?? 0) + (food8 ?? 0) > most8)
    issues.push(issue(at('food'), `${row.brood} and ${row.food}`, 'brood and food together at most 8'));
  const eggs = oneOf(row.eggs, looked, at('eggs'), 's, n or nothing', issues);
  const queen = oneOf(row.queen, looked, at('queen'), 's, n or nothing', issues);
  const youngest = row.youngest === '' ? null : oneOf(row.youngest, stages, at('youngest'), 'e, y, l, c or nothing', issues);
  const cells = cellsOf(row.cells, at('cells'), issues);
  if (issues.length > before) return null;
  return {
    visit: of.visit,
    hive: of.hive,
    place,
    faces: [{ face: 'both', brood8, food8 }],
    eggs: eggs ?? 'not looked',
    youngest,
    cells: cells === 'none seen' ? null : cells,
    cellsLooked: cells === null ? 'not looked' : cells === 'none seen' ? 'none seen' : 'seen',
    queen: queen ?? 'not looked',
    brushed: null,
    signs: [],
    method: 'eighths',
    light: null,
  };
}

/** Halves may be typed with a point or a comma. */
function eighths(text: string, path: string, issues: Issue[]): number | null {
  if (text === '') return null;
  const value = Number(text.replace(',', '.'));
  if (Number.isFinite(value) && value >= 0 && value <= most8 && Number.isInteger(value * 2)) return value;
  issues.push(issue(path, text, 'eighths from 0 to 8, halves allowed'));
  return null;
}

function oneOf<T>(text: string, known: Readonly<Record<string, T>>, path: string, expected: string, issues: Issue[]): T | null {
  if (Object.hasOwn(known, text)) return known[text] as T;
  issues.push(issue(path, text, expected));
  return null;
}

/** Open and sealed, as "3+1"; "0" or "n": looked for and none seen; free: not looked for. */
function cellsOf(text: string, path: string, issues: Issue[]): CellCounts | 'none seen' | null {
  if (text === '') return null;
  if (text === 'n' || text === '0') return 'none seen';
  const parts = /^(\d{1,3})(?:\s*\+\s*(\d{1,3}))?$/.exec(text);
  const [open, sealed] = [Number(parts?.[1] ?? NaN), Number(parts?.[2] ?? 0)];
  if (open <= mostCells && sealed <= mostCells && open + sealed > 0) return { open, sealed, torn: 0, emerged: 0 };
  issues.push(issue(path, text, 'open + sealed, as 3+1; 0 where none were seen'));
  return null;
}

function issue(path: string, found: string, expected: string): Issue {
  return { code: 'not-understood', path, found: found === '' ? 'nothing' : found, expected };
}

function visitOf(day: Day, { visit, colony, hive, sentence }: SheetOf): VisitBody {
  return {
    visit,
    colony,
    hive,
    visitKind: 'usual',
    began: day,
    ended: null,
    order: 'from the follower',
    ...nothingAnswered(),
    sentence,
  };
}
