/** What surprises take from the figures, as plain numbers. */
import { type FigureBook, rangeOf, value } from '../../../figures/book.ts';
import type { FigureKey } from '../../../figures/list.ts';
import { eighthsInWhole } from '../../../hive/shapes.ts';
import type { Range } from '../../../numbers/range.ts';

export interface SurpriseConstants {
  readonly leastSd: number;
  readonly leastChance: number;
  readonly particles: number;
  readonly perDay: {
    readonly swarm: number;
    readonly lost: number;
    readonly superseded: number;
    readonly robbed: number;
    readonly flow: number;
    readonly dying: number;
  };
  readonly otherHand: number;
  readonly moved: number;
  readonly robbedHoney: Range;
  readonly robbedBees: Range;
  readonly flowTimes: Range;
  readonly dearthShare: Range;
  readonly movedSpread: number;
  readonly movedCombs: Range;
  readonly broodDead: Range;
  /** Days before a swarm on which the queen lays little. */
  readonly slimDays: number;
  /** Of one comb: how a reading errs, as a share, and how contents differ from what is expected. */
  readonly barShare: number;
  readonly barSpread: number;
  /** Of its empty cells, the share that may be filled in a day. */
  readonly barFills: number;
  /** How many times more another manner of counting differs than another careful eye. */
  readonly handTimes: number;
  /** How observers differ in brood and in food, of the logarithm. */
  readonly handBrood: number;
  readonly handFood: number;
  /** Readings that are wrong without a reason. */
  readonly outliers: number;
}

export function surpriseConstants(book: FigureBook): SurpriseConstants {
  const of = (key: FigureKey): number => value(book, key);
  return {
    leastSd: of('surprise-least-sd'),
    leastChance: of('surprise-least-chance'),
    particles: Math.round(of('surprise-particles')),
    perDay: {
      swarm: of('surprise-swarm-per-day'),
      lost: of('surprise-queen-lost-per-day'),
      superseded: of('surprise-superseded-per-day'),
      robbed: of('surprise-robbed-per-day'),
      flow: of('surprise-flow-per-day'),
      dying: of('surprise-brood-dying-per-day'),
    },
    otherHand: of('surprise-other-hand'),
    moved: of('surprise-combs-moved'),
    robbedHoney: rangeOf(book, 'surprise-robbed-honey'),
    robbedBees: rangeOf(book, 'surprise-robbed-bees'),
    flowTimes: rangeOf(book, 'surprise-flow-times'),
    dearthShare: rangeOf(book, 'surprise-dearth-share'),
    movedSpread: of('surprise-moved-spread'),
    movedCombs: rangeOf(book, 'surprise-moved-combs'),
    broodDead: rangeOf(book, 'surprise-brood-dead'),
    slimDays: Math.round(of('swarm-shortening') + 1 / of('queen-chain-swarm-leaves')),
    barShare: of('surprise-bar-eighths') / eighthsInWhole,
    barSpread: of('surprise-bar-spread'),
    barFills: of('surprise-bar-fills'),
    handTimes: of('surprise-other-hand-times'),
    handBrood: of('surprise-other-hand-times') * of('engine-capped-scale-spread'),
    handFood: of('surprise-other-hand-times') * of('engine-honey-scale-spread'),
    outliers: of('engine-outlier-share'),
  };
}
