/**
 * Area, centroid and second moment of a simple polygon by the shoelace sums (Green's theorem over the edges).
 * Used for outlines of comb, and as the independent judge of their closed forms.
 */
import { assert } from './assert.ts';

export type Point = readonly [x: number, y: number];

export interface AreaMoments {
  /** Never negative, whichever way round the corners are given. */
  readonly area: number;
  readonly centroid: Point;
  /** About the horizontal axis through the centroid: the integral of (y − yc)². */
  readonly secondMomentX: number;
}

/** Corners in order, not closed; at least three, not all on one line. */
export function areaMoments(corners: readonly Point[]): AreaMoments {
  assert(corners.length >= 3, 'a polygon has at least three corners');
  let twice = 0;
  let sx = 0;
  let sy = 0;
  let syy = 0;
  forEachEdge(corners, ([x0, y0], [x1, y1]) => {
    const cross = x0 * y1 - x1 * y0;
    twice += cross;
    sx += (x0 + x1) * cross;
    sy += (y0 + y1) * cross;
    syy += (y0 * y0 + y0 * y1 + y1 * y1) * cross;
  });
  assert(twice !== 0, 'a polygon encloses an area');
  const area = twice / 2;
  const yc = sy / (6 * area);
  return { area: Math.abs(area), centroid: [sx / (6 * area), yc], secondMomentX: Math.abs(syy / 12 - area * yc * yc) };
}

export function polygonArea(corners: readonly Point[]): number {
  let twice = 0;
  forEachEdge(corners, ([x0, y0], [x1, y1]) => {
    twice += x0 * y1 - x1 * y0;
  });
  return Math.abs(twice) / 2;
}

export function polygonPerimeter(corners: readonly Point[]): number {
  let length = 0;
  forEachEdge(corners, ([x0, y0], [x1, y1]) => {
    length += Math.hypot(x1 - x0, y1 - y0);
  });
  return length;
}

function forEachEdge(corners: readonly Point[], visit: (from: Point, to: Point) => void): void {
  corners.forEach((corner, at) => visit(corner, corners[(at + 1) % corners.length] ?? corner));
}
