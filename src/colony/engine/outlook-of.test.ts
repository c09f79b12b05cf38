/** Where what the model tells takes the place of the plain rules, and where it does not. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook, value } from '../../figures/book.ts';
import { windowOf } from '../../numbers/window.ts';
import type { DayBelief, Foreseen } from '../foreseen.ts';
import { madeUpDay, madeUpForeseen } from '../foreseen.contract.ts';
import { type BarSeen, type SampleYard, sampleYard } from '../for-tests.ts';
import { queenStates, type QueenState } from '../queen-state.ts';
import type { ColonyView } from '../view.ts';
import { viewOf } from '../view-of.ts';
import { layingChanceOf, modelOutlook } from './outlook-of.ts';

const brood: BarSeen = { brood: 4, food: 2, eggs: 'seen', cellsLooked: 'none seen' };

function yardWith(visitOn: string, face: BarSeen['face'] = {}): { yard: SampleYard; colony: string } {
  const yard = sampleYard();
  const hive = yard.hive('2014-04-01');
  const colony = yard.colony('2014-04-01', hive);
  yard.visit(visitOn, colony, hive, { 1: { ...brood, face }, 2: { ...brood, face } });
  return { yard, colony };
}

function view(yard: SampleYard, colony: string, foreseen: Foreseen | null, day = madeUpDay): ColonyView {
  const told = new Map(foreseen === null ? [] : [[colony, foreseen] as const]);
  return viewOf(yard.fold(day).draft, colony, day, printedBook, modelOutlook(told));
}

function told(colony: string, state: QueenState, chance: number, more: Partial<Foreseen['queen']> = {}): Foreseen {
  const made = madeUpForeseen(colony);
  const rest = queenStates.filter((one) => one !== state).map((one) => ({ state: one, chance: (1 - chance) / 8 }));
  return { ...made, queen: { ...made.queen, states: [{ state, chance }, ...rest], ...more } };
}

test('E116 bees, laying and the days of the queen are the model’s, and add up as all sums do', () => {
  const { yard, colony } = yardWith('2014-04-20');
  const foreseen = told(colony, 'virgin', 0.8);
  const found = view(yard, colony, foreseen);
  const today = foreseen.line.find((row) => row.day === madeUpDay && row.when !== 'ahead' && row.when !== 'before the visit');
  assert.ok(today);
  assert.deepEqual(found.totals.adults, {
    seen: { low: 0, likely: 0, high: 0 },
    carried: today.values.bees,
    total: today.values.bees,
    ink: 'worked out',
  });
  assert.deepEqual(found.layingPerDay, today.values.laidPerDay);
  assert.equal(found.queen.state, 'virgin');
  assert.equal(found.queen.nextTelling, foreseen.queen.nextTelling);
  assert.deepEqual(found.queen.virginDays, foreseen.queen.harmful.find(({ why }) => why === 'virgin')?.window);
  assert.equal(found.foreseen, foreseen);
});

test('E117 a count of the day stands as it was made; a state that does not stand out leaves the plain one', () => {
  const { yard, colony } = yardWith(madeUpDay, { bees8: 6 });
  const plain = view(yard, colony, null);
  const unsure = told(colony, 'none', value(printedBook, 'queen-told-chance') - 0.01, { harmful: [] });
  const found = view(yard, colony, unsure);
  assert.deepEqual(found.totals.adults, plain.totals.adults);
  assert.equal(found.queen.state, plain.queen.state);
  assert.equal(found.queen.virginDays, null);
  assert.equal(view(yard, colony, told(colony, 'none', value(printedBook, 'queen-told-chance'))).queen.state, 'none');
});

test('E118 what was told of another day, or of nobody, leaves the view as the plain rules make it', () => {
  const { yard, colony } = yardWith('2014-04-20');
  const plain = viewOf(yard.fold('2014-05-20').draft, colony, '2014-05-20', printedBook);
  assert.deepEqual(view(yard, colony, told(colony, 'virgin', 0.9), '2014-05-20'), plain);
  assert.deepEqual(view(yard, colony, null, '2014-05-20'), plain);
  assert.equal(plain.foreseen, null);
});

test('E119 combs left shut are carried on by the chance that she lays, as far as two ranges tell it', () => {
  const row = (low: number, innerLow: number, likely: number, innerHigh: number, high: number): DayBelief => {
    const [first] = madeUpForeseen().line;
    assert.ok(first);
    return {
      ...first,
      values: { ...first.values, laidPerDay: { low, likely, high } },
      half: { ...first.half, laidPerDay: { low: innerLow, likely, high: innerHigh } },
    };
  };
  assert.equal(layingChanceOf(row(1, 2, 3, 4, 5)), 1);
  assert.equal(layingChanceOf(row(0, 0, 0, 0, 0)), 0);
  const falling = [row(0, 2, 3, 4, 5), row(0, 0, 3, 4, 5), row(0, 0, 0, 4, 5), row(0, 0, 0, 0, 5)].map(layingChanceOf);
  assert.deepEqual(
    falling.map((chance) => Math.round(1000 * chance)),
    [825, 625, 375, 175],
  );
  const { yard, colony } = yardWith('2014-05-01');
  const idle = { ...madeUpForeseen(colony) };
  const none = idle.line.map((one) => ({
    ...one,
    values: { ...one.values, laidPerDay: { low: 0, likely: 0, high: 0 } },
    half: { ...one.half, laidPerDay: { low: 0, likely: 0, high: 0 } },
  }));
  const paused = view(yard, colony, {
    ...idle,
    line: none,
    queen: { ...idle.queen, harmful: [{ window: windowOf(madeUpDay), why: 'virgin' }] },
  });
  assert.equal(paused.totals.egg.total.likely, 0);
  assert.ok(view(yard, colony, null).totals.egg.total.likely > 0);
});
