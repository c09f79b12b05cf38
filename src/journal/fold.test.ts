/** The fold: order, faults, days, and kinds that are not understood. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Entry } from './entry.ts';
import { foldJournal } from './fold.ts';
import { entryKind } from './kind.ts';
import {
  anyJournal,
  corrected,
  emptyJars,
  filled,
  idOf,
  jarKinds,
  type JarDraft,
  keeper,
  voided,
  yard,
} from './sample.contract.ts';

function emptied(n: number, jar: string, at: string): Entry {
  return { id: idOf(n), yard, at, noted: '2014-05-20T18:00:00Z', by: keeper, kind: 'empty-out', version: 1, body: { jar } };
}

function jars(entries: readonly Entry[], until?: string): Record<string, number> {
  const { draft } = foldJournal(entries, jarKinds, emptyJars, until === undefined ? {} : { until });
  return Object.fromEntries(draft.grams);
}

test('J50 entries are told in the order in which it was so, not in which they came', () => {
  const entries = [emptied(1, 'a', '2014-05-18'), filled(2, 'a', 5, '2014-05-19'), filled(3, 'a', 7, '2014-05-17')];
  assert.deepEqual(jars(entries), { a: 5 });
  assert.deepEqual(jars([...entries].reverse()), { a: 5 });
});

test('J51 the state of a day holds all of that day and nothing after, by all that is known now', () => {
  const entries = [
    filled(1, 'a', 1, '2014-05-16'),
    filled(2, 'a', 2, '2014-05-17T23:59'),
    filled(3, 'a', 4, '2014-05-18'),
    corrected(4, idOf(1), { body: { jar: 'a', grams: 8 } }),
  ];
  assert.deepEqual(
    [jars(entries, '2014-05-15'), jars(entries, '2014-05-16'), jars(entries, '2014-05-17'), jars(entries)],
    [{}, { a: 8 }, { a: 10 }, { a: 14 }],
  );
});

test('J52 a correction of the time re-runs what came later', () => {
  const entries = [filled(1, 'a', 7, '2014-05-17'), emptied(2, 'a', '2014-05-18')];
  assert.deepEqual(jars([...entries, corrected(3, idOf(1), { at: '2014-05-19' })]), { a: 7 });
  assert.equal(
    foldJournal([...entries, corrected(3, idOf(1), { at: '2014-05-19' })], jarKinds, emptyJars).faults[0]?.code,
    'no-such-jar',
  );
});

test('J53 what does not fit is a fault with its entry and is not applied; the rest goes on', () => {
  const { draft, faults } = foldJournal([emptied(1, 'ghost', '2014-05-16'), filled(2, 'a', 1)], jarKinds, emptyJars);
  assert.deepEqual(faults, [
    { code: 'no-such-jar', path: 'body.jar', found: 'ghost', expected: 'a jar that was filled', entry: idOf(1) },
  ]);
  assert.deepEqual(draft.told, [idOf(2)]);
});

test('J54 what is not understood is counted and left alone; what is voided is not told', () => {
  const folded = foldJournal(
    [
      filled(1, 'a', 1, '2014-05-16', { kind: 'from-tomorrow' }),
      filled(2, 'a', 1, '2014-05-16', { version: 3 }),
      filled(3, 'b', 1),
      voided(4, idOf(3)),
    ],
    jarKinds,
    emptyJars,
  );
  assert.deepEqual(
    [folded.notUnderstood.map((entry) => entry.id), folded.struck, folded.draft.told],
    [[idOf(1), idOf(2)], [idOf(3)], []],
  );
});

test('J55 older versions are told in the newest', () => {
  assert.deepEqual(jars([filled(1, 'a', 0, '2014-05-16', { version: 1, body: { jar: 'a', kg: 1.5 } })]), { a: 1500 });
});

test('J56 a step that throws stops the fold and names the entry', () => {
  const broken = entryKind<unknown, JarDraft>({
    kind: 'fill',
    version: 2,
    schema: jarKinds[2]?.schema as never,
    apply: () => {
      throw new Error('off by one');
    },
  });
  assert.throws(() => foldJournal([filled(1, 'a', 1)], [broken], emptyJars), new RegExp(`fill.*${idOf(1)}`));
});

test('J57 every order of arrival folds to the same state', () =>
  fc.assert(
    fc.property(
      anyJournal(30).chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray([...all], { minLength: all.length }))),
      ([entries, shuffled]) => {
        const [one, other] = [entries, shuffled].map((list) => foldJournal(list, jarKinds, emptyJars));
        assert.deepEqual(one, other);
      },
    ),
    { numRuns: 60 },
  ));
