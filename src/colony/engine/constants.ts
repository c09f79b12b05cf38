/**
 * Everything the model takes from the figures, as plain numbers, worked out once for a colony: what a particle
 * is drawn from and what carries it through a day. The keeper's own figures come in by the book; what the
 * journal says of this colony comes in as its ground.
 */
import { type FigureBook, rangeOf, value } from '../../figures/book.ts';
import type { FigureKey } from '../../figures/list.ts';
import { perCombDm2 } from '../../hive/hive-measures.ts';
import { queenChain, type QueenChain } from '../queen-chain/chain.ts';
import { seenConstants, type SeenConstants } from '../queen-chain/seen.ts';
import { droneConstants, type DroneConstants } from './drones.ts';
import type { Happening } from './happenings.ts';
import { adultDays, broodDays, eyes, type Part } from './particle.ts';
import { queenConstants, type QueenConstants } from './queen-day.ts';
import type { RoomConstants } from './room.ts';
import { seasonTables, type SeasonTables } from './season.ts';
import { countConstants, type CountConstants } from './seen/count-constants.ts';
import { outsideConstants, type OutsideConstants } from './seen/outside-constants.ts';
import type { StoreConstants } from './stores.ts';
import { type Wander, type Wanderer, slowDays, wanderOf } from './wander.ts';

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
  /** Bees of this age and older guard and forage: temper is theirs. */
  readonly guardAge: number;
  /** Hazards a day: what is left after a day is exp(−hazard). */
  readonly houseLoss: number;
  readonly fieldLoss: number;
  readonly winterLoss: number;
  /** Open brood for each bee that begins to wear bees, and that wears them in full. */
  readonly wornFrom: number;
  readonly wornBrood: number;
  readonly quick: Wander;
  readonly slow: Wander;
  /** Scales of counting, in the order of `eyes`; moved with what is slow. */
  readonly eyes: Wander;
  readonly counts: CountConstants;
  readonly outside: OutsideConstants;
  readonly stores: StoreConstants;
  readonly room: RoomConstants;
  readonly drones: DroneConstants;
  readonly chain: QueenChain;
  /** What a look tells of the queen. */
  readonly looks: SeenConstants;
  readonly queen: QueenConstants;
  readonly happening: { readonly shareSpread: number };
  readonly start: StartConstants;
  readonly ground: Ground;
}

/** How a colony began, as far as the journal says. */
export type Beginning =
  /** Nobody knows: it is taken to have stood for some weeks. */
  | { readonly kind: 'standing' }
  | { readonly kind: 'split' }
  /** A swarm on bare bars; `bees` where its parent was counted. */
  | { readonly kind: 'swarm'; readonly bees: number | null };

/** What is known of one colony and its place before anything was seen. */
export interface Ground {
  /** Degrees, south below 0; null where not known, and taken as north. */
  readonly latitude: number | null;
  readonly beginning: Beginning;
  /** Worker cells of the combs built at the beginning, and of all bars; null where the hive is not known. */
  readonly comb: { readonly built: number; readonly most: number } | null;
  /** By day number, in the order of the journal. */
  readonly told: ReadonlyMap<number, readonly Happening[]>;
}

export const unknownGround: Ground = { latitude: null, beginning: { kind: 'standing' }, comb: null, told: new Map() };

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
  readonly swarmBees: number;
  readonly swarmSpread: number;
  readonly honeyKg: number;
  readonly honeySpread: number;
  readonly breadKg: number;
  /** Shares of workers by age and of brood by age in a colony that stands still; each sums to 1. */
  readonly adultShares: Float64Array;
  readonly broodShares: Float64Array;
}

