/** Worked examples of whether a look is worth it. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Look } from '../colony/foreseen.ts';
import { addDays } from '../numbers/day.ts';
import { say, sayChance } from '../words/text.ts';
import { advise } from './advise.ts';
import { aView, cellsOf, facts, foreseenLook, span, today, visit } from './for-tests.ts';
import { visitDue } from './rule-visit-due.ts';
import { worthALook } from './rule-worth-a-look.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
const cells: Look = {
  changesAct: 0.08,
  questions: [{ ask: 'cells', chance: 0.1, places: [7, 2] }],
  openOn: addDays(today, 2),
  openFor: 'cells',
  harms: false,
};
const viewWith = (look: Partial<Look>, given: Parameters<typeof aView>[0] = {}) =>
  aView({ visits: [visit('2014-05-08')], foreseen: foreseenLook(today, { ...cells, ...look }), ...given });
const told = (view: ReturnType<typeof aView>) => worthALook.advise(facts(view));

test('A31 opens on the day that is worth it, for what, on the bars that tell, with the chance', () => {
  const [advice] = told(viewWith({}));
  assert.equal(say(advice!.say, manner), 'Open between 18 and 22 May for queen cells: places 2 and 7 would tell.');
  assert.equal(sayChance(advice!.chance!, manner), 'queen cells are there: very unlikely, about 1 in 10');
  assert.deepEqual([advice!.verb, advice!.places], ['open', [7, 2]]);
});

test('A31 leaves shut until the day before, glances for room alone, and says when it is only long ago', () => {
  const later = addDays(today, 9);
  const [leave] = told(viewWith({ openOn: later }));
  assert.equal(say(leave!.say, manner), 'Leave shut until 24 May: nothing that a look could change is likely before.');
  assert.deepEqual(leave!.forbids[0]!.window, span(today, '2014-05-24'));
  const [glance] = told(
    viewWith({ openOn: later, changesAct: 0.6, questions: [{ ask: 'room', chance: 0.02, places: [7, 10] }] }),
  );
  assert.deepEqual([glance!.verb, glance!.places, glance!.chance!.chance], ['glance', [7, 10], 0.6]);
  const [long] = told(viewWith({ openFor: 'long', questions: [{ ask: 'cells', chance: 0.001, places: [7] }] }));
  assert.equal(say(long!.say, manner), 'Open between 18 and 22 May: last opened on 8 May.');
});

test('A31 says nothing where the model has not spoken, of another day, in the cold months, or where a look does harm', () => {
  assert.deepEqual(told(aView()), []);
  assert.deepEqual(told(viewWith({}, { foreseen: foreseenLook('2014-05-15', cells) })), []);
  assert.deepEqual(told(viewWith({}, { day: '2014-12-20', foreseen: foreseenLook('2014-12-20', cells) })), []);
  assert.deepEqual(told(viewWith({ harms: true })), []);
  assert.deepEqual(told(viewWith({}, { visits: [] })), []);
});

test('A31 takes the place of the usual days between visits, not of what was seen', () => {
  const due = viewWith({ openOn: addDays(today, 9) });
  assert.deepEqual(visitDue.advise(facts(due)), []);
  assert.equal(visitDue.advise(facts({ ...due, foreseen: null })).length, 1);
  const cut = viewWith({}, { visits: [visit('2014-05-13', { cellsCut: true })] });
  assert.equal(visitDue.advise(facts(cut)).length, 1);
  const seen = viewWith({ openOn: addDays(today, 9) }, { cells: cellsOf() });
  const { kept, silenced } = advise(facts(seen));
  assert.equal(kept[0]!.rule, 'queen-cells');
  assert.ok(silenced.some(({ advice }) => advice.rule === 'worth-a-look'));
});
