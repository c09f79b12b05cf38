/**
 * A particle filter that knows nothing of what it follows: the model is a record of named pure functions, a
 * particle is a stretch of one long array. Bootstrap filter of N. J. Gordon, D. J. Salmond, A. F. M. Smith
 * (1993) with systematic resampling; a model may propose rare events more often than they happen and hand
 * back the logarithm of the weight that makes up for it. Smoothing of the past is left out.
 */
import { assert } from './assert.ts';
import { logSum } from './log-sum.ts';
import { systematicParents } from './resample.ts';
import { newStream, nextUnit, setStream, type Stream } from './streams.ts';

export interface Observation<Constants, Seen> {
  /** Logarithm of the density of what was seen, were the particle true. */
  readonly density: (constants: Constants, values: Float64Array, at: number, seen: Seen) => number;
  /** What might be seen, were the particle true, as one number; `like` tells how it is looked for. */
  readonly draw: (constants: Constants, values: Float64Array, at: number, stream: Stream, like?: Seen) => number;
  /**
   * Where a particle carries, beside its numbers, what is known of some of them in closed form (M. K. Pitt and others
   * after G. Storvik 2002): works what was seen into that. Called after weighing and resampling; never changes what
   * else was weighed.
   */
  readonly learn?: (constants: Constants, values: Float64Array, at: number, seen: Seen, stream: Stream) => void;
}

/** `values[at … at + size − 1]` is one particle. Its functions keep no memory of their own. */
export interface StateModel<Constants, Seens extends object> {
  readonly size: number;
  readonly initial: (constants: Constants, day: number, values: Float64Array, at: number, stream: Stream) => void;
  /** From `day` to the next, in place; hands back the log weight of what was proposed, 0 when all was drawn as it happens. */
  readonly step: (constants: Constants, day: number, values: Float64Array, at: number, stream: Stream) => number;
  readonly observations: { readonly [K in keyof Seens]: Observation<Constants, Seens[K]> };
}

export interface Setup<Constants, Seens extends object> {
  readonly model: StateModel<Constants, Seens>;
  readonly constants: Constants;
  /** Resamples when the effective number falls below this share of the cloud; 1 is: at every visit. */
  readonly resampleBelow: number;
}

export interface Cloud {
  readonly day: number;
  readonly count: number;
  /** count × size numbers, particle after particle. */
  readonly values: Float64Array;
  /** Logarithms of shares: their exponentials sum to 1. */
  readonly logShares: Float64Array;
  /** For each particle the one it descends from, of those that began. */
  readonly roots: Int32Array;
}

export interface Data<Seens extends object> {
  readonly day: number;
  /** What is missing adds nothing. */
  readonly seen: { readonly [K in keyof Seens]?: Seens[K] };
}

export interface StepInfo {
  /** Logarithm of the density of what was seen, given all before; 0 when nothing was seen. Minus infinity: impossible. */
  readonly logEvidence: number;
  /** Effective number of particles, before resampling. */
  readonly effective: number;
  /** Of the particles that began, how many still have a descendant: the alarm for a cloud that has collapsed. */
  readonly ancestors: number;
  readonly resampled: boolean;
}

/** What a stream is for: each has chance of its own. */
const purpose = { begin: 0, step: 1, resample: 2, draw: 3, learn: 4 } as const;

/** From a cloud to the day of the data, and weighed by what was seen then. The cloud given is left as it was. */
export function step<C, S extends object>(
  setup: Setup<C, S>,
  cloud: Cloud,
  data: Data<S>,
  seed: number,
): { readonly state: Cloud; readonly info: StepInfo } {
  assert(Number.isInteger(data.day) && data.day >= cloud.day, `a day from ${cloud.day} on, not ${data.day}`);
  const { model, constants } = setup;
  const values = cloud.values.slice();
  const logShares = cloud.logShares.slice();
  const stream = newStream(seed, purpose.step, 0, cloud.day);
  const kinds = seenKinds(model, data);
  for (let particle = 0; particle < cloud.count; particle += 1) {
    const at = particle * model.size;
    let weight = 0;
    for (let day = cloud.day; day < data.day; day += 1) {
      setStream(stream, seed, purpose.step, particle, day);
      weight += model.step(constants, day, values, at, stream);
    }
    for (const kind of kinds)
      weight += model.observations[kind].density(constants, values, at, data.seen[kind] as S[typeof kind]);
    logShares[particle]! += weight;
  }
  const total = logSum(logShares);
  // Nothing explains what was seen: the cloud keeps its shares, and says so.
  const weighed = total === -Infinity ? cloud.logShares : logShares.map((share) => share - total);
  const effective = effectiveNumber(weighed);
  const moved: Cloud = { ...cloud, day: data.day, values, logShares: weighed };
  const resampled = kinds.length > 0 && effective < setup.resampleBelow * cloud.count;
  const state = resampled ? resample(moved, model.size, seed) : moved;
  learn(setup, state, data, kinds, seed);
  const ancestors = new Set(state.roots).size;
  return { state, info: { logEvidence: kinds.length === 0 ? 0 : total, effective, ancestors, resampled } };
}

