/** The queen was lost: no egg since, emergency cells by and by; the bees are as they were. */
import { stateIndex } from '../../queen-chain/states.ts';
import { part } from '../particle.ts';
import { type CauseRule, inDays } from './cause.ts';
import { hasLayingQueen, queenCourse, someDaysAgo } from './queen-course.ts';

export const queenLost: CauseRule = {
  cause: 'queen lost',
  prior: (given) => inDays(given.surprise.perDay.lost, given),
  change: (given, values, at, stream) => {
    if (!hasLayingQueen(values, at)) return -Infinity;
    queenCourse(given, 'orphaned', someDaysAgo(given, stream), values, at, stream);
    return 0;
  },
  reads: ['open', 'sealed', 'brood', 'cells', 'queen'],
  story: (_, sinceDays) => (values, at) => after.includes(values[at + part.queen]!) && values[at + part.queenDays]! < sinceDays,
};

const after: readonly number[] = [stateIndex.orphaned, stateIndex['emergency cells open']];
