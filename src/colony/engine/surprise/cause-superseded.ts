/**
 * The bees replace their queen in peace: a few cells of one age while she lays on, then a virgin beside her or
 * instead of her. What began before the last visit and was overlooked then counts too: it takes weeks.
 */
import { nextUnit } from '../../../numbers/streams.ts';
import { stateIndex } from '../../queen-chain/states.ts';
import { part } from '../particle.ts';
import { type CauseRule, inDays } from './cause.ts';
import { hasLayingQueen, queenCourse } from './queen-course.ts';

export const superseded: CauseRule = {
  cause: 'superseded',
  prior: (given) => inDays(given.surprise.perDay.superseded, { sinceDays: given.sinceDays + overlooked(given) }),
  change: (given, values, at, stream) => {
    if (!hasLayingQueen(values, at)) return -Infinity;
    const ago = 1 + Math.floor(nextUnit(stream) * (given.sinceDays + overlooked(given)));
    queenCourse(given, 'supersedure cells open', ago, values, at, stream);
    return 0;
  },
  reads: ['open', 'sealed', 'brood', 'cells', 'queen'],
  story: () => (values, at) => under.includes(values[at + part.queen]!),
};

const under: readonly number[] = [
  stateIndex['supersedure cells open'],
  stateIndex['supersedure cells sealed'],
  stateIndex['mother and virgin'],
];

/** Days for which cells just begun are passed over: the stage of the egg. */
function overlooked({ engine }: { readonly engine: { readonly hatchAge: number } }): number {
  return engine.hatchAge;
}
