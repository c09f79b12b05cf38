/** What every matching of combs must satisfy, in made-up nests: order, ties, moves, marks, and that it is no surer than it may be. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { printedBook } from '../figures/book.ts';
import { eighthsInWhole } from '../hive/shapes.ts';
import { newStream, nextNormal, nextUnit, type Stream } from '../numbers/streams.ts';
import { type CombBefore, type CombMatch, type CombToday, matchCombs } from './comb-match.ts';
import { barPartOf } from './engine/surprise/bar-seen.ts';

/** Brood and food in eighths; null where it was not read. */
type Held = readonly [number | null, number | null];

const share = (eighths: number | null): number | null => (eighths === null ? null : eighths / eighthsInWhole);

function before(held: readonly Held[], days: number, marks: readonly (string | null)[] = []): readonly CombBefore[] {
  return held.map(([brood, food], i) => {
    const empty = 1 - ((brood ?? 0) + (food ?? 0)) / eighthsInWhole;
    const part = (one: number | null) => (one === null ? null : barPartOf(one / eighthsInWhole, empty, null, days, printedBook));
    return { place: i + 1, mark: marks[i] ?? null, brood: part(brood), food: part(food) };
  });
}

function now(held: readonly Held[], marks: readonly (string | null)[] = []): readonly CombToday[] {
  return held.map(([brood, food], i) => ({ place: i + 1, mark: marks[i] ?? null, brood: share(brood), food: share(food) }));
}

const matched = (last: readonly CombBefore[], today: readonly CombToday[]): readonly CombMatch[] =>
  matchCombs(last, today, printedBook).matches;
const lasts = (matches: readonly CombMatch[]): readonly (number | null)[] => matches.map(({ last }) => last);

const eighths = fc.integer({ min: 0, max: 16 }).map((half) => half / 2);
const anyHeld: fc.Arbitrary<Held> = fc.tuple(eighths, eighths).chain(([brood, raw]) => {
  const food = Math.min(raw, eighthsInWhole - brood);
  const part = (one: number) => fc.oneof({ weight: 4, arbitrary: fc.constant<number | null>(one) }, fc.constant(null));
  return fc.tuple(part(brood), part(food));
});
const nest = fc.array(anyHeld, { maxLength: 9 });
const anyDays = fc.integer({ min: 0, max: 60 });

/** A nest as they are: food, then brood rising to the heart, and food again; no two combs alike. */
const distinct: readonly Held[] = [
  [0, 7.5],
  [1, 5],
  [4, 3],
  [7, 0.5],
  [5.5, 1],
  [2, 6],
  [0, 3],
];
const moved = (order: readonly number[]): readonly Held[] => order.map((from) => distinct[from]!);

test('E171 rows in another order give the same answer, row by row, ties too', () => {
  fc.assert(
    fc.property(nest, nest, anyDays, fc.infiniteStream(fc.nat()), (held, today, days, picks) => {
      const [last, bars] = [before(held, days), now(today)];
      const mixed = <T>(all: readonly T[]): readonly T[] =>
        all
          .map((one) => ({ one, at: picks.next().value as number }))
          .sort((a, b) => a.at - b.at)
          .map(({ one }) => one);
      assert.deepEqual(matchCombs(mixed(last), mixed(bars), printedBook), matchCombs(last, bars, printedBook));
    }),
    { seed: 171 },
  );
});

test('E171 each bar has one answer, no comb is told twice, and what hangs nowhere is named as gone', () => {
  fc.assert(
    fc.property(nest, nest, anyDays, (held, today, days) => {
      const { matches, gone, totalCost } = matchCombs(before(held, days), now(today), printedBook);
      const used = matches.flatMap(({ last }) => last ?? []);
      assert.equal(matches.length, today.length);
      assert.deepEqual(
        [...used, ...gone].sort((a, b) => a - b),
        held.map((_, i) => i + 1),
      );
      for (const { sure, gapToNextBest, cost } of matches) {
        assert.ok(Number.isFinite(cost) && cost >= -1e-9);
        // Where nothing hung last time it can only be new.
        assert.equal(gapToNextBest === null, held.length === 0);
        const most = 1 / (1 + Math.exp(-(gapToNextBest ?? Infinity) / 2));
        assert.ok(sure === null || (sure > 0 && sure <= most + 1e-12), `${sure}`);
      }
      assert.ok(Number.isFinite(totalCost));
    }),
    { seed: 1710 },
  );
});

test('E172 rows that hold the same, or nothing that was read, are matched in place', () => {
  fc.assert(
    fc.property(anyHeld, fc.integer({ min: 1, max: 12 }), anyDays, (held, count, days) => {
      const same = Array<Held>(count).fill(held);
      const places = same.map((_, i) => i + 1);
      assert.deepEqual(lasts(matched(before(same, days), now(same))), places);
      assert.deepEqual(lasts(matched(before(same, days), now(Array<Held>(count).fill([null, null])))), places);
    }),
    { seed: 172 },
  );
  assert.deepEqual(lasts(matched(before(distinct, 9), now(distinct))), [1, 2, 3, 4, 5, 6, 7]);
});

