/** Worked examples of a bee escape: due a day or two after it was set, said until it is out. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { say } from '../words/text.ts';
import { aView, facts, today } from './for-tests.ts';
import { beeEscape } from './rule-bee-escape.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
const set = (day: string) => ({ day, entry: 'set', event: { kind: 'bee escape', what: 'set', after: 7 } }) as const;
const out = (day: string) => ({ day, entry: 'out', event: { kind: 'bee escape', what: 'taken out', after: null } }) as const;
const said = (...events: readonly (ReturnType<typeof set> | ReturnType<typeof out>)[]): readonly string[] =>
  beeEscape.advise(facts(aView({ events }))).map((advice) => say(advice.say, manner));

test('A44 a bee escape is to be taken out a day or two after it was set, and at once when it is late', () => {
  assert.deepEqual(said(set('2014-05-16')), ['Take the bee escape out between 17 and 18 May.']);
  assert.deepEqual(said(set('2014-05-10')), ['Take the bee escape out on 16 May.']);
});

test('A44 once it is out nothing is said, and one set anew is said again', () => {
  assert.deepEqual(said(set('2014-05-10'), out('2014-05-11')), []);
  assert.equal(said(set('2014-05-10'), out('2014-05-11'), set('2014-05-15')).length, 1);
  assert.deepEqual(said(), []);
});
