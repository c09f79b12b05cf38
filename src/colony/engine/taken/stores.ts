/** What stores take from the figures. */
import { type FigureBook, value } from '../../../figures/book.ts';

export interface StoreConstants {
  /** Kilograms a bee brings in on a day at the height of the season, when the flow is as expected. */
  readonly nectarKg: number;
  readonly breadKg: number;
  /** Season's share below which nothing comes in. */
  readonly leastShare: number;
  readonly eatKg: number;
  readonly rearKg: number;
  readonly rearBreadKg: number;
  /** The logarithm's variance halved: the wandering flow has mean 1. */
  readonly flowMean: number;
  /** Bees count as more than those found at home. */
  readonly hungryKg: number;
  readonly hungryLoss: number;
}

const gramsInKg = 1000;
const mgInKg = 1e6;

export function storeConstants(book: FigureBook): StoreConstants {
  const spread = value(book, 'engine-flow-wander');
  return {
    nectarKg: value(book, 'engine-nectar-per-bee') / gramsInKg,
    breadKg: value(book, 'engine-bread-per-bee') / gramsInKg,
    leastShare: value(book, 'engine-flow-from-share'),
    eatKg: value(book, 'engine-bee-eats') / mgInKg,
    rearKg: value(book, 'food-per-bee-reared') / gramsInKg,
    rearBreadKg: value(book, 'pollen-per-bee') / mgInKg,
    flowMean: spread ** 2 / 2,
    hungryKg: value(book, 'engine-hungry-honey'),
    hungryLoss: value(book, 'engine-hungry-loss'),
  };
}
