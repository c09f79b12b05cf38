/**
 * One text for one value: canonical JSON (keys sorted, no spaces, as RFC 8785 says) and its SHA-256.
 * Two entries are the same entry when their canonical texts are the same. Values that JSON cannot
 * carry faithfully (endless numbers, half of a surrogate pair, 64 levels and more) are found here.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalizeJson from 'canonicalize';
import { assert } from '../numbers/assert.ts';
import type { Issue } from '../numbers/result.ts';
import type { Entry } from './entry.ts';

/** Levels of lists and records in one entry; a reading needs 6. */
export const deepest = 64;

/** The canonical text. Throws on a value that `jsonFault` finds fault with. */
export function canonicalText(value: unknown): string {
  const text = canonicalizeJson(value);
  assert(text !== undefined, 'a value that JSON can carry');
  return text;
}

export function hashOfText(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)));
}

/** SHA-256 of the canonical text, 64 hexadecimal digits. */
export function entryHash(entry: Entry): string {
  return hashOfText(canonicalText(entry));
}

/** False when half of a surrogate pair stands alone: such a text cannot be written as UTF-8. */
export function isWhole(text: string): boolean {
  return !/\p{Surrogate}/u.test(text);
}

interface Place {
  readonly value: unknown;
  readonly path: string;
  readonly depth: number;
}

/** The first thing in the value that JSON cannot carry there and back, or null. Works without recursion, so that depth cannot stop it. */
export function jsonFault(value: unknown): Issue | null {
  const open: Place[] = [{ value, path: '', depth: 0 }];
  for (let place = open.pop(); place !== undefined; place = open.pop()) {
    const fault = faultAt(place);
    if (fault !== null) return fault;
    if (typeof place.value !== 'object' || place.value === null) continue;
    for (const key of Object.keys(place.value)) {
      const path = place.path === '' ? key : `${place.path}.${key}`;
      if (!isWhole(key))
        return { code: 'broken-text', path, found: 'half of a surrogate pair in a name', expected: 'whole characters' };
      open.push({ value: (place.value as Record<string, unknown>)[key], path, depth: place.depth + 1 });
    }
  }
  return null;
}

function faultAt({ value, path, depth }: Place): Issue | null {
  switch (typeof value) {
    case 'string':
      return isWhole(value)
        ? null
        : { code: 'broken-text', path, found: 'half of a surrogate pair', expected: 'whole characters' };
    case 'number':
      return Number.isFinite(value) ? null : { code: 'endless-number', path, found: String(value), expected: 'a finite number' };
    case 'boolean':
      return null;
    case 'object':
      return depth > deepest
        ? { code: 'too-deep', path: path.slice(0, 60), found: `more than ${deepest} levels`, expected: `at most ${deepest}` }
        : null;
    default:
      return { code: 'no-json', path, found: typeof value, expected: 'a value that JSON can carry' };
  }
}
