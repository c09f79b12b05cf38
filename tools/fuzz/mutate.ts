/** Ways of spoiling what was good: values inside an entry, and the text of a whole body. */
import type { Dice } from './dice.ts';

type Mutable = Record<string, unknown> | unknown[];

const hostile: readonly unknown[] = [
  null,
  true,
  '',
  'x',
  '\u0000',
  '🐝',
  ' \u2028',
  '\ud800',
  'a'.repeat(5000),
  '__proto__',
  0,
  -0,
  -1,
  1,
  7,
  8,
  9,
  2.5,
  1e308,
  -1e-308,
  2 ** 53,
  [],
  [[]],
  {},
  { kind: 'x' },
  '2014-02-29',
  '2014-02-28',
  '2016-02-29',
  '0000-01-01',
  '9999-12-31',
  '2014-05-16T24:00',
  '2014-05-16T09:30',
  '2014-05-16T09:30:00Z',
  '2014-13-01',
  '2014-04-31',
  '00000000-0000-4000-8000-000000000000',
  '00000000-0000-4000-8000-00000000000G',
  'correction',
  'void',
  'from-tomorrow',
  'constructor',
  'Visit',
  999,
  1000,
];
const names: readonly string[] = ['__proto__', 'constructor', 'toString', 'length', '', 'at', 'corrects', 'id', '0', 'é'];

/** A copy each time: what is put in may be spoilt again, and must not come to hold itself. */
function anyHostile(dice: Dice): unknown {
  return structuredClone(dice.one(hostile));
}

/** The value with one to three things changed; the one given stays as it is. */
export function spoilt(value: unknown, dice: Dice): unknown {
  const copy: unknown = structuredClone(value);
  for (let n = 1 + dice.below(3); n > 0; n -= 1) spoilOnce(copy, dice);
  return copy;
}

function spoilOnce(root: unknown, dice: Dice): void {
  const places = mutablesIn(root);
  if (places.length === 0) return;
  const place = dice.rarely(3) ? (root as Mutable) : dice.one(places);
  const keys = Object.keys(place);
  const key = keys.length === 0 ? '0' : dice.one(keys);
  switch (dice.below(6)) {
    case 0:
    case 1:
      put(place, key, anyHostile(dice));
      break;
    case 2:
      if (Array.isArray(place)) place.splice(Number(key), 1);
      else delete place[key];
      break;
    case 3:
      put(place, Array.isArray(place) ? String(place.length) : dice.one(names), anyHostile(dice));
      break;
    case 4:
      put(place, key, nudged(read(place, key), dice));
      break;
    default:
      put(place, key, nested(read(place, key), 1 + dice.below(dice.rarely(8) ? 600 : 4)));
  }
}

function mutablesIn(root: unknown): readonly Mutable[] {
  const found: Mutable[] = [];
  const open: unknown[] = [root];
  for (let value = open.pop(); open.length > 0 || value !== undefined; value = open.pop()) {
    if (typeof value === 'object' && value !== null && found.length < 500) {
      found.push(value as Mutable);
      open.push(...(Object.values(value) as unknown[]).filter((one) => one !== undefined));
    }
  }
  return found;
}

/** A little more, a little less, another letter: the faults that a hand makes. */
function nudged(value: unknown, dice: Dice): unknown {
  if (typeof value === 'number') return value + dice.one([-1, 1, 0.5, -0.125, 100]);
  if (typeof value === 'boolean') return !value;
  if (typeof value !== 'string' || value === '') return anyHostile(dice);
  const at = dice.below(value.length);
  return value.slice(0, at) + dice.one(['', '9', 'z', '-', ' ', value.charAt(at).toUpperCase()]) + value.slice(at + 1);
}

function nested(value: unknown, levels: number): unknown {
  let now = value;
  for (let n = 0; n < levels; n += 1) now = n % 2 === 0 ? [now] : { x: now };
  return now;
}

/** As JSON.parse would: also a field of the name __proto__ is an own field. */
function put(place: Mutable, key: string, value: unknown): void {
  Object.defineProperty(place, key, { value, enumerable: true, configurable: true, writable: true });
}

function read(place: Mutable, key: string): unknown {
  return (place as Record<string, unknown>)[key];
}

/** The text cut, doubled, or with strange characters in it. */
export function spoiltText(text: string, dice: Dice): string {
  const at = dice.below(text.length + 1);
  const dirt = dice.one([
    '',
    '"',
    '{',
    ']',
    ',',
    '\\',
    '\u0000',
    '1e999',
    '\\ud800',
    '[['.repeat(20000),
    'null',
    '\uFEFF',
    '\n',
    '-',
  ]);
  switch (dice.below(4)) {
    case 0:
      return text.slice(0, at);
    case 1:
      return text.slice(0, at) + dirt + text.slice(at);
    case 2:
      return text.slice(0, at) + dirt + text.slice(at + 1 + dice.below(30));
    default:
      return text + (dice.rarely(2) ? text : dirt);
  }
}
