/** What holds of everything that can be seen: its density is that of its draws, and what was not looked at says little. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newStream, setStream } from '../../../numbers/streams.ts';
import { cellKinds } from '../../queen-chain/cells-there.ts';
import { chainStates } from '../../queen-chain/states.ts';
import { part } from '../particle.ts';
import { may, plainParticle, setupOn } from '../for-tests.ts';
import type { Count } from './counts.ts';
import { seenKinds } from './list.ts';
import { buildingSeen, flightSeen, pollenSeen } from './outside.ts';
import { broodLooked, cellsLooked, drawnCells, queenMet } from './looks.ts';

const { constants: c } = setupOn();
const counts = ['bees', 'bars', 'sealed', 'open', 'honeyKg'] as const;
const looks: readonly Count[] = [{ count: 1 }, { count: 1, share: 0.4 }, { count: 1, hand: 1 }, { count: 1, rounding: 0.3 }];
const draws = 20_000;

/** Area below a density of the logarithm, straight between even steps. */
function below(density: (log: number) => number, to: number): number {
  const step = 0.004;
  let sum = 0;
  for (let x = -12; x < to; x += step) sum += step * density(x + step / 2);
  return sum;
}

for (const what of counts) {
  test(`E130 ${what}: draws fall as the density says, whole or in part, by either hand`, () => {
    const values = plainParticle(c);
    values[part.sealedScaleOther] = 0.4;
    for (const like of looks) {
      const stream = newStream(11, 0, 0, 0);
      const logs = Array.from({ length: draws }, (_, i) =>
        Math.log(seenKinds[what].draw(c, values, 0, setStream(stream, 11, 7, i, 0), like)),
      ).sort((a, b) => a - b);
      const density = (log: number): number => Math.exp(seenKinds[what].density(c, values, 0, { ...like, count: Math.exp(log) }));
      for (const chance of [0.1, 0.25, 0.5, 0.75, 0.9]) {
        const area = below(density, logs[Math.floor(chance * draws)]!);
        // Four standard errors of a share of so many draws.
        assert.ok(Math.abs(area - chance) < 4 * Math.sqrt((chance * (1 - chance)) / draws) + 0.004, `${what} ${chance}: ${area}`);
      }
    }
  });

  test(`E131 ${what}: a full box says "at least", and next to nothing says "little"`, () => {
    const few = plainParticle(c, 3000, 4000);
    const many = plainParticle(c, 30_000, 40_000);
    few[part.honeyKg] = 2;
    many[part.honeyKg] = 20;
    const atLeast = (values: Float64Array): number =>
      seenKinds[what].density(c, values, 0, { count: what === 'honeyKg' ? 10 : 15_000, atLeast: true });
    assert.ok(atLeast(many) > Math.log(0.4) && atLeast(few) < Math.log(0.1));
    const little = (values: Float64Array): number => seenKinds[what].density(c, values, 0, { count: 0 });
    assert.ok(little(few) > little(many));
    assert.ok(Number.isFinite(little(few)));
  });

  test(`E132 ${what}: the fewer combs were opened, the less a count tells`, () => {
    const values = plainParticle(c);
    const odd = { count: what === 'honeyKg' ? 0.8 : 1500 };
    const whole = seenKinds[what].density(c, values, 0, odd);
    const part3 = seenKinds[what].density(c, values, 0, { count: odd.count * 0.3, share: 0.3 });
    assert.ok(part3 > whole);
  });

  test(`E166 ${what}: what was filled in as expected tells little, and the more of it the less`, () => {
    const near = plainParticle(c);
    const odd = { count: what === 'honeyKg' ? 0.8 : 1500 };
    const [none, half, all] = [0, 0.5, 1].map((asExpected) => seenKinds[what].density(c, near, 0, { ...odd, asExpected }));
    assert.ok(none! < half! && half! < all!);
    // A colony a half larger: a careful count tells them apart, one that was filled in hardly.
    const larger = plainParticle(c, 18_000, 18_000);
    larger[part.honeyKg] = 1.5 * near[part.honeyKg]!;
    const count = seenKinds[what].draw(c, near, 0, newStream(5, 0, 0, 0), { count: 0 });
    const apart = (asExpected: number): number => {
      const by = (values: Float64Array): number => seenKinds[what].density(c, values, 0, { count, asExpected });
      return Math.abs(by(near) - by(larger));
    };
    assert.ok(apart(1) < apart(0) / 3, `${apart(1)} of ${apart(0)}`);
  });
}

