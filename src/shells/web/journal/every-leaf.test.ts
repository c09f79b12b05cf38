/** Correcting any entry by its single values: nothing changes but what was typed. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { leavesOf, withLeaves } from './leaves.ts';

const key = fc.stringMatching(/^[a-z][a-z0-9]{0,6}$/).filter((name) => !['constructor', 'valueof'].includes(name));
const value = fc.letrec<{ body: unknown }>((tie) => ({
  body: fc.oneof(
    { maxDepth: 3 },
    fc.integer({ min: -999, max: 999 }),
    fc.boolean(),
    fc.constant(null),
    fc.string({ maxLength: 8 }),
    fc.array(tie('body'), { maxLength: 3 }),
    fc.dictionary(key, tie('body'), { maxKeys: 4, noNullPrototype: true }),
  ),
})).body;
const body = fc.dictionary(key, value, { maxKeys: 5, noNullPrototype: true });

test('R10 nothing typed changes nothing', () => {
  fc.assert(fc.property(body, (given) => assert.deepEqual(withLeaves(given, {}), given)));
});

test('R10 what is typed into one value changes that one and leaves the rest', () => {
  fc.assert(
    fc.property(body, fc.nat(), (given, pick) => {
      const leaves = leavesOf(given);
      const leaf = leaves[pick % Math.max(1, leaves.length)];
      if (leaf === undefined) return;
      const changed = leavesOf(withLeaves(given, { [leaf.path]: 'typed' }));
      assert.deepEqual(
        changed,
        leaves.map((one) => (one.path === leaf.path ? { ...one, text: 'typed' } : one)),
      );
    }),
  );
});

test('R10 a number stays a number, a comma is a point, an empty field is not read, and words stay words', () => {
  const given = { a: 3, b: 'three', c: null, d: true };
  assert.deepEqual(withLeaves(given, { a: '3,5', b: '4', c: '2', d: 'false' }), { a: 3.5, b: '4', c: 2, d: false });
  assert.deepEqual(withLeaves(given, { a: ' ' }), { ...given, a: null });
});

test('R10 ids are not offered for typing', () => {
  assert.deepEqual(leavesOf({ colony: '018f0000-0000-7000-8000-000000000001', n: 1 }), [{ path: 'n', text: '1' }]);
});
