/**
 * The colony as a model for the particle filter: how it begins, one day, what can be seen. A day is: what the
 * journal says was done; the queen's state; eggs by season, bees and free cells; brood, drones and bees grow
 * older and are lost; stores come in and are eaten; comb grows; the rest wanders. Mites and weather of the day
 * join as further functions of the day; nothing else changes.
 */
import type { StateModel } from '../../numbers/particle-filter.ts';
import type { Stream } from '../../numbers/streams.ts';
import { ageAdults, ageBrood, flightAgeOn, wornBy } from './ageing.ts';
import { colonyBegins } from './beginning.ts';
import type { EngineConstants } from './constants.ts';
import { ageDrones, droneShare } from './drones.ts';
import { happens } from './happenings.ts';
import { eggsOn, shareOn } from './laying.ts';
import { adultsOfParticle, broodAt, broodDays, cohorts, openOfParticle, part, particleSize } from './particle.ts';
import { misplacedShare, queenDay, queenShare, swarmUrge } from './queen-day.ts';
import { combDay, freeCells } from './room.ts';
import { seenKinds, type Seens } from './seen/list.ts';
import { storesDay } from './stores.ts';
import { wanderOn } from './wander.ts';

export const colonyModel: StateModel<EngineConstants, Seens> = {
  size: particleSize,
  initial: colonyBegins,
  step: colonyDay,
  observations: seenKinds,
};

/** One day in place; hands back the log weight of what was proposed of the queen. */
function colonyDay(c: EngineConstants, day: number, values: Float64Array, at: number, stream: Stream): number {
  const told = c.ground.told.get(day);
  if (told !== undefined) for (const what of told) happens(c, day, what, values, at, stream);
  const share = shareOn(c, day, values, at);
  const bees = adultsOfParticle(values, at);
  const could = eggsOn(c, share, bees, values, at);
  const perCell = Math.exp(values[at + part.sealedScale]!);
  const free = freeCells(c, values, at, cohorts(values, at + broodAt, 0, broodDays) * perCell);
  const urge = swarmUrge(
    c,
    day,
    share,
    bees * Math.exp(values[at + part.beesScale]!),
    could,
    free,
    Math.max(values[at + part.comb]!, values[at + part.combMost]! / 2),
  );
  const weight = queenDay(c, day, values, at, share, urge, stream);
  const wish = could * queenShare(c, day, values, at);
  const laid = Math.min(wish, (free * c.room.found) / perCell);
  const drones = laid * droneShare(c, share, bees);
  const worn = wornBy(c, share, openOfParticle(values, at, c.sealAge), bees);
  const emerging = ageBrood(c, values, at, laid - drones);
  ageDrones(c, values, at, share, drones + could * misplacedShare(c, values, at));
  ageAdults(c, values, at, worn, hunger(c, values, at), emerging);
  values[at + part.flightAge] = flightAgeOn(c, values[at + part.flightAge]!, worn);
  const cells = could * perCell;
  // The queen's cells of the day are not filled with nectar.
  storesDay(c, values, at, share, bees, values[at + broodAt + c.sealAge]!, free - cells);
  combDay(c, values, at, share, bees, free, cells * c.queen.roomyDays);
  wanderOn(c, day, values, at, stream);
  return weight;
}

/** A loss of bees of all ages where there is next to no honey. */
function hunger(c: EngineConstants, values: Float64Array, at: number): number {
  return values[at + part.honeyKg]! < c.stores.hungryKg ? c.stores.hungryLoss : 0;
}