test('E173 combs that changed places, or were all pushed along by a place or two, are found', () => {
  const last = before(distinct, 9);
  for (const [a, b] of [
    [0, 3],
    [1, 3],
    [3, 6],
    [2, 5],
  ] as const) {
    const order = distinct.map((_, i) => (i === a ? b : i === b ? a : i));
    assert.deepEqual(
      lasts(matched(last, now(moved(order)))),
      order.map((from) => from + 1),
    );
  }
  for (const by of [1, 2]) {
    const pushed = now(distinct).map((bar) => ({ ...bar, place: bar.place + by }));
    assert.deepEqual(lasts(matched(last, pushed)), [1, 2, 3, 4, 5, 6, 7], `pushed by ${by}`);
  }
});

test('E174 bars of one mark are matched by it wherever they hang; two marks are never taken for one', () => {
  const marks = ['A', null, 'B', null, null, null, 'C'];
  const matches = matched(before(distinct, 9, marks), now(moved([3, 1, 2, 0, 4, 5, 6]), ['B', null, 'X', 'A', null, null, 'Y']));
  assert.deepEqual([matches[0]?.last, matches[0]?.by, matches[3]?.last, matches[3]?.by], [3, 'mark', 1, 'mark']);
  assert.notEqual(matches[2]?.last, 7);
  assert.notEqual(matches[6]?.last, 7);
});

test('E175 nothing read tells nothing, and combs that cannot be told apart share what is sure', () => {
  fc.assert(
    fc.property(nest, nest, anyDays, (held, today, days) => {
      matched(before(held, days), now(today)).forEach(({ sure }, i) => {
        assert.equal(
          sure === null,
          today[i]!.every((one) => one === null),
        );
      });
    }),
    { seed: 175 },
  );
  // The bar between two combs that were alike, and that hang nowhere else: either may be it, or a third that is new.
  fc.assert(
    fc.property(anyHeld, anyDays, (held, days) => {
      const [one, two] = [before([held], days)[0]!, before([held], days)[0]!];
      const [bar] = matched([one, { ...two, place: 3 }], [{ ...now([held])[0]!, place: 2 }]);
      assert.ok(bar?.sure === null || bar!.sure! <= 1 / 2 + 1e-9, `${bar?.sure}`);
    }),
    { seed: 1751 },
  );
  // A comb of which nothing is known does not draw a bar away from the comb that it fits.
  assert.deepEqual(
    lasts(
      matched(
        before(
          [
            [null, null],
            [5, 2],
          ],
          9,
        ),
        now([[5, 2]]),
      ),
    ),
    [2],
  );
  const unknown = before(Array<Held>(5).fill([null, null]), 9);
  const [bar] = matched(unknown, [{ place: 3, mark: null, brood: 0.5, food: 0.2 }]);
  assert.ok(bar?.last === 3 && bar.sure! < 0.5, `${bar?.sure}`);
});

/** A made-up nest, and one of four things done to it. */
function madeUp(stream: Stream): { held: readonly Held[]; order: readonly (number | null)[] } {
  const count = 10;
  const half = (eighths: number): number => Math.round(2 * Math.min(eighthsInWhole, Math.max(0, eighths))) / 2;
  const heart = (count - 1) / 2 + 3 * (nextUnit(stream) - 1 / 2);
  const held = Array.from({ length: count }, (_, i): Held => {
    const from = ((i - heart) / (count / 3.2)) ** 2;
    const brood = half(7 * (1 - from) + 0.8 * nextNormal(stream));
    return [brood, half(Math.min(eighthsInWhole - brood, 1 + 5 * from * nextUnit(stream) + 0.8 * nextNormal(stream)))];
  });
  const still: readonly (number | null)[] = held.map((_, i) => i);
  const pick = (below: number): number => Math.floor(below * nextUnit(stream));
  const swapped = (a: number, b: number) => still.map((i) => (i === a ? b : i === b ? a : i));
  const at = pick(count - 1);
  const kinds = [still, swapped(at, at + 1), swapped(at, (at + 3 + pick(4)) % count)];
  return { held, order: kinds[pick(4)] ?? [...still.slice(0, at), null, ...still.slice(at)] };
}

test('E176 of matches told so sure, at least so many are right, in nests left alone, swapped, or pushed along by a bare bar', () => {
  const stream = newStream(176, 1, 0, 0);
  const told = Array.from({ length: 11 }, () => ({ right: 0, all: 0, said: 0 }));
  for (let run = 0; run < 600; run += 1) {
    const { held, order } = madeUp(stream);
    const last = before(held, run % 2 === 0 ? 7 : 14);
    const today = order.map((from, i): CombToday => {
      const read = (what: 'brood' | 'food'): number => {
        const part = from === null ? null : last[from]![what];
        if (part === null) return 0;
        const drawn = part.expected + Math.hypot(0.075, part.expected / 4) * nextNormal(stream);
        return Math.min(1, Math.max(0, Math.round(16 * drawn) / 16));
      };
      return { place: i + 1, mark: null, brood: read('brood'), food: read('food') };
    });
    matched(last, today).forEach(({ last: found, sure }, i) => {
      const bin = told[Math.round(10 * sure!)]!;
      const truth = order[i];
      bin.all += 1;
      bin.said += sure!;
      if (found === (truth === null || truth === undefined ? null : truth + 1)) bin.right += 1;
    });
  }
  for (const { right, all, said } of told.filter((bin) => bin.all >= 100)) {
    const error = Math.sqrt(0.25 / all);
    assert.ok(right / all > said / all - 2 * error, `told ${said / all}, right ${right / all} of ${all}`);
  }
  assert.ok(told.filter((bin) => bin.all >= 100).length >= 5);
});
