/** Closing for winter, tap by tap: done, not done, not asked; what comes into the journal and into the sentence. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { visitSchema } from '../../../colony/visit.ts';
import { plainManner } from '../../../words/say.ts';
import { beginDraft } from './draft.ts';
import { beginningOf, stamp, uuid } from './for-tests.ts';
import { closingSentence } from './sentence.ts';
import { tap, type Tap } from './tap.ts';

const begin = () => beginDraft(beginningOf({ visitKind: 'closing for winter' }));
const answers = (...taps: readonly [Extract<Tap, { kind: 'winter' }>['task'], 'done' | 'not done'][]) =>
  taps.reduce((draft, [task, answer]) => tap(draft, { kind: 'winter', task, answer }), begin());

function closed(draft: ReturnType<typeof begin>) {
  const sentence = closingSentence(draft, 'Alder', plainManner);
  const body = tap(draft, { kind: 'close', id: uuid(9), stamp, smokeMinutes: null, sentence }).outbox.at(-1)?.body;
  return { visit: visitSchema.parse(body), sentence };
}

test('V60 of the list for winter only what was answered is written down, and the sentence says both kinds of answer', () => {
  const { visit, sentence } = closed(
    answers(['entrance', 'done'], ['roof', 'not done'], ['mites', 'not done'], ['mites', 'done']),
  );
  assert.deepEqual(visit.winter, { entrance: 'done', roof: 'not done', mites: 'done' });
  assert.match(
    sentence,
    /For winter: entrance made small, mites counted this autumn\. Not done for winter: roof tight and held down\./,
  );
});

test('V60 an answer tapped again is not asked; with none, no list is written; a step back restores the answer', () => {
  const off = answers(['tilt', 'done'], ['tilt', 'done']);
  const { visit, sentence } = closed(off);
  assert.equal(visit.winter, undefined);
  assert.doesNotMatch(sentence, /for winter:/);
  assert.deepEqual(tap(off, { kind: 'undo', next: uuid(8), stamp, words: { why: 'w' } }).closing.winter, { tilt: 'done' });
});
