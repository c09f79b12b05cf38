/** What drones take from the figures. */
import { type FigureBook, value } from '../../../figures/book.ts';

export interface DroneConstants {
  /** Of all eggs, at the height of the season, in a colony with bees enough. */
  readonly share: number;
  readonly fromShare: number;
  readonly leastBees: number;
  readonly survives: number;
  /** What is left of grown drones after a day in the season, and once they are driven out. */
  readonly kept: number;
  readonly drivenKept: number;
}

export function droneConstants(book: FigureBook): DroneConstants {
  return {
    share: value(book, 'engine-drone-share'),
    fromShare: value(book, 'engine-drone-from-share'),
    leastBees: value(book, 'drone-comb-start-bees'),
    survives: value(book, 'survival-egg-to-adult'),
    kept: Math.exp(-1 / value(book, 'drone-life-days')),
    drivenKept: Math.exp(-value(book, 'engine-drone-driven-loss')),
  };
}
