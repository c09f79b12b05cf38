/** Worked examples of room: the day the cells run out, the place of the bar, cold nights, a full trough. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { say } from '../words/text.ts';
import { aView, bareBar, comb, facts, range, span, today, weatherOf } from './for-tests.ts';
import { giveRoom } from './rule-give-room.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
const room = {
  empty: range(800, 1200, 2600),
  emergingPerDay: range(905, 1100, 1290),
  laidPerDay: range(1000, 1200, 1400),
  nectarPerDay: range(200, 400, 700),
  fullOn: span('2014-05-18', '2014-05-21'),
  bareBars: 0,
};

test('A20 one bare bar goes to the edge of the brood, within the days until the cells run out', () => {
  const [advice] = giveRoom.advise(facts(aView({ room })));
  assert.ok(advice !== undefined);
  assert.equal(say(advice.say, manner), 'Add one bare bar at place 8 between 16 and 21 May: two days of empty cells are left.');
  assert.deepEqual(
    advice.reasons.map((reason) => say(reason, manner)),
    [
      'Brood was read on places 2 to 7, on 12 May.',
      'A day brings 910 to 1,300 emerging bees and 1,000 to 1,400 new eggs; nectar takes 200 to 700 cells.',
      'Empty worker cells in the brood today: 1,200 (800 to 2,600).',
      'They run out between 18 and 21 May.',
      'A bare bar is drawn and laid in after about five days.',
    ],
  );
  assert.deepEqual(
    advice.forbids.map((forbid) => forbid.act),
    ['give several bare bars', 'spread the brood'],
  );
});

test('A20 with the entrance at the last place the edge is on the other side', () => {
  const bars = [1, 2, 3, 4, 5, 6].map((place) => comb(place, place < 4 ? { honey: 0.6 } : { sealed: 0.5 }));
  const [advice] = giveRoom.advise(facts(aView({ room, bars, entrance: 'last' })));
  assert.deepEqual(advice?.places, [3]);
});

test('A20 nothing is said while the cells last, or where two bars are unbuilt already', () => {
  const later = { ...room, empty: range(5000, 8000, 9000), fullOn: span('2014-05-22', '2014-06-14') };
  assert.deepEqual(giveRoom.advise(facts(aView({ room: later }))), []);
  assert.deepEqual(giveRoom.advise(facts(aView({ room: { ...room, fullOn: null } }))), []);
  assert.deepEqual(giveRoom.advise(facts(aView({ room, bars: [...aView().bars, bareBar(11), bareBar(12)] }))), []);
  assert.equal(giveRoom.advise(facts(aView({ room, bars: [...aView().bars, bareBar(11)] }))).length, 1);
});

test('A20 while nights are cold the bar waits, and giving it is forbidden', () => {
  const [advice] = giveRoom.advise(facts(aView({ room }), { weather: weatherOf(4, 18) }));
  assert.ok(advice !== undefined);
  assert.equal(
    say(advice.say, manner),
    'Hold the bare bar back: the night went down to 4 °C, and bars wait for nights of 10 °C and more.',
  );
  assert.ok(advice.forbids.some((forbid) => forbid.act === 'give a bare bar'));
});

test('A20 in a full trough room is asked for, not a bar', () => {
  const bars = [1, 2, 3, 4, 5, 6, 7].map((place) => comb(place, { sealed: 0.5 }));
  const [advice] = giveRoom.advise(facts(aView({ room, bars, hiveBars: 7, bay: { from: 1, to: 7 } })));
  assert.equal(advice?.act, 'open');
  assert.match(say(advice.say, manner), /^Make room in the hive between 16 and 21 May: every place of the trough is taken/);
});