export function begin<C, S extends object>(setup: Setup<C, S>, day: number, count: number, seed: number): Cloud {
  assert(Number.isInteger(count) && count > 0, `some particles, not ${count}`);
  const { model, constants } = setup;
  const values = new Float64Array(count * model.size);
  const stream = newStream(seed, purpose.begin, 0, day);
  for (let particle = 0; particle < count; particle += 1) {
    model.initial(constants, day, values, particle * model.size, setStream(stream, seed, purpose.begin, particle, day));
  }
  const logShares = new Float64Array(count).fill(-Math.log(count));
  return { day, count, values, logShares, roots: Int32Array.from({ length: count }, (_, index) => index) };
}

/** What might be counted on the cloud's day, looked for as in `like`: `draws` for each particle, with the share of each. */
export function foresee<C, S extends object, K extends keyof S>(
  setup: Setup<C, S>,
  cloud: Cloud,
  kind: K,
  draws: number,
  seed: number,
  like?: S[K],
): { readonly values: Float64Array; readonly shares: Float64Array } {
  const { model, constants } = setup;
  const values = new Float64Array(cloud.count * draws);
  const shares = new Float64Array(cloud.count * draws);
  const stream = newStream(seed, purpose.draw, 0, cloud.day);
  for (let particle = 0; particle < cloud.count; particle += 1) {
    setStream(stream, seed, purpose.draw, particle, cloud.day);
    for (let draw = 0; draw < draws; draw += 1) {
      values[particle * draws + draw] = model.observations[kind].draw(
        constants,
        cloud.values,
        particle * model.size,
        stream,
        like,
      );
      shares[particle * draws + draw] = Math.exp(cloud.logShares[particle]!) / draws;
    }
  }
  return { values, shares };
}

/** The share-weighted mean of something told of each particle. */
export function meanOf(cloud: Cloud, size: number, what: (values: Float64Array, at: number) => number): number {
  let sum = 0;
  for (let particle = 0; particle < cloud.count; particle += 1) {
    sum += Math.exp(cloud.logShares[particle]!) * what(cloud.values, particle * size);
  }
  return sum;
}

/** In place: the cloud is this step's own. */
function learn<C, S extends object>(
  { model, constants }: Setup<C, S>,
  cloud: Cloud,
  { day, seen }: Data<S>,
  kinds: readonly (keyof S)[],
  seed: number,
): void {
  const learning = kinds.filter((kind) => model.observations[kind].learn !== undefined);
  if (learning.length === 0) return;
  const stream = newStream(seed, purpose.learn, 0, day);
  for (let particle = 0; particle < cloud.count; particle += 1) {
    setStream(stream, seed, purpose.learn, particle, day);
    for (const kind of learning) {
      model.observations[kind].learn!(constants, cloud.values, particle * model.size, seen[kind] as S[typeof kind], stream);
    }
  }
}

function seenKinds<C, S extends object>(model: StateModel<C, S>, data: Data<S>): readonly (keyof S)[] {
  return (Object.keys(model.observations) as (keyof S)[]).filter((kind) => data.seen[kind] !== undefined);
}

/** One over the sum of squared shares (A. Kong, J. S. Liu, W. H. Wong 1994). */
function effectiveNumber(logShares: Float64Array): number {
  let squares = 0;
  for (const share of logShares) squares += Math.exp(2 * share);
  return 1 / squares;
}

function resample(cloud: Cloud, size: number, seed: number): Cloud {
  const shares = cloud.logShares.map((share) => Math.exp(share));
  const parents = systematicParents(shares, nextUnit(newStream(seed, purpose.resample, 0, cloud.day)));
  const values = new Float64Array(cloud.values.length);
  parents.forEach((parent, child) => values.set(cloud.values.subarray(parent * size, (parent + 1) * size), child * size));
  return {
    ...cloud,
    values,
    logShares: new Float64Array(cloud.count).fill(-Math.log(cloud.count)),
    roots: parents.map((parent) => cloud.roots[parent]!),
  };
}
