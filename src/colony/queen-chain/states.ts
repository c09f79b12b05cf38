/**
 * The states of a colony's queen, as the model tells them apart inside and as a keeper is told them. Each says
 * whether a queen is there and whether eggs are laid that become workers, or that become drones only.
 */
import { type QueenState, queenStates } from '../queen-state.ts';

/** The nine that are told; in this order wherever chances stand in an array. */
export const reportedStates = queenStates;

export interface ChainState {
  readonly name: string;
  readonly reported: QueenState;
  /** Fertile eggs are laid: by the old queen in preparations, by the mother beside her daughter. */
  readonly queenLays: boolean;
  /** A queen of any kind walks in the hive; one in a sealed cell does not count. */
  readonly queenHere: boolean;
  /** Workers lay; their eggs become drones. */
  readonly workersLay: boolean;
  /** Eggs are laid, by whomever, that become drones only. */
  readonly dronesOnly: boolean;
  /** She that is here is a virgin or a young queen, seldom met. */
  readonly youngQueen: boolean;
  /** Only an act of the keeper leads here. */
  readonly byKeeper: boolean;
}

type Kind = Partial<Omit<ChainState, 'name' | 'reported'>>;

function state<const N extends string>(name: N, reported: QueenState, kind: Kind): ChainState & { readonly name: N } {
  const nobody = { queenLays: false, queenHere: false, workersLay: false, dronesOnly: false, youngQueen: false, byKeeper: false };
  return { name, reported, ...nobody, ...kind };
}

const lays: Kind = { queenLays: true, queenHere: true };
const young: Kind = { queenHere: true, youngQueen: true };

export const chainStates = [
  state('laying', 'laying', lays),
  state('swarm cells open', 'cells open', lays),
  /** The old queen is about to leave. */
  state('swarm cells sealed', 'cells sealed', lays),
  /** She has left. */
  state('swarmed', 'cells sealed', {}),
  state('supersedure cells open', 'cells open', lays),
  state('supersedure cells sealed', 'cells sealed', lays),
  /** The mother lays until her daughter does. */
  state('mother and virgin', 'virgin', { ...lays, youngQueen: true }),
  /** Lost without cells, a day or a few ago: young brood is there. */
  state('orphaned', 'none', {}),
  state('emergency cells open', 'cells open', {}),
  state('emergency cells sealed', 'cells sealed', {}),
  state('virgin', 'virgin', young),
  state('new queen laying', 'new queen laying', { ...lays, youngQueen: true }),
  state('failing', 'failing', lays),
  state('drone layer', 'drone layer', { queenHere: true, dronesOnly: true }),
  /** Nothing left to raise a queen from. */
  state('none', 'none', {}),
  state('laying workers', 'laying workers', { workersLay: true, dronesOnly: true }),
  /** Her own queen, held from laying by the keeper. */
  state('caged', 'laying', { queenHere: true, byKeeper: true }),
  /** A mated queen given by the keeper, not yet laying. */
  state('introduced', 'new queen laying', { queenHere: true, byKeeper: true }),
] as const;

export type ChainStateName = (typeof chainStates)[number]['name'];

/** Whole numbers by name: what a particle carries. */
export const stateIndex = Object.fromEntries(chainStates.map(({ name }, index) => [name, index])) as Readonly<
  Record<ChainStateName, number>
>;

/** For each inner state the place of the reported one in `reportedStates`. */
export const reportedIndex: readonly number[] = chainStates.map(({ reported }) => reportedStates.indexOf(reported));
