/** Worked examples of temper: one bad day, two, another cause, another queen. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { say } from '../words/text.ts';
import { aView, facts, span, today, visit } from './for-tests.ts';
import { temper } from './rule-temper.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
const edgy = (day: string, ...notes: readonly string[]) => visit(day, { temper: 'edgy', temperNotes: notes });

test('A28 one edgy visit is noted, with what else it may be, and no other queen is asked for', () => {
  const [advice] = temper.advise(facts(aView({ visits: [edgy('2014-05-12', 'after rain')] })));
  assert.ok(advice !== undefined);
  assert.equal(
    say(advice.say, manner),
    'Note it and wait: the bees were edgy on 12 May, and one day says more of the day than of the queen.',
  );
  assert.equal(say(advice.reasons[0] ?? advice.say, manner), 'On 12 May: it was after rain.');
  assert.deepEqual(
    advice.forbids.map((forbid) => forbid.act),
    ['requeen'],
  );
});

test('A28 two edgy visits days apart, with no other cause noted, are the colony’s own', () => {
  const [advice] = temper.advise(facts(aView({ visits: [edgy('2014-05-02'), edgy('2014-05-12', 'followed people')] })));
  assert.equal(advice?.act, 'requeen');
  assert.equal(
    say(advice.say, manner),
    'Think about another queen between 16 May and 6 June: the bees were edgy on 2 May and again on 12 May, with no other cause noted.',
  );
  assert.ok(advice.cautions.includes('learners'));
});

test('A28 two on neighbouring days, or with another cause, count as one', () => {
  for (const visits of [
    [edgy('2014-05-11'), edgy('2014-05-12')],
    [edgy('2014-05-02', 'robbing about'), edgy('2014-05-12')],
  ]) {
    assert.deepEqual(
      temper.advise(facts(aView({ visits }))).map((advice) => advice.act),
      ['wait'],
    );
  }
});

test('A28 bees of the queen before tell nothing of the new one; a calm last visit says nothing', () => {
  const visits = [edgy('2014-05-02'), edgy('2014-05-12')];
  const [advice] = temper.advise(facts(aView({ visits, queenSince: span('2014-04-25') })));
  assert.equal(advice?.act, 'wait');
  assert.equal(
    say(advice.say, manner),
    'Wait with any verdict until 20 June: the edgy bees are still daughters of the queen before.',
  );
  assert.deepEqual(temper.advise(facts(aView({ visits: [...visits, visit('2014-05-14')] }))), []);
});

test('A28 a queen who came with her swarm answers for her own bees, and visits before a new queen’s own bees count for nobody', () => {
  const visits = [edgy('2014-05-02'), edgy('2014-05-12')];
  const came = { kind: 'queen began', queen: 'q', how: 'came with the swarm' } as const;
  const swarm = aView({
    visits,
    queenSince: span('2014-04-25'),
    events: [{ day: '2014-04-25', entry: 'hived', event: came }],
  });
  assert.deepEqual(
    temper.advise(facts(swarm)).map((advice) => advice.act),
    ['requeen'],
  );
  assert.deepEqual(temper.advise(facts(aView({ day: '2014-06-24', visits, queenSince: span('2014-04-25') }))), []);
});
