/**
 * Reads the input of any sum against its fields: unknown names, missing ones, wrong types, values out of
 * range, both of two alternatives. All faults are returned at once, each with its field.
 */
import { assert } from '../numbers/assert.ts';
import { type Day, isDay } from '../numbers/day.ts';
import { bad, good, type Issue, type Result } from '../numbers/result.ts';
import { type FigureBook, value } from './book.ts';
import type { ChoiceField, Field, NumberField, RecordField, RecordsField } from './field.ts';
import type { FigureKey } from './list.ts';

type FieldValue = number | string | boolean | readonly number[] | Given | readonly Given[];

export interface Given {
  readonly values: ReadonlyMap<string, FieldValue>;
  /** Fields left out, with what took their place. */
  readonly assumed: Readonly<Record<string, number>>;
  /** The figures that took the place of fields. */
  readonly figures: readonly FigureKey[];
}

export function readInput(fields: readonly Field[], input: unknown, book: FigureBook): Result<Given> {
  if (typeof input !== 'object' || input === null || Array.isArray(input)) {
    return bad({ code: 'wrong-type', path: 'input', found: inWords(input), expected: 'an object with fields' });
  }
  const names = new Set(fields.map((field) => field.name));
  const issues: Issue[] = Object.keys(input)
    .filter((name) => !names.has(name))
    .map((name) => ({ code: 'unknown-field', path: name, found: 'no such field', expected: `one of ${[...names].join(', ')}` }));
  const entries: ReadonlyMap<string, unknown> = new Map(Object.entries(input));
  const values = new Map<string, FieldValue>();
  const assumed: Record<string, number> = {};
  const figures: FigureKey[] = [];
  for (const field of fields) {
    if (!entries.has(field.name)) {
      if (field.without?.kind === 'figure') {
        assumed[field.name] = value(book, field.without.figure);
        values.set(field.name, assumed[field.name] ?? NaN);
        figures.push(field.without.figure);
      } else if (field.without === undefined && field.oneOf === undefined) {
        issues.push({ code: 'missing', path: field.name, found: 'nothing', expected: fieldInWords(field) });
      }
      continue;
    }
    const read = readField(field, entries.get(field.name), book);
    if (read.ok) values.set(field.name, read.value);
    else issues.push(...read.issues);
  }
  issues.push(...groupIssues(fields, entries));
  return issues.length > 0 ? bad(...issues) : good({ values, assumed, figures });
}

export function numberOf(given: Given, name: string): number {
  const found = given.values.get(name);
  assert(typeof found === 'number', `${name} was read as a number`);
  return found;
}

export function numberOrNull(given: Given, name: string): number | null {
  return given.values.has(name) ? numberOf(given, name) : null;
}

export function numbersOf(given: Given, name: string): readonly number[] {
  const found = given.values.get(name);
  assert(Array.isArray(found), `${name} was read as a list`);
  return found as readonly number[];
}

export function dayOf(given: Given, name: string): Day {
  const found = given.values.get(name);
  assert(isDay(found), `${name} was read as a day`);
  return found;
}

export function dayOrNull(given: Given, name: string): Day | null {
  return given.values.has(name) ? dayOf(given, name) : null;
}

export function textOrNull(given: Given, name: string): string | null {
  const found = given.values.get(name);
  assert(found === undefined || typeof found === 'string', `${name} was read as a text`);
  return found ?? null;
}

export function flagOrNull(given: Given, name: string): boolean | null {
  const found = given.values.get(name);
  assert(found === undefined || typeof found === 'boolean', `${name} was read as true or false`);
  return found ?? null;
}

export function recordOrNull(given: Given, name: string): Given | null {
  const found = given.values.get(name);
  assert(found === undefined || isGiven(found), `${name} was read as a record`);
  return found ?? null;
}

export function recordOf(given: Given, name: string): Given {
  const found = recordOrNull(given, name);
  assert(found !== null, `${name} was read as a record`);
  return found;
}

export function recordsOf(given: Given, name: string): readonly Given[] {
  const found = given.values.get(name);
  assert(Array.isArray(found), `${name} was read as a list of records`);
  return found as readonly Given[];
}

export function choiceOrNull<T extends string>(given: Given, name: string, choices: readonly T[]): T | null {
  return given.values.has(name) ? choiceOf(given, name, choices) : null;
}

function isGiven(found: FieldValue): found is Given {
  return typeof found === 'object' && 'values' in found;
}

export function choiceOf<T extends string>(given: Given, name: string, choices: readonly T[]): T {
  const found = choices.find((choice) => choice === given.values.get(name));
  assert(found !== undefined, `${name} was read as one of its choices`);
  return found;
}

