/** Worked examples of when the next visit is due. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { say } from '../words/text.ts';
import { aView, facts, span, today, visit } from './for-tests.ts';
import { visitDue } from './rule-visit-due.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
const said = (view: ReturnType<typeof aView>) =>
  visitDue.advise(facts(view)).map((advice) => say(advice.say, { ...manner, today: view.day }));

test('A29 in the swarm season a week after the last opening, whatever the weekday; late is said', () => {
  assert.deepEqual(said(aView({ visits: [visit('2014-05-08')] })), ['Open between 15 and 17 May: last opened on 8 May.']);
  assert.deepEqual(said(aView({ visits: [visit('2014-04-29')] })), [
    'Open today: last opened on 29 April, and a look was due between 6 and 8 May.',
  ]);
  assert.deepEqual(said(aView({ visits: [visit('2014-05-12')] })), []);
});

test('A29 three to four days after cells were cut', () => {
  assert.deepEqual(said(aView({ visits: [visit('2014-05-13', { cellsCut: true })] })), [
    'Open between 16 and 17 May: queen cells were cut on 13 May, and new ones may be sealed by then.',
  ]);
});

test('A29 longer outside the swarm season, and not at all in the cold months', () => {
  assert.deepEqual(said(aView({ day: '2014-09-20', visits: [visit('2014-08-28')] })), [
    'Open between 18 and 25 September: last opened on 28 August.',
  ]);
  assert.deepEqual(said(aView({ day: '2014-12-20', visits: [visit('2014-10-10')] })), []);
});

test('A29 in the south the year is turned round', () => {
  const spring = aView({ day: '2014-11-16', visits: [visit('2014-11-08')] });
  assert.equal(visitDue.advise(facts(spring, { latitude: -37 })).length, 1);
  assert.equal(visitDue.advise(facts(spring, { latitude: 40 })).length, 0);
});

test('A29 a look that would fall on a virgin’s days is moved or not asked for', () => {
  const visits = [visit('2014-05-08')];
  const soonVirgin = aView({ visits, queen: { virginDays: span('2014-05-17', '2014-06-02') } });
  assert.deepEqual(
    visitDue.advise(facts(soonVirgin)).map((advice) => advice.window.latest),
    ['2014-05-16'],
  );
  assert.deepEqual(said(aView({ visits, queen: { virginDays: span('2014-05-13', '2014-06-02') } })), []);
});
