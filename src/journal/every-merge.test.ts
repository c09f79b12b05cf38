/** Merging journals is a union: commutative, associative, idempotent, on journals made by dice. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { canonicalText, entryHash } from './canonical.ts';
import type { Entry } from './entry.ts';
import { mergeJournals } from './merge.ts';
import { byOrder, inOrder } from './order.ts';
import { anyEntry, anyJournal, filled, idOf } from './sample.contract.ts';

const clashing = fc.array(anyEntry(15), { maxLength: 20 });

function text(entries: readonly Entry[]): string {
  return entries.map(canonicalText).join('\n');
}

test('J12 merging is commutative, associative and idempotent, also when ids clash', () =>
  fc.assert(
    fc.property(clashing, clashing, clashing, (a, b, c) => {
      const m = (...journals: readonly (readonly Entry[])[]): readonly Entry[] => mergeJournals(...journals).entries;
      assert.equal(text(m(a, b)), text(m(b, a)));
      assert.equal(text(m(m(a, b), c)), text(m(a, m(b, c))));
      assert.equal(text(m(a, a)), text(m(a)));
    }),
  ));

test('J12 a merge holds every id once and nothing else', () =>
  fc.assert(
    fc.property(clashing, clashing, (a, b) => {
      const ids = mergeJournals(a, b)
        .entries.map((entry) => entry.id)
        .sort();
      assert.deepEqual(ids, [...new Set([...a, ...b].map((entry) => entry.id))].sort());
    }),
  ));

test('J13 an id with other content is reported with both hashes', () => {
  const [one, other] = [filled(1, 'a', 1), filled(1, 'a', 2)];
  const { entries, issues } = mergeJournals([one], [other, filled(2, 'b', 1)]);
  assert.deepEqual(
    entries.map((entry) => entry.id),
    [idOf(1), idOf(2)],
  );
  assert.deepEqual(
    issues.map((issue) => [issue.code, issue.entry]),
    [['duplicate-id', idOf(1)]],
  );
  const said = `${issues[0]?.found} ${issues[0]?.expected}`;
  assert.ok(said.includes(entryHash(one)) && said.includes(entryHash(other)));
});

test('J14 the order is by when it was so, then noted, then id; a day comes before its hours', () => {
  const at = (n: number, when: string, noted = '2014-05-16T18:00:00Z'): Entry => filled(n, 'a', 1, when, { noted });
  const wanted = [
    at(9, '2014-05-15T23:00'),
    at(5, '2014-05-16'),
    at(4, '2014-05-16T09:00', '2014-05-16T10:00:00Z'),
    at(1, '2014-05-16T09:00'),
    at(2, '2014-05-16T09:00'),
  ];
  assert.deepEqual(inOrder([...wanted].reverse()), wanted);
  assert.equal(inOrder(wanted), wanted);
});

test('J14 the order is total: any shuffle of a journal is told the same', () =>
  fc.assert(
    fc.property(
      anyJournal().chain((entries) =>
        fc.tuple(fc.constant(entries), fc.shuffledSubarray([...entries], { minLength: entries.length })),
      ),
      ([entries, shuffled]) => {
        assert.deepEqual(inOrder(shuffled), inOrder(entries));
        for (const [i, entry] of inOrder(entries).entries())
          if (i > 0) assert.ok(byOrder(inOrder(entries)[i - 1] as Entry, entry) < 0);
      },
    ),
    { numRuns: 40 },
  ));
