/** What the beginning of a colony takes from the figures. */
import { type FigureBook, value } from '../../../figures/book.ts';
import { adultDays, broodDays } from '../particle.ts';

export interface StartConstants {
  readonly bees: number;
  readonly spread: number;
  readonly splitBees: number;
  readonly splitSpread: number;
  readonly splitBrood: number;
  readonly splitBroodSpread: number;
  readonly ownQueen: number;
  readonly givenQueen: number;
  readonly givenCell: number;
  /** Days from the sealing of a queen cell to her emergence. */
  readonly cellDays: number;
  readonly afterRise: number;
  readonly swarmBees: number;
  readonly swarmSpread: number;
  readonly honeyKg: number;
  readonly honeySpread: number;
  readonly breadKg: number;
  /** Shares of workers by age and of brood by age in a colony that stands still; each sums to 1. */
  readonly adultShares: Float64Array;
  readonly broodShares: Float64Array;
}

export function startConstants(
  book: FigureBook,
  brood: { readonly hatchAge: number; readonly sealAge: number; readonly hatches: number; readonly isSealed: number },
  adults: { readonly forageAge: number; readonly houseLoss: number; readonly fieldLoss: number },
): StartConstants {
  const { hatchAge, sealAge, hatches, isSealed } = brood;
  const { forageAge, houseLoss, fieldLoss } = adults;
  return {
    bees: value(book, 'engine-start-bees'),
    spread: value(book, 'engine-start-spread'),
    splitBees: value(book, 'engine-split-bees'),
    splitSpread: value(book, 'engine-split-spread'),
    splitBrood: value(book, 'engine-split-brood'),
    splitBroodSpread: value(book, 'engine-split-brood-spread'),
    ownQueen: value(book, 'engine-split-own-queen'),
    givenQueen: value(book, 'engine-split-given-queen'),
    givenCell: value(book, 'engine-split-given-cell'),
    cellDays: value(book, 'virgin-emerges-after-sealing'),
    afterRise: value(book, 'engine-split-after-rise'),
    swarmBees: value(book, 'engine-swarm-bees'),
    swarmSpread: value(book, 'engine-swarm-spread'),
    honeyKg: value(book, 'engine-start-honey'),
    honeySpread: value(book, 'engine-start-honey-spread'),
    breadKg: value(book, 'engine-start-bread'),
    adultShares: shares(adultDays, (age) =>
      Math.exp(-houseLoss * Math.min(age, forageAge) - fieldLoss * Math.max(0, age - forageAge)),
    ),
    broodShares: shares(broodDays, (age) => (age < hatchAge ? 1 : age < sealAge ? hatches : hatches * isSealed)),
  };
}

function shares(count: number, weight: (age: number) => number): Float64Array {
  const weights = Float64Array.from({ length: count }, (_, age) => weight(age));
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((each) => each / sum);
}
