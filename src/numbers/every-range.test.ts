/** What sums and products of ranges, windows, typed units and fault lines must satisfy. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { addDays, dayFromNumber } from './day.ts';
import { addApart, addTogether, exactly, type Range, scaleRange, timesRange } from './range.ts';
import { issueLine } from './result.ts';
import { inBase } from './units.ts';
import { holds, intersect, shiftWindow, spanDays, type Window, windowOf } from './window.ts';

const number = fc.double({ min: 0, max: 1e4, noNaN: true });
const range = fc.tuple(number, number, number).map((parts): Range => {
  const [low = 0, likely = 0, high = 0] = [...parts].sort((a, b) => a - b);
  return { low, likely, high };
});
const ordered = (found: Range): void => {
  assert.ok(found.low <= found.likely * (1 + 1e-9) && found.likely <= found.high * (1 + 1e-9), JSON.stringify(found));
  assert.ok(found.low >= 0);
};

test('N2 sums and products of ranges keep their order and never pass below nothing', () => {
  fc.assert(
    fc.property(range, range, fc.double({ min: 0, max: 10, noNaN: true }), (a, b, factor) => {
      for (const found of [addTogether([a, b]), addApart([a, b]), timesRange(a, b), scaleRange(a, factor)]) ordered(found);
      assert.ok(Math.abs(addApart([a, b]).likely - (a.likely + b.likely)) < 1e-6);
      assert.ok(Math.abs(timesRange(a, b).likely - a.likely * b.likely) <= 1e-9 * (1 + a.likely * b.likely));
    }),
    { seed: 3 },
  );
});

test('N2 errors apart widen a sum less than errors together, and an exact part widens nothing', () => {
  fc.assert(
    fc.property(range, range, (a, b) => {
      const apart = addApart([a, b]);
      const together = addTogether([a, b]);
      assert.ok(apart.high <= together.high + 1e-6 && apart.low >= together.low - 1e-6);
      const alone = addApart([a, exactly(5)]);
      assert.ok(Math.abs(alone.high - (a.high + 5)) < 1e-6);
    }),
    { seed: 4 },
  );
});

test('N2 3 ± 3 and 4 ± 4 apart are 7 ± 5', () => {
  assert.deepEqual(
    addApart([
      { low: 0, likely: 3, high: 6 },
      { low: 0, likely: 4, high: 8 },
    ]),
    { low: 2, likely: 7, high: 12 },
  );
});

const window = fc
  .tuple(fc.integer({ min: 0, max: 400 }), fc.nat({ max: 60 }))
  .map(([from, span]): Window => windowOf(dayFromNumber(from), dayFromNumber(from + span)));

test('N3 a day lies in the common window exactly when it lies in all of them', () => {
  fc.assert(
    fc.property(fc.array(window, { minLength: 1, maxLength: 4 }), fc.integer({ min: -5, max: 480 }), (windows, at) => {
      const common = intersect(windows);
      const day = dayFromNumber(at);
      assert.equal(
        common !== null && holds(common, day),
        windows.every((one) => holds(one, day)),
      );
    }),
    { seed: 5 },
  );
});

test('N3 nothing is common to no windows, and shifting moves both ends', () => {
  assert.equal(intersect([]), null);
  const moved = shiftWindow(windowOf('2025-01-30', '2025-02-02'), 2, 5);
  assert.deepEqual(moved, { earliest: '2025-02-01', latest: '2025-02-07' });
  assert.equal(spanDays(moved), 6);
  assert.equal(moved.latest, addDays('2025-02-02', 5));
});

test('N6 an inch is 25.4 mm, a pound 0.45359237 kg, 212 °F is 100 °C, and a length is no weight', () => {
  assert.equal(inBase({ value: 1, unit: 'in' }, 'mm'), 25.4);
  assert.equal(inBase({ value: 1, unit: 'lb' }, 'kg'), 0.45359237);
  assert.ok(Math.abs((inBase({ value: 212, unit: 'degF' }, 'degC') ?? 0) - 100) < 1e-9);
  assert.ok(Math.abs((inBase({ value: 32, unit: 'degF' }, 'degC') ?? 1) - 0) < 1e-9);
  assert.equal(inBase({ value: 1, unit: 'in' }, 'kg'), null);
  assert.equal(inBase({ value: 1, unit: 'ell' }, 'mm'), null);
});

test('N7 a fault prints as one line, with its entry first where there is one', () => {
  const issue = { code: 'missing', path: 'bars', found: 'nothing', expected: 'a whole number' };
  assert.equal(issueLine(issue), 'bars: nothing; a whole number');
  assert.equal(issueLine({ ...issue, entry: 'e1' }), 'e1 bars: nothing; a whole number');
});
