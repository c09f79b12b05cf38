/** Much of the brood died since eggs were laid on as before: fewer larvae and sealed cells, eggs and bees as they were. */
import { broodAt, broodDays } from '../particle.ts';
import { type CauseRule, inDays } from './cause.ts';
import { between, scaleRun } from './scale-run.ts';

export const broodDying: CauseRule = {
  cause: 'brood dying',
  prior: (given) => inDays(given.surprise.perDay.dying, given),
  change: ({ engine: { hatchAge }, surprise }, values, at, stream) => {
    scaleRun(values, at + broodAt + hatchAge, broodDays - hatchAge, 1 - between(surprise.broodDead, stream));
    return 0;
  },
  reads: ['open', 'sealed'],
};
