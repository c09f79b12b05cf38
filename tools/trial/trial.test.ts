/** What the closed loop promises: worlds that live the same for the same seed, acts that work, differences as worked by hand. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newStream } from '../../src/numbers/streams.ts';
import { binomial, poisson } from './binomial.ts';
import { gatesOf } from './gates.ts';
import { type Act, seasonDays, type TrialWorld } from './hive.ts';
import { actsOn, newMemory, signsOf } from './keeper.ts';
import { every, never, type Policy, simpleRule } from './policies.ts';
import { type Opening, readOpening } from './reader.ts';
import { liveSeason } from './season.ts';
import { pairedDifference, type Tally } from './tally.ts';
import { liveSeasons, tableOf, trialWorld, worldNames } from './trial.ts';

const plain: Opening = {
  bees: 10_000,
  sealed: 9000,
  open: 6000,
  honeyKg: 8,
  built: 60_000,
  most: 90_000,
  eggs: 'seen',
  youngest: 'egg',
  cells: { open: 0, sealed: 0, torn: 0, emerged: 0 },
  queenSeen: false,
  dronesOnly: false,
};

const kinds = (opening: Partial<Opening>, day = 50, memory = newMemory): string[] =>
  actsOn(memory, day, { ...plain, ...opening }, 1).acts.map(({ kind }) => kind);

function lived(world: TrialWorld, seed: number, days: number): unknown {
  const hive = world.begin(seed);
  for (let day = 0; day < days; day += 1) world.live(hive, day);
  return hive;
}

for (const name of worldNames) {
  const world = trialWorld(name);

  test(`E70 ${name}: the same seed gives the same season, another seed another`, () => {
    const policies = [every(7), simpleRule];
    assert.deepEqual(liveSeason(world, policies, 3), liveSeason(world, policies, 3));
    assert.notDeepEqual(world.truth(lived(world, 3, 40), 40), world.truth(lived(world, 4, 40), 40));
  });

  test(`E71 ${name}: a policy lives the same alone as beside others`, () => {
    const [together] = liveSeason(world, [every(10), every(7), never], 5);
    assert.deepEqual(together, liveSeason(world, [every(10)], 5)[0]);
  });

  test(`E73 ${name}: fed hives weigh more, bars give room, relieved ones have fewer bees and no cells`, () => {
    const [plainHive, acted] = [lived(world, 8, 60), lived(world, 8, 60)];
    const acts: readonly Act[] = [
      { kind: 'relieve', holds: true },
      { kind: 'bars', bars: 2 },
      { kind: 'feed', kg: 4 },
    ];
    const before = world.truth(plainHive, 60);
    for (const act of acts) world.act(acted, 60, act);
    const after = world.truth(acted, 60);
    assert.ok(after.bees < 0.75 * before.bees && after.bees > 0.45 * before.bees);
    assert.ok(after.most >= before.most && after.cells.every(({ what }) => what !== 'open' && what !== 'sealed'));
    // In spring there is room for what is fed.
    const [fed, unfed] = [lived(world, 8, 15), lived(world, 8, 15)];
    world.act(fed, 15, { kind: 'feed', kg: 4 });
    for (let day = 15; day < 27; day += 1) for (const hive of [fed, unfed]) world.live(hive, day);
    assert.ok(world.truth(fed, 26).honeyKg > world.truth(unfed, 26).honeyKg + 2);
  });
}

test('E72 who never opens has the most swarms; who looks each week has fewer', () => {
  const world = trialWorld('stages');
  const swarms = liveSeasons(world, [never, every(14), every(7)], 0, 150).reduce(
    (sums, season) => sums.map((sum, i) => sum + season[i]!.swarms),
    [0, 0, 0],
  );
  assert.ok(swarms[0]! > swarms[1]! && swarms[1]! > swarms[2]!, `${swarms.join(' ')}`);
});

test('E74 the keeper acts by what was seen: cells relieved in season, hunger fed, a crowd given bars, no eggs waited for', () => {
  assert.deepEqual(kinds({}), []);
  const cells = { ...plain.cells, open: 3 };
  assert.deepEqual(kinds({ cells }), ['relieve']);
  assert.deepEqual(kinds({ cells }, 120), []);
  assert.deepEqual(kinds({ cells, eggs: 'none seen' }), []);
  assert.deepEqual(kinds({ honeyKg: 4.9 }), ['feed']);
  assert.deepEqual(kinds({ bees: 15_100 }), ['bars']);
  assert.deepEqual(kinds({ bees: 15_100 }, 120), []);
  const first = actsOn(newMemory, 50, { ...plain, eggs: 'none seen' }, 1);
  assert.deepEqual(first.acts, []);
  assert.deepEqual(kinds({ eggs: 'none seen' }, 56, first.memory), []);
  assert.deepEqual(kinds({ eggs: 'none seen' }, 57, first.memory), ['give queen']);
  const withCells = actsOn(newMemory, 50, { ...plain, eggs: 'none seen', cells: { ...plain.cells, emerged: 1 } }, 1);
  assert.deepEqual(kinds({ eggs: 'none seen' }, 57, withCells.memory), []);
  assert.deepEqual(kinds({ eggs: 'none seen' }, 71, withCells.memory), ['give queen']);
});

test('E75 the rule opens after 7 days on a crowd, cells or no eggs, after 14 on little food, else after 21', () => {
  const gap = (opening: Partial<Opening>): number => {
    const { memory } = actsOn(newMemory, 50, { ...plain, ...opening }, 1);
    const chooser = simpleRule.begin(1);
    return Array.from({ length: 40 }, (_, i) => i + 1).find((days) => chooser.opens(50 + days, memory))!;
  };
  assert.equal(gap({}), 21);
  assert.equal(gap({ honeyKg: 4 }), 14);
  assert.equal(gap({ honeyKg: 4, bees: 15_100 }), 7);
  assert.equal(gap({ eggs: 'none seen' }), 7);
  assert.equal(gap({ cells: { ...plain.cells, sealed: 1 } }), 7);
  assert.equal(signsOf({ ...plain, built: 81_100 }, 50).crowded, true);
});

test('E76 a reader errs about the truth, misses cells, and reads the same on the same day', () => {
  const truth = {
    bees: 12_000,
    eggs: 3000,
    larvae: 5000,
    sealed: 9000,
    honeyKg: 10,
    built: 60_000,
    most: 80_000,
    cells: [4, 5, 6, 7].map((age) => ({ what: 'open' as const, age })),
    queenHere: true,
    queenYoung: false,
    dronesOnly: false,
  };
  const read = Array.from({ length: 600 }, (_, seed) => readOpening(truth, seed, 40));
  assert.deepEqual(read[7], readOpening(truth, 7, 40));
  const mean = (of: (one: Opening) => number): number => read.reduce((sum, one) => sum + of(one), 0) / read.length;
  assert.ok(Math.abs(mean(({ bees }) => Math.log(bees / truth.bees))) < 0.04);
  const [most, fewest] = [mean(({ cells }) => cells.open), mean(({ eggs }) => Number(eggs === 'seen'))];
  assert.ok(most > 2.7 && most < 3.3 && fewest > 0.9 && fewest < 0.98);
  const eggsOnly = readOpening({ ...truth, cells: [{ what: 'open', age: 2 }] }, 7, 40);
  assert.equal(eggsOnly.cells.open, 0);
});

test('E77 paired differences are those worked by hand', () => {
  const { mean, se, lo95, hi95 } = pairedDifference([1, 0, 2, 1], [0, 0, 1, 1]);
  // Differences 1 0 1 0: mean .5, variance 1/3, error of the mean √(1/12).
  assert.equal(mean, 0.5);
  assert.ok(Math.abs(se - 0.288675) < 1e-6);
  assert.ok(Math.abs(lo95 + 0.065793) < 1e-5 && Math.abs(hi95 - 1.065793) < 1e-5);
});

test('E78 the gates are read off the table: shares of openings, upper ends of differences', () => {
  const of = (openings: number, swarms: number): Tally => ({ openings, swarms, starvations: 0, notLaying: 0 });
  const seasons = Array.from({ length: 4 }, () => [of(20, 0), of(15, 0), of(12, 0)]);
  const names = ['every 7 days', 'simple rule', 'festoon'].map((name) => ({ name }));
  const met = gatesOf(tableOf('some', names, [0, 1], seasons));
  assert.equal(met.length, 6);
  assert.ok(met.every((gate) => gate.met));
  const worse = seasons.map((season) => [...season.slice(0, 2), of(14, 1)]);
  const gates = gatesOf(tableOf('some', names, [0, 1], worse));
  assert.deepEqual(
    gates.map((gate) => gate.met),
    [true, false, true, false, false, true],
  );
});

test('E79 whole numbers by chance have mean and spread of their law, and stay in their bounds', () => {
  for (const [n, p] of [
    [8, 0.3],
    [400, 0.6],
    [5000, 0.002],
  ] as const) {
    const draws = Array.from({ length: 4000 }, (_, i) => binomial(n, p, newStream(5, 1, i, n)));
    const mean = draws.reduce((a, b) => a + b, 0) / draws.length;
    const spread = Math.sqrt(n * p * (1 - p));
    assert.ok(Math.abs(mean - n * p) < (4 * spread) / Math.sqrt(draws.length) && draws.every((k) => k >= 0 && k <= n));
  }
  const rare = Array.from({ length: 4000 }, (_, i) => poisson(1.5, newStream(6, 1, i, 0)));
  assert.ok(Math.abs(rare.reduce((a, b) => a + b, 0) / rare.length - 1.5) < 0.08);
});

test('E71 a season has its days, and openings are at least as far apart as the calendar says', () => {
  const days: number[] = [];
  const watched: Policy = {
    name: 'watched',
    begin: (seed) => {
      const inner = every(10).begin(seed);
      return { ...inner, opened: (day) => void days.push(day) };
    },
  };
  const [tally] = liveSeason(trialWorld('stages'), [watched], 2);
  assert.equal(tally!.openings, days.length);
  assert.ok(days.every((day, i) => day < seasonDays && (i === 0 || day - days[i - 1]! >= 10)));
});
