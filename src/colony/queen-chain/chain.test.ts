/** The chain of the queen's state: hand-worked days, what comes of a colony that is left alone, and that guiding stays exact. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../../figures/book.ts';
import { newStream, nextUnit } from '../../numbers/streams.ts';
import { arrivesAt, chainDay, guidedChainDay, layingShare, queenChain, wayChance } from './chain.ts';
import { hazardsOf, lastingBetween, lastingExactly, lastingSkewed, sharedHazards } from './durations.ts';
import { chainStates, reportedIndex, reportedStates, stateIndex } from './states.ts';
import { chainEvents } from './ways.ts';

const chain = queenChain(printedBook);
const mean = (lasting: readonly number[]): number => lasting.reduce((sum, chance, index) => sum + chance * (index + 1), 0);

test('E40 chances of how long a state lasts sum to 1, keep their ends, and their hazards give them back', () => {
  const lastings = [
    lastingBetween({ low: 7, likely: 8, high: 9 }),
    lastingSkewed({ low: 4, likely: 10.6, high: 22 }, 0.3),
    lastingExactly(21),
  ];
  for (const lasting of lastings) {
    assert.ok(Math.abs(lasting.reduce((a, b) => a + b, 0) - 1) < 1e-12);
    let left = 1;
    hazardsOf(lasting).forEach((hazard, day) => {
      assert.ok(Math.abs(left * hazard - lasting[day]!) < 1e-9);
      left *= 1 - hazard;
    });
    assert.ok(left < 1e-9);
  }
  assert.deepEqual(lastings[0]!.slice(0, 6), [0, 0, 0, 0, 0, 0]);
  // The triangle 7, 8, 9: one, two and one parts of four.
  assert.ok(Math.abs(lastings[0]![6]! - 0.25) < 1e-12 && Math.abs(lastings[0]![7]! - 0.5) < 1e-12);
});

test('E41 first eggs come 10.6 days after emergence, from 4 to 22, later than the middle more widely than sooner', () => {
  const eggs = lastingSkewed({ low: 4, likely: 10.6, high: 22 }, 0.3);
  assert.ok(Math.abs(mean(eggs) - 10.6) < 0.1, `${mean(eggs)}`);
  assert.equal(
    eggs.slice(0, 3).reduce((a, b) => a + b, 0),
    0,
  );
  assert.equal(eggs.length, 22);
  const third = eggs.reduce((sum, chance, index) => sum + chance * (index + 1 - 10.6) ** 3, 0);
  assert.ok(third > 0);
});

test('E40 ways that share a state leave it in the end in their own shares', () => {
  const lasting = lastingBetween({ low: 2, likely: 4, high: 10 });
  const [a, b] = sharedHazards([
    { chance: 0.8, lasting },
    { chance: 0.2, lasting: lastingExactly(6) },
  ]);
  let left = 1;
  let first = 0;
  for (let day = 0; day < 10; day += 1) {
    first += left * a![day]!;
    left *= 1 - a![day]! - b![day]!;
  }
  assert.ok(Math.abs(first - 0.8) < 1e-9 && left < 1e-9);
});

test('E42 every state says what it is, every way leads on, and the nine reported states are all reached', () => {
  assert.deepEqual(new Set(reportedIndex), new Set(reportedStates.keys()));
  for (const way of chain.ways) {
    assert.notEqual(way.from, way.to);
    assert.ok(chainEvents.includes(way.event) && way.hazardByDaysIn.length > 0);
    assert.ok(way.hazardByDaysIn.every((hazard) => hazard >= 0 && hazard <= 1));
  }
  chainStates.forEach(({ queenLays, queenHere, workersLay, dronesOnly }, state) => {
    assert.ok(!(queenLays && dronesOnly) && (queenHere || !queenLays) && (dronesOnly || !workersLay));
    assert.equal(layingShare(chain, state, 0) > 0, queenLays);
  });
});

test('E43 a day takes the way whose stretch of 0 to 1 the number falls in, and none beyond them', () => {
  const { laying } = stateIndex;
  const first = chain.firstWay[laying]!;
  const chance = wayChance(chain, first, 0, 1, 1, 1);
  assert.equal(chainDay(chain, laying, 0, 1, chance * 0.99), first);
  assert.equal(chainDay(chain, laying, 0, 1, chance * 1.01), first + 1);
  assert.equal(chainDay(chain, laying, 0, 1, 0.999), -1);
  assert.notEqual(chainDay(chain, laying, 0, 0, chance * 0.0001), first, 'without an urge nobody swarms');
});

test('E44 the weights of a guided day undo the guiding: each way keeps its chance', () => {
  const steps = 20000;
  for (const [state, daysIn] of [
    [stateIndex.laying, 5],
    [stateIndex['swarm cells open'], 7],
    [stateIndex.virgin, 11],
    [stateIndex.failing, 3],
  ] as const) {
    for (const boost of [1, 10, 1e6]) {
      const seen = new Map<number, number>();
      for (let i = 0; i < steps; i += 1) {
        const weight = Float64Array.of(0);
        const way = guidedChainDay(chain, state, daysIn, 0.7, (i + 0.5) / steps, boost, weight, 0.8, 1);
        seen.set(way, (seen.get(way) ?? 0) + Math.exp(weight[0]!) / steps);
      }
      let stay = 1;
      for (let way = chain.firstWay[state]!; way < chain.firstWay[state + 1]!; way += 1) {
        const chance = wayChance(chain, way, daysIn, 0.7, 0.8, 1);
        stay -= chance;
        assert.ok(Math.abs((seen.get(way) ?? 0) - chance) < 2 / steps, `${chainStates[state]!.name} way ${way} at ${boost}`);
      }
      assert.ok(Math.abs((seen.get(-1) ?? 0) - stay) < 3 / steps);
    }
  }
});

/** Follows one colony for so many days, with the drives of each day; hands back the events of its life. */
function live(seed: number, days: number, urge: (day: number) => number, from: number): { state: number; events: string[] } {
  const stream = newStream(seed, 1, 0, 0);
  const events: string[] = [];
  let state = from;
  let daysIn = 0;
  for (let day = 0; day < days; day += 1) {
    const way = chainDay(chain, state, daysIn, urge(day), nextUnit(stream));
    daysIn += 1;
    if (way === -1) continue;
    events.push(chain.ways[way]!.event);
    state = arrivesAt(chain, chain.to[way]!, 0);
    daysIn = 0;
  }
  return { state, events };
}

