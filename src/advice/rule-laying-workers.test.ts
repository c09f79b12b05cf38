/** Worked examples of the signs of laying workers and of a queen that lays drone. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { say } from '../words/text.ts';
import { aView, facts, span, today, visit } from './for-tests.ts';
import { layingWorkers } from './rule-laying-workers.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
const seen = [visit('2014-05-08', { signs: [{ code: 'several eggs in a cell', entry: 'sign' }] })];

test('A25 one sign asks for a second look and forbids another queen until then', () => {
  const [advice] = layingWorkers.advise(facts(aView({ visits: seen })));
  assert.ok(advice !== undefined);
  assert.equal(
    say(advice.say, manner),
    'Look again between 16 and 20 May for several eggs in a cell, eggs on the cell walls, and domed caps on worker cells.',
  );
  assert.equal(say(advice.reasons[0] ?? advice.say, manner), 'Seen on 8 May: several eggs in a cell.');
  assert.deepEqual(
    advice.forbids.map((forbid) => forbid.act),
    ['requeen'],
  );
});

test('A25 laying workers are given eggs and open brood, a drone layer another queen', () => {
  const queen = { lastLaid: span('2014-04-10', '2014-04-14') };
  const acts = (['laying workers', 'drone layer'] as const).map((state) =>
    layingWorkers.advise(facts(aView({ visits: seen, queen: { ...queen, state } }))).map((advice) => advice.act),
  );
  assert.deepEqual(acts, [['test with a comb of eggs'], ['requeen']]);
});

test('A25 a sign of long ago, or none, says nothing', () => {
  const old = [visit('2014-04-01', { signs: [{ code: 'several eggs in a cell', entry: 'sign' }] })];
  assert.deepEqual(layingWorkers.advise(facts(aView({ visits: old }))), []);
  assert.deepEqual(layingWorkers.advise(facts(aView())), []);
});
