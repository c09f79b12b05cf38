/** What is done in the minutes that the keeper has: rules first, then what the model holds worth a look. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Look } from '../colony/foreseen.ts';
import type { ColonyView } from '../colony/view.ts';
import { printedBook, value } from '../figures/book.ts';
import { addDays } from '../numbers/day.ts';
import { say } from '../words/text.ts';
import type { Advice } from './advice.ts';
import { advise } from './advise.ts';
import { anAdvice, aView, cellsOf, facts, foreseenLook, span, today, visit } from './for-tests.ts';
import { type MinutesDay, planMinutes } from './minutes.ts';
import { planRound } from './plan.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
const book = printedBook;
const visitMinutes = value(book, 'visit-minutes');
const glanceMinutes = value(book, 'glance-minutes');
const few = value(book, 'look-hive-minutes') + 2 * value(book, 'look-bar-minutes');

const cells: Look = {
  changesAct: 0.08,
  questions: [{ ask: 'cells', chance: 0.1, places: [7, 2] }],
  openOn: today,
  openFor: 'cells',
  harms: false,
};

/** A sound colony last opened some weeks ago, of which the model tells this; null: it has not spoken. */
function hive(colony: string, look: Partial<Look> | null, given: Partial<ColonyView> = {}): ColonyView {
  const foreseen = look === null ? null : foreseenLook(today, { ...cells, ...look });
  return { ...aView({ visits: [visit('2014-05-02')], foreseen }), colony, name: colony, ...given };
}

/** By the rules of the program, as the round has them. */
function plan(views: readonly ColonyView[], minutes: number): MinutesDay {
  const kept = views.flatMap((view) => advise(facts(view)).kept);
  return planMinutes(planRound(views, kept, today, book), views, minutes, book);
}

const brief = ({ stops, left, harmed, used }: MinutesDay) => ({
  stops: stops.map(({ colony, verb, asks, places, minutes }) => [colony, verb, asks.join(), places.join(), minutes]),
  left,
  harmed,
  used,
});

test('A32 a look at few bars takes the minutes of these bars, a whole visit its own', () => {
  assert.deepEqual(brief(plan([hive('alder', {})], 60)).stops, [['alder', 'open', 'cells', '7,2', few]]);
  const [whole] = plan([hive('alder', { questions: [{ ask: 'cells', chance: 0.1, places: [] }] })], 60).stops;
  assert.deepEqual([whole!.minutes, whole!.places, whole!.asks], [visitMinutes, [], []]);
  assert.equal(say(whole!.says[0]!, manner), 'Open between 16 and 20 May for queen cells.');
});

test('A33 the model ranks looks by chance and loss a minute; what does not fit is named, a harmful look is left out', () => {
  const views = [
    hive('alder', {}),
    hive('birch', { questions: [{ ask: 'cells', chance: 0.4, places: [7, 2] }] }),
    hive('hazel', { questions: [{ ask: 'cells', chance: 0.9, places: [7, 2] }], harms: true }),
    hive('linden', { openOn: addDays(today, 9) }),
  ];
  assert.deepEqual(brief(plan(views, 15)), {
    stops: [['birch', 'open', 'cells', '7,2', few]],
    left: ['alder'],
    harmed: ['hazel'],
    used: few,
  });
  assert.deepEqual(
    plan(views, 120).stops.map(({ colony }) => colony),
    ['birch', 'alder'],
  );
});

test('A33 bars of several questions are lifted in one order, from the far end of the nest inwards', () => {
  const questions = [
    { ask: 'cells', chance: 0.3, places: [7, 2] },
    { ask: 'stores', chance: 0.2, places: [8, 1] },
  ] as const;
  const [far] = plan([hive('alder', { questions })], 60).stops;
  assert.deepEqual(
    [far!.asks, far!.places],
    [
      ['cells', 'stores'],
      [8, 7, 2, 1],
    ],
  );
  const [near] = plan([hive('alder', { questions }, { entrance: 'last' })], 60).stops;
  assert.deepEqual(near!.places, [1, 2, 7, 8]);
});

test('A33 a glance that the model asks for takes the minutes of a glance, by the chance of today', () => {
  const room = {
    openOn: addDays(today, 9),
    changesAct: 0.6,
    questions: [{ ask: 'room', chance: 0.02, places: [10, 7] }],
  } as const;
  const day = plan([hive('alder', {}), hive('birch', room)], 30);
  assert.deepEqual(brief(day).stops, [
    ['birch', 'glance', 'room', '10,7', glanceMinutes],
    ['alder', 'open', 'cells', '7,2', few],
  ]);
});

