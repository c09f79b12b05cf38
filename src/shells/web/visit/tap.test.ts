/** Taps by hand: what each does to the draft, and what comes into the journal. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readingSchema } from '../../../colony/reading.ts';
import { visitSchema } from '../../../colony/visit.ts';
import { envelopeSchema } from '../../../journal/entry.ts';
import { plainManner } from '../../../words/say.ts';
import { beginDraft, type Beginning, type Draft, placesToRead } from './draft.ts';
import { beginningOf, stamp, uuid } from './for-tests.ts';
import { nothingExpected } from './ports.ts';
import { closingSentence, notOpened } from './sentence.ts';
import { downRefused, tap, type Tap } from './tap.ts';

/** After those of the beginning. */
let last = 6;
function id(): string {
  last += 1;
  return uuid(last);
}

function begin(change: Partial<Beginning> = {}): Draft {
  return beginDraft(beginningOf({ combs: [1, 2, 3, 4], ...change }));
}

function down(draft: Draft): Draft {
  return tap(draft, {
    kind: 'down',
    entry: draft.bar?.entry ?? '',
    next: id(),
    noteId: id(),
    stamp,
    words: { note: 'n', why: 'w' },
    expected: nothingExpected,
    far: null,
  });
}

function skip(draft: Draft): Draft {
  return tap(draft, { kind: 'not opened', entry: draft.bar?.entry ?? '', next: id(), stamp, words: { why: 'w' } });
}

function undo(draft: Draft): Draft {
  return tap(draft, { kind: 'undo', next: id(), stamp, words: { why: 'w' } });
}

function all(draft: Draft, ...taps: readonly Tap[]): Draft {
  return taps.reduce(tap, draft);
}

test('V1 bars are lifted from the follower inwards, or from the entrance; a glance lifts the last two with comb', () => {
  const bay = { from: 1, to: 5, follower: 'last' } as const;
  assert.deepEqual(placesToRead('usual', 'from the follower', bay, []), [5, 4, 3, 2, 1]);
  assert.deepEqual(placesToRead('usual', 'from the entrance', bay, []), [1, 2, 3, 4, 5]);
  assert.deepEqual(placesToRead('glance', 'from the follower', bay, [1, 2, 3]), [3, 2]);
  assert.deepEqual(placesToRead('glance', 'from the follower', bay, []), [5, 4]);
  assert.deepEqual(placesToRead('usual', 'from the follower', { ...bay, follower: 'first' }, []), [1, 2, 3, 4, 5]);
});

test('V2 a class sets both rulers, a tapped ruler stays, and the one set by the class gives way', () => {
  const food = all(begin(), { kind: 'class', combClass: 'food' });
  assert.deepEqual([food.bar?.seen.brood8, food.bar?.seen.food8], [0, 6]);
  const both = all(food, { kind: 'brood', eighths: 5 });
  assert.deepEqual([both.bar?.seen.brood8, both.bar?.seen.food8, both.bar?.seen.combClass], [5, 3, null]);
  const fixed = all(begin(), { kind: 'food', eighths: 6 }, { kind: 'brood', eighths: 5 });
  assert.deepEqual([fixed.bar?.seen.brood8, fixed.bar?.seen.food8], [5, 6]);
  assert.equal(downRefused(fixed.bar), 'too much');
  assert.equal(down(fixed), fixed);
});

test('V22 "as expected" fills both rulers and is written so, until a ruler or a class says what was read', () => {
  const said = all(begin(), { kind: 'panel', panel: 'more' }, { kind: 'as expected', brood8: 5, food8: 2 });
  assert.deepEqual([said.panel, said.bar?.seen.brood8, said.bar?.seen.food8, said.bar?.touched], [null, 5, 2, true]);
  const methodOf = (draft: Draft): unknown => readingSchema.parse(envelopeSchema.parse(down(draft).outbox[0]).body).method;
  assert.equal(methodOf(said), 'as expected');
  assert.equal(methodOf(all(said, { kind: 'eggs', eggs: 'seen' })), 'as expected');
  for (const read of [
    { kind: 'food', eighths: 3 },
    { kind: 'brood', eighths: 5 },
    { kind: 'class', combClass: 'brood' },
  ] as const)
    assert.equal(methodOf(all(said, read)), 'eighths');
  assert.equal(all(said, { kind: 'food', eighths: 3 }).bar?.seen.brood8, 5);
});

