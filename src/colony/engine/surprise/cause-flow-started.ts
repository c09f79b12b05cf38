/** A strong flow began: honey and nectar far beyond what was foreseen, and new comb. */
import { type CauseRule, inDays } from './cause.ts';
import { flowBeyond, flowTimes, inFlower } from './cause-flow.ts';
import { someDaysAgo } from './queen-course.ts';
import { between } from './scale-run.ts';

export const flowStarted: CauseRule = {
  cause: 'flow started',
  prior: (given) => inDays(given.surprise.perDay.flow, given),
  change: (given, values, at, stream) => {
    const weight = inFlower(given, values, at);
    flowTimes(given, between(given.surprise.flowTimes, stream), someDaysAgo(given, stream), values, at);
    return weight;
  },
  story: (cloud) => flowBeyond(cloud, 1),
  reads: ['honeyKg', 'built'],
};
