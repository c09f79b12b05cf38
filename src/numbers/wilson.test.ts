/** The range of a counted share: a hand-worked case and what must always hold. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { wilson } from './wilson.ts';

test('N5 85 of 100 lie between 0.7672 and 0.9069', () => {
  // By hand: z² = 3.8415; centre (0.85 + 0.0192) / 1.0384 = 0.8371; half 1.96 √(0.001275 + 0.000096) / 1.0384 = 0.0699.
  const { share, lo95, hi95 } = wilson(85, 100);
  assert.equal(share, 0.85);
  assert.ok(Math.abs(lo95 - 0.8371 + 0.0699) < 1e-4);
  assert.ok(Math.abs(hi95 - 0.8371 - 0.0699) < 1e-4);
});

test('N5 the ends solve the equation they come from: |p − x| = z √(x (1 − x) / n)', () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 2000 }), fc.nat(), (of, raw) => {
      const hits = 1 + (raw % (of - 1));
      const { share, lo95, hi95 } = wilson(hits, of);
      for (const end of [lo95, hi95]) {
        const standardised = Math.abs(share - end) / Math.sqrt((end * (1 - end)) / of);
        assert.ok(Math.abs(standardised - 1.95996398454) < 1e-6, `${standardised}`);
      }
    }),
    { seed: 21 },
  );
});

test('N5 the range holds the share, lies in 0…1, mirrors, and narrows as more is counted', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 500 }), fc.nat(), (of, raw) => {
      const hits = raw % (of + 1);
      const { share, lo95, hi95 } = wilson(hits, of);
      assert.ok(0 <= lo95 && lo95 <= share && share <= hi95 && hi95 <= 1);
      const mirror = wilson(of - hits, of);
      assert.ok(Math.abs(mirror.lo95 - (1 - hi95)) < 1e-12);
      const more = wilson(hits * 4, of * 4);
      assert.ok(more.hi95 - more.lo95 < hi95 - lo95);
    }),
    { seed: 22 },
  );
});
