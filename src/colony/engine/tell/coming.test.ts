/** What is coming, particle by particle: only what has not been yet, and nothing where it cannot be. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook, value } from '../../../figures/book.ts';
import type { Cloud } from '../../../numbers/particle-filter.ts';
import { stateIndex } from '../../queen-chain/states.ts';
import { may, plainParticle, setupOn } from '../for-tests.ts';
import { part, particleSize } from '../particle.ts';
import { comingOf, liveOn } from './ahead.ts';

const setup = setupOn();
const { constants: c } = setup;
const horizon = 42;
const least = value(printedBook, 'engine-least-chance');
const count = 200;

function cloudWith(change: (values: Float64Array, particle: number) => void): Cloud {
  const values = new Float64Array(count * particleSize);
  for (let particle = 0; particle < count; particle += 1) {
    const one = plainParticle(c);
    change(one, particle);
    values.set(one, particle * particleSize);
  }
  const logShares = new Float64Array(count).fill(-Math.log(count));
  return { day: may, count, values, logShares, roots: Int32Array.from({ length: count }, (_, i) => i) };
}

const comingFrom = (cloud: Cloud) => comingOf(c, liveOn(setup, cloud, horizon, count, 3, 9), horizon, least);

test('E150 a swarm that has left is not a swarm to come; one whose cells are sealed mostly is', () => {
  const left = comingFrom(cloudWith((values) => (values[part.queen] = stateIndex.swarmed)));
  assert.ok(left.swarm.chance < 0.1, `${left.swarm.chance}`);
  const sealed = comingFrom(cloudWith((values) => (values[part.queen] = stateIndex['swarm cells sealed'])));
  assert.ok(sealed.swarm.chance > 0.8, `${sealed.swarm.chance}`);
  assert.ok(sealed.swarm.window !== null && sealed.swarm.window.earliest <= '2014-05-03');
});

test('E151 a colony without honey starves soon, one with plenty does not; a share of the stories is a chance', () => {
  const starved = comingFrom(
    cloudWith((values, particle) => {
      values[part.honeyKg] = particle < count / 4 ? 0 : 20;
      // Nothing comes in for weeks.
      values[part.flow] = -9;
    }),
  );
  assert.ok(Math.abs(starved.starving.chance - 0.25) < 0.1, `${starved.starving.chance}`);
});

test('E152 comb that is all built and full hems the queen in; an empty trough does not', () => {
  const full = comingFrom(
    cloudWith((values) => {
      values[part.combMost] = values[part.comb]!;
      values[part.honeyKg] = 30;
    }),
  );
  assert.ok(full.hemmedIn.chance > 0.9 && full.troughFull.chance > 0.9);
  const roomy = comingFrom(
    cloudWith((values) => {
      values[part.comb] = 300_000;
      values[part.combMost] = 300_000;
    }),
  );
  assert.ok(roomy.hemmedIn.chance < 0.05 && roomy.troughFull.chance < 0.05);
});
