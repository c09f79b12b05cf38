/** The sum "comb-match": a hand-worked case, and what it refuses. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { runSum } from '../apiary/sums.ts';
import { printedBook } from '../figures/book.ts';

interface Answered {
  readonly matches: readonly {
    readonly today: number;
    readonly last: number | null;
    readonly cost: number;
    readonly sure: number | null;
  }[];
  readonly gone: readonly number[];
  readonly totalCost: number;
}

function matched(last: readonly object[], today: readonly object[], daysBetween: number): Answered {
  const result = runSum('comb-match', { last, today, daysBetween }, printedBook);
  assert.ok(result.ok);
  return result.value as unknown as Answered;
}

test('E172 one comb read again, by hand: a place farther costs 1, and a full one on the same day errs by the ruler alone', () => {
  // Full of food: sd = hypot(0.6/8, 1 × (e^0.25 − 1)) = hypot(0.075, 0.28403) = 0.29376 on the same day. A reading that
  // could not fit better has sd 0.075. With the share w of wrong readings each density f is (1 − w) f + w.
  const w = 0.01;
  const density = (sd: number): number => (1 - w) / (sd * Math.sqrt(2 * Math.PI)) + w;
  const byHand = 1 + 2 * Math.log(density(0.075) / density(0.29376));
  const { matches, totalCost } = matched([{ place: 3, food8: 8 }], [{ place: 4, food8: 8 }], 0);
  assert.ok(Math.abs(matches[0]!.cost - byHand) < 1e-3, `${matches[0]!.cost} is not ${byHand}`);
  assert.equal(matches[0]!.last, 3);
  assert.equal(totalCost, matches[0]!.cost);
  // It could only be new instead: then one is new and one is gone.
  const anew = 2 * 6 + 2 * Math.log(density(0.075));
  assert.ok(Math.abs(matches[0]!.sure! - 1 / (1 + Math.exp((byHand - anew) / 2))) < 1e-3);
});

test('E173 a swap is answered with both places, and a comb that hangs nowhere as gone', () => {
  const last = [
    { place: 1, brood8: 0, food8: 7 },
    { place: 2, brood8: 7, food8: 0.5 },
    { place: 3, brood8: 3, food8: 3 },
  ];
  const swapped = matched(last, [{ ...last[0], place: 2 }, { ...last[1], place: 1 }, last[2]!], 7);
  assert.deepEqual(
    swapped.matches.map(({ today, last: hung }) => [today, hung]),
    [
      [1, 2],
      [2, 1],
      [3, 3],
    ],
  );
  assert.deepEqual(matched(last, [last[0]!, last[2]!], 7).gone, [2]);
  assert.deepEqual(matched([], [last[0]!], 7).matches[0]?.last, null);
  assert.deepEqual(matched(last, [], 7), { matches: [], gone: [1, 2, 3], totalCost: 18, assumed: {}, sources: sourcesOf() });
});

function sourcesOf(): readonly string[] {
  const result = runSum('comb-match', { last: [], today: [], daysBetween: 0 }, printedBook);
  assert.ok(result.ok);
  return result.value['sources'] as readonly string[];
}

test('E177 two bars at one place or with one mark, too much on a comb, and a mark that is none are refused with their field', () => {
  const refused = (today: readonly object[]): readonly string[] => {
    const result = runSum('comb-match', { last: today, today, daysBetween: 1 }, printedBook);
    assert.ok(!result.ok);
    return result.issues.map(({ path }) => path);
  };
  assert.deepEqual(refused([{ place: 1 }, { place: 1 }]), ['last.1.place', 'today.1.place']);
  assert.deepEqual(
    refused([
      { place: 1, mark: 'A' },
      { place: 2, mark: 'A' },
    ]),
    ['last.1.mark', 'today.1.mark'],
  );
  assert.deepEqual(refused([{ place: 1, brood8: 5, food8: 4 }]), ['last.0.food8', 'today.0.food8']);
  for (const mark of ['', 'thirteen long', 7]) assert.deepEqual(refused([{ place: 1, mark }]), ['last.0.mark', 'today.0.mark']);
  assert.deepEqual(refused([{ place: 0 }, { brood8: 9, place: 2 }]), [
    'last.0.place',
    'last.1.brood8',
    'today.0.place',
    'today.1.brood8',
  ]);
  const result = runSum('comb-match', { last: [], today: [], daysBetween: -1 }, printedBook);
  assert.ok(!result.ok && result.issues[0]?.path === 'daysBetween');
});
