/** Worked examples of leaving shut: a virgin, a given queen, a new queen, cold, just opened; and which need beats it. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { say } from '../words/text.ts';
import { aView, cellsOf, facts, span, today, total, range, visit, weatherOf } from './for-tests.ts';
import { advise } from './advise.ts';
import { leaveShut } from './rule-leave-shut.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
const opened = [visit('2014-05-04')];
const said = (given: Parameters<typeof leaveShut.advise>[0]) => leaveShut.advise(given).map((advice) => say(advice.say, manner));

test('A24 on a virgin’s days the hive stays shut', () => {
  const queen = {
    state: 'cells sealed',
    eggs: 'none seen',
    virginDays: span('2014-05-13', '2014-06-02'),
    firstEggs: span('2014-05-20', '2014-06-02'),
  } as const;
  const view = aView({ name: 'Hazel', queen, visits: opened });
  const [advice] = leaveShut.advise(facts(view));
  assert.ok(advice !== undefined);
  assert.equal(
    say(advice.say, manner),
    'Leave shut until 2 June: a virgin queen may emerge, fly or begin to lay between 13 May and 2 June.',
  );
  assert.deepEqual(
    advice.forbids.map((forbid) => forbid.act),
    ['open', 'lift brood'],
  );
  assert.deepEqual(said(facts(aView({ queen: { virginDays: span('2014-05-20', '2014-06-02') }, visits: opened }))), []);
});

test('A24 after a queen was given, and after a new queen’s first eggs, the hive rests', () => {
  const events = [{ day: '2014-05-13', entry: 'given', event: { kind: 'queen began', queen: 'q', how: 'introduced' } }] as const;
  assert.deepEqual(said(facts(aView({ events, visits: opened, queen: { eggs: 'not looked' } }))), [
    'Leave shut until 20 May: a queen was given on 13 May.',
  ]);
  const queen = { state: 'new queen laying', firstEggs: span('2014-05-11', '2014-05-13') } as const;
  assert.deepEqual(said(facts(aView({ queen, visits: opened }))), [
    'Leave shut until 18 May: a new queen began to lay between 11 and 13 May.',
  ]);
});

test('A24 a cold day forbids lifting brood, a colder one a glance as well; an unknown day forbids nothing', () => {
  const view = aView({ visits: opened });
  assert.deepEqual(said(facts(view, { weather: weatherOf(4, 12) })), [
    'Leave shut today: the day reaches 12 °C, and brood combs are lifted from 15 °C on. A glance is the most.',
  ]);
  const [colder] = leaveShut.advise(facts(view, { weather: weatherOf(1, 8) }));
  assert.deepEqual(
    colder?.forbids.map((forbid) => forbid.act),
    ['open', 'lift brood', 'glance'],
  );
  assert.deepEqual(said(facts(view, { weather: weatherOf(4, null) })), []);
  assert.deepEqual(said(facts(view)), []);
});

test('A24 a hive just opened rests a week, unless a need is stronger', () => {
  const view = aView();
  assert.deepEqual(said(facts(view)), ['Leave shut until 18 May: opened on 12 May, and nothing calls for a look sooner.']);
  assert.deepEqual(
    advise(facts(view)).kept.map((advice) => advice.rule),
    ['leave-shut'],
  );
  const withCells = advise(facts(aView({ cells: cellsOf() })));
  assert.equal(withCells.kept[0]?.rule, 'queen-cells');
  assert.deepEqual(
    withCells.silenced.map(({ advice, by }) => [advice.rule, by.rule]),
    [['leave-shut', 'queen-cells']],
  );
});

test('A24 a starving colony with a virgin is fed, and not opened', () => {
  const queen = { eggs: 'none seen', virginDays: span('2014-05-13', '2014-06-02') } as const;
  const { kept } = advise(facts(aView({ queen, visits: opened, totals: { honeyKg: total(range(0.2, 0.3, 0.5)) } })));
  assert.deepEqual(
    kept.filter((advice) => advice.act !== 'wait').map((advice) => [advice.verb, advice.act]),
    [['no visit', 'feed']],
  );
  assert.ok(kept.some((advice) => advice.verb === 'leave shut'));
});
