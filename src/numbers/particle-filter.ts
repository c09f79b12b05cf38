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
  /**
   * Where what was seen would leave less than this share of the cloud effective, it is taken in by parts, and the
   * cloud is drawn anew and stirred after each: progressive correction (C. Musso, N. Oudjane, F. Le Gland 2001).
   * `stir` moves copies apart without changing what the cloud says; it is called whenever the cloud was drawn anew,
   * and told the cloud with its shares from which it was drawn.
   */
  readonly byParts?: {
    readonly leastShare: number;
    readonly stir: (constants: Constants, cloud: Cloud, from: Cloud, part: number, seed: number) => Cloud;
  };
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
  const kinds = seenKinds(setup.model, data);
  const moved = moveOn(setup, cloud, data.day, seed);
  if (kinds.length === 0) {
    const state = summing(moved);
    const effective = effectiveNumber(state.logShares);
    return { state, info: { logEvidence: 0, effective, ancestors: ancestorsOf(state), resampled: false } };
  }
  const found = takeIn(setup, moved, kinds, data, seed);
  // Nothing explains what was seen: the cloud keeps its shares, and says so.
  const state = found.logEvidence === -Infinity ? { ...moved, logShares: cloud.logShares } : found.state;
  learn(setup, state, data, kinds, seed);
  const { logEvidence, effective, resampled } = found;
  return { state, info: { logEvidence, effective, ancestors: ancestorsOf(state), resampled } };
}

/** From a cloud to a day on which nothing is seen. The cloud given is left as it was. */
export function goOn<C, S extends object>(setup: Setup<C, S>, cloud: Cloud, day: number, seed: number): Cloud {
  return summing(moveOn(setup, cloud, day, seed));
}

/** Every particle through the days by chance of its own, with the weights of what was proposed. */
function moveOn<C, S extends object>({ model, constants }: Setup<C, S>, cloud: Cloud, until: number, seed: number): Cloud {
  assert(Number.isInteger(until) && until >= cloud.day, `a day from ${cloud.day} on, not ${until}`);
  const values = cloud.values.slice();
  const logShares = cloud.logShares.slice();
  const stream = newStream(seed, purpose.step, 0, cloud.day);
  for (let particle = 0; particle < cloud.count; particle += 1) {
    const at = particle * model.size;
    let weight = 0;
    for (let day = cloud.day; day < until; day += 1) {
      setStream(stream, seed, purpose.step, particle, day);
      weight += model.step(constants, day, values, at, stream);
    }
    logShares[particle]! += weight;
  }
  return { ...cloud, day: until, values, logShares };
}

interface TakenIn {
  readonly state: Cloud;
  readonly logEvidence: number;
  readonly effective: number;
  readonly resampled: boolean;
}

/** What was seen taken in, at once or by parts, and the cloud drawn anew where that is due. */
function takeIn<C, S extends object>(
  setup: Setup<C, S>,
  moved: Cloud,
  kinds: readonly (keyof S)[],
  data: Data<S>,
  seed: number,
): TakenIn {
  let state = moved;
  let logEvidence = 0;
  let effective = 0;
  let left = 1;
  for (let part = 0; left > 0; part += 1) {
    const densities = densitiesOf(setup, state, kinds, data);
    const all = weighed(state, densities, left);
    if (all.total === -Infinity)
      return { state, logEvidence: -Infinity, effective: effectiveNumber(moved.logShares), resampled: false };
    if (part === 0) effective = all.effective;
    const share = part < mostParts ? partOf(setup, state, densities, left) : left;
    const now = share === left ? all : weighed(state, densities, share);
    logEvidence += now.total;
    left -= share;
    state = { ...state, logShares: now.logShares };
    if (left === 0 && now.effective >= setup.resampleBelow * state.count)
      return { state, logEvidence, effective, resampled: part > 0 };
    const from = state;
    state = resample(from, setup.model.size, part, seed);
    if (setup.byParts !== undefined) state = setup.byParts.stir(setup.constants, state, from, part, seed);
  }
  return { state, logEvidence, effective, resampled: true };
}

/** Beyond so many parts the rest is taken in at once. */
const mostParts = 16;
const halvings = 16;

/** How much of what is left to take in leaves enough of the cloud effective; all of it where nothing is asked. */
function partOf<C, S extends object>({ byParts }: Setup<C, S>, cloud: Cloud, densities: Float64Array, left: number): number {
  if (byParts === undefined) return left;
  const least = byParts.leastShare * cloud.count;
  const enough = (share: number): boolean => effectiveAfter(cloud, densities, share) >= least;
  if (enough(left)) return left;
  let [low, high] = [0, left];
  for (let i = 0; i < halvings; i += 1) {
    const middle = (low + high) / 2;
    if (enough(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** Effective number after so much of the densities was taken in; 0 where nothing explains what was seen. */
function effectiveAfter(cloud: Cloud, densities: Float64Array, share: number): number {
  let largest = -Infinity;
  for (let i = 0; i < densities.length; i += 1) largest = Math.max(largest, cloud.logShares[i]! + share * densities[i]!);
  if (largest === -Infinity) return 0;
  let [sum, squares] = [0, 0];
  for (let i = 0; i < densities.length; i += 1) {
    const one = Math.exp(cloud.logShares[i]! + share * densities[i]! - largest);
    sum += one;
    squares += one * one;
  }
  return (sum * sum) / squares;
}

/** Shares after so much of the densities was taken in. */
function weighed(cloud: Cloud, densities: Float64Array, share: number) {
  const logShares = share === 0 ? cloud.logShares.slice() : cloud.logShares.map((log, i) => log + share * densities[i]!);
  const total = logSum(logShares);
  for (let i = 0; i < logShares.length; i += 1) logShares[i]! -= total;
  return { logShares, total, effective: effectiveNumber(logShares) };
}

function densitiesOf<C, S extends object>(
  { model, constants }: Setup<C, S>,
  cloud: Cloud,
  kinds: readonly (keyof S)[],
  { seen }: Data<S>,
): Float64Array {
  const densities = new Float64Array(cloud.count);
  for (let particle = 0; particle < cloud.count; particle += 1) {
    let sum = 0;
    for (const kind of kinds)
      sum += model.observations[kind].density(constants, cloud.values, particle * model.size, seen[kind] as S[typeof kind]);
    densities[particle] = sum;
  }
  return densities;
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

/** In place: shares that sum to 1 again. */
function summing(cloud: Cloud): Cloud {
  const total = logSum(cloud.logShares);
  for (let i = 0; i < cloud.count; i += 1) cloud.logShares[i]! -= total;
  return cloud;
}

function ancestorsOf({ roots }: Cloud): number {
  return new Set(roots).size;
}

/** One over the sum of squared shares (A. Kong, J. S. Liu, W. H. Wong 1994). */
export function effectiveNumber(logShares: Float64Array): number {
  let squares = 0;
  for (const share of logShares) squares += Math.exp(2 * share);
  return 1 / squares;
}

function resample(cloud: Cloud, size: number, part: number, seed: number): Cloud {
  const shares = cloud.logShares.map((share) => Math.exp(share));
  const parents = systematicParents(shares, nextUnit(newStream(seed, purpose.resample, part, cloud.day)));
  const values = new Float64Array(cloud.values.length);
  parents.forEach((parent, child) => values.set(cloud.values.subarray(parent * size, (parent + 1) * size), child * size));
  return {
    ...cloud,
    values,
    logShares: new Float64Array(cloud.count).fill(-Math.log(cloud.count)),
    roots: parents.map((parent) => cloud.roots[parent]!),
  };
}
