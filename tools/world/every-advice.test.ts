/**
 * The demo yard shows every rule of advice on some day of its two seasons, and on its own today the
 * story that the first screen tells. It says where each can be seen, and fails when a rule has no day.
 */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { rules } from '../../src/advice/list.ts';
import { demoDay, type Picture, pictureOf, readJournal } from '../../src/apiary.ts';
import { foreseeAll, toldOf } from '../../src/apiary/foresee.ts';
import type { Entry } from '../../src/journal/entry.ts';
import type { Day } from '../../src/numbers/day.ts';
import { demoToday } from './ferry-road.ts';

const journal = readFileSync('examples/ferry-road.jsonl', 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as Entry);

/** Rule, the day to turn to, the colony of which it speaks. */
const shown: readonly (readonly [rule: string, day: Day, colony: string])[] = [
  ['give-room', '2014-05-16', 'Alder'],
  ['new-swarm', '2014-05-16', 'Rowan'],
  ['queen-cells', '2014-05-05', 'Hazel'],
  ['no-eggs', '2014-05-01', 'Birch'],
  ['leave-shut', '2014-05-16', 'Hazel'],
  ['laying-workers', '2014-05-16', 'Birch'],
  ['stores-low', '2014-04-12', 'Willow'],
  ['poor-pattern', '2014-05-11', 'Linden back'],
  ['temper', '2013-06-20', 'Linden'],
  ['visit-due', '2014-05-16', 'Willow'],
  ['stop-sign', '2013-08-28', 'Birch'],
  ['ask-sign', '2014-05-16', 'Linden back'],
  ['comb-fell', '2013-07-14', 'Willow'],
  ['bee-escape', '2013-09-14', 'Willow'],
  ['honey-barrier', '2013-06-15', 'Alder'],
  ['bare-bars', '2013-06-30', 'Birch'],
  ['crossed-comb', '2013-07-03', 'Birch'],
  ['robbers', '2013-09-17', 'Willow'],
  ['autumn-order', '2013-09-10', 'Alder'],
  ['spring-look', '2014-03-06', 'Alder'],
  ['young-colony', '2013-09-04', 'Hazel back'],
  ['weak-colony', '2013-09-24', 'Hazel back'],
  ['old-queen', '2013-05-10', 'Birch'],
  ['after-change', '2013-05-22', 'Linden back'],
  ['split-ready', '2013-07-06', 'Willow'],
  ['mark-queen', '2013-08-02', 'Linden back'],
];

const pictures = new Map<Day, Picture>();

function on(day: Day): Picture {
  const found = pictures.get(day) ?? pictureOf(readJournal(journal, day), day);
  pictures.set(day, found);
  return found;
}

function given(day: Day, colony: string): readonly string[] {
  const picture = on(day);
  const id = picture.colonies.find((view) => view.name === colony)?.colony;
  return picture.advice.filter((advice) => advice.colony === id).map((advice) => advice.rule);
}

for (const [rule, day, colony] of shown) {
  test(`Y9 ${rule} is advised of ${colony} on ${day}`, () => {
    assert.ok(given(day, colony).includes(rule), `${colony} on ${day}: ${given(day, colony).join(', ') || 'nothing'}`);
  });
}

/** What the model alone says is shown with the model; it is asked of one colony, because it takes its time. */
const byModel = { rule: 'worth-a-look', day: '2014-05-16', colony: 'Linden' } as const;

test(`Y9 ${byModel.rule} is advised of ${byModel.colony} on ${byModel.day}, where the model speaks`, () => {
  const { rule, day, colony } = byModel;
  const apiary = readJournal(journal, day);
  const id = on(day).colonies.find((view) => view.name === colony)!.colony;
  const advice = pictureOf(apiary, day, Infinity, toldOf(foreseeAll(apiary, day, (one) => one.id === id))).advice;
  assert.ok(
    advice.some((one) => one.rule === rule && one.colony === id),
    advice.map((one) => one.rule).join(', '),
  );
});

test('Y9 no rule is without a day in the demo', () => {
  const there = new Set<string>([...shown.map(([rule]) => rule), byModel.rule]);
  assert.deepEqual(
    rules.map((rule) => rule.key).filter((key) => !there.has(key)),
    [],
  );
});

test('Y9 today the round holds the seven living colonies, each with something said', () => {
  assert.equal(demoToday, demoDay);
  const today = on(demoToday);
  assert.equal(today.round.length, 7);
  for (const stop of today.round) assert.ok(stop.first !== null, stop.colony);
});