function groupIssues(fields: readonly Field[], entries: ReadonlyMap<string, unknown>): readonly Issue[] {
  const groups = new Set(fields.flatMap((field) => (field.oneOf === undefined ? [] : [field.oneOf])));
  return [...groups].flatMap((group): Issue[] => {
    const names = fields.filter((field) => field.oneOf === group).map((field) => field.name);
    const given = names.filter((name) => entries.has(name));
    if (given.length === 1) return [];
    const expected = `exactly one of ${names.join(', ')}`;
    const [first = '', ...rest] = given;
    if (rest.length === 0) return [{ code: 'missing', path: names[0] ?? '', found: 'nothing', expected }];
    return rest.map((path): Issue => ({ code: 'both-alternatives', path, found: `given together with ${first}`, expected }));
  });
}

function readField(field: Field, found: unknown, book: FigureBook): Result<FieldValue> {
  switch (field.kind) {
    case 'day':
      return isDay(found) ? good(found) : fault(field, found, 'wrong-type');
    case 'text':
      if (typeof found !== 'string') return fault(field, found, 'wrong-type');
      return found.length > 0 && found.length <= field.longest ? good(found) : fault(field, found, 'out-of-range');
    case 'choice':
      return typeof found === 'string' && field.choices.includes(found) ? good(found) : fault(field, found, 'wrong-type');
    case 'flag':
      return typeof found === 'boolean' ? good(found) : fault(field, found, 'wrong-type');
    case 'record':
      return readRecord(field, found, field.name, book);
    case 'records':
      if (!Array.isArray(found)) return fault(field, found, 'wrong-type');
      if (found.length > field.most) return tooMany(field, found.length);
      return together(found.map((one: unknown, at) => readRecord(field, one, `${field.name}.${at}`, book)));
    case 'numbers':
      if (!Array.isArray(found)) return fault(field, found, 'wrong-type');
      return together(found.map((one: unknown, at) => readNumber(field, one, `${field.name}.${at}`)));
    default:
      return readNumber(field, found, field.name);
  }
}

function together<T>(read: readonly Result<T>[]): Result<readonly T[]> {
  const issues = read.flatMap((one) => (one.ok ? [] : one.issues));
  return issues.length > 0 ? bad(...issues) : good(read.flatMap((one) => (one.ok ? [one.value] : [])));
}

/** Its faults carry the way to it: `days.2.cells.open`. */
function readRecord(field: RecordField | RecordsField, found: unknown, path: string, book: FigureBook): Result<Given> {
  if (typeof found !== 'object' || found === null || Array.isArray(found)) {
    return bad({ code: 'wrong-type', path, found: inWords(found), expected: fieldInWords({ ...field, kind: 'record' }) });
  }
  const read = readInput(field.of, found, book);
  return read.ok ? read : bad(...read.issues.map((issue) => ({ ...issue, path: `${path}.${issue.path}` })));
}

function tooMany(field: RecordsField, found: number): Result<never> {
  return bad({ code: 'out-of-range', path: field.name, found: `${found} of them`, expected: `at most ${field.most}` });
}

function readNumber(field: NumberField, found: unknown, path: string): Result<number> {
  if (typeof found !== 'number' || !Number.isFinite(found)) return fault(field, found, 'wrong-type', path);
  if (field.kind === 'integer' && !Number.isInteger(found)) return fault(field, found, 'wrong-type', path);
  const tooLow = field.aboveLow === true ? found <= field.low : found < field.low;
  return tooLow || found > field.high ? fault(field, found, 'out-of-range', path) : good(found);
}

function fault(field: Field, found: unknown, code: string, path: string = field.name): Result<never> {
  const one = field.kind === 'numbers' && path !== field.name ? { ...field, kind: 'number' as const } : field;
  return bad({ code, path, found: inWords(found), expected: fieldInWords(one) });
}

/** What a field wants, as short text: "a number from 0 to 1", "a day YYYY-MM-DD". */
export function fieldInWords(field: Field): string {
  switch (field.kind) {
    case 'day':
      return 'a day YYYY-MM-DD';
    case 'text':
      return `a text of 1 to ${field.longest} characters`;
    case 'choice':
      return choicesInWords(field);
    case 'flag':
      return 'true or false';
    case 'record':
      return `a record of ${field.of.map(({ name }) => name).join(', ')}`;
    case 'records':
      return `a list of records of ${field.of.map(({ name }) => name).join(', ')}`;
    default: {
      const what = { number: 'a number', integer: 'a whole number', numbers: 'a list of numbers' }[field.kind];
      const from = field.aboveLow === true ? `above ${field.low} up to ${field.high}` : `from ${field.low} to ${field.high}`;
      return `${what} ${from}${field.unit === '' ? '' : `, ${field.unit}`}`;
    }
  }
}

function choicesInWords(field: ChoiceField): string {
  return `one of ${field.choices.join(', ')}`;
}

const longest = 60;

function inWords(found: unknown): string {
  const text = found === undefined ? 'nothing' : (JSON.stringify(found) ?? typeof found);
  return text.length > longest ? `${text.slice(0, longest)}…` : text;
}