test('A34 what is urgent by a rule is never put aside for the model, however likely its look', () => {
  const sure = { questions: [{ ask: 'cells', chance: 1, places: [7, 2] }] } as const;
  const alarm = hive('birch', { openOn: addDays(today, 9), questions: [] }, { cells: cellsOf() });
  const day = plan([hive('alder', sure), alarm], visitMinutes);
  assert.deepEqual([day.stops.map(({ colony }) => colony), day.left], [['birch'], ['alder']]);
  assert.equal(day.stops[0]!.verb, 'open');
  assert.equal(day.stops[0]!.says.length, 1);
  assert.deepEqual(
    plan([hive('alder', sure), alarm], visitMinutes + few).stops.map(({ colony }) => colony),
    ['birch', 'alder'],
  );
});

test('A34 where the model has not spoken, rules alone make the plan', () => {
  const day = plan([hive('alder', null), hive('birch', {})], visitMinutes + few);
  assert.deepEqual(
    brief(day).stops.map(([colony, verb, , , minutes]) => [colony, verb, minutes]),
    [
      ['alder', 'open', visitMinutes],
      ['birch', 'open', few],
    ],
  );
});

function byRules(kept: readonly Advice[], minutes: number): MinutesDay {
  const views = [...new Set(kept.map(({ colony }) => colony))].map((colony) => hive(colony, null));
  return planMinutes(planRound(views, kept, today, book), views, minutes, book);
}

test('A41 the minutes go to the longest need; a long visit that does not fit gives way to a glance behind it', () => {
  const glance = anAdvice('hazel', { verb: 'glance', act: 'glance', weight: 0.3 });
  const day = byRules([anAdvice('alder', { weight: 0.9 }), anAdvice('birch', { weight: 0.8 }), glance], 40);
  assert.deepEqual(brief(day), {
    stops: [
      ['alder', 'open', '', '', visitMinutes],
      ['hazel', 'glance', '', '', glanceMinutes],
    ],
    left: ['birch'],
    harmed: [],
    used: visitMinutes + glanceMinutes,
  });
});

test('A41 a hive that is left shut is still fed; what is only ahead, or done by nobody, takes no minutes', () => {
  const shut = anAdvice('alder', { verb: 'leave shut', act: 'wait', weight: 0.93 });
  const feed = anAdvice('alder', { verb: 'no visit', act: 'feed', weight: 0.6 });
  const ahead = anAdvice('birch', { window: span('2014-05-18', '2014-05-20') });
  const wait = anAdvice('hazel', { verb: 'no visit', act: 'ask someone' });
  assert.deepEqual(brief(byRules([shut, feed, ahead, wait], 60)).stops, [
    ['alder', 'no visit', '', '', value(book, 'no-visit-minutes')],
  ]);
});

test('A41 never more than the minutes, nothing done twice', () => {
  const weights = fc.array(
    fc.record({
      weight: fc.double({ min: 0.01, max: 1, noNaN: true }),
      verb: fc.constantFrom<Advice['verb']>('open', 'glance', 'leave shut', 'no visit'),
    }),
    { maxLength: 12 },
  );
  fc.assert(
    fc.property(weights, fc.nat({ max: 200 }), (given, minutes) => {
      const kept = given.map(({ weight, verb }, index) =>
        anAdvice(`c${index}`, { weight, verb, act: verb === 'no visit' ? 'feed' : 'wait' }),
      );
      const { stops, left, used } = byRules(kept, minutes);
      assert.ok(used <= minutes && used === stops.reduce((sum, each) => sum + each.minutes, 0));
      const due = given.filter(({ verb }) => verb !== 'leave shut').length;
      const all = [...stops.map(({ colony }) => colony), ...left];
      assert.equal(new Set(all).size, due);
      assert.equal(all.length, due);
    }),
    { seed: 20140516, numRuns: 500 },
  );
});

test('A34 a hive that another advice keeps shut is not glanced at for the model', () => {
  const view = hive('alder', { changesAct: 0.6, questions: [{ ask: 'room', chance: 0.5, places: [10] }] });
  const glance = anAdvice('alder', { rule: 'worth-a-look', verb: 'glance', act: 'glance', places: [10], weight: 0.25 });
  const shut = anAdvice('alder', { rule: 'queen-cells', verb: 'leave shut', act: 'wait', weight: 0.87 });
  const stopsWith = (kept: readonly Advice[]) => planMinutes(planRound([view], kept, today, book), [view], 60, book).stops;
  assert.equal(stopsWith([glance]).length, 1);
  assert.deepEqual(stopsWith([shut, glance]), []);
});
