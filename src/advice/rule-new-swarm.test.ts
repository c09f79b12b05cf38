/** Worked examples of a new swarm: soft comb, food, first eggs. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { say } from '../words/text.ts';
import { aView, comb, facts, span, today, visit } from './for-tests.ts';
import { newSwarm } from './rule-new-swarm.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
const bars = [comb(1, {}, 0.4), comb(2, {}, 0.3), comb(3, {}, 0.2)];
const hivedOn = (day: string) => [{ day, entry: 'hived', event: { kind: 'swarm hived', parent: null } }] as const;
const unseen = { eggs: 'not looked', from: [] } as const;

test('A21 a swarm hived three days ago is glanced at, fed, and its first eggs are awaited', () => {
  const view = aView({
    name: 'Rowan',
    origin: 'swarm',
    visits: [],
    events: hivedOn('2014-05-13'),
    queen: unseen,
    bars,
  });
  assert.deepEqual(
    newSwarm.advise(facts(view)).map((advice) => [advice.verb, say(advice.say, manner)]),
    [
      ['glance', 'Glance at the last two bars between 16 and 20 May: is the new comb straight? It still bends by hand.'],
      ['no visit', 'Feed the swarm on 16 May, unless the bees bring in nectar.'],
      ['open', 'Look for the first eggs between 21 and 25 May.'],
    ],
  );
});

test('A21 brood stays untouched until first eggs can be there', () => {
  const view = aView({ visits: [], events: hivedOn('2014-05-15'), queen: unseen, bars });
  const eggs = newSwarm.advise(facts(view)).find((advice) => advice.verb === 'open');
  assert.deepEqual(
    eggs?.forbids.map(({ act, window }) => ({ act, window })),
    [{ act: 'lift brood', window: span('2014-05-15', '2014-05-17') }],
  );
});

test('A21 crooked comb is bent back at once, at the last two combs', () => {
  const visits = [visit('2014-05-15', { kind: 'glance', straight: 'bent' })];
  const view = aView({ visits, events: hivedOn('2014-05-07'), queen: { eggs: 'seen' }, bars });
  const [bend] = newSwarm.advise(facts(view));
  assert.equal(bend?.act, 'bend comb straight');
  assert.equal(say(bend.say, manner), 'Bend the new comb straight at places 2 and 3 on 16 May: it was seen crooked on 15 May.');
});

test('A21 straight comb seen yesterday puts the next glance off; a feeding counts for days; after three weeks it is a colony', () => {
  const visits = [visit('2014-05-15', { kind: 'glance', straight: 'straight' })];
  const fed = { day: '2014-05-14', entry: 'fed', event: { kind: 'fed', what: 'syrup', amount: null } } as const;
  const view = aView({ visits, events: [...hivedOn('2014-05-13'), fed], queen: { eggs: 'seen' }, bars });
  assert.deepEqual(
    newSwarm.advise(facts(view)).map((advice) => [advice.act, advice.window]),
    [['glance', span('2014-05-18', '2014-05-20')]],
  );
  assert.deepEqual(newSwarm.advise(facts(aView({ events: hivedOn('2014-04-20') }))), []);
});
