/** The same filter written to be read: lists of particles, one thing after the other, nothing in place. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { logNormalDensity } from './normal.ts';
import { type StateModel, begin, step } from './particle-filter.ts';
import { newStream, nextNormal, nextUnit } from './streams.ts';

interface Walk {
  readonly sd: number;
  readonly noise: number;
}

/** Two numbers a particle: a place and the drift that carries it. Rare jumps are proposed twice as often as they happen. */
const model: StateModel<Walk, { place: number }> = {
  size: 2,
  initial: (_c, _day, values, at, stream) => {
    values[at] = nextNormal(stream);
    values[at + 1] = nextNormal(stream) / 10;
  },
  step: (c, day, values, at, stream) => {
    const jumps = nextUnit(stream) < 0.2;
    values[at] = values[at]! + values[at + 1]! + c.sd * nextNormal(stream) + (jumps ? 1 : 0) + day / 100;
    return jumps ? Math.log(0.1 / 0.2) : Math.log(0.9 / 0.8);
  },
  observations: {
    place: {
      density: (c, values, at, seen) => logNormalDensity(seen, values[at]!, c.noise),
      draw: (c, values, at, stream) => values[at]! + c.noise * nextNormal(stream),
    },
  },
};

interface Particle {
  readonly values: readonly number[];
  readonly share: number;
  readonly root: number;
}

interface PlainState {
  readonly day: number;
  readonly particles: readonly Particle[];
}

const [beginning, stepping, resampling] = [0, 1, 2];

function plainBegin(walk: Walk, count: number, seed: number): PlainState {
  const particles = Array.from({ length: count }, (_, root) => {
    const values = new Float64Array(2);
    model.initial(walk, 0, values, 0, newStream(seed, beginning!, root, 0));
    return { values: [...values], share: 1 / count, root };
  });
  return { day: 0, particles };
}

function plainStep(walk: Walk, from: PlainState, to: number, place: number | undefined, below: number, seed: number) {
  const moved = from.particles.map((particle, index) => {
    const values = Float64Array.from(particle.values);
    let weight = 1;
    for (let day = from.day; day < to; day += 1) {
      weight *= Math.exp(model.step(walk, day, values, 0, newStream(seed, stepping!, index, day)));
    }
    if (place !== undefined) weight *= Math.exp(logNormalDensity(place, values[0]!, walk.noise));
    return { ...particle, values: [...values], share: particle.share * weight };
  });
  const total = moved.reduce((sum, { share }) => sum + share, 0);
  const weighed = moved.map((particle) => ({ ...particle, share: particle.share / total }));
  const effective = 1 / weighed.reduce((sum, { share }) => sum + share ** 2, 0);
  if (place === undefined || effective >= below * weighed.length)
    return { day: to, particles: weighed, evidence: total, effective };
  const unit = nextUnit(newStream(seed, resampling!, 0, to));
  const particles = weighed.map((_, child) => {
    let reached = 0;
    const parent = weighed.find(({ share }) => (reached += share) >= (child + unit) / weighed.length) ?? weighed.at(-1)!;
    return { ...parent, share: 1 / weighed.length };
  });
  return { day: to, particles, evidence: total, effective };
}

for (const below of [0.5, 1]) {
  test(`N17 the fast filter is the slow one for the same seed, resampling below ${below}`, () => {
    const walk = { sd: 0.3, noise: 0.5 };
    const setup = { model, constants: walk, resampleBelow: below };
    const seen = [undefined, 0.4, 0.9, undefined, 2.5, 2.2, 3.9];
    let fast = begin(setup, 0, 300, 42);
    let slow = plainBegin(walk, 300, 42);
    for (const [i, place] of seen.entries()) {
      const day = 2 * i + 1;
      const { state, info } = step(setup, fast, { day, seen: place === undefined ? {} : { place } }, 42);
      const plain = plainStep(walk, slow, day, place, below, 42);
      fast = state;
      slow = plain;
      assert.deepEqual(
        [...state.values],
        plain.particles.flatMap(({ values }) => values),
      );
      assert.deepEqual(
        [...state.roots],
        plain.particles.map(({ root }) => root),
      );
      plain.particles.forEach(({ share }, p) => assert.ok(Math.abs(Math.exp(state.logShares[p]!) - share) < 1e-12));
      assert.ok(Math.abs(info.effective / plain.effective - 1) < 1e-9);
      if (place !== undefined) assert.ok(Math.abs(info.logEvidence - Math.log(plain.evidence)) < 1e-9);
    }
  });
}
