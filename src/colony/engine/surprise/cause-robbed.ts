/** Robbers carried the honey off: most of it is gone, far more than the bees could eat, and some bees died. */
import { type CauseRule, inDays } from './cause.ts';
import { adultDays, adultsAt, part } from '../particle.ts';
import { between, scaleRun } from './scale-run.ts';

export const robbed: CauseRule = {
  cause: 'robbed',
  prior: (given) => inDays(given.surprise.perDay.robbed, given),
  change: ({ surprise }, values, at, stream) => {
    values[at + part.honeyKg]! *= 1 - between(surprise.robbedHoney, stream);
    scaleRun(values, at + adultsAt, adultDays, 1 - between(surprise.robbedBees, stream));
    return 0;
  },
  reads: ['honeyKg', 'bees', 'bars'],
};
