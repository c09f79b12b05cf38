/** Places along a trough: true widths, the lens, the choice of density. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { densityFor, lensAround, placeEdges, widthOf } from './places.ts';

const asked = {
  hiveBars: 24,
  width: 360,
  margin: 7,
  widthsMm: new Map([
    [3, 38],
    [4, 32],
  ]),
  usualMm: 35,
  lens: null,
};

test('D4 bars are as wide as they are: their widths on the paper stand in the ratio of their millimetres', () => {
  const edges = placeEdges(asked);
  assert.ok(Math.abs(widthOf(edges, 3) / widthOf(edges, 4) - 38 / 32) < 1e-9);
  assert.ok(Math.abs((edges.at(-1) ?? 0) - 353) < 1e-9);
  assert.equal(edges.length, 25);
});

test('D4 a lens shows its bars at 30 px or so on a phone, true to each other, and keeps the length of the trough', () => {
  const edges = placeEdges({ ...asked, lens: { from: 2, to: 8 } });
  assert.ok(Math.abs(widthOf(edges, 3) / widthOf(edges, 4) - 38 / 32) < 1e-9);
  assert.ok(widthOf(edges, 5) > 28 && widthOf(edges, 5) < 34);
  assert.ok(Math.abs(widthOf(edges, 20) - widthOf(edges, 21)) < 1e-9);
  assert.ok(Math.abs((edges.at(-1) ?? 0) - 353) < 1e-9);
});

test('D4 a lens as long as the trough, or longer, is no lens', () => {
  const plain = placeEdges({ ...asked, hiveBars: 6 });
  assert.deepEqual(placeEdges({ ...asked, hiveBars: 6, lens: lensAround(3, 6) }), plain);
});

test('D4 the lens holds seven bars around the bar in hand, and stays inside the trough', () => {
  assert.deepEqual(lensAround(10, 24), { from: 7, to: 13 });
  assert.deepEqual(lensAround(1, 24), { from: 1, to: 7 });
  assert.deepEqual(lensAround(24, 24), { from: 18, to: 24 });
  assert.deepEqual(lensAround(2, 5), { from: 1, to: 5 });
});

test('D4 under 14 px a bar the density is far', () => {
  assert.equal(densityFor(349, 24), 'far');
  assert.equal(densityFor(350, 24), 'near');
});
