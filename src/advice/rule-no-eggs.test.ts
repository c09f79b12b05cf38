/** Worked examples of a look without eggs: waiting, the day that tells, the test with a comb of eggs. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { say, sayChance } from '../words/text.ts';
import { aView, cellsOf, facts, span, today, visit } from './for-tests.ts';
import { noEggs } from './rule-no-eggs.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
const search = {
  barsInBay: 10,
  barsOpened: 7,
  brushed: false,
  shareLooked: 0.7,
  missAll: [
    { cells: 1, chance: 0.51 },
    { cells: 3, chance: 0.13 },
  ],
};

test('A23 until the day that tells, waiting is the advice, with what to look for and what could have been missed', () => {
  const queen = {
    state: 'unknown',
    eggs: 'none seen',
    lastLaid: span('2014-05-03', '2014-05-08'),
    nextTelling: '2014-05-24',
  } as const;
  const [advice] = noEggs.advise(facts(aView({ queen, search })));
  assert.ok(advice !== undefined && advice.chance !== null);
  assert.equal(
    say(advice.say, manner),
    'Wait until 24 May for the next look: no eggs were seen on 12 May, and a look before then tells little.',
  );
  assert.equal(advice.verb, 'no visit');
  assert.equal(
    sayChance(advice.chance, manner),
    'three queen cells there and none of them seen on 12 May: very unlikely, about 1 in 10',
  );
  assert.ok(advice.reasons.some((reason) => say(reason, manner).startsWith('With 7 bars of 10 opened and bees not brushed off')));
});

test('A23 on the day that tells, the hive is opened', () => {
  const queen = { state: 'unknown', eggs: 'none seen', lastLaid: null, nextTelling: '2014-05-12' } as const;
  const [advice] = noEggs.advise(facts(aView({ queen, visits: [visit('2014-05-02')] })));
  assert.equal(advice?.verb, 'open');
  assert.equal(say(advice.say, manner), 'Look for eggs between 16 and 20 May: none were seen on 2 May, and a look now tells.');
});

test('A23 when neither brood nor a young queen is to be expected any more, a comb of eggs is the test', () => {
  const queen = {
    state: 'none',
    eggs: 'none seen',
    lastLaid: span('2014-04-20', '2014-04-28'),
    nextTelling: '2014-05-12',
  } as const;
  const [advice] = noEggs.advise(facts(aView({ queen })));
  assert.equal(advice?.act, 'test with a comb of eggs');
  assert.equal(
    say(advice.say, manner),
    'Hang in a comb with fresh eggs between 16 and 20 May, and look for queen cells on it 3 to 5 days later.',
  );
  assert.deepEqual(
    advice.forbids.map((forbid) => forbid.act),
    ['requeen', 'unite'],
  );
});

test('A23 while first eggs may still come, or queen cells hang, no test is asked for', () => {
  const queen = {
    state: 'virgin',
    eggs: 'none seen',
    lastLaid: span('2014-04-20', '2014-04-28'),
    nextTelling: '2014-05-30',
    firstEggs: span('2014-05-14', '2014-05-30'),
  } as const;
  assert.deepEqual(
    noEggs.advise(facts(aView({ queen }))).map((advice) => advice.act),
    ['wait'],
  );
  assert.deepEqual(noEggs.advise(facts(aView({ queen, cells: cellsOf() }))), []);
  assert.deepEqual(noEggs.advise(facts(aView())), []);
});

test('A23 late in the year a pause is named and no test asked for; in the cold months nothing is said', () => {
  const queen = {
    state: 'none',
    eggs: 'none seen',
    lastLaid: span('2014-09-01', '2014-09-08'),
    nextTelling: null,
  } as const;
  const autumn = noEggs.advise(facts(aView({ day: '2014-10-03', visits: [visit('2014-10-01')], queen })));
  assert.deepEqual(
    autumn.map((advice) => advice.act),
    ['wait'],
  );
  assert.equal(
    say(autumn[0]?.reasons[0] ?? { key: '', slots: {} }, manner),
    'Early and late in the year a sound queen may rest from laying.',
  );
  assert.deepEqual(noEggs.advise(facts(aView({ day: '2014-12-05', visits: [visit('2014-10-01')], queen }))), []);
});
