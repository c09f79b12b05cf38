/**
 * The taper of the trough, as strips use it: how deep a share of a full face hangs, and, backwards, what
 * share hangs above a depth. The full face is the hive room's trapezoid. Lengths in millimetres, shares 0…1.
 */
import { type CombFace, combFace, depthOfFaceShare, type FaceSize } from '../hive/comb-face.ts';
import { assert } from '../numbers/assert.ts';

/** A trough in cross-section with the gaps that bees leave. */
export type Trough = FaceSize;
export type Taper = CombFace;

/** The full face of a trough; throws when the gaps leave nothing to build in. */
export function taperOf(trough: Trough): Taper {
  const face = combFace(trough);
  assert(face !== null, 'a trough with room for comb');
  return face;
}

/** Depth above which a share of a full face hangs. */
export function depthOfShare(taper: Taper, share: number): number {
  if (share >= 1) return taper.combDepthMm;
  return depthOfFaceShare(taper, Math.max(0, share));
}

/** Share of a full face that hangs above a depth: the area of the slab over it, by its two widths. */
export function shareAbove(taper: Taper, mm: number): number {
  const y = Math.min(Math.max(mm, 0), taper.combDepthMm);
  const width = taper.attachmentMm - ((taper.attachmentMm - taper.bottomMm) * y) / taper.combDepthMm;
  return (((taper.attachmentMm + width) / 2) * y) / (taper.faceDm2 * 1e4);
}
