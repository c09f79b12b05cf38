/**
 * The face of a comb built out to the walls and the floor: a trapezoid hung from the bar, or a triangle where
 * the walls would meet before the floor. Closed forms of the trapezoid; the rounded comb is in `outline.ts`.
 */

export interface FaceSize {
  /** Inside width at the bar, wall to wall. */
  readonly topWidthMm: number;
  /** Bar to floor. */
  readonly depthMm: number;
  /** Of the walls, from the vertical. */
  readonly wallAngleDeg: number;
  /** Gap at the walls, at right angles to them. */
  readonly sideGapMm: number;
  readonly floorGapMm: number;
}

export interface CombFace {
  /** Length along which it hangs from the bar. */
  readonly attachmentMm: number;
  /** Lower edge; 0 for a triangle. */
  readonly bottomMm: number;
  readonly combDepthMm: number;
  /** One face. */
  readonly faceDm2: number;
  /** Below the bar. */
  readonly centroidMm: number;
  readonly sideMm: number;
  readonly perimeterMm: number;
  /** About the horizontal axis through the centroid. */
  readonly secondMomentCm4: number;
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Null when the gaps leave nothing to build in. */
export function combFace(size: FaceSize): CombFace | null {
  const slope = Math.tan(radians(size.wallAngleDeg));
  const cos = Math.cos(radians(size.wallAngleDeg));
  const L = size.topWidthMm - (2 * size.sideGapMm) / cos;
  const toFloor = size.depthMm - size.floorGapMm;
  if (L <= 0 || toFloor <= 0) return null;
  const triangle = L - 2 * toFloor * slope < 0;
  const d = triangle ? L / (2 * slope) : toFloor;
  const B = triangle ? 0 : L - 2 * d * slope;
  const s = d / cos;
  return {
    attachmentMm: L,
    bottomMm: B,
    combDepthMm: d,
    faceDm2: (d * (L + B)) / 2 / 1e4,
    centroidMm: (d * (L + 2 * B)) / (3 * (L + B)),
    sideMm: s,
    perimeterMm: L + B + 2 * s,
    secondMomentCm4: (d ** 3 * (L * L + 4 * L * B + B * B)) / (36 * (L + B)) / 1e4,
  };
}

/** Depth below the bar that holds a share 0…1 of the face, in mm. */
export function depthOfFaceShare(face: CombFace, share: number): number {
  const slope = (face.attachmentMm - face.bottomMm) / (2 * face.combDepthMm);
  const area = share * face.faceDm2 * 1e4;
  const L = face.attachmentMm;
  // The smaller root of slope·y² − L·y + area = 0, written so that it also holds for upright walls.
  return (2 * area) / (L + Math.sqrt(Math.max(0, L * L - 4 * slope * area)));
}
