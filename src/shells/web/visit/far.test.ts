/** What the draft keeps of a bar that lies far off: until something else is put down, and over a reload. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { FarBar } from '../../../apiary/bar-far.ts';
import { asDraft, beginDraft, type Draft } from './draft.ts';
import { beginningOf, stamp, uuid } from './for-tests.ts';
import { nothingExpected } from './ports.ts';
import { tap } from './tap.ts';

const far: FarBar = {
  part: 'brood',
  surprise: { what: 'bar', place: 3, expected: null, seen: 0, z: -4, because: [{ cause: 'just chance', chance: 1 }] },
};

function begun(): Draft {
  return beginDraft(beginningOf({ bay: { from: 1, to: 3, follower: 'last' }, foretold: { days: 3, bars: [] } }));
}

function down(draft: Draft, next: number, lies: FarBar | null): Draft {
  const read = tap(draft, { kind: 'class', combClass: 'food' });
  const entry = read.bar?.entry ?? '';
  const given = { entry, next: uuid(next), noteId: uuid(next + 100), stamp, words: {}, expected: nothingExpected };
  return tap(read, { kind: 'down', ...given, far: lies });
}

test('E165 the word on a bar stands until the next one is put down, and one tap takes the bar up again', () => {
  const first = down(begun(), 10, far);
  assert.deepEqual([first.told?.place, first.told?.far, first.bar?.place], [3, far, 2]);
  const again = tap(first, { kind: 'go', place: 3, next: uuid(11) });
  assert.deepEqual([again.bar?.place, again.bar?.again?.place], [3, 3]);
  assert.equal(down(first, 12, null).told?.far, null);
});

test('E165 the last bar too can be taken up again, from the end of the row', () => {
  const last = down(down(down(begun(), 10, null), 11, null), 12, far);
  assert.deepEqual([last.phase, last.bar, last.told?.far], ['row', null, far]);
  const again = tap(last, { kind: 'go', place: 1, next: uuid(13) });
  assert.deepEqual([again.phase, again.bar?.place], ['bars', 1]);
});

test('E163 what was foreseen and what was told stay in the draft over a reload; a draft of an earlier build has neither', () => {
  const draft = down(begun(), 10, far);
  assert.deepEqual(asDraft(JSON.parse(JSON.stringify(draft))), draft);
  const { foretold: _, told, ...rest } = draft;
  const { far: __, ...oldTold } = told!;
  const old = asDraft({ ...rest, told: oldTold });
  assert.deepEqual([old?.foretold, old?.told?.place, old?.told?.far], [null, 3, null]);
});
