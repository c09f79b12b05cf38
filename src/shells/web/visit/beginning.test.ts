/** How a visit most likely begins: its kind, and where the follower board stands. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Stop } from '../../../apiary.ts';
import type { ColonyView } from '../../../colony/view.ts';
import { bayWithFollower, likelyKind } from './beginning.ts';

function view(change: object): ColonyView {
  const plain = {
    day: '2014-05-16',
    visits: [{ day: '2014-05-08' }],
    events: [],
    bay: { from: 1, to: 13 },
    hiveBars: 24,
    entrance: 'first',
  };
  return { ...plain, ...change } as unknown as ColonyView;
}

const event = (kind: string, day: string) => ({ day, entry: 'e', event: { kind } });

test('V1 the kind offered follows the season, the swarm and the advice', () => {
  assert.equal(likelyKind(view({}), null), 'usual');
  assert.equal(likelyKind(view({ visits: [{ day: '2013-09-30' }] }), null), 'first of the year');
  assert.equal(likelyKind(view({ visits: [] }), null), 'usual');
  assert.equal(likelyKind(view({ events: [event('swarm left', '2014-05-12')] }), null), 'after a swarm');
  assert.equal(likelyKind(view({ events: [event('swarm left', '2014-05-01')] }), null), 'usual', 'it was visited since');
  assert.equal(likelyKind(view({}), { verb: 'glance' } as Stop), 'glance');
});

test('V1 the follower board stands at the end of the bay that is no wall, and away from the entrance where both are', () => {
  const side = (from: number, to: number, entrance: string) => bayWithFollower(view({ bay: { from, to }, entrance })).follower;
  assert.deepEqual([side(1, 13, 'first'), side(1, 13, 'last'), side(15, 24, 'first')], ['last', 'last', 'first']);
  assert.deepEqual(
    [side(1, 24, 'first'), side(1, 24, 'last'), side(5, 15, 'first'), side(5, 15, 'last')],
    ['last', 'first', 'last', 'first'],
  );
});