test('E133 eggs seen and none seen are all there is, and cells are counted with chances that sum to 1', () => {
  const values = plainParticle(c);
  for (const share of [0, 0.3, 1]) {
    const seen = Math.exp(broodLooked.density(c, values, 0, { eggs: 'seen', youngest: null, share }));
    const none = Math.exp(broodLooked.density(c, values, 0, { eggs: 'none seen', youngest: null, share }));
    assert.ok(Math.abs(seen + none - 1) < 1e-9);
    const met = Math.exp(queenMet.density(c, values, 0, { seen: true, share }));
    const unmet = Math.exp(queenMet.density(c, values, 0, { seen: false, share }));
    assert.ok(Math.abs(met + unmet - 1) < 1e-9);
  }
  values[part.queen] = chainStates.findIndex(({ name }) => name === 'supersedure cells open');
  let sum = 0;
  for (let open = 0; open < 25; open += 1)
    for (let sealed = 0; sealed < 8; sealed += 1)
      for (let torn = 0; torn < 8; torn += 1)
        for (let emerged = 0; emerged < 8; emerged += 1)
          sum += Math.exp(cellsLooked.density(c, values, 0, { cells: { open, sealed, torn, emerged }, share: 0.7 }));
  assert.ok(sum > 0.97 && sum < 1.01, `${sum}`);
});

test('E134 cells are drawn about what the state has on that day', () => {
  const values = plainParticle(c);
  const stream = newStream(1, 0, 0, 0);
  for (const [state, { name }] of chainStates.entries()) {
    values[part.queen] = state;
    values[part.queenDays] = 4;
    const sums = cellKinds.map(() => 0);
    const times = 4000;
    for (let i = 0; i < times; i += 1) {
      drawnCells(c, values, 0, 1, setStream(stream, 1, 2, i, state)).forEach((count, kind) => (sums[kind]! += count));
    }
    cellKinds.forEach((kind, k) => {
      const mean = c.looks.cells[state]![4 * cellKinds.length + k]! * c.looks.cellSeen + c.looks.slip;
      const sd = Math.sqrt((mean + mean ** 2 / c.looks.shape) / times);
      assert.ok(Math.abs(sums[k]! / times - mean) < 4.5 * sd, `${name} ${kind}: ${sums[k]! / times}, not ${mean}`);
    });
  }
});

test('E135 nobody is sure of what a look says: no particle is ruled out by a single note', () => {
  const values = plainParticle(c);
  values[part.queen] = chainStates.findIndex(({ name }) => name === 'none');
  values.fill(0, part.combMost + 1);
  const seen = broodLooked.density(c, values, 0, { eggs: 'seen', youngest: 'egg', share: 1 });
  const many = cellsLooked.density(c, values, 0, { cells: { open: 9, sealed: 3, torn: 0, emerged: 0 }, share: 1 });
  assert.ok(Number.isFinite(seen) && Number.isFinite(many));
});

test('E136 looks from outside are told with chances that sum to 1, and brood and bees speak in them', () => {
  const full = plainParticle(c, 20_000, 20_000);
  const poor = plainParticle(c, 1500, 0);
  for (const values of [full, poor]) {
    const flights = (['none', 'few', 'many'] as const).map((flight) => Math.exp(flightSeen.density(c, values, 0, { flight })));
    assert.ok(Math.abs(flights.reduce((a, b) => a + b, 0) - 1) < 1e-9);
    for (const kind of [pollenSeen, buildingSeen]) {
      const both = [true, false].map((seen) => Math.exp(kind.density(c, values, 0, { seen, day: may })));
      assert.ok(Math.abs(both[0]! + both[1]! - 1) < 1e-9);
    }
  }
  const pollen = (values: Float64Array): number => pollenSeen.density(c, values, 0, { seen: true, day: may });
  const many = (values: Float64Array): number => flightSeen.density(c, values, 0, { flight: 'many' });
  assert.ok(pollen(full) > pollen(poor) && many(full) > many(poor));
  full[part.combMost] = full[part.comb]!;
  assert.ok(buildingSeen.density(c, full, 0, { seen: true, day: may }) < Math.log(0.11));
});
