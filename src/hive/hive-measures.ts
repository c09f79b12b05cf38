/**
 * A hive in millimetres and square decimetres: the face that a comb built to the walls would have,
 * and from it the area, cells and kilograms of a comb of which a share is built.
 */
import { type FigureBook, rangeOf, value } from '../figures/book.ts';
import type { Range } from '../numbers/range.ts';
import { scaleRange, timesRange } from '../numbers/range.ts';
import { type Dm2, inBase, type Mm } from '../numbers/units.ts';
import { combFace, type FaceSize } from './comb-face.ts';
import { combOutline, type Outline } from './outline.ts';
import type { Bar, Dimension, Hive } from './state.ts';

export interface HiveMeasures {
  readonly barWidthMm: Mm;
  readonly size: FaceSize;
  /** One face of a comb built out to walls and floor; 0 when the measures leave nothing to build in. */
  readonly fullFaceDm2: Dm2;
  readonly how: 'measured' | 'typical';
}

export function hiveMeasures(hive: Hive, book: FigureBook): HiveMeasures {
  const size: FaceSize = {
    topWidthMm: mm(hive.topWidth),
    depthMm: mm(hive.depth),
    wallAngleDeg: hive.wallAngleDeg,
    sideGapMm: value(book, 'side-gap'),
    floorGapMm: value(book, 'floor-gap'),
  };
  const all = [hive.topWidth.how, hive.depth.how, hive.wallAngleHow];
  return {
    barWidthMm: mm(hive.barWidth),
    size,
    fullFaceDm2: combFace(size)?.faceDm2 ?? 0,
    how: all.includes('typical') ? 'typical' : 'measured',
  };
}

export function barWidthMm(measures: HiveMeasures, bar: Bar | null): Mm {
  return bar?.width ? mm(bar.width) : measures.barWidthMm;
}

/** The outline of a face of which a share 0…1 is built; null when the measures leave nothing to build in. */
export function outlineOf(measures: HiveMeasures, built: number): Outline | null {
  return combOutline({ ...measures.size, builtShare: built });
}

/** One face of the comb as built. */
export function faceDm2(measures: HiveMeasures, built: number): Dm2 {
  return measures.fullFaceDm2 * built;
}

/** What a square decimetre of comb, counted on both faces at once, holds when it is full of one content. */
export interface PerDm2 {
  readonly workerCells: Range;
  readonly droneCells: Range;
  readonly honeyKg: Range;
  readonly nectarKg: Range;
  readonly breadKg: Range;
  readonly bees: Range;
}

/**
 * Honey comb is as thick as its figure says, and as unsure as that and the weight on an area together;
 * nectar weighs a share of the honey that it will be.
 */
export function perCombDm2(book: FigureBook): PerDm2 {
  const faces = 2;
  const mmInCm = 10;
  const honey = timesRange(rangeOf(book, 'honey-kg-per-dm2-cm'), scaleRange(rangeOf(book, 'comb-thickness-honey'), 1 / mmInCm));
  return {
    workerCells: scaleRange(rangeOf(book, 'worker-cells-per-dm2'), faces),
    droneCells: scaleRange(rangeOf(book, 'drone-cells-per-dm2'), faces),
    honeyKg: honey,
    nectarKg: scaleRange(honey, value(book, 'nectar-share')),
    breadKg: rangeOf(book, 'bread-kg-per-dm2'),
    bees: scaleRange(rangeOf(book, 'bees-per-dm2'), faces),
  };
}

function mm(dimension: Dimension): Mm {
  return inBase(dimension, 'mm') ?? dimension.value;
}
