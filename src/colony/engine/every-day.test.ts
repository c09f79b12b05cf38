/** What holds on any day of any colony that the model can begin with, whatever its luck. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { newStream } from '../../numbers/streams.ts';
import { chainStates } from '../queen-chain/states.ts';
import { beesOf, broodOf, may, setupOn } from './for-tests.ts';
import { colonyModel } from './model.ts';
import { adultsAt, broodAt, eyeVarianceAt, part } from './particle.ts';

const setups = [
  setupOn(),
  setupOn({ comb: null }),
  setupOn({ beginning: { kind: 'swarm', bees: null } }),
  setupOn({ latitude: -38 }),
];

const lives = fc.record({
  setup: fc.constantFrom(...setups),
  seed: fc.integer({ min: 1, max: 1_000_000 }),
  start: fc.integer({ min: may - 180, max: may + 180 }),
  days: fc.integer({ min: 1, max: 120 }),
});

test('E21 after any days numbers are finite, none that counts falls below 0, and the queen is in a state that there is', () => {
  fc.assert(
    fc.property(lives, ({ setup: { constants: c }, seed, start, days }) => {
      const values = begun(c, start, seed);
      for (let day = start; day < start + days; day += 1) {
        const weight = colonyModel.step(c, day, values, 0, newStream(seed, 1, 0, day));
        assert.ok(Number.isFinite(weight) && values.every(Number.isFinite));
      }
      assert.ok(values.subarray(eyeVarianceAt).every((one) => one >= 0));
      for (const name of ['honeyKg', 'breadKg', 'comb', 'drones', 'queenDays'] as const)
        assert.ok(values[part[name]]! >= 0, name);
      assert.ok(chainStates[values[part.queen]!] !== undefined);
      assert.ok(values[part.comb]! <= values[part.combMost]! + 1e-6);
    }),
    { seed: 20, numRuns: 60 },
  );
});

test('E22 a day makes no bees and no brood beyond what emerges and what is laid', () => {
  fc.assert(
    fc.property(lives, ({ setup: { constants: c }, seed, start, days }) => {
      const values = begun(c, start, seed);
      for (let day = start; day < start + days; day += 1) {
        const [bees, brood, oldest] = [beesOf(values), broodOf(values), values[broodAt + 20]!];
        colonyModel.step(c, day, values, 0, newStream(seed, 1, 0, day));
        assert.ok(values[adultsAt]! <= oldest * (1 + 1e-12));
        assert.ok(beesOf(values) <= bees + values[adultsAt]! + 1e-6);
        assert.ok(broodOf(values) <= brood - oldest + values[broodAt]! + 1e-6);
      }
    }),
    { seed: 21, numRuns: 40 },
  );
});

test('E23 a day neither asks nor tells who stands beside: a particle lives the same anywhere in the array', () => {
  fc.assert(
    fc.property(lives, ({ setup: { constants: c }, seed, start, days }) => {
      const alone = begun(c, start, seed);
      const size = colonyModel.size;
      const among = new Float64Array(3 * size).fill(7);
      among.set(alone, size);
      for (let day = start; day < start + Math.min(days, 30); day += 1) {
        const [one, other] = [newStream(seed, 1, 0, day), newStream(seed, 1, 0, day)];
        assert.equal(colonyModel.step(c, day, alone, 0, one), colonyModel.step(c, day, among, size, other));
      }
      assert.deepEqual(among.slice(size, 2 * size), alone);
      assert.ok(among.subarray(0, size).every((x) => x === 7) && among.subarray(2 * size).every((x) => x === 7));
    }),
    { seed: 22, numRuns: 40 },
  );
});

function begun(c: (typeof setups)[number]['constants'], day: number, seed: number): Float64Array {
  const values = new Float64Array(colonyModel.size);
  colonyModel.initial(c, day, values, 0, newStream(seed, 0, 0, day));
  return values;
}
