/** What every look must satisfy: its outcomes sum to 1, where nothing was looked at it says nothing, and a fuller search tells more. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { printedBook } from '../../figures/book.ts';
import { queenChain } from './chain.ts';
import { broodSince, broodTables } from './brood-since.ts';
import { cellKinds } from './cells-there.ts';
import { sinceMost } from './filter.ts';
import { broodLogDensity, countLogChance, emptyLook, lookLogDensity, seenConstants, stageThere, stages } from './seen.ts';
import { chainStates, stateIndex } from './states.ts';

const chain = queenChain(printedBook);
const seen = seenConstants(chain, printedBook);
const brood = broodTables(printedBook);
const chance = fc.double({ min: 0, max: 1, noNaN: true });
const there = fc.record({ egg: chance, larva: chance, sealed: chance });
const place = fc.record({
  state: fc.nat(chainStates.length - 1),
  daysIn: fc.nat(30),
  since: fc.nat(sinceMost),
});

test('E48 eggs and youngest stage together have chances that sum to 1, and so has each alone', () => {
  fc.assert(
    fc.property(there, chance, (brood, share) => {
      const sum = (
        eggs: readonly ('seen' | 'none seen' | 'not looked')[],
        of: readonly ((typeof stages)[number] | null)[],
      ): number =>
        eggs
          .flatMap((egg) => of.map((stage) => Math.exp(broodLogDensity(seen, brood, egg, stage, share))))
          .reduce((a, b) => a + b, 0);
      assert.ok(Math.abs(sum(['seen', 'none seen'], stages) - 1) < 1e-12);
      assert.ok(Math.abs(sum(['seen', 'none seen'], [null]) - 1) < 1e-12);
      assert.ok(Math.abs(sum(['not looked'], stages) - 1) < 1e-12);
    }),
    { seed: 401 },
  );
});

test('E48 counts of cells have chances that sum to 1 and the mean they were given', () => {
  for (const mean of [0.01, 0.7, 3, 9]) {
    const chances = Array.from({ length: 400 }, (_, count) => Math.exp(countLogChance(count, mean, 2)));
    assert.ok(Math.abs(chances.reduce((a, b) => a + b, 0) - 1) < 1e-9);
    assert.ok(Math.abs(chances.reduce((sum, one, count) => sum + one * count, 0) - mean) < 1e-6);
  }
  // Shape 2, mean 2: p = 1/2; none 1/4, one 1/4, two 3/16.
  assert.deepEqual(
    [0, 1, 2].map((count) => Math.round(1e9 * Math.exp(countLogChance(count, 2, 2)))),
    [250000000, 250000000, 187500000],
  );
});

test('E49 a look that looked at nothing says nothing, and no note is ever impossible', () => {
  fc.assert(
    fc.property(
      place,
      fc.record({
        eggs: fc.constantFrom('seen' as const, 'none seen' as const, 'not looked' as const),
        youngest: fc.constantFrom(...stages, null),
        cells: fc.option(fc.record({ open: fc.nat(40), sealed: fc.nat(40), torn: fc.nat(40), emerged: fc.nat(40) })),
        queenSeen: fc.option(fc.boolean()),
        shareLooked: chance,
        cellShare: chance,
        manyEggs: fc.option(fc.boolean()),
        domedCaps: fc.option(fc.boolean()),
      }),
      ({ state, daysIn, since }, look) => {
        const brooded = broodSince(brood, state, daysIn, since);
        assert.ok([brooded.egg, brooded.larva, brooded.sealed].every((one) => one >= 0 && one <= 1));
        assert.equal(lookLogDensity(seen, state, daysIn, brooded, emptyLook), 0);
        const log = lookLogDensity(seen, state, daysIn, brooded, look);
        assert.ok(Number.isFinite(log) && log < 0.01, `${log}`);
      },
    ),
    { seed: 402 },
  );
});

test('E50 eggs not seen count for less the less was looked at, and where nothing was looked at for next to nothing', () => {
  const laying = broodSince(brood, stateIndex.laying, 0, 0);
  const gone = broodSince(brood, stateIndex.none, 20, 20);
  const tells = (share: number): number =>
    broodLogDensity(seen, gone, 'none seen', null, share) - broodLogDensity(seen, laying, 'none seen', null, share);
  const told = [0, 0.2, 0.5, 0.8, 1].map(tells);
  told.slice(1).forEach((one, index) => assert.ok(one > told[index]!));
  assert.equal(tells(0), 0);
  assert.ok(stageThere(seen, 0) === 0 && stageThere(seen, 50) > 0.6 && stageThere(seen, 5000) > 0.999);
});

test('E51 brood grows old by the calendar: eggs for three days, larvae for nine, sealed brood for three weeks after the last egg', () => {
  const at = (since: number) => broodSince(brood, stateIndex.none, 0, since);
  assert.deepEqual(at(2), { egg: 1, larva: 1, sealed: 1 });
  assert.ok(at(3).egg === 0.5 && at(4).egg === 0);
  assert.ok(at(7).larva === 1 && at(10).larva === 0);
  assert.ok(at(18).sealed === 1 && at(23).sealed === 0);
  const begins = (daysIn: number) => broodSince(brood, stateIndex['new queen laying'], daysIn, 0);
  assert.deepEqual(begins(0), { egg: 1, larva: 0, sealed: 0 });
  assert.deepEqual(begins(12), { egg: 1, larva: 1, sealed: 1 });
});

test('E52 cells are where their states say: open, then sealed, torn and left beside a virgin, none with a laying queen', () => {
  const mean = (name: keyof typeof stateIndex, day: number, kind: (typeof cellKinds)[number]): number =>
    seen.cells[stateIndex[name]]![day * cellKinds.length + cellKinds.indexOf(kind)]!;
  assert.equal(mean('laying', 0, 'open'), 0);
  assert.equal(mean('orphaned', 0, 'open'), 0);
  assert.ok(mean('swarm cells open', 6, 'open') > 4 && mean('swarm cells open', 6, 'sealed') === 0);
  assert.ok(mean('swarm cells sealed', 0, 'sealed') > 1 && mean('swarm cells sealed', 0, 'open') > 4);
  assert.ok(mean('swarmed', 6, 'sealed') === 10 && mean('swarmed', 6, 'open') === 0);
  assert.ok(mean('virgin', 0, 'emerged') === 1 && mean('virgin', 0, 'torn') > 4 && mean('virgin', 15, 'torn') < 2);
  assert.ok(mean('supersedure cells open', 5, 'open') === 2);
});
