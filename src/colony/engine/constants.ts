/**
 * Everything the model takes from the figures, as plain numbers, worked out once: what a particle is drawn
 * from and what carries it through a day. The keeper's own figures come in by the book.
 */
import { type FigureBook, rangeOf, value } from '../../figures/book.ts';
import { seasonTables, type SeasonTables } from './season.ts';
import { adultDays, broodDays } from './particle.ts';

export interface EngineConstants {
  readonly season: SeasonTables;
  readonly capacity: number;
  readonly halfBees: number;
  readonly hatchAge: number;
  readonly sealAge: number;
  readonly hatches: number;
  readonly isSealed: number;
  readonly emerges: number;
  readonly forageAge: number;
  /** Hazards a day: what is left after a day is exp(−hazard). */
  readonly houseLoss: number;
  readonly fieldLoss: number;
  readonly winterLoss: number;
  readonly winterFromShare: number;
  readonly wander: readonly Wander[];
  readonly noise: { readonly adults: number; readonly capped: number };
  readonly outlier: { readonly share: number; readonly spread: number };
  readonly leastCount: number;
  readonly start: StartConstants;
  /** How the colony began: null where that is not known, and it is taken to have stood for long. */
  readonly splitOn: number | null;
}

/** A number that wanders about its middle: its spread, and what is kept of a gap from day to day. */
export interface Wander {
  readonly part: 'laying' | 'loss' | 'capacity' | 'lossLevel' | 'adultsScale' | 'cappedScale' | 'rise' | 'fall' | 'depth';
  readonly middle: number;
  readonly spread: number;
  readonly kept: number;
  /** Spread of a day's push: the wandering keeps its spread. */
  readonly push: number;
}

export interface StartConstants {
  readonly bees: number;
  readonly spread: number;
  readonly splitBees: number;
  readonly splitSpread: number;
  readonly splitBrood: number;
  readonly splitBroodSpread: number;
  readonly ownQueen: number;
  readonly givenQueen: number;
  readonly givenDays: readonly [number, number];
  readonly raisedDays: readonly [number, number];
  readonly afterRise: number;
  /** Shares of workers by age and of brood by age in a colony that stands still; each sums to 1. */
  readonly adultShares: Float64Array;
  readonly broodShares: Float64Array;
}

export interface EnginePlace {
  /** Degrees, south below 0; null where not known, and taken as north. */
  readonly latitude: number | null;
  readonly splitOn: number | null;
}

export function engineConstants(book: FigureBook, place: EnginePlace): EngineConstants {
  const of = (key: Parameters<typeof value>[1]): number => value(book, key);
  const hatchAge = Math.round(of('worker-egg-days'));
  const sealAge = broodDays - Math.round(of('worker-sealed-days'));
  const survives = {
    hatchAge,
    sealAge,
    hatches: of('survival-egg-to-larva'),
    isSealed: of('survival-larva-to-sealed'),
    emerges: of('survival-sealed-to-adult'),
  };
  const losses = {
    forageAge: Math.round(of('engine-forage-age')),
    houseLoss: hazard(of('house-bee-loss-tagged')),
    fieldLoss: hazard(of('forager-loss-tagged')),
    winterLoss: hazard(of('daily-loss-winter')),
  };
  return {
    ...survives,
    ...losses,
    season: seasonTables(book, place.latitude),
    capacity: of('engine-capacity'),
    halfBees: of('engine-half-bees'),
    winterFromShare: of('engine-winter-from-share'),
    wander: wandering(book),
    noise: { adults: of('engine-adults-noise'), capped: of('engine-capped-noise') },
    outlier: { share: of('engine-outlier-share'), spread: of('engine-outlier-spread') },
    leastCount: of('engine-least-count'),
    start: startConstants(book, survives, losses),
    splitOn: place.splitOn,
  };
}

function wandering(book: FigureBook): readonly Wander[] {
  const days = {
    spell: value(book, 'engine-memory-laying'),
    colony: value(book, 'engine-memory-colony'),
    counting: value(book, 'engine-memory-counting'),
  };
  const wander = (part: Wander['part'], middle: number, spread: number, memory: keyof typeof days): Wander => {
    const kept = Math.exp(-1 / days[memory]);
    return { part, middle, spread, kept, push: spread * Math.sqrt(1 - kept * kept) };
  };
  const shift = value(book, 'engine-season-shift-spread');
  return [
    wander('laying', 0, value(book, 'engine-laying-wander'), 'spell'),
    wander('loss', 0, value(book, 'engine-loss-wander'), 'spell'),
    wander('capacity', 0, value(book, 'engine-capacity-spread'), 'colony'),
    wander('lossLevel', 0, value(book, 'engine-loss-spread'), 'colony'),
    wander('adultsScale', 0, value(book, 'engine-adults-scale-spread'), 'counting'),
    wander('cappedScale', value(book, 'engine-capped-scale'), value(book, 'engine-capped-scale-spread'), 'counting'),
    wander('rise', 0, shift, 'counting'),
    wander('fall', 0, shift, 'counting'),
    wander('depth', 0, value(book, 'engine-season-depth-spread'), 'counting'),
  ];
}

function startConstants(
  book: FigureBook,
  brood: Pick<EngineConstants, 'hatchAge' | 'sealAge' | 'hatches' | 'isSealed'>,
  adults: Pick<EngineConstants, 'forageAge' | 'houseLoss' | 'fieldLoss'>,
): StartConstants {
  const { hatchAge, sealAge, hatches, isSealed } = brood;
  const { forageAge, houseLoss, fieldLoss } = adults;
  const ends = (key: 'engine-given-queen-days' | 'engine-raised-queen-days'): readonly [number, number] => {
    const { low, high } = rangeOf(book, key);
    return [low, high];
  };
  return {
    bees: value(book, 'engine-start-bees'),
    spread: value(book, 'engine-start-spread'),
    splitBees: value(book, 'engine-split-bees'),
    splitSpread: value(book, 'engine-split-spread'),
    splitBrood: value(book, 'engine-split-brood'),
    splitBroodSpread: value(book, 'engine-split-brood-spread'),
    ownQueen: value(book, 'engine-split-own-queen'),
    givenQueen: value(book, 'engine-split-given-queen'),
    givenDays: ends('engine-given-queen-days'),
    raisedDays: ends('engine-raised-queen-days'),
    afterRise: value(book, 'engine-split-after-rise'),
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

/** The hazard under which that share dies in a day. */
function hazard(share: number): number {
  return -Math.log1p(-share);
}
