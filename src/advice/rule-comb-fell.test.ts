/** Worked examples of a comb that fell: eggs three days later, robbers where honey ran. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { ColonyView } from '../colony/view.ts';
import { say } from '../words/text.ts';
import { aView, facts, today, visit } from './for-tests.ts';
import { combFell } from './rule-comb-fell.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
const fell = (day: string, what: 'brood' | 'honey') =>
  [{ day, entry: 'fell', event: { kind: 'comb fell', place: 5, what, done: 'hung up again' } }] as const;
const said = (change: Partial<ColonyView>): readonly string[] =>
  combFell.advise(facts(aView({ visits: [], ...change }))).map((advice) => say(advice.say, manner));
const eggs = (state: 'seen' | 'none seen' | 'not looked') => ({ queen: { ...aView({}).queen, eggs: state } });

test('A43 the day after a comb with brood fell, eggs are looked for when they can only have been laid since', () => {
  assert.deepEqual(said({ events: fell('2014-05-15', 'brood'), ...eggs('not looked') }), [
    'Look for eggs between 18 and 20 May: the queen may have been on the comb that fell.',
  ]);
});

test('A43 where honey ran the entrance is watched for two days, and nobody feeds', () => {
  const advised = combFell.advise(facts(aView({ visits: [], events: fell('2014-05-16', 'honey'), ...eggs('not looked') })));
  const [watch] = advised;
  assert.equal(
    watch && say(watch.say, manner),
    'Watch the entrance between 16 and 18 May: honey ran, and robbers may come. Keep it narrow.',
  );
  assert.deepEqual([watch?.verb, watch?.forbids[0]?.act], ['no visit', 'feed']);
  assert.equal(said({ events: fell('2014-05-10', 'honey'), ...eggs('not looked') }).length, 1, 'the honey is cleaned up by then');
});

test('A43 a look with eggs or without ends it, one on the very day does not, and after two weeks other rules speak', () => {
  const events = fell('2014-05-10', 'brood');
  const opened = (day: string, state: 'seen' | 'none seen' | 'not looked') =>
    said({ events, visits: [visit(day)], ...eggs(state) }).length;
  assert.deepEqual(
    [opened('2014-05-14', 'seen'), opened('2014-05-14', 'none seen'), opened('2014-05-14', 'not looked')],
    [0, 0, 1],
  );
  assert.equal(opened('2014-05-11', 'seen'), 1);
  assert.equal(said({ events: fell('2014-05-01', 'brood'), ...eggs('not looked') }).length, 0);
});
