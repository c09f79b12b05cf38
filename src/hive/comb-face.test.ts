/** The closed forms of a built-out comb: printed examples, a triangle by hand, and the polygon as judge. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { areaMoments, type Point, polygonArea, polygonPerimeter } from '../numbers/polygon.ts';
import { combFace, depthOfFaceShare, type CombFace } from './comb-face.ts';

const near = (found: number, expected: number, relative = 1e-9): void => {
  assert.ok(Math.abs(found - expected) <= relative * Math.max(1, Math.abs(expected)), `${found}, not ${expected}`);
};

const size = fc.record({
  topWidthMm: fc.double({ min: 150, max: 700, noNaN: true }),
  depthMm: fc.double({ min: 100, max: 500, noNaN: true }),
  wallAngleDeg: fc.double({ min: 0, max: 45, noNaN: true }),
  sideGapMm: fc.double({ min: 0, max: 15, noNaN: true }),
  floorGapMm: fc.double({ min: 0, max: 40, noNaN: true }),
});

const corners = (face: CombFace): readonly Point[] => [
  [-face.attachmentMm / 2, 0],
  [face.attachmentMm / 2, 0],
  [face.bottomMm / 2, face.combDepthMm],
  ...(face.bottomMm > 0 ? [[-face.bottomMm / 2, face.combDepthMm] as const] : []),
];

test('S11 an upright comb of 400 by 250 mm with gaps of 10 and 20 is a rectangle of 380 by 230', () => {
  const face = combFace({ topWidthMm: 400, depthMm: 250, wallAngleDeg: 0, sideGapMm: 10, floorGapMm: 20 });
  assert.ok(face);
  near(face.attachmentMm, 380);
  near(face.bottomMm, 380);
  near(face.faceDm2, 8.74);
  near(face.centroidMm, 115);
  near(face.perimeterMm, 1220);
  near(face.secondMomentCm4, (38 * 23 ** 3) / 12);
  near(depthOfFaceShare(face, 0.25), 57.5);
});

test('S11 walls at 45 degrees that meet before the floor leave a triangle as deep as half its width', () => {
  const face = combFace({ topWidthMm: 200, depthMm: 300, wallAngleDeg: 45, sideGapMm: 0, floorGapMm: 0 });
  assert.ok(face);
  assert.equal(face.bottomMm, 0);
  near(face.combDepthMm, 100);
  near(face.faceDm2, 1);
  near(face.centroidMm, 100 / 3);
  near(depthOfFaceShare(face, 0.75), 50);
  near(depthOfFaceShare(face, 1), 100);
});

test('S11 gaps that leave nothing give no face', () => {
  assert.equal(combFace({ topWidthMm: 10, depthMm: 300, wallAngleDeg: 0, sideGapMm: 5, floorGapMm: 0 }), null);
  assert.equal(combFace({ topWidthMm: 400, depthMm: 20, wallAngleDeg: 0, sideGapMm: 5, floorGapMm: 20 }), null);
});

test('S12 area, centroid, second moment and perimeter equal those of the polygon of its corners', () => {
  fc.assert(
    fc.property(size, (given) => {
      const face = combFace(given);
      if (face === null) return;
      const polygon = areaMoments(corners(face));
      near(face.faceDm2, polygon.area / 1e4, 1e-9);
      near(face.centroidMm, polygon.centroid[1], 1e-9);
      near(face.secondMomentCm4, polygon.secondMomentX / 1e4, 1e-7);
      near(face.perimeterMm, polygonPerimeter(corners(face)), 1e-9);
    }),
    { seed: 31, numRuns: 400 },
  );
});

test('S13 the depth of a share is the inverse of the area above a depth', () => {
  fc.assert(
    fc.property(size, fc.double({ min: 0, max: 1, noNaN: true }), (given, share) => {
      const face = combFace(given);
      if (face === null) return;
      const y = depthOfFaceShare(face, share);
      assert.ok(y >= 0 && y <= face.combDepthMm * (1 + 1e-9));
      const slope = (face.attachmentMm - face.bottomMm) / face.combDepthMm;
      const width = face.attachmentMm - slope * y;
      const above: Point[] = [
        [0, 0],
        [face.attachmentMm, 0],
        [(face.attachmentMm + width) / 2, y],
        [(face.attachmentMm - width) / 2, y],
      ];
      near(polygonArea(above) / 1e4, share * face.faceDm2, 1e-7);
    }),
    { seed: 32, numRuns: 400 },
  );
});
