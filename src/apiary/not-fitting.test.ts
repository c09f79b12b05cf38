/** What a correction would make impossible, asked before it is written. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { sampleYard } from '../colony/for-tests.ts';
import { takenBack } from '../journal/no-fit.ts';
import { newlyUnfit, notFitting } from './not-fitting.ts';

test('J84 before an entry is taken back it can be asked what would no longer fit; what does not fit already is not counted', () => {
  const yard = sampleYard();
  const hive = yard.hive('2014-04-01');
  const began = yard.entries.length;
  const colony = yard.colony('2014-04-02', hive);
  yard.add('feeding', '2014-04-03', { colony: yard.id(), what: 'candy', amount: null });
  const fed = yard.add('feeding', '2014-04-04', { colony, what: 'candy', amount: null });
  const back = takenBack(yard.entries[began]!, yard.entries);
  assert.deepEqual(newlyUnfit(yard.entries, back), [fed.id]);
  assert.deepEqual(newlyUnfit(yard.entries, takenBack(fed, yard.entries)), []);
  assert.equal(notFitting([...yard.entries, back]).length, 2);
});
