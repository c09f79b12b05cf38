/** The sum "comb-face": one comb built out to walls and floor, as a trapezoid or a triangle. */
import { type Given, numberOf } from '../figures/read-input.ts';
import { type Answer, fieldIssue, sum } from '../figures/sum.ts';
import { bad, good, type Result } from '../numbers/result.ts';
import { combFace, depthOfFaceShare, type FaceSize } from './comb-face.ts';

const shares = [0.25, 0.5, 0.75] as const;

export const combFaceSum = sum({
  key: 'comb-face',
  title: 'Face of a comb',
  line: 'area, edges and levels of a comb built out to the walls and the floor',
  formula:
    'L = top − 2 g / cos a; d = depth − floor gap; B = L − 2 d tan a, or a triangle with d = L / (2 tan a) where B would ' +
    'be negative; area = d (L + B) / 2; centroid = d (L + 2B) / (3 (L + B)); second moment = d³ (L² + 4LB + B²) / (36 (L + B)); ' +
    'level of a share p: y = (L − √(L² − 4 tan a · p · area)) / (2 tan a)',
  fields: [
    {
      kind: 'number',
      name: 'topWidthMm',
      unit: 'mm',
      low: 0,
      high: 5000,
      aboveLow: true,
      about: 'inside width at the bar, wall to wall',
    },
    { kind: 'number', name: 'depthMm', unit: 'mm', low: 0, high: 5000, aboveLow: true, about: 'bar to floor' },
    {
      kind: 'number',
      name: 'wallAngleDeg',
      unit: 'degrees',
      low: 0,
      high: 60,
      about: 'slope of the side walls from the vertical',
    },
    {
      kind: 'number',
      name: 'sideGapMm',
      unit: 'mm',
      low: 0,
      high: 200,
      without: { kind: 'figure', figure: 'side-gap' },
      about: 'gap between comb and wall, at right angles to the wall',
    },
    {
      kind: 'number',
      name: 'floorGapMm',
      unit: 'mm',
      low: 0,
      high: 500,
      without: { kind: 'figure', figure: 'floor-gap' },
      about: 'gap between comb and floor',
    },
  ],
  answer,
});

function answer(given: Given): Result<Answer> {
  const size: FaceSize = {
    topWidthMm: numberOf(given, 'topWidthMm'),
    depthMm: numberOf(given, 'depthMm'),
    wallAngleDeg: numberOf(given, 'wallAngleDeg'),
    sideGapMm: numberOf(given, 'sideGapMm'),
    floorGapMm: numberOf(given, 'floorGapMm'),
  };
  const face = combFace(size);
  if (face === null) {
    return size.depthMm <= size.floorGapMm
      ? bad(fieldIssue('floorGapMm', `${size.floorGapMm}`, `less than depthMm, ${size.depthMm}`))
      : bad(fieldIssue('sideGapMm', `${size.sideGapMm}`, 'gaps that leave a length to build on at the bar'));
  }
  return good({
    attachmentMm: face.attachmentMm,
    bottomMm: face.bottomMm,
    combDepthMm: face.combDepthMm,
    faceDm2: face.faceDm2,
    combDm2: 2 * face.faceDm2,
    centroidMm: face.centroidMm,
    sideMm: face.sideMm,
    perimeterMm: face.perimeterMm,
    secondMomentCm4: face.secondMomentCm4,
    depthOfShareMm: shares.map((share) => ({ share, mm: depthOfFaceShare(face, share) })),
  });
}
