/** What the model tells, as sentences: hand-written examples. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { madeUpDay, madeUpForeseen } from '../colony/foreseen.contract.ts';
import type { Foreseen, Surprise } from '../colony/foreseen.ts';
import { formatTenths } from './format-chance.ts';
import { comingLines, hintLine, lookLines, movedLines, statesToSay, surpriseLines } from './foreseen-lines.ts';
import type { Manner } from './say.ts';

const manner: Manner = { language: 'en', units: 'metric', hours: 24, today: madeUpDay };
const told = madeUpForeseen();

test('Wd10 a surprise says what was seen and what was expected, then its rival explanations, the most likely first, out of ten', () => {
  const [bees] = told.surprises;
  assert.ok(bees);
  assert.deepEqual(surpriseLines(bees, manner), {
    what: '9,800 bees seen; expected 15 thousand (12 to 19).',
    because: ['it swarmed: about 6 in 10', 'it was counted by another hand: about 2 in 10', 'just chance: about 2 in 10'],
  });
});

test('Wd10 a surprise of signs says how likely it was before the visit', () => {
  const [, eggs] = told.surprises;
  assert.ok(eggs);
  const said = (change: Partial<Surprise>) => surpriseLines({ ...eggs, ...change }, manner).what;
  assert.equal(said({}), 'No eggs were seen; before the visit about 1 in 10 that none would be.');
  assert.equal(said({ z: 2 }), 'Eggs were seen; before the visit about 1 in 10 that they would be.');
  assert.equal(
    said({ what: 'cells', z: 2, seen: 0.01 }),
    'More queen cells than expected; before the visit fewer than 1 in 10 that there would be so many.',
  );
  assert.equal(
    said({ what: 'youngest' }),
    'The youngest brood was older than expected; before the visit about 1 in 10 that it would be.',
  );
});

test('Wd10 honey is said in the keeper’s own unit, and a bar by its place', () => {
  const honey: Surprise = {
    what: 'honey',
    place: null,
    expected: { low: 4, likely: 6, high: 9 },
    seen: 2,
    z: -2.5,
    because: [{ cause: 'robbed', chance: 1 }],
  };
  assert.equal(surpriseLines(honey, manner).what, '2 kg of honey seen; expected 6 kg (4 to 9).');
  assert.equal(surpriseLines(honey, { ...manner, units: 'US' }).what, '4.4 lb of honey seen; expected 13 lb (8.8 to 20).');
  assert.equal(
    surpriseLines({ ...honey, what: 'bar', place: 7 }, manner).what,
    'The comb at place 7 holds otherwise than expected: 2 of eight, where 6 (4 to 9) were expected.',
  );
});

test('E177 where combs probably hang is said by both places and out of ten', () => {
  const moved = [
    { today: 5, last: 6, chance: 0.72 },
    { today: 6, last: 5, chance: 0.97 },
  ];
  assert.deepEqual(movedLines(moved, manner), [
    'At place 5 now is the comb that hung at place 6: about 7 in 10.',
    'At place 6 now is the comb that hung at place 5: more than 9 in 10.',
  ]);
});

test('Wd11 what may come is ordered by chance, in words and out of ten, with its days and what would settle it', () => {
  const lines = comingLines(told.coming, manner);
  assert.deepEqual(
    lines.map((line) => [line.what, line.chance]),
    [
      ['The brood is hemmed in', 'unlikely, about 3 in 10'],
      ['It swarms', 'unlikely, about 3 in 10'],
      ['The trough is full', 'very unlikely, about 1 in 10'],
      ['Food runs out', 'very unlikely, fewer than 1 in 10'],
    ],
  );
  assert.equal(
    lines[1]?.more,
    'If so, between 20 May and 2 June. What would settle it: queen cells, eggs and whether bees cover the last comb.',
  );
  assert.equal(lines[3]?.more, '');
});

test('Wd11 whether a look is worth it: today, from a day on, or on none of the days ahead', () => {
  const first = (change: Partial<Foreseen['look']>) => lookLines({ ...told.look, ...change }, madeUpDay, 21, manner)[0];
  assert.equal(first({}), 'Opening is worth it from 24 May.');
  assert.equal(first({ openOn: madeUpDay }), 'Opening is worth it today.');
  assert.equal(first({ openOn: null }), 'No day of the next 21 days asks for opening it.');
  assert.deepEqual(lookLines(told.look, madeUpDay, 21, manner).slice(1), [
    'About 2 in 10 that a look today changes what you do.',
    'Are there eggs? The least set that answers: places 4, 5 and 6.',
    'Are there queen cells? The least set that answers: places 3 to 7.',
  ]);
});

test('Wd11 states that are hardly likely are said together, and all chances are still there', () => {
  const { said, rest } = statesToSay([
    { state: 'laying', chance: 0.9 },
    { state: 'failing', chance: 0.06 },
    { state: 'none', chance: 0.03 },
    { state: 'virgin', chance: 0.01 },
  ]);
  assert.deepEqual(
    said.map((one) => one.state),
    ['laying', 'failing'],
  );
  assert.ok(Math.abs(rest - 0.04) < 1e-12);
});

test('Wd11 the hint for the round is the chance behind what is asked first, and says nothing where that is small', () => {
  assert.equal(hintLine(told, manner), 'About 5 in 10 that no queen lays.');
  const asks = (ask: 'cells' | 'stores' | 'room') =>
    hintLine({ ...told, look: { ...told.look, questions: [{ ask, chance: 0.3, places: [] }] } }, manner);
  assert.equal(asks('room'), 'About 3 in 10 that the brood is hemmed in within 21 days.');
  assert.equal(asks('stores'), null);
  assert.equal(asks('cells'), null);
  assert.equal(hintLine({ ...told, look: { ...told.look, questions: [] } }, manner), null);
});

test('Wd7 out of ten alone, within a sentence and at its head', () => {
  assert.deepEqual(
    [0.02, 0.31, 0.97].map((chance) => formatTenths(chance, manner)),
    ['fewer than 1 in 10', 'about 3 in 10', 'more than 9 in 10'],
  );
  assert.equal(formatTenths(0.31, manner, true), 'About 3 in 10');
  assert.equal(formatTenths(1.0000000000000004, manner), 'more than 9 in 10', 'a sum of chances');
  assert.throws(() => formatTenths(31, manner), /chance/);
});
