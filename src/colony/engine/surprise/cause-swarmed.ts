/**
 * A swarm left that nobody saw: far fewer bees, those that emerged since stayed; laying dwindled before and ended
 * with it; queen cells, then a virgin. Later swarms are left out: they only take more of the same.
 */
import { type Stream } from '../../../numbers/streams.ts';
import { stateIndex } from '../../queen-chain/states.ts';
import { eggsOn, shareOn } from '../laying.ts';
import { adultsAt, adultsOfParticle, part } from '../particle.ts';
import { swarmLeaves, swarmUrge } from '../queen-day.ts';
import { freeCells } from '../room.ts';
import { type CauseRule, type Given, inDays } from './cause.ts';
import { hasLayingQueen, keepLaid, queenCourse, someDaysAgo } from './queen-course.ts';

export const swarmed: CauseRule = {
  cause: 'swarmed',
  prior: (given) => inDays(given.surprise.perDay.swarm, given),
  change: (given, values, at, stream) => {
    if (!hasLayingQueen(values, at)) return -Infinity;
    const weight = Math.log(Math.min(1, urgeOf(given, values, at)));
    const ago = someDaysAgo(given, stream);
    leave(given, ago, values, at, stream);
    for (let back = ago; back < ago + given.surprise.slimDays; back += 1)
      keepLaid(values, at, back, given.engine.chain.slows.share);
    queenCourse(given, 'swarmed', ago, values, at, stream);
    return weight;
  },
  reads: ['bees', 'bars', 'open', 'sealed', 'honeyKg', 'brood', 'cells', 'queen'],
  story: (_, sinceDays) => (values, at) =>
    values[at + part.queen] === stateIndex.swarmed && values[at + part.queenDays]! < sinceDays,
};

function urgeOf({ engine, day }: Given, values: Float64Array, at: number): number {
  const share = shareOn(engine, day, values, at);
  const bees = adultsOfParticle(values, at);
  return swarmUrge(
    engine,
    day,
    share,
    bees,
    eggsOn(engine, share, bees, values, at),
    freeCells(engine, values, at),
    values[at + part.comb]!,
  );
}

/** Bees fly off; those that were still in their cells on that day are there. */
function leave({ engine }: Given, ago: number, values: Float64Array, at: number, stream: Stream): void {
  const young = values.slice(at + adultsAt, at + adultsAt + ago);
  values.fill(0, at + adultsAt, at + adultsAt + ago);
  swarmLeaves(engine, values, at, engine.queen.swarmLogit, stream);
  values.set(young, at + adultsAt);
}
