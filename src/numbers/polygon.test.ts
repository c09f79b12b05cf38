/** Areas by hand, and against a plain sum over thin strips. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { areaMoments, type Point, polygonArea, polygonPerimeter } from './polygon.ts';

const near = (found: number, expected: number, by = 1e-9): void => {
  assert.ok(Math.abs(found - expected) <= by * Math.max(1, Math.abs(expected)), `${found}, not ${expected}`);
};

test('N4 a rectangle of 4 by 6 has area 24, its middle as centroid, and bh³/12 as second moment', () => {
  const { area, centroid, secondMomentX } = areaMoments([
    [1, 2],
    [5, 2],
    [5, 8],
    [1, 8],
  ]);
  near(area, 24);
  near(centroid[0], 3);
  near(centroid[1], 5);
  near(secondMomentX, (4 * 6 ** 3) / 12);
});

test('N4 a triangle of base 6 and height 3 has area 9, its centroid a third from the base, and bh³/36 as second moment', () => {
  const { area, centroid, secondMomentX } = areaMoments([
    [0, 0],
    [6, 0],
    [2, 3],
  ]);
  near(area, 9);
  near(centroid[1], 1);
  near(secondMomentX, (6 * 27) / 36);
});

test('N4 the sides of a 3-4-5 triangle add to 12', () => {
  near(
    polygonPerimeter([
      [0, 0],
      [3, 0],
      [0, 4],
    ]),
    12,
  );
});

const trapezoid = fc.record({
  top: fc.double({ min: 10, max: 500, noNaN: true }),
  bottom: fc.double({ min: 1, max: 500, noNaN: true }),
  height: fc.double({ min: 5, max: 400, noNaN: true }),
  shift: fc.double({ min: -50, max: 50, noNaN: true }),
});

test('N4 turning the corners round or moving the polygon sideways changes no area', () => {
  fc.assert(
    fc.property(trapezoid, ({ top, bottom, height, shift }) => {
      const corners: Point[] = [
        [-top / 2, 0],
        [top / 2, 0],
        [bottom / 2, height],
        [-bottom / 2, height],
      ];
      near(polygonArea([...corners].reverse()), polygonArea(corners));
      near(polygonArea(corners.map(([x, y]): Point => [x + shift, y])), polygonArea(corners), 1e-7);
      near(areaMoments(corners).area, polygonArea(corners));
    }),
    { seed: 11 },
  );
});

test('N4 area, centroid and second moment agree with a sum over 20 000 thin strips', () => {
  fc.assert(
    fc.property(trapezoid, ({ top, bottom, height }) => {
      const corners: Point[] = [
        [-top / 2, 0],
        [top / 2, 0],
        [bottom / 2, height],
        [-bottom / 2, height],
      ];
      const strips = strippedMoments(top, bottom, height);
      const exact = areaMoments(corners);
      near(exact.area, strips.area, 1e-6);
      near(exact.centroid[1], strips.yc, 1e-6);
      near(exact.secondMomentX, strips.moment, 1e-6);
    }),
    { seed: 12, numRuns: 40 },
  );
});

function strippedMoments(top: number, bottom: number, height: number): { area: number; yc: number; moment: number } {
  const n = 20000;
  const strips = Array.from({ length: n }, (_, at) => {
    const y = ((at + 0.5) / n) * height;
    return { y, area: (top + (bottom - top) * (y / height)) * (height / n) };
  });
  const area = strips.reduce((sum, strip) => sum + strip.area, 0);
  const yc = strips.reduce((sum, strip) => sum + strip.area * strip.y, 0) / area;
  return { area, yc, moment: strips.reduce((sum, strip) => sum + strip.area * (strip.y - yc) ** 2, 0) };
}
