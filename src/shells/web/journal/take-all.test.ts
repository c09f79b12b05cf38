/** Adding a file: one refused entry must not cost the others. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Entry } from '../../../journal/entry.ts';
import { memoryStore } from '../../../journal/memory-store.ts';
import { good } from '../../../numbers/result.ts';
import { newId } from '../model/notes.ts';
import { takeAll } from './take-all.ts';

function entry(text: string, id = newId()): Entry {
  const common = {
    yard: newId(),
    at: '2014-05-16',
    noted: '2014-05-16T12:00:00Z',
    by: newId(),
    kind: 'note',
    version: 1,
  };
  return { id, ...common, body: { about: null, text } };
}

test('R11 entries that are refused are set aside with their reason, and all others are added', async () => {
  const store = memoryStore();
  const there = [entry('kept long ago'), entry('also there')];
  await store.append(there);
  const file = Array.from({ length: 1203 }, (_, n) => entry(String(n)));
  file[7] = { ...there[0], body: { about: null, text: 'other words under the same id' } } as Entry;
  file[900] = there[1] as Entry;
  const taken = await takeAll(file, async (entries) => {
    const stored = await store.append(entries);
    return stored.ok ? good({ added: stored.value.added.length, known: stored.value.known.length }) : stored;
  });
  assert.deepEqual([taken.added, taken.known, taken.issues.length], [1201, 1, 1]);
  assert.equal(taken.issues[0]?.entry, there[0]?.id);
  assert.equal(await store.count(), 1203);
});

test('R11 a store that names no entry stops the adding, and what was added stays', async () => {
  let calls = 0;
  const full = { code: 'store-full', path: '', found: 'no room', expected: 'room' };
  const taken = await takeAll(
    Array.from({ length: 1200 }, (_, n) => entry(String(n))),
    (entries) => {
      calls += 1;
      return Promise.resolve(calls === 1 ? good({ added: entries.length, known: 0 }) : { ok: false, issues: [full] });
    },
  );
  assert.deepEqual([taken.added, taken.issues, calls], [500, [full], 2]);
});
