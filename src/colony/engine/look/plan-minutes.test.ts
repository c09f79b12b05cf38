/** What fits into the minutes: hand-worked, and what must hold of any plan. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { printedBook, value } from '../../../figures/book.ts';
import type { Look, Question } from '../../foreseen.ts';
import { lookConstants } from './look-constants.ts';
import { type Duty, type HiveLook, planForMinutes } from './plan-minutes.ts';

const c = lookConstants(printedBook);
const most = value(printedBook, 'visit-minutes');
const one = c.hiveMinutes + 2 * c.barMinutes;

type Asked = Look['questions'][number];
const ask = (chance: number, places: readonly number[], what: Question = 'cells'): Asked => ({ ask: what, chance, places });

function hive(colony: string, questions: readonly Asked[], harms = false): HiveLook {
  return { colony, look: { questions, harms }, takes: { around: c.hiveMinutes, bar: c.barMinutes, most, bars: 10 } };
}

const duty = (colony: string, minutes: number, opened = true): Duty => ({ colony, minutes, opened });
const names = (hives: readonly { readonly colony: string }[]): readonly string[] => hives.map(({ colony }) => colony);

test('E95 the minutes go to the most valuable ones; a bar already lifted costs nothing more; a harmful look is not planned', () => {
  const looks = [hive('alder', [ask(0.1, [3, 4])]), hive('birch', [ask(0.3, [3, 4])]), hive('hazel', [ask(0.9, [3, 4])], true)];
  const both = planForMinutes([], looks, 2 * one, c);
  assert.deepEqual([names(both.hives), both.left, both.harmed, both.used], [['birch', 'alder'], [], ['hazel'], 2 * one]);
  const short = planForMinutes([], looks, 2 * one - 1, c);
  assert.deepEqual([names(short.hives), short.left], [['birch'], ['alder']]);
  assert.deepEqual(planForMinutes([], looks, c.hiveMinutes, c).hives, []);
  const [both2] = planForMinutes([], [hive('birch', [ask(0.3, [3, 4]), ask(0.01, [4], 'eggs')])], one, c).hives;
  assert.deepEqual([both2!.asks, both2!.minutes, both2!.places], [['cells', 'eggs'], one, [3, 4]]);
});

test('E160 much chance in few minutes goes before more chance in many', () => {
  const many = Array.from({ length: 9 }, (_, i) => i + 1);
  const plan = planForMinutes([], [hive('alder', [ask(0.35, many)]), hive('birch', [ask(0.3, [4])])], 60, c);
  assert.deepEqual(names(plan.hives), ['birch', 'alder']);
  // The same chance of less harm by being late comes after.
  const late = planForMinutes([], [hive('alder', [ask(0.3, [4], 'room')]), hive('birch', [ask(0.3, [4], 'stores')])], 60, c);
  assert.deepEqual(names(late.hives), ['birch', 'alder']);
});

test('E160 the least set of bars: a further question takes bars only where it alone would be worth opening for', () => {
  const [hazel] = planForMinutes([], [hive('hazel', [ask(0.2, [7, 3]), ask(c.choice.chance / 2, [5], 'stores')])], 60, c).hives;
  assert.deepEqual([hazel!.asks, hazel!.places], [['cells'], [7, 3]]);
  const [rowan] = planForMinutes([], [hive('rowan', [ask(0.2, [7, 3]), ask(2 * c.choice.chance, [5], 'stores')])], 60, c).hives;
  assert.deepEqual([rowan!.asks, rowan!.places, rowan!.minutes], [['cells', 'stores'], [7, 3, 5], one + c.barMinutes]);
});

test('E160 where a question names no bars all are lifted, once, and every other question is answered for nothing', () => {
  const [rowan] = planForMinutes([], [hive('rowan', [ask(0.5, []), ask(0.4, [7, 3], 'stores')])], 60, c).hives;
  assert.deepEqual(
    [rowan!.asks.length, rowan!.whole, rowan!.minutes],
    [2, true, Math.min(most, c.hiveMinutes + 10 * c.barMinutes)],
  );
});

test('E161 what a rule asks for goes before every look, and its hive is not opened for less', () => {
  const looks = [hive('alder', [ask(0.99, [3, 4])]), hive('birch', [ask(0.9, [3])])];
  const plan = planForMinutes([duty('birch', most), duty('hazel', 5, false)], looks, most + 5, c);
  assert.deepEqual([names(plan.hives), plan.left, plan.used], [['birch', 'hazel'], ['alder'], most + 5]);
  const tight = planForMinutes([duty('birch', most)], looks, most - 1, c);
  assert.deepEqual([names(tight.hives), tight.left], [['alder'], ['birch']]);
});

test('E161 a hive that is glanced at or fed by a rule is looked into as well, where there is time', () => {
  const looks = [hive('birch', [ask(0.3, [3, 4])])];
  const [birch] = planForMinutes([duty('birch', 5, false)], looks, 60, c).hives;
  assert.deepEqual([birch!.minutes, birch!.places, birch!.asks], [5 + one, [3, 4], ['cells']]);
  const [alone] = planForMinutes([duty('birch', 5, false)], looks, 5 + one - 1, c).hives;
  assert.deepEqual([alone!.minutes, alone!.places], [5, []]);
});

test('E161 never more than the minutes, no hive twice, no harmful look, no more than a whole visit for a look', () => {
  const places = fc.uniqueArray(fc.integer({ min: 1, max: 20 }), { maxLength: 20 });
  const asked = fc.array(
    fc.record({
      ask: fc.constantFrom<Question>('cells', 'eggs', 'stores', 'room'),
      chance: fc.double({ min: 0, max: 1, noNaN: true }),
      places,
    }),
    { maxLength: 4 },
  );
  const yard = fc.array(fc.record({ asked, harms: fc.boolean(), due: fc.option(fc.boolean()) }), { maxLength: 8 });
  fc.assert(
    fc.property(yard, fc.integer({ min: 0, max: 200 }), (given, minutes) => {
      const looks = given.map((each, i) => hive(`c${i}`, each.asked, each.harms));
      const duties = given.flatMap(({ due }, i) => (due === null ? [] : [duty(`c${i}`, due ? most : 5, due)]));
      const plan = planForMinutes(duties, looks, minutes, c);
      assert.ok(plan.used <= minutes);
      assert.ok(Math.abs(plan.used - plan.hives.reduce((sum, each) => sum + each.minutes, 0)) < 1e-9);
      const all = [...names(plan.hives), ...plan.left];
      assert.equal(new Set(all).size, all.length);
      for (const each of plan.hives) {
        assert.ok(each.minutes <= most + 5);
        if (looks.some(({ colony, look }) => colony === each.colony && look.harms)) assert.deepEqual(each.asks, []);
      }
      // A rule that was left out would not have fitted beside the rules before it.
      const before = (at: number): number =>
        duties.slice(0, at).reduce((sum, each) => sum + (plan.left.includes(each.colony) ? 0 : each.minutes), 0);
      duties.forEach((each, at) => {
        if (plan.left.includes(each.colony)) assert.ok(before(at) + each.minutes > minutes);
      });
    }),
    { seed: 20140516, numRuns: 300 },
  );
});
