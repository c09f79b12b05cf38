/** What looks from outside take from the figures. */
import { type FigureBook, value } from '../../../figures/book.ts';

export interface OutsideConstants {
  /** Chance that pollen is seen carried in, with open brood and without, and the open cells at which it makes a difference. */
  readonly pollenWith: number;
  readonly pollenWithout: number;
  readonly pollenBrood: number;
  /** Bees of which "few" and "many" are equally likely; bees of which hardly any fly; flight noted as none by mistake. */
  readonly flightBees: number;
  readonly flightFew: number;
  readonly flightNone: number;
  readonly buildingLeast: number;
}

export function outsideConstants(book: FigureBook): OutsideConstants {
  return {
    pollenWith: value(book, 'look-pollen-with-brood'),
    pollenWithout: value(book, 'look-pollen-without-brood'),
    pollenBrood: value(book, 'look-pollen-brood'),
    flightBees: value(book, 'look-flight-bees'),
    flightFew: value(book, 'look-flight-few'),
    flightNone: value(book, 'look-flight-none'),
    buildingLeast: value(book, 'look-building-least'),
  };
}
