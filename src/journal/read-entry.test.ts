/** Reading one entry from outside: what is refused, with which field, and what is kept whole. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Issue } from '../numbers/result.ts';
import { canonicalText, deepest } from './canonical.ts';
import { kindMap, readEntry, type ReadOptions } from './read-entry.ts';
import { corrected, filled, idOf, jarKinds } from './sample.contract.ts';

const kinds = kindMap(jarKinds);

function issuesOf(value: unknown, options: ReadOptions = {}): readonly Issue[] {
  const read = readEntry(value, kinds, options);
  assert.ok(!read.ok, 'refused');
  return read.issues;
}

test('J1 a good entry is understood and is the very record that came', () => {
  const entry = filled(1, 'a', 10);
  const read = readEntry(entry, kinds);
  assert.ok(read.ok);
  assert.equal(read.value.entry, entry);
  assert.deepEqual([read.value.understood, read.value.body, read.value.warnings], [true, entry.body, []]);
});

test('J2 each fault names the entry, the field, what was found and what is expected', () => {
  const entry = (body: unknown): unknown => ({ ...filled(1, 'a', 1), body });
  const cases: readonly (readonly [unknown, string, string, string, string])[] = [
    [entry({ jar: 'a', grams: 1, eighths: [3, 9] }), 'too-big', 'body.eighths.1', '9', 'at most 8'],
    [entry({ jar: 'a', grams: 1, eighths: [2.5] }), 'wrong-type', 'body.eighths.0', '2.5', 'a whole number'],
    [entry({ jar: 'a' }), 'missing', 'body.grams', 'nothing', 'a number'],
    [entry({ jar: '', grams: 1 }), 'too-small', 'body.jar', '""', 'at least 1 characters'],
    [entry({ jar: 'a', grams: '5' }), 'wrong-type', 'body.grams', '"5"', 'a number'],
    [entry({ jar: 'a', grams: 1, lid: true }), 'unknown-field', 'body.lid', 'true', 'no such field'],
    [entry([]), 'wrong-type', 'body', 'a list of 0', 'a record'],
    [{ ...filled(1, 'a', 1), at: '2014-02-30' }, 'wrong-value', 'at', '"2014-02-30"', 'a day YYYY-MM-DD, or with THH:MM'],
    [{ ...filled(1, 'a', 1), noted: '2014-05-16' }, 'wrong-value', 'noted', '"2014-05-16"', 'an instant YYYY-MM-DDTHH:MM:SSZ'],
    [{ ...filled(1, 'a', 1), version: 0 }, 'too-small', 'version', '0', 'at least 1'],
    [{ ...filled(1, 'a', 1), mood: 1 }, 'unknown-field', 'mood', '1', 'no such field'],
  ];
  for (const [value, code, path, found, expected] of cases) {
    assert.deepEqual(issuesOf(value), [{ code, path, found, expected, entry: idOf(1) }]);
  }
  assert.deepEqual(issuesOf({ ...filled(1, 'a', 1), id: 'one' })[0]?.path, 'id');
  assert.deepEqual(issuesOf(null), [{ code: 'wrong-type', path: '', found: 'null', expected: 'a record' }]);
});

test('J3 an unknown kind and a newer version are kept whole and marked as not understood', () => {
  for (const change of [
    { kind: 'from-tomorrow', body: { x: [1, { y: null }] } },
    { version: 3, body: 'anything' },
    { kind: 'correction', version: 2 },
  ]) {
    const entry = filled(1, 'a', 1, '2014-05-16', change);
    const read = readEntry(JSON.parse(JSON.stringify(entry)), kinds);
    assert.ok(read.ok);
    assert.equal(read.value.understood, false);
    assert.equal(canonicalText(read.value.entry), canonicalText(entry));
  }
});

test('J4 an older version is upgraded on reading and kept as it came; one that cannot be upgraded is refused', () => {
  const old = filled(1, 'a', 1, '2014-05-16', { version: 1, body: { jar: 'a', kg: 2 } });
  const read = readEntry(old, kinds);
  assert.ok(read.ok);
  assert.deepEqual(
    [read.value.body, read.value.entry.body],
    [
      { jar: 'a', grams: 2000 },
      { jar: 'a', kg: 2 },
    ],
  );
  assert.equal(issuesOf({ ...old, body: { jar: 'a' } })[0]?.path, 'body.grams');
  assert.equal(issuesOf({ ...old, body: null })[0]?.path, 'body');
});

test('J5 what lies ahead of now is refused when the day is given, and only then', () => {
  const entry = filled(1, 'a', 1, '2014-05-17', { noted: '2014-05-17T01:00:00Z' });
  assert.ok(readEntry(entry, kinds).ok && readEntry(entry, kinds, { today: '2014-05-17' }).ok);
  assert.deepEqual(
    issuesOf(entry, { today: '2014-05-16' }).map((issue) => [issue.code, issue.path, issue.expected]),
    [
      ['ahead-of-now', 'at', 'not after 2014-05-16'],
      ['ahead-of-now', 'noted', 'not after 2014-05-16'],
    ],
  );
});

test('J6 noted more than a day before it was so is an impossible clock: kept, with a warning', () => {
  const warned = (noted: string): number => {
    const read = readEntry(filled(1, 'a', 1, '2014-05-16', { noted }), kinds);
    assert.ok(read.ok);
    return read.value.warnings.filter((issue) => issue.code === 'clock-fault' && issue.path === 'noted').length;
  };
  assert.deepEqual(['2014-05-14T23:59:59Z', '2014-05-15T00:00:00Z', '2015-01-01T00:00:00Z'].map(warned), [1, 0, 0]);
});

test('J7 a correction must name another entry; an ordinary entry must not', () => {
  const { corrects: _, ...aimless } = corrected(2, idOf(1), {});
  assert.deepEqual([issuesOf(aimless)[0]?.code, issuesOf(aimless)[0]?.path], ['missing', 'corrects']);
  assert.equal(issuesOf(corrected(2, idOf(2), {}))[0]?.code, 'corrects-itself');
  assert.equal(issuesOf({ ...filled(1, 'a', 1), corrects: idOf(5) })[0]?.path, 'corrects');
});

test('J8 what JSON cannot carry there and back, too deep and too large is refused before anything else looks at it', () => {
  const nested = (levels: number): unknown => JSON.parse(`${'['.repeat(levels)}${']'.repeat(levels)}`);
  const strange = (body: unknown): unknown => filled(1, 'a', 1, '2014-05-16', { kind: 'from-tomorrow', body });
  assert.ok(readEntry(strange(nested(deepest - 1)), kinds).ok);
  for (const [body, code] of [
    [nested(deepest + 1), 'too-deep'],
    [nested(200_000), 'too-deep'],
    [Infinity, 'endless-number'],
    ['\ud800', 'broken-text'],
    [{ '\udc00': 1 }, 'broken-text'],
    [undefined, 'no-json'],
    [[() => 1], 'no-json'],
    ['x'.repeat(300_000), 'entry-too-large'],
  ] as const) {
    const [issue] = issuesOf(strange(body));
    assert.deepEqual([issue?.code, issue?.entry], [code, idOf(1)]);
  }
});