test('V3 Down writes one reading that the journal understands, and the same Down again writes nothing', () => {
  const draft = all(
    begin(),
    { kind: 'class', combClass: 'food and brood' },
    { kind: 'youngest', stage: 'larva' },
    { kind: 'cells', which: 'open', by: 1 },
  );
  const by: Tap = {
    kind: 'down',
    entry: draft.bar?.entry ?? '',
    next: id(),
    noteId: id(),
    stamp,
    words: {},
    expected: nothingExpected,
    far: null,
  };
  const once = tap(draft, by);
  assert.deepEqual(tap(once, by), once);
  assert.equal(once.bar?.place, 4);
  assert.equal(once.outbox.length, 1);
  const entry = envelopeSchema.parse(once.outbox[0]);
  const body = readingSchema.parse(entry.body);
  assert.deepEqual(body.faces, [{ face: 'both', brood8: 4, food8: 3 }]);
  assert.deepEqual(
    [body.place, body.eggs, body.youngest, body.cells?.open, body.cellsLooked, body.queen],
    [5, 'none seen', 'larva', 1, 'seen', 'not looked'],
  );
});

test('V4 an untouched bar is not written, and a bar not opened makes no entry and stays unknown', () => {
  const draft = begin();
  assert.equal(down(draft), draft);
  const skipped = skip(draft);
  assert.deepEqual([skipped.outbox, skipped.bar?.place, skipped.skipped], [[], 4, [5]]);
  const rest = [4, 3, 2, 1].reduce((before) => down(all(before, { kind: 'class', combClass: 'brood' })), skipped);
  assert.equal(rest.phase, 'row');
  assert.deepEqual(
    rest.outbox.map((entry) => (entry.body as { place: number }).place),
    [4, 3, 2, 1],
  );
  assert.deepEqual(notOpened(rest), [5]);
});

test('V5 one step back restores the tap before; back over Down corrects the reading that was written', () => {
  const draft = all(begin(), { kind: 'brood', eighths: 3 });
  const two = all(draft, { kind: 'brood', eighths: 4 });
  assert.deepEqual(undo(two), draft);
  const put = down(two);
  const again = undo(put);
  assert.deepEqual([again.bar?.place, again.bar?.seen.brood8, again.phase], [5, 4, 'bars']);
  assert.equal(down(again).outbox.length, 1, 'nothing changed, nothing written');
  const corrected = down(all(again, { kind: 'brood', eighths: 2 }));
  assert.deepEqual(
    corrected.outbox.map((entry) => entry.kind),
    ['reading', 'correction'],
  );
  assert.equal(corrected.outbox[1]?.corrects, corrected.outbox[0]?.id);
  assert.equal(corrected.read.length, 1);
  const twice = down(all(undo(corrected), { kind: 'brood', eighths: 1 }));
  assert.deepEqual((twice.outbox[2]?.body as { knew: string[] }).knew, [twice.outbox[1]?.id]);
});

test('V5 a bar put down by mistake is taken back by a void', () => {
  const put = down(all(begin(), { kind: 'class', combClass: 'food' }));
  const back = skip(undo(put));
  assert.deepEqual(
    back.outbox.map((entry) => entry.kind),
    ['reading', 'void'],
  );
  assert.equal(back.outbox[1]?.corrects, back.outbox[0]?.id);
  assert.deepEqual([back.read, back.skipped], [[], [5]]);
});

test('V6 eggs and the youngest stage never contradict each other, and looking for cells is not the same as none', () => {
  const seen = (draft: Draft) => draft.bar?.seen;
  assert.deepEqual([seen(all(begin(), { kind: 'eggs', eggs: 'seen' }))?.youngest], ['egg']);
  assert.equal(seen(all(begin(), { kind: 'eggs', eggs: 'seen' }, { kind: 'eggs', eggs: 'none seen' }))?.youngest, null);
  assert.equal(seen(all(begin(), { kind: 'youngest', stage: 'sealed' }))?.eggs, 'none seen');
  const stepped = all(begin(), { kind: 'cells', which: 'sealed', by: 1 }, { kind: 'cells', which: 'sealed', by: -1 });
  assert.deepEqual([seen(stepped)?.cells, seen(stepped)?.cellsLooked], [null, 'not looked']);
  assert.equal(seen(all(begin(), { kind: 'cells looked', looked: 'none seen' }))?.cellsLooked, 'none seen');
});

