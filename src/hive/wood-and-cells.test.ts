/** The small closed forms of this room: cells on an area, the box, bees on a face. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { beesOnFace } from './bees-on-face.ts';
import { cellsPerDm2, cellWidthMm } from './cells-per-area.ts';
import { hiveBox } from './hive-box.ts';

test('S17 a hexagon laid out by its corners has the area that the density says', () => {
  fc.assert(
    fc.property(fc.double({ min: 4, max: 8, noNaN: true }), (width) => {
      // Six corners at width / √3 from the middle: a hexagon `width` across its flats.
      const r = width / Math.sqrt(3);
      const corner = (n: number): readonly [number, number] => [r * Math.cos((n * Math.PI) / 3), r * Math.sin((n * Math.PI) / 3)];
      let twice = 0;
      for (let n = 0; n < 6; n += 1) {
        const [x0, y0] = corner(n);
        const [x1, y1] = corner(n + 1);
        twice += x0 * y1 - x1 * y0;
      }
      assert.ok(Math.abs(cellsPerDm2(width) * (twice / 2) - 10000) < 1e-6);
    }),
    { seed: 51 },
  );
});

test('S17 twenty cells along 10 cm are 5 mm wide', () => {
  assert.equal(cellWidthMm(20), 5);
});

test('S18 an upright box of 2 by 3 dm and 10 bars of 35 mm with 10 mm to spare holds 21.6 litres', () => {
  const box = hiveBox({ floorWidthMm: 200, heightMm: 300, wallAngleDeg: 0, bars: 10, barWidthMm: 35, expansionMm: 10 });
  assert.equal(box.topWidthMm, 200);
  assert.equal(box.innerLengthMm, 360);
  assert.ok(Math.abs(box.crossSectionDm2 - 6) < 1e-12);
  assert.ok(Math.abs(box.volumeL - 21.6) < 1e-12);
  assert.ok(Math.abs(box.litresPerBar - 2.1) < 1e-12);
});

test('S18 walls at 45 degrees widen the box by twice its height', () => {
  const box = hiveBox({ floorWidthMm: 200, heightMm: 100, wallAngleDeg: 45, bars: 1, barWidthMm: 35, expansionMm: 0 });
  assert.ok(Math.abs(box.topWidthMm - 400) < 1e-9);
  assert.ok(Math.abs(box.crossSectionDm2 - 3) < 1e-9);
});

test('S19 two dm² half covered at 125 hold 125 bees', () => {
  assert.equal(beesOnFace(2, 0.5, 125), 125);
});
