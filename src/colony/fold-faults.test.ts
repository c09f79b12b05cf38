/** What does not fit, kind by kind: the fault it makes, and that nothing else changes. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { type BarSeen, reading, sampleYard, type SampleYard } from './for-tests.ts';

const day = '2014-05-01';
const window = (earliest: string, latest = earliest) => ({ earliest, latest });

function faultsOf(make: (yard: SampleYard, hive: string, colony: string) => unknown): readonly string[] {
  const yard = sampleYard();
  const hive = yard.hive(day);
  const colony = yard.colony(day, hive);
  make(yard, hive, colony);
  const { faults } = yard.fold();
  for (const fault of faults)
    assert.ok(fault.entry !== undefined && fault.path !== '' && fault.expected !== '', JSON.stringify(fault));
  return faults.map((fault) => fault.code);
}
const read = (
  yard: SampleYard,
  hive: string,
  place: number,
  seen: BarSeen = {},
  visit = yard.id(),
  on = '2014-05-10T14:00',
): string => {
  yard.add('reading', on, reading(visit, hive, place, seen), seen.by);
  return visit;
};

test('C20 what is named must be there: hive, colony, comb, queen, figure', () => {
  const none = '00000000-0000-7000-8000-ffffffffffff';
  assert.deepEqual(
    faultsOf((yard) => read(yard, none, 1)),
    ['unknown-hive'],
  );
  assert.deepEqual(
    faultsOf((yard) => yard.add('feeding', day, { colony: none, what: 'candy', amount: null })),
    ['unknown-colony'],
  );
  assert.deepEqual(
    faultsOf((yard, hive) => yard.add('placing', day, { comb: none, to: { kind: 'place', hive, place: 1, facing: 'as built' } })),
    ['unknown-comb'],
  );
  assert.deepEqual(
    faultsOf((yard, _, colony) =>
      yard.add('reign', day, { colony, queen: none, change: { kind: 'began', how: 'found', window: null } }),
    ),
    ['unknown-queen'],
  );
  assert.deepEqual(
    faultsOf((yard) => yard.add('figure-override', day, { figure: 'no-such', value: 1, low: 1, high: 1, why: '' })),
    ['unknown-figure'],
  );
});

test('C21 a bar that is not there cannot be read, and a face holds no more than eight eighths', () => {
  assert.deepEqual(
    faultsOf((yard, hive) => read(yard, hive, 13)),
    ['place-beyond-trough'],
  );
  assert.deepEqual(
    faultsOf((yard, hive) => read(yard, hive, 1, { brood: 5, food: 3.5 })),
    ['eighths-above-eight'],
  );
  assert.deepEqual(
    faultsOf((yard, hive) => read(yard, hive, 1, { brood: 2, face: { drone8: 3 } })),
    ['part-above-whole'],
  );
  const yard = sampleYard();
  const hive = yard.hive(day);
  yard.colony(day, hive);
  yard.add('reading', '2014-05-10', {
    ...reading(yard.id(), hive, 1, {}),
    faces: [
      { face: 'both', brood8: 1, food8: 1 },
      { face: 'toward last', brood8: 1, food8: 1 },
    ],
  });
  assert.deepEqual(
    yard.fold().faults.map((fault) => fault.code),
    ['face-twice'],
  );
});

test('C22 a comb hangs in one place, and a place holds one comb', () => {
  assert.deepEqual(
    faultsOf((yard, hive) => {
      const comb = yard.id();
      const visit = read(yard, hive, 1, { comb, brood: 2 });
      read(yard, hive, 2, { comb, brood: 2 }, visit);
    }),
    ['comb-in-two-places'],
  );
  assert.deepEqual(
    faultsOf((yard, hive) => {
      const visit = read(yard, hive, 1, { comb: yard.id(), brood: 2 });
      read(yard, hive, 1, { comb: yard.id(), brood: 2 }, visit);
    }),
    ['place-occupied'],
  );
  assert.deepEqual(
    faultsOf((yard, hive) => {
      const [a, b] = [yard.id(), yard.id()];
      for (const comb of [a, b]) yard.add('comb', day, { comb, built8: 8 });
      for (const comb of [a, b]) yard.add('placing', day, { comb, to: { kind: 'place', hive, place: 3, facing: 'as built' } });
    }),
    ['place-occupied'],
  );
});

test('C23 two colonies do not live in one bay, unless the first has ended', () => {
  assert.deepEqual(
    faultsOf((yard, hive) => yard.colony('2014-05-03', hive)),
    ['bay-occupied'],
  );
  assert.deepEqual(
    faultsOf((yard, hive, colony) => {
      yard.add('colony-ended', '2014-05-02', { colony, how: 'died', window: window('2014-05-02') });
      yard.colony('2014-05-03', hive);
    }),
    [],
  );
  assert.deepEqual(
    faultsOf((yard, hive) => yard.add('bay', day, { bay: yard.id(), hive, from: 3, to: 5 })),
    ['bays-overlap'],
  );
});

test('C24 a colony that has ended is not visited, read or fed', () => {
  const ended = (yard: SampleYard, colony: string): void => {
    yard.add('colony-ended', '2014-05-05', { colony, how: 'died', window: window('2014-05-02', '2014-05-06') });
  };
  assert.deepEqual(
    faultsOf((yard, hive, colony) => {
      ended(yard, colony);
      yard.visit('2014-05-10', colony, hive, { 1: { brood: 1 } });
    }),
    ['colony-ended', 'colony-ended'],
  );
  assert.deepEqual(
    faultsOf((yard, _, colony) => {
      ended(yard, colony);
      yard.add('feeding', '2014-05-10', { colony, what: 'candy', amount: null });
    }),
    ['colony-ended'],
  );
  assert.deepEqual(
    faultsOf((yard, hive, colony) => {
      ended(yard, colony);
      yard.visit('2014-05-06', colony, hive, { 1: { brood: 1 } });
    }),
    [],
    'on the last day it may still have lived',
  );
});

test('C25 dates that cannot be: a window backwards, an end before the beginning, a visit on two days', () => {
  assert.deepEqual(
    faultsOf((yard, _, colony) =>
      yard.add('colony-ended', '2014-05-05', { colony, how: 'died', window: window('2014-05-06', '2014-05-02') }),
    ),
    ['window-order'],
  );
  assert.deepEqual(
    faultsOf((yard, _, colony) => yard.add('colony-ended', '2014-05-05', { colony, how: 'died', window: window('2013-01-01') })),
    ['ended-before-begun'],
  );
  assert.deepEqual(
    faultsOf((yard, hive) => {
      const visit = read(yard, hive, 1);
      read(yard, hive, 2, {}, visit, '2014-05-11');
    }),
    ['visit-on-two-days'],
  );
  assert.deepEqual(
    faultsOf((yard, hive, colony) =>
      yard.visit('2014-05-10', colony, hive, {}, { began: '2014-05-10T14:00', ended: '2014-05-10T13:00' }),
    ),
    ['ended-before-begun'],
  );
});

test('C26 figures and measurements: ends in order, a unit that fits, a number above nothing', () => {
  const override = (value: number, low: number, high: number) => ({
    figure: 'bees-per-dm2',
    value,
    low,
    high,
    why: '',
  });
  assert.deepEqual(
    faultsOf((yard) => yard.add('figure-override', day, override(100, 110, 120))),
    ['range-order'],
  );
  assert.deepEqual(
    faultsOf((yard) => yard.add('figure-override', day, override(100, -1, 120))),
    ['value-negative'],
  );
  assert.deepEqual(
    faultsOf((yard) => yard.add('measurement', day, { what: 'honey comb weight', typed: { value: 2, unit: 'cells' } })),
    ['unit-does-not-fit'],
  );
  assert.deepEqual(
    faultsOf((yard) => yard.add('measurement', day, { what: 'cells along 10 cm', typed: { value: 0, unit: 'cells' } })),
    ['value-not-positive'],
  );
  assert.deepEqual(
    faultsOf((yard) => yard.add('day-weather', day, { low: { value: 70, unit: 'degF' }, high: { value: 12, unit: 'degC' } })),
    ['low-above-high'],
  );
});

test('C27 a visit is closed once, by one colony in its own hive, and the follower stays in the trough', () => {
  const twice = faultsOf((yard, hive, colony) => {
    const visit = yard.visit('2014-05-10', colony, hive, { 1: { brood: 1 } });
    yard.visit('2014-05-10', colony, hive, {}, { visit });
  });
  assert.deepEqual(twice, ['visit-closed-twice']);
  assert.deepEqual(
    faultsOf((yard, hive, colony) => yard.visit('2014-05-10', colony, hive, {}, { followerAfter: 20 })),
    ['place-beyond-trough'],
  );
  assert.deepEqual(
    faultsOf((yard, hive, colony) => yard.visit('2014-05-10', colony, hive, {}, { given: [4], taken: [4] })),
    ['given-and-taken'],
  );
  assert.deepEqual(
    faultsOf((yard, _, colony) => {
      const other = yard.hive(day);
      yard.visit('2014-05-10', colony, other, {});
    }),
    ['colony-elsewhere'],
  );
});

test('C28 a fault leaves the state as if the entry were not there', () => {
  const bad = sampleYard();
  const hive = bad.hive(day);
  const colony = bad.colony(day, hive);
  bad.visit('2014-05-10', colony, hive, { 1: { brood: 2, eggs: 'seen' }, 2: { brood: 3 } });
  const before = JSON.stringify([...bad.fold().draft.visits.values()]);
  const combs = JSON.stringify([...bad.fold().draft.combs.values()]);
  read(bad, hive, 40, {}, bad.id(), '2014-05-11');
  bad.colony('2014-05-12', hive);
  bad.visit('2014-05-13', colony, hive, {}, { followerAfter: 60, taken: [1] });
  const { draft, faults } = bad.fold();
  assert.equal(faults.length, 3);
  assert.equal(JSON.stringify([...draft.visits.values()]), before);
  assert.equal(JSON.stringify([...draft.combs.values()]), combs);
  assert.equal(draft.colonies.size, 1);
});
