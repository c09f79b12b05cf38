/**
 * Ids that follow from the content: two phones that import one file make the same ids, so each
 * entry is added once. The id is a UUID of version 8 (RFC 9562) over SHA-256 of the canonical text.
 */
import { v7 } from 'uuid';
import { assert } from '../numbers/assert.ts';
import { canonicalText, hashOfText } from './canonical.ts';
import type { Entry, Id } from './entry.ts';

/** The same for the same content and `purpose`; the purpose keeps apart what would otherwise look alike. */
export function deriveId(purpose: string, content: unknown): Id {
  const hex = hashOfText(`${purpose}\n${canonicalText(content)}`);
  const variant = '89ab'.charAt(Number.parseInt(hex.charAt(16), 16) & 3);
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-${variant}${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}

/** An imported entry with its id. `noted` and `by` must come from the file too, or every import would make a new entry. */
export function derivedEntry<B>(content: Omit<Entry<B>, 'id'>): Entry<B> {
  return { id: deriveId('entry', content), ...content };
}

/** A UUID of version 7 for something new: the clock (milliseconds of the epoch) and 16 random bytes are the caller's. */
export function timedId(milliseconds: number, random: Uint8Array): Id {
  assert(random.length >= 16, 'sixteen random bytes');
  const [a, b, c, d] = random as unknown as [number, number, number, number];
  return v7({ msecs: milliseconds, random, seq: ((a << 24) | (b << 16) | (c << 8) | d) >>> 0 });
}
