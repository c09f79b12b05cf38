/**
 * What the model foresees of the colonies of a yard: one colony at a time, because a screen must not wait for all
 * of them, and from what was kept of it, so that a new visit costs one step.
 */
import type { Apiary } from '../apiary.ts';
import type { Foreseen } from '../colony/foreseen.ts';
import { type KeptColony, liveColony } from '../colony/engine/live-colony.ts';
import { lookConstants } from '../colony/engine/look/look-constants.ts';
import { lookOf } from '../colony/engine/look/look-of.ts';
import type { Colony } from '../colony/state.ts';
import { viewOf } from '../colony/view-of.ts';
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import type { Issue } from '../numbers/result.ts';

export type { KeptColony } from '../colony/engine/live-colony.ts';
export type { Foreseen } from '../colony/foreseen.ts';

/** Every week for two rounds of brood, so that a visit on any day lies near one of them: our choice. */
export const forecastDays: readonly number[] = [7, 14, 21, 28, 35, 42];

export interface ForeseenColony {
  readonly foreseen: Foreseen;
  /** To be handed in again the next time; null where there is nothing worth keeping. */
  readonly kept: KeptColony | null;
  readonly issues: readonly Issue[];
}

/** Null for a colony that is not known or has ended by that day. */
export function foreseeColony(apiary: Apiary, colony: Id, day: Day, kept: KeptColony | null = null): ForeseenColony | null {
  const { state, book } = apiary;
  if (!isLiving(apiary, colony, day)) return null;
  const { bars, entrance, visits, totals } = viewOf(state, colony, day, book, undefined, 0);
  const openings = visits.filter((visit) => visit.kind !== 'glance');
  const opened = openings.map((visit) => visit.day);
  const lastHoneyKg = (openings.at(-1)?.barsOpened ?? 0) === 0 ? null : totals.honeyKg.total.likely;
  const context = { day, opened, lastHoneyKg, nest: { bars, entrance }, look: lookConstants(book) };
  return liveColony(state, colony, day, book, kept, {
    daysIssued: forecastDays,
    lookOf: ({ clouds }, setup) => lookOf(setup.constants, clouds, context),
  });
}

/** All living colonies of the yard, or those that are meant, by id. */
export function foreseeAll(
  apiary: Apiary,
  day: Day,
  isMeant: (colony: Colony) => boolean = () => true,
): ReadonlyMap<Id, ForeseenColony> {
  const found = new Map<Id, ForeseenColony>();
  for (const colony of apiary.state.colonies.values()) {
    const made = isMeant(colony) ? foreseeColony(apiary, colony.id, day) : null;
    if (made !== null) found.set(colony.id, made);
  }
  return found;
}

/** As a picture takes it. */
export function toldOf(foreseen: ReadonlyMap<Id, ForeseenColony>): ReadonlyMap<Id, Foreseen> {
  return new Map([...foreseen].map(([colony, made]) => [colony, made.foreseen]));
}

function isLiving({ state }: Apiary, id: Id, day: Day): boolean {
  const colony = state.colonies.get(id);
  return colony !== undefined && (colony.ended === null || colony.ended.day > day);
}
