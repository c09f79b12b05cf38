/** Worked examples of stores: days of food, honey beyond a gap, winter, and what is not said. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { say } from '../words/text.ts';
import { aView, bareBar, comb, facts, range, today, total, visit } from './for-tests.ts';
import { printedBook } from '../figures/book.ts';
import { storesLow } from './rule-stores-low.ts';
import { storesLeft } from './stores-left.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
const honey = (low: number, likely: number, high: number) => ({ honeyKg: total(range(low, likely, high)) });

test('A26 days of food are honey over bees: 1.2 kg for 21,000 bees at 0.25 kg a day for 30,000', () => {
  const left = storesLeft(aView({ totals: honey(0.8, 1.2, 1.6) }), printedBook, false);
  assert.ok(left !== null);
  assert.ok(Math.abs(left.days.likely - 1.2 / (21_000 * (0.25 / 30_000))) < 1e-9);
  assert.ok(left.days.low < left.days.likely && left.days.likely < left.days.high);
});

test('A26 in winter a day is 4.5 mg a bee, and the days since the reading are gone', () => {
  const view = aView({
    day: '2014-01-20',
    visits: [visit('2014-01-10')],
    totals: { ...honey(2, 2, 2), adults: total(range(10_000, 10_000, 10_000)) },
  });
  const left = storesLeft(view, printedBook, true);
  assert.ok(left !== null && Math.abs(left.days.likely - (2 / (10_000 * 4.5e-6) - 10)) < 1e-9);
});

test('A26 little honey is said with its days; very little asks for food now, without lifting brood', () => {
  const [low] = storesLow.advise(facts(aView({ totals: honey(0.8, 1.2, 1.6) })));
  const [urgent] = storesLow.advise(facts(aView({ totals: honey(0.2, 0.3, 0.5) })));
  assert.ok(low !== undefined && urgent !== undefined);
  assert.equal(
    say(low.say, manner),
    'Feed between 16 and 20 May: 1.2 kg (0.8 to 1.6) of honey is within reach, which lasts about six days if nothing comes in.',
  );
  assert.equal(
    say(urgent.say, manner),
    'Feed between 16 and 17 May without lifting brood: 0.3 kg (0.2 to 0.5) of honey is within reach, about one day of food.',
  );
  assert.ok(urgent.weight > low.weight);
  assert.deepEqual([low.verb, urgent.verb], ['no visit', 'no visit']);
});

test('A26 honey beyond a gap is not within reach', () => {
  const bars = [comb(1, { honey: 0.1 }), comb(2, { sealed: 0.5 }), bareBar(3), comb(4, { honey: 0.6 })];
  const left = storesLeft(aView({ bars, totals: honey(2, 3, 4) }), printedBook, false);
  assert.ok(left !== null && Math.abs(left.reachKg.likely - 3 * (0.1 / 0.7)) < 1e-9);
});

test('A26 nothing is said with food enough, just fed, nectar coming in, or nothing read', () => {
  const little = honey(0.8, 1.2, 1.6);
  const fed = [{ day: '2014-05-14', entry: 'fed', event: { kind: 'fed', what: 'syrup', amount: null } }] as const;
  const room = {
    empty: range(0, 1, 2),
    emergingPerDay: range(0, 1, 2),
    laidPerDay: range(0, 1, 2),
    nectarPerDay: range(200, 300, 400),
    fullOn: null,
    bareBars: 0,
  };
  for (const view of [
    aView(),
    aView({ totals: little, events: fed }),
    aView({ totals: little, room }),
    aView({ totals: little, visits: [] }),
    aView({ totals: little, visits: [visit('2014-04-01')] }),
  ])
    assert.deepEqual(storesLow.advise(facts(view)), []);
});
