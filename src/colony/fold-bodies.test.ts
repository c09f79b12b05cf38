/** A comb that fell, and how combs hang at the walls, through the fold. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../figures/book.ts';
import { sampleYard } from './for-tests.ts';
import { viewOf } from './view-of.ts';

const brood = { brood: 4, food: 2, eggs: 'seen' } as const;

function fallen(done: string, place = 2) {
  const yard = sampleYard();
  const hive = yard.hive('2014-05-01');
  const colony = yard.colony('2014-05-01', hive);
  yard.visit('2014-05-05', colony, hive, { 1: brood, 2: brood }, null);
  yard.add('comb-fell', '2014-05-06', { colony, hive, visit: null, place, what: 'brood', done });
  const { draft, faults } = yard.fold();
  const [, second] = [...draft.combs.values()];
  const at = draft.combs.get(draft.placed.get(hive)?.get(2) ?? '');
  return { draft, faults: faults.map(({ code, path }) => `${code} ${path}`), second, at, colony };
}

test('C96 taken out: the comb is in the box and its bar bare; left inside: it hangs nowhere; hung up again: its size is unknown', () => {
  const out = fallen('taken out');
  assert.deepEqual([out.faults, out.second?.at, out.at?.built], [[], { kind: 'away', where: 'box' }, 0]);
  assert.deepEqual(fallen('left inside').second?.at, { kind: 'away', where: 'lost' });
  const hung = fallen('hung up again');
  assert.deepEqual([hung.at?.id, hung.at?.built], [hung.second?.id, null]);
  assert.deepEqual(
    hung.draft.events.get(hung.colony)?.map(({ event }) => event.kind),
    ['comb fell'],
  );
});

test('C96 of a place that the trough does not have it is refused', () => {
  assert.deepEqual(fallen('taken out', 30).faults, ['place-beyond-trough place']);
});

test('C97 how a comb hangs at the walls stays as it was seen last, and was looked at by nobody until it was', () => {
  const yard = sampleYard();
  const hive = yard.hive('2014-05-01');
  const colony = yard.colony('2014-05-01', hive);
  const seen = (): unknown => viewOf(yard.fold().draft, colony, '2014-05-20', printedBook).bars[0]?.attached;
  yard.visit('2014-05-05', colony, hive, { 1: brood });
  assert.equal(seen(), undefined);
  yard.visit('2014-05-08', colony, hive, { 1: { ...brood, attached: 'attached' } });
  yard.visit('2014-05-12', colony, hive, { 1: brood });
  assert.equal(seen(), 'attached');
  yard.visit('2014-05-15', colony, hive, { 1: { ...brood, attached: 'cut' } });
  assert.equal(seen(), 'cut');
});
