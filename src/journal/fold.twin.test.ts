/** The slow plain twin of corrections and fold: no levels, no early exits; it asks the same questions again and again. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Entry, Id } from './entry.ts';
import { foldJournal } from './fold.ts';
import { corrected, emptyJars, filled, idOf, jarKinds, voided } from './sample.contract.ts';

/** The entry after its amendments, or null when it is struck out. All amendments name the entry or one another, none twice. */
function twin(target: Entry, all: readonly Entry[]): { readonly now: Entry | null; readonly conflicts: number } {
  let conflicts = 0;
  const inForce: Entry[] = [];
  for (const one of all.filter((entry) => entry.corrects === target.id)) {
    const itself = twin(one, all);
    conflicts += itself.conflicts;
    if (itself.now !== null) inForce.push(itself.now);
  }
  const knew = (entry: Entry): readonly Id[] => (entry.body as { knew: readonly Id[] }).knew;
  const knows = (a: Entry, b: Entry): boolean =>
    knew(a).includes(b.id) || inForce.some((c) => c.id !== a.id && knew(a).includes(c.id) && knows(c, b));
  const heads = inForce.filter((one) => !inForce.some((other) => knows(other, one))).sort(later);
  const winner = heads.at(-1);
  if (winner === undefined) return { now: target, conflicts };
  const same = (a: Entry, b: Entry): boolean =>
    a.kind === b.kind &&
    (a.kind === 'void' ||
      JSON.stringify((a.body as { body?: unknown }).body) === JSON.stringify((b.body as { body?: unknown }).body));
  if (heads.some((head) => !same(head, winner))) conflicts += 1;
  if (winner.kind === 'void') return { now: null, conflicts };
  return { now: { ...target, body: (winner.body as { body: unknown }).body }, conflicts };
}

function later(a: Entry, b: Entry): number {
  const key = (entry: Entry): string => `${entry.at}|${entry.noted}|${entry.id}`;
  return key(a) < key(b) ? -1 : 1;
}

/** Amendments in the order of writing; each names the entry or, as a void, an earlier amendment, and knew some earlier ones. */
const anyAmendments = fc.array(
  fc.record({
    of: fc.nat(),
    kind: fc.constantFrom('correction', 'correction', 'void'),
    grams: fc.integer({ min: 1, max: 3 }),
    knew: fc.array(fc.nat(), { maxLength: 4 }),
    day: fc.integer({ min: 10, max: 28 }),
  }),
  { maxLength: 7 },
);

test('J58 corrections and fold agree with a plain twin', () =>
  fc.assert(
    fc.property(anyAmendments, (recipe) => {
      const entries: Entry[] = [filled(1, 'a', 100)];
      for (const [i, step] of recipe.entries()) {
        const target = step.kind === 'void' ? (entries[step.of % entries.length] as Entry) : (entries[0] as Entry);
        const earlier = entries.filter((entry) => entry.corrects === target.id);
        const knew = earlier.length === 0 ? [] : [...new Set(step.knew.map((n) => (earlier[n % earlier.length] as Entry).id))];
        const more = { at: `2014-06-${step.day}`, noted: `2014-06-${step.day}T10:00:00Z` };
        entries.push(
          step.kind === 'void'
            ? voided(i + 2, target.id, knew, more)
            : corrected(i + 2, target.id, { body: { jar: 'a', grams: step.grams } }, knew, more),
        );
      }
      const slow = twin(entries[0] as Entry, entries);
      const fast = foldJournal(entries, jarKinds, emptyJars);
      assert.equal(fast.draft.grams.get('a'), slow.now === null ? undefined : (slow.now.body as { grams: number }).grams);
      assert.equal(fast.conflicts.length, slow.conflicts);
      assert.deepEqual(fast.faults, []);
      assert.equal(fast.struck.includes(idOf(1)), slow.now === null);
    }),
    { numRuns: 400 },
  ));
