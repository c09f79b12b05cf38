/**
 * The outline of one face of a comb, as drawn and as measured: the built-out trapezoid, or while it is being
 * built a rounded lobe from the middle of the bar, narrower the less is built. The lobe's form is our choice
 * (no measured one was found); its area is exact, so that cells and kilograms never depend on the drawing.
 */
import { assert } from '../numbers/assert.ts';
import { type Point, polygonArea } from '../numbers/polygon.ts';
import { combFace, type FaceSize } from './comb-face.ts';

export interface OutlineSize extends FaceSize {
  /** Share of the built-out face that is built, 0…1. */
  readonly builtShare: number;
}

export interface Outline {
  /** Corners in mm, clockwise from the left end at the bar; x from the middle of the bar, y down from it. Empty when nothing is built. */
  readonly points: readonly Point[];
  /** Half widths from the bar down: what areas are measured on. */
  readonly levels: readonly Level[];
  readonly faceDm2: number;
  readonly depthMm: number;
  readonly attachmentMm: number;
  /** Of the built-out face. */
  readonly fullFaceDm2: number;
}

interface Level {
  readonly y: number;
  readonly half: number;
}

/** How square the lower corners are: a rectangle rounded so keeps 0.927 of its area. */
const roundness = 4;
/** A comb of which this share is built reaches along the whole attachment times its power below. */
const narrowing = 1 / 3;
const squarest = 400;
const slices = 48;

/** Null when the gaps leave nothing to build in. */
export function combOutline(size: OutlineSize): Outline | null {
  assert(size.builtShare >= 0 && size.builtShare <= 1, 'a built share from 0 to 1');
  const full = combFace(size);
  if (full === null) return null;
  const levels =
    size.builtShare === 1
      ? [
          { y: 0, half: full.attachmentMm / 2 },
          { y: full.combDepthMm, half: full.bottomMm / 2 },
        ]
      : lobe(full.attachmentMm, full.bottomMm, full.combDepthMm, size.builtShare);
  const last = levels.at(-1);
  return {
    points: corners(levels),
    levels,
    faceDm2: areaOf(levels) / 1e4,
    depthMm: last?.y ?? 0,
    attachmentMm: 2 * (levels[0]?.half ?? 0),
    fullFaceDm2: full.faceDm2,
  };
}

/** Depth below the bar, in mm, of a level line that has the share 0…1 of the outline's area above it. */
export function depthOfShare(outline: Outline, share: number): number {
  assert(share >= 0 && share <= 1, 'a share from 0 to 1');
  let wanted = share * areaOf(outline.levels);
  let above: Level | null = null;
  for (const level of outline.levels) {
    if (above !== null) {
      const slab = slabArea(above, level);
      if (wanted <= slab) return above.y + intoSlab(above, level, wanted);
      wanted -= slab;
    }
    above = level;
  }
  return outline.depthMm;
}

/** Width of the outline at a depth, in mm; 0 below it. */
export function widthAt(outline: Outline, depthMm: number): number {
  const below = outline.levels.findIndex((level) => level.y >= depthMm);
  const b = outline.levels[below];
  if (b === undefined) return 0;
  const a = outline.levels[below - 1] ?? b;
  const t = b.y === a.y ? 1 : (depthMm - a.y) / (b.y - a.y);
  return 2 * (a.half + (b.half - a.half) * t);
}

/** A lobe with the wanted share of the trapezoid's area: first by its depth, and when it reaches the floor by squarer corners. */
function lobe(L: number, B: number, d: number, share: number): readonly Level[] {
  if (share === 0) return [];
  const width = share ** narrowing;
  const wanted = (share * d * (L + B)) / 2;
  const shape = (depth: number, power: number, across: number): readonly Level[] =>
    Array.from({ length: slices + 1 }, (_, at) => {
      // Slices are closer together toward the lower edge, where the curve bends.
      const u = Math.sin((at / slices) * (Math.PI / 2));
      const straight = (L - ((L - B) * depth * u) / d) / 2;
      return { y: depth * u, half: across * straight * (1 - u ** power) ** (1 / power) };
    });
  const shallow = (t: number): readonly Level[] => shape(t * d, roundness, width);
  if (areaOf(shallow(1)) >= wanted) return solve((t) => shallow(t), wanted);
  const wide = (t: number): readonly Level[] => shape(d, roundness, width + (1 - width) * t);
  if (areaOf(wide(1)) >= wanted) return solve(wide, wanted);
  const square = (t: number): readonly Level[] => shape(d, roundness * (squarest / roundness) ** t, 1);
  if (areaOf(square(1)) >= wanted) return solve(square, wanted);
  // Less than a thousandth is wanting: from the squarest lobe toward the straight edges.
  const straight = ({ y, half }: Level, t: number): number => half + ((L - ((L - B) * y) / d) / 2 - half) * t;
  return solve((t) => square(1).map((level) => ({ y: level.y, half: straight(level, t) })), wanted);
}

/** Bisects t in 0…1 for a growing area, then scales the widths by what is left (a rounding error). */
function solve(make: (t: number) => readonly Level[], wanted: number): readonly Level[] {
  let low = 0;
  let high = 1;
  for (let step = 0; step < 50; step += 1) {
    const middle = (low + high) / 2;
    if (areaOf(make(middle)) < wanted) low = middle;
    else high = middle;
  }
  const found = make(high);
  const scale = wanted / areaOf(found);
  return found.map(({ y, half }) => ({ y, half: half * scale }));
}

function corners(levels: readonly Level[]): readonly Point[] {
  const right = levels.map(({ y, half }): Point => [half, y]);
  const left = levels.filter(({ half }) => half > 0).map(({ y, half }): Point => [-half, y]);
  const [first, ...rest] = left;
  return first === undefined ? [] : [first, ...right, ...rest.reverse()];
}

function areaOf(levels: readonly Level[]): number {
  return levels.reduce((sum, level, at) => sum + (at === 0 ? 0 : slabArea(levels[at - 1] ?? level, level)), 0);
}

function slabArea(above: Level, below: Level): number {
  return (above.half + below.half) * (below.y - above.y);
}

/** How far into a slab a wanted area reaches; exact for its straight sides. */
function intoSlab(above: Level, below: Level, wanted: number): number {
  const height = below.y - above.y;
  if (height === 0 || wanted === 0) return 0;
  const slope = (above.half - below.half) / height;
  return (2 * wanted) / (2 * above.half + Math.sqrt(Math.max(0, 4 * above.half ** 2 - 4 * slope * wanted)));
}

/** The polygon's own area, for a reader who wants to check: equals `faceDm2`. */
export function outlineAreaDm2(outline: Outline): number {
  return outline.points.length < 3 ? 0 : polygonArea(outline.points) / 1e4;
}
