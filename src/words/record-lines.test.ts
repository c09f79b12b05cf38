/** The record of forecasts as sentences: hand-written examples. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { madeUpRecord } from '../colony/record.contract.ts';
import type { RecordScore } from '../colony/record.ts';
import { briefLine, formatFactor, methodLines, scoreHead, scoreLines } from './record-lines.ts';

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
  assert.equal(first, '“As last time” is typically off by a factor of 1.2, model and trend together by 1.25: no better.');
  assert.match(second ?? '', /^19 of 24/);
  const ownModel = { ...score, shown: 'engine', isBetter: false, logRmse: { ...off, 'as last time': Math.log(1.2) } } as const;
  assert.match(scoreLines(ownModel)[0] ?? '', /, the model by 1\.22: no better\.$/, 'it names the way that was scored');
});

test('Wd12 too few to say is said, and a score of nothing says nothing', () => {
  assert.match(scoreLines({ ...score, isBetter: null, logRmse: off })[1] ?? '', /too few to say which is better\.$/);
  assert.match(scoreLines({ ...score, logRmse: { ...off, blend: null } })[1] ?? '', /^Too few/);
  assert.deepEqual(scoreLines({ ...score, n: 0, logRmse: { ...off, blend: null } }), []);
});

test('Wd12 in one line it says the same, “as last time” first where that is no worse', () => {
  const at21 = { ...score, horizonDays: 21, logRmse: off };
  assert.equal(briefLine(at21), 'About 21 days ahead: 19 of 24 inside; off by ×1.25, “as last time” by ×1.4: better.');
  assert.equal(
    briefLine({ ...at21, isBetter: false, logRmse: { ...off, 'as last time': Math.log(1.2) } }),
    'About 21 days ahead: “as last time” off by ×1.2, model and trend together by ×1.25: no better. 19 of 24 inside.',
  );
  assert.match(briefLine({ ...at21, isBetter: null }), /too few to say which is better\.$/);
  assert.match(briefLine({ ...at21, logRmse: { ...off, blend: null } }), /19 of 24 inside; too few to say more\.$/);
});

test('Wd12 a factor has two decimals, so that small errors are told apart', () => {
  assert.equal(formatFactor(Math.log(1.05)), '1.05');
  assert.equal(formatFactor(Math.log(2)), '2');
});

test('Wd12 ways of foretelling are ordered by how far off they were; one that told nothing is left out', () => {
  assert.deepEqual(methodLines({ ...score, logRmse: { ...off, challenger: null } }), [
    { method: 'the model', factor: '×1.22' },
    { method: 'model and trend together, drawn above', factor: '×1.25' },
    { method: 'as last time', factor: '×1.4' },
  ]);
});
