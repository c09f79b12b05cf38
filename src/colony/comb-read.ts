/**
 * One reading of a bar as shares of the whole comb, both faces together: two faces read apart are
 * averaged, one face alone stands for both and says so. Null is what was not read.
 */
import { eighthsInWhole } from '../hive/shapes.ts';
import type { FaceReading, Reading, Stage } from './reading.ts';

export interface CombRead {
  readonly brood: number | null;
  readonly food: number | null;
  /** Of the whole comb, drone brood. */
  readonly drone: number | null;
  /** Of the whole comb, sealed honey. */
  readonly sealedFood: number | null;
  readonly bees: number | null;
  /** The youngest stage, where anything tells; eggs that were seen are the youngest. */
  readonly youngest: Stage | null;
  /** Eggs were looked for and none were seen. */
  readonly noEggs: boolean;
  readonly combClass: Reading['combClass'] | null;
  /** How many of the two faces were read. */
  readonly facesRead: 1 | 2;
}

export function combRead(body: Reading): CombRead {
  const { faces } = body;
  return {
    brood: part(faces, 'brood8'),
    food: part(faces, 'food8'),
    drone: part(faces, 'drone8'),
    sealedFood: part(faces, 'sealedFood8'),
    bees: part(faces, 'bees8'),
    youngest: body.eggs === 'seen' ? 'egg' : body.youngest,
    noEggs: body.eggs === 'none seen' && body.youngest !== 'egg',
    combClass: body.combClass ?? null,
    facesRead: faces.length > 1 || faces[0]?.face === 'both' ? 2 : 1,
  };
}

/** The share with brood alone, for those who go through every reading of a long journal. */
export function broodRead(body: Reading): number | null {
  return part(body.faces, 'brood8');
}

/** The mean of the faces on which it was read, as a share of the whole; null when on none. */
function part(faces: readonly FaceReading[], name: 'brood8' | 'food8' | 'drone8' | 'sealedFood8' | 'bees8'): number | null {
  let read = 0;
  let eighths = 0;
  for (const face of faces) {
    const found = face[name];
    if (typeof found !== 'number') continue;
    read += 1;
    eighths += found;
  }
  return read === 0 ? null : eighths / read / eighthsInWhole;
}
