/** What was done to a colony changes its particles as it changed the colony. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newStream } from '../../numbers/streams.ts';
import { chainStates, stateIndex } from '../queen-chain/states.ts';
import { colonyBegins } from './beginning.ts';
import { beesOf, broodOf, live, may, plainParticle, setupOn } from './for-tests.ts';
import type { Happening } from './happening.ts';
import { happens } from './happenings.ts';
import { broodAt, part, particleSize } from './particle.ts';

const setup = setupOn();
const { constants: c } = setup;

function after(what: Happening, values = plainParticle(c), seed = 1): Float64Array {
  happens(c, may, what, values, 0, newStream(seed, 0, 0, 0));
  return values;
}

function mean(of: (seed: number) => number): number {
  const times = 400;
  return Array.from({ length: times }, (_, seed) => of(seed)).reduce((a, b) => a + b, 0) / times;
}

test('E142 a swarm takes three quarters of the bees, honey with them, and the queen', () => {
  const before = plainParticle(c);
  const left = mean((seed) => beesOf(after({ kind: 'swarm left' }, plainParticle(c), seed)) / beesOf(before));
  assert.ok(Math.abs(left - 0.27) < 0.03, `${left} of the bees are left`);
  const swarmed = after({ kind: 'swarm left' });
  assert.equal(swarmed[part.queen], stateIndex.swarmed);
  assert.ok(swarmed[part.honeyKg]! < before[part.honeyKg]!);
  assert.equal(broodOf(swarmed), broodOf(before));
});

test('E143 without a queen there is no open brood after nine days and no sealed worker brood after twenty-one', () => {
  const values = after({ kind: 'queen gone' });
  // Young brood is taken from her, so that no daughter is raised.
  values.fill(0, broodAt, broodAt + 7);
  values[part.queen] = stateIndex.none;
  live(setup, values, may, 9);
  assert.equal(broodOf(values, 0, c.sealAge), 0);
  assert.ok(broodOf(values) > 0);
  live(setup, values, may + 9, 12);
  assert.equal(broodOf(values), 0);
});

test('E144 combs that went take their share of bees, brood and food, and the queen where she was on them', () => {
  const what = { kind: 'part left', bees: 0.3, brood: 0.5, food: 0.2, comb: 0.25, queen: 'went' } as const;
  const before = plainParticle(c);
  const share = (of: (values: Float64Array) => number): number =>
    mean((seed) => of(after(what, plainParticle(c), seed)) / of(before));
  assert.ok(Math.abs(share(beesOf) - 0.7) < 0.03);
  assert.ok(Math.abs(share((values) => broodOf(values)) - 0.5) < 0.03);
  assert.ok(Math.abs(share((values) => values[part.honeyKg]!) - 0.8) < 0.03);
  assert.equal(after(what)[part.comb], 30_000);
  assert.equal(after(what)[part.queen], stateIndex.orphaned);
  assert.equal(after({ ...what, queen: 'stayed' })[part.queen], stateIndex.laying);
  const went = mean((seed) =>
    Number(after({ ...what, queen: 'unknown' }, plainParticle(c), seed)[part.queen] === stateIndex.orphaned),
  );
  assert.ok(Math.abs(went - 0.5) < 0.1);
});

test('E145 what is joined is there to the last bee, cell and gram', () => {
  const before = plainParticle(c);
  const values = after({ kind: 'joined', bees: 5000, broodCells: 4000, honeyKg: 2, comb: 6000 });
  assert.ok(Math.abs(beesOf(values) - beesOf(before) - 5000) < 1e-6);
  assert.ok(Math.abs(broodOf(values) - broodOf(before) - 4000) < 1e-6);
  assert.equal(values[part.honeyKg], 10);
  assert.equal(values[part.comb], 46_000);
});

test('E146 cells that were cut leave a laying queen laying, and an orphaned colony with young brood to begin again', () => {
  const cut = (state: number, brood: boolean): number => {
    const values = plainParticle(c);
    values[part.queen] = state;
    if (!brood) values.fill(0, broodAt, broodAt + 21);
    return after({ kind: 'cells cut' }, values)[part.queen]!;
  };
  assert.equal(cut(stateIndex['swarm cells open'], true), stateIndex.laying);
  assert.equal(cut(stateIndex['emergency cells open'], true), stateIndex.orphaned);
  assert.equal(cut(stateIndex['emergency cells open'], false), stateIndex.none);
  assert.equal(cut(stateIndex.virgin, true), stateIndex.virgin);
});

test('E147 food that was fed is in the combs, and bars that were hung in are room', () => {
  assert.equal(after({ kind: 'fed', kg: 3 })[part.honeyKg], 11);
  assert.equal(after({ kind: 'bars', cells: 99_000 })[part.combMost], 99_000);
});

test('E148 a swarm begins with bees and a load of honey, without comb or brood; a split with brood, or waiting for a queen', () => {
  const begun = (kind: 'swarm' | 'split', seed: number): Float64Array => {
    const values = new Float64Array(particleSize);
    const beginning = kind === 'swarm' ? ({ kind, bees: 9000 } as const) : ({ kind } as const);
    const ground = setupOn({ beginning, comb: { built: 0, most: 50_000 } }).constants;
    colonyBegins(ground, may, values, 0, newStream(seed, 0, 0, 0));
    return values;
  };
  const swarm = begun('swarm', 3);
  assert.equal(broodOf(swarm), 0);
  assert.equal(swarm[part.comb], 0);
  assert.ok(beesOf(swarm) > 2000 && swarm[part.honeyKg]! > 0 && swarm[part.honeyKg]! < 2);
  const waiting = mean((seed) => Number(begun('split', seed)[part.queen]! !== stateIndex.laying));
  assert.ok(waiting > 0.5 && waiting < 0.95);
});

test('E149 nothing that is done to a particle makes it impossible', () => {
  const all: readonly Happening[] = [
    { kind: 'swarm left' },
    { kind: 'queen gone' },
    { kind: 'queen given' },
    { kind: 'queen found' },
    { kind: 'cells cut' },
    { kind: 'fed', kg: 2 },
    { kind: 'part left', bees: 1, brood: 1, food: 1, comb: 1, queen: 'unknown' },
    { kind: 'joined', bees: 10, broodCells: 10, honeyKg: 0, comb: 0 },
    { kind: 'bars', cells: 0 },
  ];
  for (const [i, one] of all.entries()) {
    for (const [j, other] of all.entries()) {
      const values = after(other, after(one, plainParticle(c), i), j);
      live(setup, values, may, 60, i * 10 + j);
      assert.ok(values.every(Number.isFinite), `${one.kind}, then ${other.kind}`);
      assert.ok(values.slice(broodAt).every((n) => n >= 0) && values[part.honeyKg]! >= 0);
      assert.ok(chainStates[values[part.queen]!] !== undefined);
    }
  }
});
