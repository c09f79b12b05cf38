/**
 * The colony as a model for the particle filter: how it begins, one day, what can be counted. A day is: the
 * queen lays by season and bees, brood grows older and emerges, bees grow older and are lost, the rest wanders.
 * Stores, room, drones, mites and queen events join as further functions of the day; nothing else changes.
 */
import type { StateModel } from '../../numbers/particle-filter.ts';
import type { Stream } from '../../numbers/streams.ts';
import { ageAdults, ageBrood } from './ageing.ts';
import { colonyBegins } from './beginning.ts';
import type { EngineConstants } from './constants.ts';
import { adultsCounted, cappedCounted, type Count } from './counting.ts';
import { eggsOn, shareOn } from './laying.ts';
import { adultsOfParticle, particleSize } from './particle.ts';
import { laysOn } from './queen-day.ts';
import { wanderOn } from './wander.ts';

export interface Counts {
  readonly adults: Count;
  readonly capped: Count;
}

export const colonyModel: StateModel<EngineConstants, Counts> = {
  size: particleSize,
  initial: colonyBegins,
  step: colonyDay,
  observations: { adults: adultsCounted, capped: cappedCounted },
};

/** One day in place. Nothing is proposed more often than it happens, so the log weight is 0. */
function colonyDay(c: EngineConstants, day: number, values: Float64Array, at: number, stream: Stream): number {
  const share = shareOn(c, day, values, at);
  const eggs = laysOn(day, values, at) ? eggsOn(c, share, adultsOfParticle(values, at), values, at) : 0;
  const emerging = ageBrood(c, values, at, eggs);
  ageAdults(c, values, at, share, emerging);
  wanderOn(c, values, at, stream);
  return 0;
}
