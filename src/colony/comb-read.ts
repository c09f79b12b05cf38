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
  const part = (pick: (face: FaceReading) => number | null | undefined): number | null => {
    const read = body.faces.map(pick).filter((eighths): eighths is number => typeof eighths === 'number');
    return read.length === 0 ? null : read.reduce((a, b) => a + b, 0) / read.length / eighthsInWhole;
  };
  const whole = body.faces.length > 1 || body.faces[0]?.face === 'both';
  return {
    brood: part((face) => face.brood8), food: part((face) => face.food8), drone: part((face) => face.drone8),
    sealedFood: part((face) => face.sealedFood8), bees: part((face) => face.bees8),
    youngest: body.eggs === 'seen' ? 'egg' : body.youngest,
    noEggs: body.eggs === 'none seen' && body.youngest !== 'egg',
    combClass: body.combClass ?? null,
    facesRead: whole ? 2 : 1,
  };
}
