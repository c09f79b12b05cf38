/**
 * Everything the model takes from the figures, as plain numbers, worked out once for a colony: what a particle
 * is drawn from and what carries it through a day. The keeper's own figures come in by the book; what the
 * journal says of this colony comes in as its ground.
 */
import { type FigureBook, value } from '../../figures/book.ts';
import type { FigureKey } from '../../figures/list.ts';
import { queenChain, type QueenChain } from '../queen-chain/chain.ts';
import { seenConstants, type SeenConstants } from '../queen-chain/seen.ts';
import { droneConstants, type DroneConstants } from './taken/drones.ts';
import type { Happening } from './happening.ts';
import { broodDays } from './particle.ts';
import { queenConstants, type QueenConstants } from './taken/queen.ts';
import { roomConstants, type RoomConstants } from './taken/room.ts';
import { seasonTables, type SeasonTables } from './season.ts';
import { countConstants, type CountConstants } from './taken/counts.ts';
import { outsideConstants, type OutsideConstants } from './taken/outside.ts';
import { startConstants, type StartConstants } from './taken/start.ts';
import { storeConstants, type StoreConstants } from './taken/stores.ts';
import { eyeWanderers, quickWanderers, slowDays, slowWanderers, type Wander, wanderOf } from './taken/wander.ts';

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
  /** Days between which the oldest bees differ in how worn they are. */
  readonly oldestSpread: number;
  /** Bees of this age and older guard and forage: temper is theirs. */
  readonly guardAge: number;
  /** Hazards a day: what is left after a day is exp(−hazard). */
  readonly houseLoss: number;
  readonly fieldLoss: number;
  readonly winterLoss: number;
  /** Open brood for each bee that begins to wear bees, and that wears them in full. */
  readonly wornFrom: number;
  readonly wornBrood: number;
  /** Wear without brood at the height of the season. */
  readonly wornLeast: number;
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
  | { readonly kind: 'split'; readonly from?: SplitFrom }
  /** A swarm on bare bars; `bees` where its parent was counted. */
  | { readonly kind: 'swarm'; readonly bees: number | null };

/** What came over with the combs of a split, as counted in its parent; null where it was not. */
export interface SplitFrom {
  readonly bees: number | null;
  readonly broodCells: number | null;
  readonly honeyKg: number | null;
}

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
    oldestSpread: of('engine-oldest-spread'),
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
    wornLeast: of('engine-worn-least'),
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

/** The hazard under which that share dies in a day. */
export function hazard(share: number): number {
  return -Math.log1p(-share);
}
