/** Canonical text and hashes: the same content is the same text everywhere. */
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { test } from 'node:test';
import fc from 'fast-check';
import { canonicalText, entryHash, hashOfText } from './canonical.ts';
import { deriveId, derivedEntry, timedId } from './derive-id.ts';
import { filled, idOf } from './sample.contract.ts';

test('J9 the canonical text does not depend on the order of fields, and reads back as the same value', () =>
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 4 }), (value) => {
      const text = canonicalText(value);
      assert.equal(canonicalText(JSON.parse(text)), text);
      assert.equal(canonicalText(turned(value)), text);
    }),
  ));

test('J9 the hash is SHA-256 of that text, as another implementation has it', () => {
  const entry = filled(1, 'ä€😀', 0.1);
  assert.equal(entryHash(entry), createHash('sha256').update(canonicalText(entry)).digest('hex'));
  assert.equal(hashOfText('abc'), 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
});

test('J10 ids made from content are the same for the same content, differ for other content, and are valid', () => {
  const { id: _, ...content } = filled(1, 'a', 1);
  const made = derivedEntry(content);
  assert.match(made.id, /^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  assert.equal(derivedEntry(turned(content) as typeof content).id, made.id);
  assert.notEqual(derivedEntry({ ...content, at: '2014-05-17' }).id, made.id);
  assert.notEqual(deriveId('colony', content), deriveId('entry', content));
});

test('J11 timed ids sort by time of writing and carry the version of the standard', () => {
  const bytes = Uint8Array.from({ length: 16 }, (_, i) => 255 - i);
  const [early, late] = [timedId(1400241600000, bytes), timedId(1400241600001, new Uint8Array(16))];
  assert.ok(early < late);
  // 1400241600000 in hexadecimal is 14604e73600.
  assert.equal(early.slice(0, 15), '014604e7-3600-7');
  assert.match(early, /^[0-9a-f-]{23}-[0-9a-f]{12}$/);
  assert.notEqual(timedId(1, bytes), timedId(1, new Uint8Array(16)));
  assert.throws(() => timedId(1, new Uint8Array(4)));
  assert.notEqual(idOf(1), idOf(2));
});

/** The same value with the fields of every record the other way round. */
function turned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turned);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, one]) => [key, turned(one)]),
  );
}
