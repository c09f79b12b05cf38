/** All that can be seen of a colony, by name: the engine takes each visit as some of these. */
import type { Observation } from '../../../numbers/particle-filter.ts';
import type { EngineConstants } from '../constants.ts';
import { builtSeen, type Built } from './built.ts';
import {
  type BroodLook,
  broodLooked,
  type CellsLook,
  cellsLooked,
  queenMet,
  type QueenMet,
  type SignsLook,
  signsNoted,
} from './looks.ts';
import { barsSeen, beesSeen, type Count, honeySeen, openSeen, sealedSeen } from './counts.ts';
import { type BuildingLook, buildingSeen, type FlightLook, flightSeen, type PollenLook, pollenSeen } from './outside.ts';

export interface Seens {
  /** Bees on the combs, and bars with bees at a glance, both in bees. */
  readonly bees: Count;
  readonly bars: Count;
  /** Worker cells. */
  readonly sealed: Count;
  readonly open: Count;
  readonly honeyKg: Count;
  readonly built: Built;
  /** Eggs and the youngest stage; queen cells; the queen. */
  readonly brood: BroodLook;
  readonly cells: CellsLook;
  readonly queen: QueenMet;
  readonly signs: SignsLook;
  /** From outside, or by the way. */
  readonly pollen: PollenLook;
  readonly flight: FlightLook;
  readonly building: BuildingLook;
}

export type SeenKind = keyof Seens;

export const seenKinds: { readonly [K in SeenKind]: Observation<EngineConstants, Seens[K]> } = {
  bees: beesSeen,
  bars: barsSeen,
  sealed: sealedSeen,
  open: openSeen,
  honeyKg: honeySeen,
  built: builtSeen,
  brood: broodLooked,
  cells: cellsLooked,
  queen: queenMet,
  signs: signsNoted,
  pollen: pollenSeen,
  flight: flightSeen,
  building: buildingSeen,
};
