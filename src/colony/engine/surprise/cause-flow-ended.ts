/** A flow ended: next to nothing came in since, and the bees ate of their stores; never less than that. */
import { type CauseRule, inDays } from './cause.ts';
import { flowBeyond, flowTimes, inFlower } from './cause-flow.ts';
import { someDaysAgo } from './queen-course.ts';
import { between } from './scale-run.ts';

export const flowEnded: CauseRule = {
  cause: 'flow ended',
  prior: (given) => inDays(given.surprise.perDay.flow, given),
  change: (given, values, at, stream) => {
    const weight = inFlower(given, values, at);
    const left = Math.max(least, between(given.surprise.dearthShare, stream));
    flowTimes(given, left, someDaysAgo(given, stream), values, at);
    return weight;
  },
  story: (cloud) => flowBeyond(cloud, -1),
  reads: ['honeyKg', 'built'],
};

/** So that its logarithm has an end. */
const least = 0.01;
