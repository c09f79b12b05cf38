/** One of several corrections kept: what only the others changed is gone. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { correctEntries } from './correct.ts';
import type { Entry } from './entry.ts';
import { keepOne } from './keep-one.ts';
import { kindMap } from './read-entry.ts';
import { corrected, filled, idOf, jarKinds, voided } from './sample.contract.ts';

const kinds = kindMap(jarKinds);
const first = filled(1, 'a', 10);
const to = (grams: number): object => ({ body: { jar: 'a', grams } });

/** The journal with the kept one written into it, by a later hand. */
function after(entries: readonly Entry[], head: Entry): readonly Entry[] {
  return [...entries, { ...corrected(90, first.id, {}), ...keepOne(entries, first, head, 'kept') } as Entry];
}

test('J67 the one that changed the body is kept: the time that only the other changed is as it was', () => {
  const [body, time] = [corrected(2, first.id, to(12)), corrected(3, first.id, { at: '2014-05-10' })];
  const kept = (head: Entry) => correctEntries(after([first, body, time], head), kinds);
  assert.deepEqual(kept(body).entries, [{ ...first, body: { jar: 'a', grams: 12 } }]);
  assert.deepEqual(kept(time).entries, [{ ...first, at: '2014-05-10' }]);
  assert.deepEqual(kept(body).conflicts, []);
});

test('J67 a void that is kept strikes out; one that is not leaves what the other said', () => {
  const [body, gone] = [corrected(2, first.id, to(12)), voided(3, first.id)];
  assert.deepEqual(correctEntries(after([first, body, gone], gone), kinds).struck, [first.id]);
  assert.deepEqual(correctEntries(after([first, body, gone], body), kinds).entries, [
    { ...first, body: { jar: 'a', grams: 12 } },
  ]);
});

const anyChange = fc.record({
  grams: fc.option(fc.integer({ min: 11, max: 99 }), { nil: undefined }),
  day: fc.option(fc.integer({ min: 10, max: 28 }), { nil: undefined }),
  knew: fc.nat({ max: 3 }),
  strikes: fc.nat({ max: 5 }).map((n) => n === 0),
  /** A correction of the correction before it. */
  nested: fc.nat({ max: 4 }).map((n) => n === 0),
});

test('J67 whichever is kept, the entry stands as if the others that it did not know had never been written', () => {
  fc.assert(
    fc.property(fc.array(anyChange, { minLength: 2, maxLength: 6 }), (changes) => {
      const made: Entry[] = [];
      for (const [i, { grams, day, knew, strikes, nested }] of changes.entries()) {
        const change = { ...(grams === undefined ? {} : to(grams)), ...(day === undefined ? {} : { at: `2014-05-${day}` }) };
        const own = made.filter((entry) => entry.corrects === first.id);
        const last = own.at(-1);
        if (nested && last?.kind === 'correction')
          made.push(corrected(50 + i, last.id, { body: { ...(last.body as object), ...change } }));
        else {
          const seen = own.slice(0, knew).map(({ id }) => id);
          made.push(strikes ? voided(2 + i, first.id, seen) : corrected(2 + i, first.id, change, seen));
        }
      }
      const journal = [first, ...made];
      const own = made.filter((entry) => entry.corrects === first.id);
      for (const head of own.filter(({ id }) => !own.some((one) => (one.body as { knew: string[] }).knew.includes(id)))) {
        const known = new Set([head.id, ...closure(head, own)]);
        const alone = journal.filter((entry) => entry.corrects !== first.id || known.has(entry.id));
        const [told, expected] = [correctEntries(after(journal, head), kinds), correctEntries(alone, kinds)];
        assert.deepEqual(told.entries, expected.entries);
        assert.ok(!told.conflicts.some(({ target }) => target === first.id));
      }
    }),
    { numRuns: 400 },
  );
});

function closure(head: Entry, all: readonly Entry[]): readonly string[] {
  const knew = (head.body as { knew: readonly string[] }).knew;
  return [...knew, ...all.filter(({ id }) => knew.includes(id)).flatMap((one) => closure(one, all))];
}

test('J67 what is written is an entry that the journal takes', () => {
  const [body, time] = [corrected(2, first.id, to(12)), corrected(3, first.id, { at: '2014-05-10' })];
  const { kind, version, corrects, body: change } = keepOne([first, body, time], first, body, 'kept');
  assert.deepEqual([kind, version, corrects], ['correction', 1, idOf(1)]);
  assert.deepEqual(change, {
    at: first.at,
    body: { jar: 'a', grams: 12 },
    version: first.version,
    why: 'kept',
    knew: [idOf(2), idOf(3)],
  });
});
