/**
 * What the journal says was done to a colony or befell it, as changes of a particle: bees and combs that leave
 * or come, queens taken and given, food fed, bars hung in. Where it is not known how much went, particles
 * differ. Applied after the visit of their day, because keepers look first and act then.
 */
import { nextNormal, nextUnit, type Stream } from '../../numbers/streams.ts';
import { stateIndex } from '../queen-chain/states.ts';
import type { EngineConstants } from './constants.ts';
import { adultDays, adultsAt, broodAt, broodDays, cohorts, droneBroodAt, droneBroodDays, part } from './particle.ts';
import type { Happening } from './happening.ts';
import { becomes, swarmLeaves } from './queen-day.ts';

export function happens(
  c: EngineConstants,
  day: number,
  what: Happening,
  values: Float64Array,
  at: number,
  stream: Stream,
): void {
  switch (what.kind) {
    case 'swarm left':
      swarmLeaves(c, values, at, c.queen.swarmLogit, stream);
      becomes(values, at, stateIndex.swarmed);
      return;
    case 'queen gone':
      becomes(values, at, stateIndex.orphaned);
      return;
    case 'queen given':
      becomes(values, at, stateIndex.introduced);
      return;
    case 'queen found':
      becomes(values, at, stateIndex.laying);
      values[at + part.queenFrom] = Math.min(values[at + part.queenFrom]!, day);
      return;
    case 'cells cut':
      cellsCut(c, values, at, stream);
      return;
    case 'fed':
      values[at + part.honeyKg]! += what.kg;
      return;
    case 'part left':
      partLeft(c, what, values, at, stream);
      return;
    case 'joined':
      joined(c, what, values, at);
      return;
    case 'bars':
      values[at + part.combMost] = what.cells;
      return;
  }
}

/**
 * A queen who was preparing goes on laying; where she is gone, the bees have young brood or they have not. Some
 * cuttings miss a cell, and all goes on as before.
 */
function cellsCut(c: EngineConstants, values: Float64Array, at: number, stream: Stream): void {
  if (nextUnit(stream) < c.queen.cutMissed) return;
  const now = values[at + part.queen]!;
  if (
    now === stateIndex['swarm cells open'] ||
    now === stateIndex['supersedure cells open'] ||
    now === stateIndex['supersedure cells sealed']
  )
    becomes(values, at, stateIndex.laying);
  else if (
    now === stateIndex['emergency cells open'] ||
    now === stateIndex['emergency cells sealed'] ||
    now === stateIndex.swarmed
  )
    becomes(values, at, cohorts(values, at + broodAt, 0, c.chain.rescueDays) > 1 ? stateIndex.orphaned : stateIndex.none);
}

function partLeft(
  c: EngineConstants,
  what: Happening & { kind: 'part left' },
  values: Float64Array,
  at: number,
  stream: Stream,
): void {
  const gone = (share: number): number => {
    if (share <= 0 || share >= 1) return share;
    const logit = Math.log(share / (1 - share)) + c.happening.shareSpread * nextNormal(stream);
    return 1 / (1 + Math.exp(-logit));
  };
  scale(values, at + adultsAt, adultDays, 1 - gone(what.bees));
  const brood = 1 - gone(what.brood);
  scale(values, at + broodAt, broodDays, brood);
  scale(values, at + droneBroodAt, droneBroodDays, brood);
  const food = 1 - gone(what.food);
  values[at + part.honeyKg]! *= food;
  values[at + part.breadKg]! *= food;
  values[at + part.comb]! *= 1 - what.comb;
  values[at + part.drones]! *= 1 - what.bees;
  const went = what.queen === 'went' || (what.queen === 'unknown' && nextUnit(stream) < 1 / 2);
  if (went) becomes(values, at, stateIndex.orphaned);
}

/** Bees of all ages and brood of all ages, as in the colony that takes them in. */
function joined(c: EngineConstants, what: Happening & { kind: 'joined' }, values: Float64Array, at: number): void {
  for (let age = 0; age < adultDays; age += 1) values[at + adultsAt + age]! += what.bees * c.start.adultShares[age]!;
  const cells = what.broodCells / Math.exp(values[at + part.sealedScale]!);
  for (let age = 0; age < broodDays; age += 1) values[at + broodAt + age]! += cells * c.start.broodShares[age]!;
  values[at + part.honeyKg]! += what.honeyKg;
  values[at + part.comb]! += what.comb;
}

function scale(values: Float64Array, from: number, count: number, by: number): void {
  for (let i = from; i < from + count; i += 1) values[i]! *= by;
}
