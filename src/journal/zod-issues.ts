/**
 * Turns what a schema objects to into issues: the field, what was found there and what is expected,
 * as short text. The schema library's own sentences are not used; `words` makes ours.
 */
import type * as z from 'zod/mini';
import type { Issue } from '../numbers/result.ts';

type Objection = z.core.$ZodIssue;

const longestFound = 80;

/** `root` is the value that was checked; paths start with `base` when it is not empty. */
export function issuesOf(objections: readonly Objection[], root: unknown, base = '', entry?: string): readonly Issue[] {
  return objections.flatMap((objection) => issuesOfOne(objection, root, base, entry));
}

function issuesOfOne(objection: Objection, root: unknown, base: string, entry: string | undefined): readonly Issue[] {
  const path = joined(base, objection.path);
  const found = valueAt(root, objection.path);
  const owner = entry === undefined ? {} : { entry };
  if (objection.code === 'unrecognized_keys') {
    return objection.keys.map((key) => ({
      code: 'unknown-field',
      path: joined(path, [key]),
      found: shown(valueAt(found, [key])),
      expected: 'no such field',
      ...owner,
    }));
  }
  if (objection.code === 'invalid_union' && objection.errors.length > 0) {
    const nearest = nearestBranch(objection.errors);
    const nested = issuesOf(nearest, found, path, entry);
    if (nested.length > 0 && nearest.some((one) => one.path.length > 0)) return nested;
    const expected = objection.errors.flatMap((branch) => branch.map(expectation));
    return [{ code: 'wrong-value', path, found: shown(found), expected: [...new Set(expected)].join(' or '), ...owner }];
  }
  const missing = found === undefined && objection.code !== 'custom';
  return [
    { code: missing ? 'missing' : codeOf(objection), path, found: shown(found), expected: expectation(objection), ...owner },
  ];
}

/** The branch of a union that got furthest: the one whose first objection lies deepest, then the one with the fewest. */
function nearestBranch(branches: readonly (readonly Objection[])[]): readonly Objection[] {
  const depth = (branch: readonly Objection[]): number => Math.max(0, ...branch.map((one) => one.path.length));
  return [...branches].sort((a, b) => depth(b) - depth(a) || a.length - b.length)[0] ?? [];
}

function codeOf(objection: Objection): string {
  switch (objection.code) {
    case 'invalid_type':
      return 'wrong-type';
    case 'too_big':
      return 'too-big';
    case 'too_small':
      return 'too-small';
    case 'invalid_format':
      return 'wrong-form';
    case 'invalid_key':
      return 'wrong-name';
    default:
      return 'wrong-value';
  }
}

const typeWords: Readonly<Record<string, string>> = {
  int: 'a whole number',
  number: 'a number',
  string: 'a text',
  boolean: 'true or false',
  array: 'a list',
  object: 'a record',
  record: 'a record',
  tuple: 'a list',
  null: 'null',
  undefined: 'nothing',
};

function expectation(objection: Objection): string {
  switch (objection.code) {
    case 'invalid_type':
      return typeWords[objection.expected] ?? objection.expected;
    case 'too_big':
      return `at most ${String(objection.maximum)}${counted(objection.origin)}`;
    case 'too_small':
      return `at least ${String(objection.minimum)}${counted(objection.origin)}`;
    case 'invalid_value':
      return objection.values.map((value) => shown(value)).join(' or ');
    case 'invalid_format':
      return formWords(objection);
    case 'not_multiple_of':
      return `a multiple of ${objection.divisor}`;
    case 'invalid_union':
      return unionWords(objection);
    case 'invalid_key':
      return objection.issues.map(expectation).join(' and ');
    case 'custom':
      return objection.message === '' ? 'another value' : objection.message;
    default:
      return 'another value';
  }
}

function counted(origin: string): string {
  if (origin === 'string') return ' characters';
  return origin === 'array' ? ' in the list' : '';
}

function formWords(objection: Extract<Objection, { code: 'invalid_format' }>): string {
  if (objection.pattern === undefined) return `the form ${objection.format}`;
  return objection.pattern.includes('[0-9a-f]{12}')
    ? 'an id like 01890a5d-ac96-774b-bcce-b302099a8057'
    : `the form ${objection.pattern}`;
}

function unionWords(objection: Extract<Objection, { code: 'invalid_union' }>): string {
  const options = 'options' in objection && Array.isArray(objection.options) ? (objection.options as readonly unknown[]) : [];
  return options.length === 0 ? 'one of the known shapes' : options.map((option) => shown(option)).join(' or ');
}

/** Own fields only: a path never climbs into what every object has. */
function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  let value = root;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

function joined(base: string, path: readonly PropertyKey[]): string {
  return [base, ...path.map((key) => String(key).slice(0, longestFound))].filter((part) => part !== '').join('.');
}

/** Short text of a value; never longer than a line, whatever came. */
export function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'object' && value !== null) {
    return Array.isArray(value) ? `a list of ${value.length}` : 'a record';
  }
  const text = JSON.stringify(value) ?? typeof value;
  return text.length <= longestFound ? text : `${text.slice(0, longestFound - 1)}…`;
}
