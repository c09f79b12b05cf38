/** What the outline of any comb must satisfy, built out or not. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { rangeOf, printedBook } from '../figures/book.ts';
import { type Point, polygonArea } from '../numbers/polygon.ts';
import { combOutline, depthOfShare, type Outline, outlineAreaDm2, widthAt } from './outline.ts';

const size = fc.record({
  topWidthMm: fc.double({ min: 200, max: 600, noNaN: true }),
  depthMm: fc.double({ min: 150, max: 400, noNaN: true }),
  wallAngleDeg: fc.double({ min: 0, max: 35, noNaN: true }),
  sideGapMm: fc.constant(8),
  floorGapMm: fc.constant(20),
  builtShare: fc.double({ min: 0.001, max: 1, noNaN: true }),
});

const made = (given: Parameters<typeof combOutline>[0]): Outline => {
  const outline = combOutline(given);
  assert.ok(outline);
  return outline;
};

test('S14 the built share is honoured: the polygon holds that share of the built-out face', () => {
  fc.assert(
    fc.property(size, (given) => {
      const outline = made(given);
      const wanted = given.builtShare * outline.fullFaceDm2;
      assert.ok(Math.abs(outline.faceDm2 - wanted) < 1e-9 * wanted);
      assert.ok(Math.abs(outlineAreaDm2(outline) - wanted) < 1e-9 * wanted);
    }),
    { seed: 41 },
  );
});

test('S14 the outline stays inside the built-out comb', () => {
  fc.assert(
    fc.property(size, (given) => {
      const outline = made(given);
      const full = made({ ...given, builtShare: 1 });
      assert.ok(outline.depthMm <= full.depthMm + 1e-6);
      for (const [x, y] of outline.points)
        assert.ok(Math.abs(x) <= widthAt(full, Math.min(y, full.depthMm)) / 2 + 0.01, `${x} at ${y}`);
    }),
    { seed: 42 },
  );
});

test('S15 the depth of a share cuts off that share of the polygon', () => {
  fc.assert(
    fc.property(size, fc.double({ min: 0, max: 1, noNaN: true }), (given, share) => {
      const outline = made(given);
      const y = depthOfShare(outline, share);
      const above = polygonArea(cutBelow(outline.points, y)) / 1e4;
      assert.ok(Math.abs(above - share * outline.faceDm2) < 1e-6 * outline.faceDm2, `${above} of ${share * outline.faceDm2}`);
    }),
    { seed: 43 },
  );
});

test('S15 more area reaches deeper, and more built is never shallower', () => {
  fc.assert(
    fc.property(size, fc.double({ min: 0.001, max: 1, noNaN: true }), (given, other) => {
      const [less, more] = [Math.min(given.builtShare, other), Math.max(given.builtShare, other)];
      assert.ok(made({ ...given, builtShare: less }).depthMm <= made({ ...given, builtShare: more }).depthMm + 1e-6);
      const outline = made(given);
      assert.ok(depthOfShare(outline, less) <= depthOfShare(outline, more));
    }),
    { seed: 44 },
  );
});

test('S14 nothing built has no corners, a built-out comb has four', () => {
  const given = { topWidthMm: 440, depthMm: 280, wallAngleDeg: 22.5, sideGapMm: 8, floorGapMm: 20 };
  assert.equal(made({ ...given, builtShare: 0 }).points.length, 0);
  assert.equal(made({ ...given, builtShare: 1 }).points.length, 4);
});

test('S16 a rounded comb that reaches the floor keeps the share of its straight outline that the figure says', () => {
  // The first share at which the lobe reaches the floor, upright walls and full width: π-like constant of the rounding.
  const given = { topWidthMm: 416, depthMm: 220, wallAngleDeg: 0, sideGapMm: 8, floorGapMm: 20 };
  const { low, high } = rangeOf(printedBook, 'rounded-comb-share');
  const reaches = Array.from({ length: 1000 }, (_, at) => (at + 1) / 1001).find(
    (builtShare) => made({ ...given, builtShare }).depthMm > 200 - 1e-6,
  );
  assert.ok(reaches !== undefined);
  const first = made({ ...given, builtShare: reaches });
  const straight = (first.attachmentMm * 200) / 1e4;
  assert.ok(first.faceDm2 / straight >= low && first.faceDm2 / straight <= high, `${first.faceDm2 / straight}`);
});

/** The part of a polygon above a level line (y down), by cutting each edge. */
function cutBelow(points: readonly Point[], level: number): readonly Point[] {
  return points.flatMap((point, at): Point[] => {
    const next = points[(at + 1) % points.length] ?? point;
    const kept = point[1] <= level ? [point] : [];
    if (point[1] <= level === next[1] <= level) return kept;
    const t = (level - point[1]) / (next[1] - point[1]);
    return [...kept, [point[0] + t * (next[0] - point[0]), level]];
  });
}
