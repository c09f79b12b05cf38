/**
 * Whether a look is worth it: the chance that it changes what is done, what is asked and on which bars, and the
 * first day on which it should be taken by the rule of the choice. Cold days and rain are judged elsewhere; what a
 * keeper would do meanwhile is left out.
 */
import { type Look, type Question } from '../../foreseen.ts';
import { addDays, type Day, dayNumber, daysBetween } from '../../../numbers/day.ts';
import type { Cloud } from '../../../numbers/particle-filter.ts';
import { opensFor, type ReasonsToOpen, reasonsToOpen } from '../choice.ts';
import type { EngineConstants } from '../constants.ts';
import { eggsOn, shareOn } from '../laying.ts';
import { adultsOfParticle, particleSize } from '../particle.ts';
import { queenShare } from '../queen-day.ts';
import { freeCells } from '../room.ts';
import type { LookConstants } from './look-constants.ts';
import { type LookNest, placesFor } from './look-places.ts';

export interface LookContext {
  readonly day: Day;
  /** Days of the openings so far, ascending, glances not counted. */
  readonly opened: readonly Day[];
  /** Honey as it was read at the last of them; null where none was. */
  readonly lastHoneyKg: number | null;
  readonly nest: LookNest;
  readonly look: LookConstants;
}

const questions: readonly Question[] = ['cells', 'eggs', 'stores', 'room'];

/** `clouds`: one a day, from the day itself on. Questions are those of the day on which it should be opened. */
export function lookOf(
  c: EngineConstants,
  clouds: readonly Cloud[],
  { day, opened, lastHoneyKg, nest, look }: LookContext,
): Look {
  const [today] = clouds;
  if (today === undefined) return { changesAct: 0, questions: [], openOn: null, openFor: null, harms: false };
  const lastOpened = opened.at(-1);
  const since = lastOpened === undefined ? null : daysBetween(lastOpened, day);
  const looks = { days: opened.map(dayNumber), honeyKg: lastHoneyKg };
  const reasons = clouds.slice(0, look.horizonDays + 1).map((cloud) => reasonsToOpen(c, cloud, look.choice, looks));
  const fors = reasons.map((one, ahead) => opensFor(look.choice, since === null ? null : since + ahead, one));
  const open = fors.findIndex((one) => one !== null);
  const then = Math.max(0, open);
  const chances = chancesOf(reasons[then]!, roomChance(c, clouds[then]!, look));
  const now = reasons[0]!;
  return {
    changesAct: eitherOf(now.any, roomChance(c, today, look)),
    questions: questions
      .filter((ask) => chances[ask] > 0)
      .sort((a, b) => chances[b] * look.cost[b] - chances[a] * look.cost[a])
      .map((ask) => ({ ask, chance: chances[ask], places: placesFor(ask, nest, look) })),
    openOn: open < 0 ? null : addDays(day, open),
    openFor: fors[open] ?? null,
    harms: now.harm >= look.choice.harm,
  };
}

function chancesOf({ cells, eggs, stores }: ReasonsToOpen, room: number): Readonly<Record<Question, number>> {
  return { cells, eggs, stores, room };
}

/** Chance that the queen has cells for few days only, so that a bar would be given. */
function roomChance(c: EngineConstants, cloud: Cloud, { roomDays }: LookConstants): number {
  let chance = 0;
  for (let particle = 0; particle < cloud.count; particle += 1) {
    const at = particle * particleSize;
    const share = shareOn(c, cloud.day, cloud.values, at);
    const could = eggsOn(c, share, adultsOfParticle(cloud.values, at), cloud.values, at);
    const eggs = could * queenShare(c, cloud.day, cloud.values, at);
    if (freeCells(c, cloud.values, at) < roomDays * eggs) chance += Math.exp(cloud.logShares[particle]!);
  }
  return Math.min(1, chance);
}

/** As if one told nothing of the other: at most a little too high, since crowding brings both. */
function eitherOf(a: number, b: number): number {
  return Math.min(1, a + b - a * b);
}
