/** The day of a yard, near midnight and where the clocks change. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { instantOf, localTime } from './clock.ts';

test('R9 a day is the yard’s own, whatever the zone of the device', () => {
  const late = new Date('2014-05-17T02:30:00Z');
  assert.deepEqual(localTime(late, 'America/New_York'), { day: '2014-05-16', time: '22:30' });
  assert.deepEqual(localTime(late, 'Europe/Warsaw'), { day: '2014-05-17', time: '04:30' });
});

test('R9 midnight is 00 h of the new day, and the hour is right on both sides of a change of clocks', () => {
  assert.deepEqual(localTime(new Date('2014-05-16T22:00:00Z'), 'Europe/Warsaw'), { day: '2014-05-17', time: '00:00' });
  assert.equal(localTime(new Date('2014-03-30T00:59:00Z'), 'Europe/Warsaw').time, '01:59');
  assert.equal(localTime(new Date('2014-03-30T01:01:00Z'), 'Europe/Warsaw').time, '03:01');
});

test('R9 a zone that this machine does not know gives the machine’s own time, not a fault', () => {
  assert.match(localTime(new Date('2014-05-16T12:00:00Z'), 'Nowhere/Land').day, /^2014-05-1[567]$/);
});

test('R9 an instant is UTC to the second', () => {
  assert.equal(instantOf(new Date('2014-05-16T18:05:09.999Z')), '2014-05-16T18:05:09Z');
});
