/** A worked example of a patchy sheet of brood. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { say } from '../words/text.ts';
import { aView, facts, today } from './for-tests.ts';
import { poorPattern } from './rule-poor-pattern.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;

test('A27 a patchy sheet asks for a second look, says why the queen may not be to blame, and forbids another queen', () => {
  const [advice] = poorPattern.advise(facts(aView({ solid: { percent: 68, lo95: 58, hi95: 76, from: ['counted'] } })));
  assert.ok(advice !== undefined);
  assert.equal(
    say(advice.say, manner),
    'Look at the sealed brood again between 19 and 24 May: 68 % of the counted cells held brood.',
  );
  assert.ok(advice.reasons.some((reason) => say(reason, manner).startsWith('The queen may not be to blame')));
  assert.deepEqual(
    advice.forbids.map((forbid) => forbid.act),
    ['requeen'],
  );
});

test('A27 a count too small to say, or a good one, says nothing', () => {
  assert.deepEqual(poorPattern.advise(facts(aView({ solid: { percent: 70, lo95: 55, hi95: 82, from: ['counted'] } }))), []);
  assert.deepEqual(poorPattern.advise(facts(aView())), []);
});
