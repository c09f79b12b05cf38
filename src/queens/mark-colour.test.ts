/** The five colours, year by year. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { markColour } from './mark-colour.ts';

test('S31 the colour goes by the last digit of the year', () => {
  const row = ['blue', 'white', 'yellow', 'red', 'green', 'blue', 'white', 'yellow', 'red', 'green'] as const;
  for (const [digit, colour] of row.entries()) {
    assert.equal(markColour(2020 + digit), colour);
    assert.equal(markColour(1990 + digit), colour);
  }
});
