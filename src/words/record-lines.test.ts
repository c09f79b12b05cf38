/** The record of forecasts as sentences: hand-written examples. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { madeUpRecord } from '../colony/record.contract.ts';
import type { RecordScore } from '../colony/record.ts';
import { formatFactor, methodLines, scoreHead, scoreLines } from './record-lines.ts';

const [base] = madeUpRecord().scores;
assert.ok(base);
const score: RecordScore = { ...base, n: 24, inside: 19, isBetter: true, shown: 'blend' };
const off = { engine: 0.2, challenger: 0.3, blend: Math.log(1.25), 'as last time': Math.log(1.4) };

test('Wd12 a score that beats “as last time” says how many fell inside, then how far off it and “as last time” are', () => {
  assert.deepEqual(scoreLines({ ...score, logRmse: off }), [
    '19 of 24 fell inside their ranges, which should hold eight of ten.',
    'Typically off by a factor of 1.25; “as last time” by 1.4: better.',
  ]);
  assert.equal(scoreHead(score), 'Bees, about 7 days ahead');
});

test('Wd12 where it is no better, that and “as last time” come first', () => {
  const [first, second] = scoreLines({ ...score, isBetter: false, logRmse: { ...off, 'as last time': Math.log(1.2) } });
  assert.equal(
    first,
    '“As last time” is typically off by a factor of 1.2; the model by 1.25: no better, so “as last time” is said first.',
  );
  assert.match(second ?? '', /^19 of 24/);
});

test('Wd12 too few to say is said, and a score of nothing says nothing', () => {
  assert.match(scoreLines({ ...score, isBetter: null, logRmse: off })[1] ?? '', /too few to say which is better\.$/);
  assert.match(scoreLines({ ...score, logRmse: { ...off, blend: null } })[1] ?? '', /^Too few/);
  assert.deepEqual(scoreLines({ ...score, n: 0, logRmse: { ...off, blend: null } }), []);
});

test('Wd12 a factor has two decimals, so that small errors are told apart', () => {
  assert.equal(formatFactor(Math.log(1.05)), '1.05');
  assert.equal(formatFactor(Math.log(2)), '2');
});

test('Wd12 ways of foretelling are ordered by how far off they were; one that told nothing is left out', () => {
  assert.deepEqual(methodLines({ ...score, logRmse: { ...off, challenger: null } }), [
    { method: 'the model', factor: '× 1.22' },
    { method: 'both together, shown', factor: '× 1.25' },
    { method: 'as last time', factor: '× 1.4' },
  ]);
});
