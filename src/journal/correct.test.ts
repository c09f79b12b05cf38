/** Corrections and voids, hand-worked: chains, conflicts, rings, and what they name that is not there. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { correctEntries, type Corrected } from './correct.ts';
import type { Entry } from './entry.ts';
import { kindMap } from './read-entry.ts';
import { corrected, filled, idOf, jarKinds, voided } from './sample.contract.ts';

const kinds = kindMap(jarKinds);
const first = filled(1, 'a', 10);
const later = { noted: '2014-05-21T08:00:00Z', at: '2014-05-21' };
const to = (grams: number): object => ({ body: { jar: 'a', grams } });

function told(...entries: readonly Entry[]): Corrected {
  return correctEntries(entries, kinds);
}

function gramsOf({ entries }: Corrected): unknown {
  return entries.map((entry) => (entry.body as { readonly grams: number }).grams);
}

test('J40 a correction changes body or time of the entry that it names, and the entry given stays as it is', () => {
  const before = JSON.stringify(first);
  assert.deepEqual(told(first, corrected(2, first.id, to(12))).entries, [{ ...first, body: { jar: 'a', grams: 12 } }]);
  assert.deepEqual(told(corrected(2, first.id, { at: '2014-05-10' }), first).entries, [{ ...first, at: '2014-05-10' }]);
  assert.equal(JSON.stringify(first), before);
});

test('J41 a void strikes the entry out; a void of the void brings it back', () => {
  const undone = voided(2, first.id);
  assert.deepEqual([told(first, undone).entries, told(first, undone).struck], [[], [first.id]]);
  const redone = told(first, undone, voided(3, undone.id));
  assert.deepEqual([redone.entries, redone.struck], [[first], [undone.id]]);
});

test('J42 of corrections whose writers knew the earlier ones the last one holds, whatever the clocks say', () => {
  const one = corrected(2, first.id, { ...to(12), at: '2014-05-10' }, [], later);
  const two = corrected(3, first.id, to(13), [one.id]);
  const both = told(first, one, two);
  assert.deepEqual(both.entries, [{ ...first, at: '2014-05-10', body: { jar: 'a', grams: 13 } }]);
  assert.deepEqual(both.conflicts, []);
});

test('J43 two corrections that did not know each other are both shown; the later in order is used until one that knew both', () => {
  const one = corrected(2, first.id, to(12));
  const two = corrected(3, first.id, to(13), [], later);
  const open = told(first, two, one);
  assert.deepEqual([gramsOf(open), open.conflicts], [[13], [{ target: first.id, amendments: [one.id, two.id] }]]);
  const settled = told(first, two, one, corrected(4, first.id, to(14), [one.id, two.id]));
  assert.deepEqual([gramsOf(settled), settled.conflicts], [[14], []]);
  const againstVoid = told(first, one, voided(5, first.id, [], later));
  assert.deepEqual([againstVoid.struck, againstVoid.conflicts.length], [[first.id], 1]);
});

test('J44 two that did not know each other but say the same are no conflict', () => {
  const same = told(first, corrected(2, first.id, to(12)), corrected(3, first.id, to(12), [], later));
  assert.deepEqual([gramsOf(same), same.conflicts], [[12], []]);
  assert.deepEqual(told(first, voided(2, first.id), voided(3, first.id)).conflicts, []);
});

test('J45 a correction can itself be corrected or taken back', () => {
  const one = corrected(2, first.id, to(12));
  assert.deepEqual(gramsOf(told(first, one, voided(3, one.id))), [10]);
  const better = corrected(3, one.id, { body: { ...to(15), why: 'misread twice', knew: [] } });
  assert.deepEqual(gramsOf(told(first, one, better)), [15]);
  assert.deepEqual(gramsOf(told(first, one, better, voided(4, better.id))), [12]);
});

test('J46 a correction of nothing, of another yard, in a ring, or to a body that cannot be is a fault and changes nothing', () => {
  const codes = (...entries: readonly Entry[]): unknown =>
    told(...entries).faults.map((fault) => [fault.code, fault.entry, fault.path]);
  assert.deepEqual(codes(first, corrected(2, idOf(9), to(1))), [['target-missing', idOf(2), 'corrects']]);
  assert.deepEqual(codes(first, corrected(2, first.id, to(1), [], { yard: idOf(99) })), [['other-yard', idOf(2), 'corrects']]);
  const ring = [corrected(2, idOf(3), {}), voided(3, idOf(2)), corrected(4, idOf(3), {})];
  assert.deepEqual(codes(first, ...ring), [
    ['correction-ring', idOf(2), 'corrects'],
    ['correction-ring', idOf(3), 'corrects'],
  ]);
  const impossible = told(first, corrected(2, first.id, { body: { jar: 'a', grams: -1 } }));
  assert.deepEqual(
    [gramsOf(impossible), impossible.faults.map((fault) => [fault.code, fault.entry, fault.path])],
    [[10], [['too-small', idOf(2), 'body.body.grams']]],
  );
  const twisted = told(first, corrected(2, first.id, to(12)), corrected(3, idOf(2), { body: 'nonsense' }));
  assert.deepEqual([gramsOf(twisted), twisted.faults.map((fault) => fault.entry)], [[12], [idOf(3)]]);
});

test('J47 a correction says in which version its body is written; without that it is the version of the entry', () => {
  const old = filled(1, 'a', 0, '2014-05-16', { version: 1, body: { jar: 'a', kg: 1 } });
  assert.deepEqual(told(old, corrected(2, old.id, { body: { jar: 'a', kg: 3 } })).entries[0], {
    ...old,
    body: { jar: 'a', kg: 3 },
  });
  assert.deepEqual(told(old, corrected(2, old.id, { version: 2, ...to(5) })).entries[0], {
    ...old,
    version: 2,
    body: { jar: 'a', grams: 5 },
  });
});

test('J48 writers who claim to have known each other are a conflict like those who did not', () => {
  const one = corrected(2, first.id, to(12), [idOf(3)]);
  const two = corrected(3, first.id, to(13), [idOf(2)], later);
  const { conflicts } = told(first, one, two);
  assert.deepEqual(conflicts, [{ target: first.id, amendments: [one.id, two.id] }]);
});

test('J49 a hundred thousand corrections of corrections neither stop nor slow it', () => {
  const chain = [first, ...Array.from({ length: 100_000 }, (_, i) => voided(i + 2, idOf(i + 1)))];
  const { struck, faults } = told(...chain);
  assert.deepEqual([faults, struck.length], [[], 50_000]);
});
