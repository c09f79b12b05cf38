/** What a minute at the entrance comes to. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { countedMinute } from './minute-counted.ts';

const of = (all: string, laden: string) => countedMinute({ seconds: 60, all, laden });

test('R60 nothing typed is no count, no pollen typed is not told apart, and what is no whole number is asked again', () => {
  assert.equal(of('', ' '), 'not counted');
  assert.deepEqual(of('14', ''), { seconds: 60, in: 14, withPollen: null });
  assert.deepEqual(of(' 14 ', '0'), { seconds: 60, in: 14, withPollen: 0 });
  for (const [all, laden] of [
    ['', '3'],
    ['2', '3'],
    ['2.5', ''],
    ['many', ''],
    ['5', '-1'],
    ['12345', ''],
  ] as const)
    assert.equal(of(all, laden), null, `${all} ${laden}`);
});
