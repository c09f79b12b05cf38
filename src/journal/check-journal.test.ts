/** A check names every fault of a journal with its line and changes nothing. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { canonicalText } from './canonical.ts';
import { checkJournal, readJournal } from './check-journal.ts';
import { linesOf } from './lines.ts';
import { anyJournal, corrected, emptyJars, filled, idOf, jarKinds, keeper, yard } from './sample.contract.ts';

test('J60 a journal written as lines is read back the same, without a fault, and written again is the same file', () =>
  fc.assert(
    fc.property(anyJournal(30), (entries) => {
      const text = linesOf(entries);
      const read = readJournal(text, jarKinds);
      assert.deepEqual(read.faults, []);
      assert.equal(linesOf(read.entries), text);
      assert.deepEqual(read.entries.map((entry) => entry.id).sort(), entries.map((entry) => entry.id).sort());
    }),
    { numRuns: 50 },
  ));

test('J61 every fault of a journal is reported with line, entry and field, and the good entries are found all the same', () => {
  const line = (value: unknown): string => JSON.stringify(value);
  const text = [
    line(filled(1, 'a', 1)),
    '{"id": "half',
    line({ ...filled(2, 'a', 1), at: '2014-13-01' }),
    line({ ...filled(3, 'a', 1), body: { jar: 'a', grams: 1, eighths: [9] } }),
    '',
    line(filled(1, 'a', 2)),
    line(filled(4, 'a', 1, '2014-05-16', { kind: 'from-tomorrow' })),
    line(filled(5, 'a', 1, '2031-01-01')),
    line(corrected(6, idOf(77), {})),
    line({
      id: idOf(7),
      yard,
      at: '2014-05-01',
      noted: '2014-05-16T18:00:00Z',
      by: keeper,
      kind: 'empty-out',
      version: 1,
      body: { jar: 'ghost' },
    }),
    line(filled(8, 'a', 1, '2014-05-16', { noted: '2014-05-01T00:00:00Z' })),
    '"a text"',
    line(filled(9, 'a', 1)).slice(0, 60),
  ].join('\n');
  const checked = checkJournal(text, jarKinds, emptyJars, { today: '2014-06-01' });
  assert.deepEqual(
    checked.faults.map((fault) => [fault.line, fault.code, fault.path, fault.entry]),
    [
      [2, 'bad-json', 'line 2', undefined],
      [3, 'wrong-value', 'at', idOf(2)],
      [4, 'too-big', 'body.eighths.0', idOf(3)],
      [6, 'duplicate-id', 'id', idOf(1)],
      [8, 'ahead-of-now', 'at', idOf(5)],
      [12, 'wrong-type', '', 'line 12'],
      [13, 'truncated-line', 'line 13', undefined],
      [9, 'target-missing', 'corrects', idOf(6)],
      [10, 'no-such-jar', 'body.jar', idOf(7)],
    ],
  );
  assert.deepEqual(
    checked.notes.map((note) => [note.line, note.code]),
    [
      [7, 'unknown-kind'],
      [11, 'clock-fault'],
    ],
  );
  assert.deepEqual(checked.entries.map((entry) => entry.id).sort(), [1, 4, 6, 7, 8].map(idOf));
  assert.equal(checked.lines, 12);
});

test('J62 line ends and byte order marks of other systems are read; an empty file is an empty journal', () => {
  const text = `\uFEFF${linesOf([filled(1, 'a', 1), filled(2, 'b', 1)]).replaceAll('\n', '\r\n')}`;
  assert.deepEqual(readJournal(text, jarKinds).entries, [filled(1, 'a', 1), filled(2, 'b', 1)]);
  for (const empty of ['', '\n', '\uFEFF'])
    assert.deepEqual(readJournal(empty, jarKinds), { entries: [], faults: [], notes: [] });
});

test('J63 any text at all is read without an exception, and what is kept is what stood there', () =>
  fc.assert(
    fc.property(
      anyJournal(8),
      fc.nat(),
      fc.nat({ max: 40 }),
      fc.string({ unit: 'binary', maxLength: 12 }),
      (entries, at, cut, dirt) => {
        const text = linesOf(entries);
        const place = text.length === 0 ? 0 : at % text.length;
        const damaged = text.slice(0, place) + dirt + text.slice(place + cut);
        const checked = checkJournal(damaged, jarKinds, emptyJars);
        for (const fault of checked.faults)
          assert.ok(fault.code.length > 0 && fault.found.length > 0 && fault.expected.length > 0);
        for (const entry of checked.entries) {
          const there = damaged.split('\n').some((row) => sameJson(row, canonicalText(entry)));
          assert.ok(there, canonicalText(entry));
        }
      },
    ),
    { numRuns: 300 },
  ));

function sameJson(row: string, text: string): boolean {
  try {
    return canonicalText(JSON.parse(row.replace(/^\uFEFF/, ''))) === text;
  } catch {
    return false;
  }
}