const colonies = 1500;
const share = (wanted: (life: ReturnType<typeof live>) => boolean, life: (seed: number) => ReturnType<typeof live>): number =>
  Array.from({ length: colonies }, (_, seed) => life(seed)).filter(wanted).length / colonies;

test('E45 of crowded colonies left alone through a season of fifty days a half to nine tenths swarm; without urge none', () => {
  const swarmed = share(
    ({ events }) => events.includes('swarm leaves'),
    (seed) => live(seed, 80, (day) => (day < 50 ? 1 : 0), stateIndex.laying),
  );
  assert.ok(swarmed > 0.5 && swarmed < 0.9, `${swarmed}`);
  assert.equal(
    share(
      ({ events }) => events.includes('swarm leaves'),
      (seed) => live(seed, 365, () => 0, stateIndex.laying),
    ),
    0,
  );
});

test('E46 of a hundred virgins 15 to 21 come to nothing; an orphaned colony has no eggs for 13 days, its answer by day 48', () => {
  const failed = share(
    ({ events }) => !events.includes('eggs begin'),
    (seed) => live(seed, 30, () => 0, stateIndex.virgin),
  );
  assert.ok(failed > 0.15 && failed < 0.21, `${failed}`);
  for (let seed = 0; seed < 300; seed += 1) {
    const sooner = live(seed, 13, () => 0, stateIndex.orphaned);
    const later = live(seed, 48, () => 0, stateIndex.orphaned);
    assert.ok(!sooner.events.includes('eggs begin'));
    const reported = reportedStates[reportedIndex[later.state]!]!;
    assert.ok(['new queen laying', 'none', 'laying workers', 'drone layer', 'laying'].includes(reported), reported);
  }
});

test('E47 an orphaned colony without young brood has no way back', () => {
  assert.equal(arrivesAt(chain, stateIndex.orphaned, 3), stateIndex.orphaned);
  assert.equal(arrivesAt(chain, stateIndex.orphaned, 7), stateIndex.none);
  assert.equal(arrivesAt(chain, stateIndex.virgin, 30), stateIndex.virgin);
});
