/**
 * A particle's last days lived again with another queen's story: from a state of the chain that began so many
 * days ago, the chain steps on by its own chances, and the brood laid since is cut to what was laid in that story.
 * Bees that would have come of brood not laid are taken out too; hunger and room are left as they were.
 */
import { nextUnit, type Stream } from '../../../numbers/streams.ts';
import { arrivesAt, chainDay, layingShare } from '../../queen-chain/chain.ts';
import { chainStates, stateIndex } from '../../queen-chain/states.ts';
import { chainEvents } from '../../queen-chain/ways.ts';
import { adultDays, adultsAt, broodAt, broodDays, part } from '../particle.ts';
import { becomes } from '../queen-day.ts';
import type { Given } from './cause.ts';

const eggsBegin = chainEvents.indexOf('eggs begin');

export function queenCourse(
  { engine: { chain }, day }: Given,
  from: keyof typeof stateIndex,
  ago: number,
  values: Float64Array,
  at: number,
  stream: Stream,
): void {
  becomes(values, at, stateIndex[from]);
  for (let back = ago - 1; back >= 0; back -= 1) {
    const state = values[at + part.queen]!;
    const daysIn = values[at + part.queenDays]!;
    keepLaid(values, at, back, layingShare(chain, state, daysIn));
    const way = chainDay(chain, state, daysIn, 1, nextUnit(stream));
    if (way < 0) {
      values[at + part.queenDays] = daysIn + 1;
      continue;
    }
    if (chain.event[way] === eggsBegin) values[at + part.queenFrom] = day - back;
    becomes(values, at, arrivesAt(chain, chain.to[way]!, 0));
  }
}

/** She lays workers, as far as the particle knows: only such a queen can be lost, leave or be replaced. */
export function hasLayingQueen(values: Float64Array, at: number): boolean {
  const { queenLays, reported } = chainStates[values[at + part.queen]!]!;
  return queenLays && reported !== 'virgin';
}

/** A day since the last visit on which it befell: whole days ago, at least 1. */
export function someDaysAgo({ sinceDays }: Given, stream: Stream): number {
  return 1 + Math.floor(nextUnit(stream) * sinceDays);
}

/** Of the eggs laid so many days ago, that share was laid: brood of that age, or the bees that it became. */
export function keepLaid(values: Float64Array, at: number, daysAgo: number, share: number): void {
  if (share === 1) return;
  if (daysAgo < broodDays) values[at + broodAt + daysAgo]! *= share;
  else if (daysAgo - broodDays < adultDays) values[at + adultsAt + daysAgo - broodDays]! *= share;
}