export function engineConstants(book: FigureBook, ground: Ground): EngineConstants {
  const of = (key: FigureKey): number => value(book, key);
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
    guardAge: Math.round(of('engine-guard-age')),
    houseLoss: hazard(of('engine-house-loss')),
    fieldLoss: hazard(of('engine-field-loss')),
    winterLoss: hazard(of('engine-winter-loss')),
  };
  const chain = queenChain(book);
  return {
    ...survives,
    ...losses,
    season: seasonTables(book, ground.latitude),
    capacity: of('engine-capacity'),
    halfBees: of('engine-half-bees'),
    wornFrom: of('engine-worn-from'),
    wornBrood: of('engine-worn-brood'),
    quick: wanderOf(quickWanderers(book), 1),
    slow: wanderOf(slowWanderers(book), slowDays),
    eyes: wanderOf(eyeWanderers(book), slowDays),
    counts: countConstants(book),
    outside: outsideConstants(book),
    stores: storeConstants(book),
    room: roomConstants(book),
    drones: droneConstants(book),
    chain,
    looks: seenConstants(chain, book),
    queen: queenConstants(book),
    happening: { shareSpread: of('engine-part-spread') },
    start: startConstants(book, survives, losses),
    ground,
  };
}

function quickWanderers(book: FigureBook): readonly Wanderer[] {
  const spell = value(book, 'engine-memory-laying');
  return [
    { part: 'laying', middle: 0, spread: value(book, 'engine-laying-wander'), days: spell },
    { part: 'loss', middle: 0, spread: value(book, 'engine-loss-wander'), days: spell },
    { part: 'flow', middle: 0, spread: value(book, 'engine-flow-wander'), days: value(book, 'engine-memory-flow') },
  ];
}

function slowWanderers(book: FigureBook): readonly Wanderer[] {
  const colony = value(book, 'engine-memory-colony');
  const counting = value(book, 'engine-memory-counting');
  const own = (name: Part, spread: FigureKey): Wanderer => ({ part: name, middle: 0, spread: value(book, spread), days: colony });
  const place = (name: Part, spread: FigureKey): Wanderer => ({
    part: name,
    middle: 0,
    spread: value(book, spread),
    days: counting,
  });
  return [
    own('capacity', 'engine-capacity-spread'),
    own('lossLevel', 'engine-loss-spread'),
    place('rise', 'engine-season-shift-spread'),
    place('fall', 'engine-season-shift-spread'),
    place('depth', 'engine-season-depth-spread'),
  ];
}

function eyeWanderers(book: FigureBook): readonly Wanderer[] {
  const days = value(book, 'engine-memory-counting');
  const cells = value(book, 'engine-capped-scale');
  const own: readonly (readonly [RegExp, number, FigureKey])[] = [
    [/^bees/, 0, 'engine-adults-scale-spread'],
    [/^bars/, 0, 'engine-bars-scale-spread'],
    [/^sealed|^open/, cells, 'engine-capped-scale-spread'],
    [/^honey/, 0, 'engine-honey-scale-spread'],
  ];
  return eyes.map((name) => {
    const [, middle, spread] = own.find(([which]) => which.test(name))!;
    return { part: name, middle, spread: value(book, spread), days };
  });
}

const gramsInKg = 1000;
const mgInKg = 1e6;

function storeConstants(book: FigureBook): StoreConstants {
  const spread = value(book, 'engine-flow-wander');
  return {
    nectarKg: value(book, 'engine-nectar-per-bee') / gramsInKg,
    breadKg: value(book, 'engine-bread-per-bee') / gramsInKg,
    leastShare: value(book, 'engine-flow-from-share'),
    eatKg: value(book, 'food-per-bee-day') / mgInKg,
    rearKg: value(book, 'food-per-bee-reared') / gramsInKg,
    rearBreadKg: value(book, 'pollen-per-bee') / mgInKg,
    flowMean: spread ** 2 / 2,
    hungryKg: value(book, 'engine-hungry-honey'),
    hungryLoss: value(book, 'engine-hungry-loss'),
  };
}

function roomConstants(book: FigureBook): RoomConstants {
  const per = perCombDm2(book);
  const cells = per.workerCells.likely;
  return {
    usable: value(book, 'engine-usable-cells'),
    honeyKgPerCell: per.honeyKg.likely / cells,
    breadKgPerCell: per.breadKg.likely / cells,
    breadMostKg: value(book, 'engine-bread-most'),
    // The figure counts one face; a comb has both.
    builtPerDay: 2 * value(book, 'comb-built-per-day') * (cells / 2),
    builderBees: value(book, 'engine-builder-bees'),
    found: value(book, 'engine-cells-found'),
  };
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

/** The hazard under which that share dies in a day. */
export function hazard(share: number): number {
  return -Math.log1p(-share);
}