test('V7 no other bar is taken up while one with something read of it is in the hand', () => {
  const touched = all(begin(), { kind: 'brood', eighths: 1 });
  assert.equal(tap(touched, { kind: 'go', place: 2, next: id() }), touched);
  const gone = tap(begin(), { kind: 'go', place: 2, next: id() });
  assert.equal(gone.bar?.place, 2);
  const after = down(all(gone, { kind: 'brood', eighths: 1 }));
  assert.equal(after.bar?.place, 1);
  assert.equal(skip(after).bar?.place, 5, 'the bars left out by the jump come after');
});

test('V8 a fallen comb is noted once with its place, tells the temper, and can be taken back', () => {
  const by: Tap = { kind: 'fell', place: 5, what: 'honey', done: 'taken out', id: id(), stamp };
  const fallen = tap(begin(), by);
  assert.deepEqual(tap(fallen, by).outbox, fallen.outbox);
  assert.deepEqual([fallen.outbox[0]?.kind, fallen.closing.temperNotes], ['comb-fell', ['dropped a comb']]);
  const back = undo(fallen);
  assert.deepEqual(
    [back.outbox[1]?.kind, back.outbox[1]?.corrects, back.closing.temperNotes, back.fell],
    ['void', fallen.outbox[0]?.id, [], []],
  );
});

test('V9 closing writes one visit with what was given, taken, counted and confirmed', () => {
  const read = [5, 4, 3, 2, 1].reduce((before) => down(all(before, { kind: 'class', combClass: 'brood' })), begin());
  const ready = all(
    read,
    { kind: 'row', what: 'given', by: 1 },
    { kind: 'count', what: 'barsCounted', value: 6 },
    { kind: 'temper', temper: 'calm' },
    { kind: 'temper note', note: 'after rain' },
    { kind: 'count', what: 'beesBars', value: 4 },
  );
  const sentence = closingSentence(ready, 'Alder', plainManner);
  const close: Tap = { kind: 'close', id: id(), stamp, smokeMinutes: 12, sentence };
  const closed = tap(ready, close);
  assert.deepEqual(tap(closed, close), closed);
  const visit = visitSchema.parse(closed.outbox.at(-1)?.body);
  assert.deepEqual([visit.given, visit.followerAfter, visit.barsCounted, visit.beesBars, visit.smokeMinutes], [[6], 6, 6, 4, 12]);
  assert.deepEqual([visit.temper, visit.temperNotes, visit.sentence], ['calm', ['after rain'], sentence]);
  assert.equal(
    sentence,
    'Usual visit of Alder: 5 bars read, all of the bay. Brood at places 1 to 5. One bar hung in. ' +
      'The follower board stands after place 6. Bees on 4 bars. The bees were calm.',
  );
});

test('V9 without a count and without a move nobody says where the follower board stands', () => {
  const closed = tap(begin(), { kind: 'close', id: id(), stamp, smokeMinutes: null, sentence: 's' });
  const visit = visitSchema.parse(closed.outbox.at(-1)?.body);
  assert.deepEqual(
    [visit.followerAfter, visit.barsCounted, visit.beesBars, visit.temper, visit.straight],
    [null, null, null, null, null],
  );
});

test('V9 the row never leaves the trough and nothing is taken that is not there', () => {
  const full = [1, 1, 1, 1, 1].reduce((before) => tap(before, { kind: 'row', what: 'given', by: 1 }), begin());
  assert.equal(full.closing.given, 3);
  assert.equal(tap(begin(), { kind: 'row', what: 'taken', by: -1 }).closing.taken, 0);
});

test('V10 the sentence says what was looked for and not found, and what was not opened', () => {
  const bar = all(
    begin(),
    { kind: 'class', combClass: 'food' },
    { kind: 'eggs', eggs: 'none seen' },
    { kind: 'cells looked', looked: 'none seen' },
    { kind: 'sign', code: 'mites on bees' },
  );
  assert.equal(
    closingSentence(down(bar), 'Alder', plainManner),
    'Usual visit of Alder: one bar read, 4 not opened. No brood on the bars read. Eggs looked for and none seen. ' +
      'No queen cells seen on the bar looked over. Seen that is not right: mites on bees.',
  );
});
