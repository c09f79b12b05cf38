/** Streams, resampling, sums of logarithms and the normal distribution, for every seed and every shares. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { logMix, logSum } from './log-sum.ts';
import { normalBelow, normalQuantile } from './normal.ts';
import { systematicParents } from './resample.ts';
import { newStream, nextNormal, nextUnit, nextWord } from './streams.ts';

const word = fc.integer({ min: -(2 ** 31), max: 2 ** 31 - 1 });

/** xoshiro128** as its authors print it, in whole numbers without end. */
function plainWords(state: readonly [bigint, bigint, bigint, bigint], count: number): readonly number[] {
  const full = 0xffffffffn;
  const turn = (x: bigint, by: bigint): bigint => ((x << by) | (x >> (32n - by))) & full;
  let [a, b, c, d] = state;
  return Array.from({ length: count }, () => {
    const result = (turn((b * 5n) & full, 7n) * 9n) & full;
    const t = (b << 9n) & full;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= t;
    d = turn(d, 11n);
    return Number(result);
  });
}

test('N18 the words are those of the published generator', () => {
  const stream = { a: 1, b: 2, c: 3, d: 4, spare: 0, waiting: false };
  assert.deepEqual(
    Array.from({ length: 200 }, () => nextWord(stream)),
    plainWords([1n, 2n, 3n, 4n], 200),
  );
});

test('N18 a stream is the same each time, and another one with any other name', () => {
  fc.assert(
    fc.property(word, word, word, fc.integer({ min: 1, max: 1000 }), (seed, index, day, by) => {
      const first = (...names: readonly [number, number, number, number]): readonly number[] => {
        const stream = newStream(...names);
        return [nextWord(stream), nextWord(stream)];
      };
      const own = first(seed, 1, index, day);
      assert.deepEqual(first(seed, 1, index, day), own);
      for (const other of [first(seed + by, 1, index, day), first(seed, 2, index, day), first(seed, 1, index + by, day)]) {
        assert.notDeepEqual(other, own);
      }
      assert.notDeepEqual(first(seed, 1, index, day + by), own);
    }),
  );
});

test('N18 numbers of neighbouring particles and days have the mean, the spread and the freedom of chance', () => {
  const first: number[] = [];
  for (let index = 0; index < 200; index += 1) {
    for (let day = 0; day < 100; day += 1) first.push(nextNormal(newStream(1, 1, index, day)));
  }
  const n = first.length;
  const mean = (of: readonly number[]): number => of.reduce((a, b) => a + b, 0) / of.length;
  // Four standard errors each.
  assert.ok(Math.abs(mean(first)) < 4 / Math.sqrt(n));
  assert.ok(Math.abs(mean(first.map((z) => z * z)) - 1) < 4 * Math.sqrt(2 / n));
  assert.ok(Math.abs(mean(first.map((z) => z ** 4)) - 3) < 4 * Math.sqrt(96 / n));
  const next = first.slice(1).map((z, i) => z * first[i]!);
  const beside = first.slice(100).map((z, i) => z * first[i]!);
  assert.ok(Math.abs(mean(next)) < 4 / Math.sqrt(n) && Math.abs(mean(beside)) < 4 / Math.sqrt(n));
});

test('N19 a share w of n particles has floor(nw) or ceil(nw) children, in order', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 60 }), fc.nat(), (raw, seed) => {
      const sum = raw.reduce((a, b) => a + b, 0);
      fc.pre(sum > 1e-6);
      const shares = Float64Array.from(raw, (x) => x / sum);
      const parents = systematicParents(shares, nextUnit(newStream(seed, 0, 0, 0)));
      assert.ok(parents.every((parent, i) => i === 0 || parent >= parents[i - 1]!));
      shares.forEach((share, i) => {
        const children = parents.filter((parent) => parent === i).length;
        assert.ok(children >= Math.floor(share * raw.length - 1e-9) && children <= Math.ceil(share * raw.length + 1e-9));
      });
    }),
  );
});

test('N20 sums of logarithms neither run over nor lose the small ones', () => {
  assert.ok(Math.abs(logSum([-1000, -1000 + Math.log(3)]) - (-1000 + Math.log(4))) < 1e-12);
  assert.equal(logSum([-Infinity, -Infinity]), -Infinity);
  assert.equal(logSum([]), -Infinity);
  assert.ok(Math.abs(logMix(Math.log(0.2), Math.log(0.6), 0.25) - Math.log(0.3)) < 1e-12);
  assert.ok(Math.abs(logMix(-Infinity, 800, 0.01) - (800 + Math.log(0.01))) < 1e-9);
});

test('N21 area and quantile of the normal are inverse, even about the middle, and meet printed values', () => {
  assert.ok(Math.abs(normalBelow(1) - 0.8413447460685429) < 1e-14);
  assert.ok(Math.abs(normalBelow(-3) - 0.0013498980316301) < 1e-14);
  assert.ok(Math.abs(normalQuantile(0.975) - 1.959963984540054) < 1e-12);
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }), (chance) => {
      assert.ok(Math.abs(normalBelow(normalQuantile(chance)) - chance) < 1e-12);
      assert.ok(Math.abs(normalQuantile(chance) + normalQuantile(1 - chance)) < 1e-8);
    }),
  );
});
