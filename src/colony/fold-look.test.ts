/** A look from outside through the fold: the minute counted, the window, the knock, dead bees; an older look is the same as before. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { sampleYard } from './for-tests.ts';

const plain = { flight: 'few', pollenIn: null, seen: [] } as const;

function looked(body: Readonly<Record<string, unknown>>) {
  const yard = sampleYard();
  const hive = yard.hive('2014-05-01');
  const colony = yard.colony('2014-05-01', hive);
  yard.add('look', '2014-05-09', { hive, colony, ...plain, ...body });
  const { draft, faults } = yard.fold();
  return { event: draft.events.get(colony)?.map(({ event }) => event)[0], faults: faults.map(({ code }) => code) };
}

test('C110 a look keeps what was counted and looked at, and nothing of what was not', () => {
  const minute = { seconds: 60, in: 14, withPollen: 5 };
  const more = { minute, window: 'some bees', hum: 'short and even', dead: 'a few' };
  assert.deepEqual(looked(more), { event: { kind: 'look', ...plain, ...more, pollenIn: true }, faults: [] });
  assert.deepEqual(looked({}), { event: { kind: 'look', ...plain }, faults: [] });
});

test('C110 no pollen within one minute does not say that none came in that day', () => {
  const { event } = looked({ minute: { seconds: 60, in: 9, withPollen: 0 } });
  assert.ok(event?.kind === 'look');
  assert.equal(event.pollenIn, null);
});

test('C111 more with pollen than came in, pollen where none is said, and bees where none fly are refused and change nothing', () => {
  const seconds = 60;
  assert.deepEqual(looked({ minute: { seconds, in: 3, withPollen: 4 } }), { event: undefined, faults: ['part-above-whole'] });
  assert.deepEqual(looked({ pollenIn: false, minute: { seconds, in: 3, withPollen: 1 } }).faults, ['pollen-and-none']);
  assert.deepEqual(looked({ flight: 'none', minute: { seconds, in: 3, withPollen: null } }).faults, ['flight-and-none']);
  assert.deepEqual(looked({ flight: 'none', minute: { seconds, in: 0, withPollen: null } }).faults, []);
});
