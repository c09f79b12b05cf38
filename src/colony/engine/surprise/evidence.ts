/**
 * How well each rival explains all that was seen at a visit: the mean density over the particles, each changed as
 * the cause would have changed it, times the chance that it befell the colony. "Just chance" is the particles of
 * which the model itself holds nothing special since the last visit. One draw of the change for each particle: the
 * error of a chance is a few hundredths.
 */
import { assert } from '../../../numbers/assert.ts';
import { logSum } from '../../../numbers/log-sum.ts';
import type { Cloud } from '../../../numbers/particle-filter.ts';
import { newStream, setStream } from '../../../numbers/streams.ts';
import type { Cause } from '../../foreseen.ts';
import { particleSize } from '../particle.ts';
import type { EngineSetup, Seen } from '../run.ts';
import type { SeenKind } from '../seen/list.ts';
import { thinned } from '../thin.ts';
import { patternLogDensity } from './bar-pattern.ts';
import type { CauseRule, Given } from './cause.ts';
import { causeRules } from './list.ts';

export interface Rival {
  readonly cause: Cause;
  /** Logarithm of prior times evidence; only differences mean anything. */
  readonly log: number;
  /** Null for "just chance": it touches everything. */
  readonly rule: CauseRule | null;
}

/** Streams of chance of the causes stand after those of the filter. */
const purpose = 16;
/** Share of the cloud that must be without a story for the rest to be left out. */
const leastQuiet = 1e-3;

export function rivalsOf(setup: EngineSetup, cloud: Cloud, seen: Seen, given: Given, seed: number): readonly Rival[] {
  const stories = storiesOf(cloud, given.sinceDays);
  const isTold = stories.quiet < leastQuiet;
  const quiet = thinned(isTold ? cloud : without(cloud, stories.of, stories.quiet), given.surprise.particles);
  const density = densityOf(setup, seen);
  const pattern = patternLogDensity(given.bars, false, given.surprise.outliers);
  const tried = causeRules.map((rule, i) => {
    const stream = newStream(seed, purpose + i, 0, cloud.day);
    const { likely, fit } = evidenceOf(quiet, density, (values, at, particle) =>
      rule.change(given, values, at, setStream(stream, seed, purpose + i, particle, cloud.day)),
    );
    const prior = likely === 0 ? 0 : Math.min(mostPrior, Math.max(rule.prior(given) * likely, isTold ? 0 : stories.shares[i]!));
    const bars = rule.cause === 'combs moved' ? patternLogDensity(given.bars, true, given.surprise.outliers) : pattern;
    return { rule, prior, log: Math.log(prior) + fit + bars };
  });
  const nothing = tried.reduce((sum, { prior }) => sum + Math.log1p(-prior), 0);
  const stays = evidenceOf(quiet, density, () => 0).fit;
  const causes = tried.map(({ rule, log }): Rival => ({ cause: rule.cause, rule, log }));
  return [{ cause: 'just chance', rule: null, log: nothing + stays + pattern }, ...causes];
}

/** "Just chance" keeps a chance, however sure the model is that something happened. */
const mostPrior = 0.99;

type Change = (values: Float64Array, at: number, particle: number) => number;
type Density = (values: Float64Array, at: number) => number;

/**
 * Particles changed one by one; the cloud is left as it was. `likely`: how likely the change was for them on the
 * mean, 0 where it cannot have been; `fit`: log mean density of those changed, each by how likely it was for it.
 */
function evidenceOf(cloud: Cloud, density: Density, change: Change): { readonly likely: number; readonly fit: number } {
  const one = new Float64Array(particleSize);
  const weights = new Float64Array(cloud.count).fill(-Infinity);
  const logs = new Float64Array(cloud.count).fill(-Infinity);
  cloud.logShares.forEach((share, particle) => {
    if (share === -Infinity) return;
    one.set(cloud.values.subarray(particle * particleSize, (particle + 1) * particleSize));
    weights[particle] = share + change(one, 0, particle);
    if (weights[particle] > -Infinity) logs[particle] = weights[particle] + density(one, 0);
  });
  const likely = logSum(weights);
  return { likely: Math.exp(likely), fit: likely === -Infinity ? -Infinity : logSum(logs) - likely };
}

function densityOf({ model, constants }: EngineSetup, seen: Seen): Density {
  const kinds = (Object.keys(model.observations) as SeenKind[]).filter((kind) => seen[kind] !== undefined);
  return (values, at) =>
    kinds.reduce((sum, kind) => {
      const density = model.observations[kind].density as (c: typeof constants, v: Float64Array, a: number, s: unknown) => number;
      return sum + density(constants, values, at, seen[kind]);
    }, 0);
}

interface Stories {
  /** For each particle the place of the cause that befell it, or −1. */
  readonly of: Int32Array;
  /** Share of the cloud by cause, and of what has none. */
  readonly shares: readonly number[];
  readonly quiet: number;
}

function storiesOf(cloud: Cloud, sinceDays: number): Stories {
  const told = causeRules.map((rule) => rule.story?.(cloud, sinceDays) ?? null);
  const of = Int32Array.from({ length: cloud.count }, (_, particle) =>
    told.findIndex((isSo) => isSo?.(cloud.values, particle * particleSize) === true),
  );
  const share = (cause: number): number =>
    of.reduce((sum, story, particle) => sum + (story === cause ? Math.exp(cloud.logShares[particle]!) : 0), 0);
  return { of, shares: causeRules.map((_, i) => share(i)), quiet: share(-1) };
}

/** The cloud of those to which nothing happened. */
function without(cloud: Cloud, stories: Int32Array, quiet: number): Cloud {
  assert(quiet > 0, 'some particles have no story');
  return { ...cloud, logShares: cloud.logShares.map((share, i) => (stories[i]! < 0 ? share - Math.log(quiet) : -Infinity)) };
}
