/** What rival corrections come to, side by side: told as the fold would have it, and nothing of it hidden. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Entry } from '../../../journal/entry.ts';
import { isSettled, sideBySide } from './rivals.ts';

const idOf = (n: number): string => `018f0000-0000-7000-8000-${String(n).padStart(12, '0')}`;
const plain = { yard: idOf(900), noted: '2014-05-16T18:05:00Z', by: idOf(901), version: 1 } as const;
const jar: Entry = { ...plain, id: idOf(1), at: '2014-05-16T14:00', kind: 'jar', body: { jar: 'a', grams: 10, lid: null } };

const said = (value: string, unit: string): string => `${value} ${unit}`;

function correction(n: number, change: object, knew: readonly string[] = [], of: Entry = jar): Entry {
  return { ...jar, id: idOf(n), kind: 'correction', corrects: of.id, body: { ...change, why: `why ${n}`, knew } };
}
function taken(n: number, knew: readonly string[] = []): Entry {
  return { ...jar, id: idOf(n), kind: 'void', corrects: jar.id, body: { why: 'not so', knew } };
}

test('J70 only what differs is shown, as each alone would leave it, beside what was first written', () => {
  const grams = correction(2, { body: { jar: 'a', grams: 12, lid: null } });
  const day = correction(3, { at: '2014-05-15' });
  const { rivals, rows } = sideBySide([jar, grams, day], jar, [grams, day], said);
  assert.deepEqual(rivals, [
    { head: grams, struck: false },
    { head: day, struck: false },
  ]);
  assert.deepEqual(rows, [
    { path: null, first: '2014-05-16T14:00', values: ['2014-05-16T14:00', '2014-05-15'] },
    { path: 'grams', first: '10', values: ['12', '10'] },
  ]);
});

test('J70 a value that came, one that went, and what both had changed before they parted', () => {
  const both = correction(2, { body: { jar: 'b', grams: 10, lid: null } });
  const came = correction(3, { body: { jar: 'b', grams: 10, lid: 'tin' } }, [both.id]);
  const went = correction(4, { body: { jar: 'b', grams: null, lid: null } }, [both.id]);
  const { rows } = sideBySide([jar, both, came, went], jar, [came, went], said);
  assert.deepEqual(rows, [
    { path: 'grams', first: '10', values: ['10', null] },
    { path: 'lid', first: null, values: ['tin', null] },
  ]);
});

test('J70 beside one that strikes out, what the other changed is shown; one that changes nothing has no line', () => {
  const gone = taken(2);
  const grams = correction(3, { body: { jar: 'a', grams: 12, lid: null } });
  const { rivals, rows } = sideBySide([jar, gone, grams], jar, [gone, grams], said);
  assert.deepEqual(
    rivals.map(({ struck }) => struck),
    [true, false],
  );
  assert.deepEqual(rows, [{ path: 'grams', first: '10', values: [null, '12'] }]);
  const nothing = correction(4, { at: jar.at });
  assert.deepEqual(sideBySide([jar, gone, nothing], jar, [gone, nothing], said).rows, []);
});

test('J70 a value is told with its unit, and a changed unit is a change', () => {
  const weighed = { ...jar, body: { typed: { value: 2, unit: 'kg' } } };
  const heads = ['kg', 'lb'].map((unit, n) => correction(2 + n, { body: { typed: { value: 3, unit } } }, [], weighed));
  const { rows } = sideBySide([weighed, ...heads], weighed, heads, said);
  assert.deepEqual(rows, [{ path: 'typed', first: '2 kg', values: ['3 kg', '3 lb'] }]);
});

test('J70 rival corrections of a correction are told by what they change, not by what they had seen', () => {
  const first = correction(2, { body: { jar: 'a', grams: 12, lid: null } });
  const one = correction(3, { body: { body: { jar: 'a', grams: 13, lid: null }, why: 'a', knew: [] } }, [], first);
  const other = correction(4, { body: { body: { jar: 'a', grams: 14, lid: null }, why: 'a', knew: [idOf(8)] } }, [], first);
  const { rows } = sideBySide([jar, first, one, other], first, [one, other], said);
  assert.deepEqual(rows, [{ path: 'body.grams', first: '12', values: ['13', '14'] }]);
});

test('J70 rows are just the values in which bodies differ, whatever the bodies', () => {
  const body = fc.dictionary(fc.constantFrom('a', 'b', 'c', 'd'), fc.integer({ min: 0, max: 2 }), { noNullPrototype: true });
  fc.assert(
    fc.property(body, fc.array(body, { minLength: 2, maxLength: 4 }), (first, bodies) => {
      const target = { ...jar, body: first };
      const heads = bodies.map((each, n) => correction(2 + n, { body: each }, [], target));
      const { rows } = sideBySide([target, ...heads], target, heads, said);
      for (const key of ['a', 'b', 'c', 'd']) {
        const values = bodies.map((each) => (each[key] === undefined ? null : String(each[key])));
        const row = rows.find(({ path }) => path === key);
        if (new Set(values).size < 2) assert.equal(row, undefined);
        else assert.deepEqual(row?.values, values);
      }
    }),
  );
});

test('J71 a choice settles what it had seen, not a rival that came since, and not when it was taken back', () => {
  const kept = correction(9, {}, [idOf(2), idOf(3)]);
  const both = { target: jar.id, amendments: [idOf(2), idOf(3)] };
  assert.ok(isSettled([jar, kept], both));
  assert.ok(!isSettled([jar], both));
  assert.ok(!isSettled([jar, kept], { ...both, amendments: [idOf(2), idOf(4)] }));
  assert.ok(!isSettled([jar, kept, { ...taken(10), corrects: kept.id }], both));
});
