/** What room takes from the figures. */
import { type FigureBook, value } from '../../../figures/book.ts';
import { perCombDm2 } from '../../../hive/hive-measures.ts';

export interface RoomConstants {
  /** Of built cells, those that brood and food can use. */
  readonly usable: number;
  readonly honeyKgPerCell: number;
  readonly breadKgPerCell: number;
  readonly breadMostKg: number;
  /** Bee bread for each built cell, at most: it takes a share of them. */
  readonly breadMostKgPerCell: number;
  /** Cells built on a day by a strong colony in flow, and the bees that make it strong. */
  readonly builtPerDay: number;
  readonly builderBees: number;
  /** Of usable cells, the most that honey takes. */
  readonly honeyMost: number;
  /** Honey that the wax of a cell costs. */
  readonly waxKgPerCell: number;
  /** Of free cells, the share that a queen finds in a day. */
  readonly found: number;
}

export function roomConstants(book: FigureBook): RoomConstants {
  const per = perCombDm2(book);
  const cells = per.workerCells.likely;
  return {
    usable: value(book, 'engine-usable-cells'),
    honeyKgPerCell: per.honeyKg.likely / cells,
    breadKgPerCell: per.breadKg.likely / cells,
    breadMostKg: value(book, 'engine-bread-most'),
    breadMostKgPerCell: (value(book, 'engine-bread-most-share') * per.breadKg.likely) / cells,
    // The figure counts one face; a comb has both.
    builtPerDay: 2 * value(book, 'comb-built-per-day') * (cells / 2),
    builderBees: value(book, 'engine-builder-bees'),
    honeyMost: value(book, 'engine-honey-most-share'),
    waxKgPerCell: (value(book, 'wax-per-dm2') * value(book, 'honey-per-wax')) / cells,
    found: value(book, 'engine-cells-found'),
  };
}
