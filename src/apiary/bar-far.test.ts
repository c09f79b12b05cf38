/** When a bar is said to lie far from what was foreseen of it: hand-worked, and never on a first visit or a guess. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { leastOfMany } from '../colony/engine/surprise/bar-surprise.ts';
import type { Reading } from '../colony/reading.ts';
import type { BarView, ColonyView } from '../colony/view.ts';
import { printedBook, value } from '../figures/book.ts';
import { bareShares } from '../hive/contents.ts';
import { normalBelow } from '../numbers/normal.ts';
import { barsForetold, farBar } from './bar-far.ts';

const brood8 = [0, 3, 5, 6, 4, 0];

function bar(place: number, change: Partial<BarView> = {}): BarView {
  const sealed = (brood8[place - 1] ?? 0) / 8;
  const honey = 2 / 8;
  const shares = { ...bareShares, empty: 1 - sealed - honey, sealed, honey };
  return { place, kind: 'comb', shares, ink: 'worked out', readOn: '2014-05-13', ...change } as BarView;
}

function view(bars: readonly BarView[], visits: readonly string[] = ['2014-05-13']): ColonyView {
  return { day: '2014-05-16', bars, visits: visits.map((day) => ({ day })) } as unknown as ColonyView;
}

const nest = brood8.map((_, i) => bar(i + 1));

function reading(place: number, brood: number | null, food: number | null = 2): Reading {
  return { place, faces: [{ face: 'both', brood8: brood, food8: food }], combClass: null } as unknown as Reading;
}

const told = barsForetold(view(nest), []);
const asForeseen = brood8.map((brood, i) => reading(i + 1, brood));

test('E162 a bar as foreseen says nothing, one without its brood is far off in brood, with rivals that sum to 1', () => {
  for (const one of asForeseen) assert.equal(farBar(told, one.place, [one], []), null);
  const found = farBar(told, 4, [reading(4, 0)], []);
  assert.deepEqual([found?.part, found?.surprise.place, found?.surprise.seen], ['brood', 4, 0]);
  assert.ok(found!.surprise.z < -2 && found!.surprise.expected!.low > 0);
  assert.equal(found!.surprise.expected!.likely, 6);
  assert.ok(Math.abs(found!.surprise.because.reduce((sum, { chance }) => sum + chance, 0) - 1) < 1e-9);
  const food = farBar(told, 1, [reading(1, 0, 8)], []);
  assert.deepEqual([food?.part, food!.surprise.z > 0, food!.surprise.seen], ['food', true, 8]);
});

test('E162 what was not read is not far off, and an eighth more or less is none', () => {
  assert.equal(farBar(told, 4, [reading(4, null, null)], []), null);
  assert.equal(farBar(told, 4, [], []), null);
  for (const by of [-1, 1]) assert.equal(farBar(told, 4, [reading(4, 6 + by)], []), null);
});

test('E166 a bar that was filled in as expected is no reading of its own', () => {
  const said = { ...reading(4, 0), method: 'as expected' } as Reading;
  assert.equal(farBar(told, 4, [said], []), null);
});

test('E163 nothing is foreseen on a first visit, of a bar never read, of a bare one, or of one that is only guessed', () => {
  assert.deepEqual(barsForetold(view(nest, []), []).bars, []);
  const odd = [
    bar(1, { readOn: null }),
    bar(2, { kind: 'bare', shares: null }),
    bar(3, { ink: 'guessed' }),
    bar(4, { kind: 'unknown', shares: null }),
    bar(5),
  ];
  const known = barsForetold(view(odd), []);
  assert.deepEqual(
    known.bars.map(({ place }) => place),
    [5],
  );
  for (const place of [1, 2, 3, 4]) assert.equal(farBar(known, place, [reading(place, 8, 0)], []), null);
  assert.notEqual(farBar(known, 5, [reading(5, 0, 0)], []), null);
});

test('E163 what was foreseen is taken before the visit: nothing seen on the way changes it', () => {
  const before = JSON.stringify(told);
  farBar(told, 4, [reading(4, 0)], []);
  assert.equal(JSON.stringify(told), before);
  assert.ok(told.bars.every(({ brood, food }) => brood.read === null && food.read === null));
  assert.deepEqual(JSON.parse(before), told, 'plain data');
});

test('E164 of several numbers one has to lie farther off, so that the chance of one false word stays that of a number alone', () => {
  const least = value(printedBook, 'surprise-least-sd');
  const outside = (z: number): number => 2 * (1 - normalBelow(z));
  assert.ok(Math.abs(leastOfMany(1, least) - least) < 1e-9);
  for (const count of [2, 13, 26, 48]) {
    const z = leastOfMany(count, least);
    assert.ok(z > leastOfMany(count - 1, least));
    assert.ok(Math.abs(1 - (1 - outside(z)) ** count - outside(least)) < 1e-9);
  }
});

test('E164 ten days after the last look a comb that lost all its brood is still far off, one that lost a third is not', () => {
  const old = barsForetold(view(nest.map((one) => ({ ...one, readOn: '2014-05-06' }))), []);
  assert.equal(farBar(old, 4, [reading(4, 4)], []), null);
  assert.equal(farBar(old, 4, [reading(4, 0)], [])?.part, 'brood');
});

test('E164 combs that changed places are named as moved once both are seen, a bar that differs by itself is not', () => {
  const chanceOfMoved = (readings: readonly Reading[], place: number): number =>
    farBar(told, place, readings, [])?.surprise.because.find(({ cause }) => cause === 'combs moved')?.chance ?? 0;
  // Places 1 and 4 changed; read from the far end, the second of them settles it.
  const order = [6, 5, 4, 3, 2, 1];
  const swapped = order.map((place) => reading(place, brood8[(place === 1 ? 4 : place === 4 ? 1 : place) - 1]!));
  const alone = order.map((place) => reading(place, place === 1 ? 6 : brood8[place - 1]!));
  assert.ok(chanceOfMoved(swapped, 1) > 0.5);
  assert.ok(chanceOfMoved(alone, 1) < chanceOfMoved(swapped, 1));
});
