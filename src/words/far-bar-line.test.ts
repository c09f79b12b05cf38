/** The line on a bar that lies far off, by examples. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Surprise } from '../colony/foreseen.ts';
import { farBarLine } from './far-bar-line.ts';

const surprise: Surprise = {
  what: 'bar',
  place: 5,
  expected: { low: 3.8, likely: 5, high: 6.2 },
  seen: 1,
  z: -4,
  because: [
    { cause: 'combs moved', chance: 0.5 },
    { cause: 'brood dying', chance: 0.3 },
    { cause: 'just chance', chance: 0.2 },
  ],
};

test('E165 the line has place, what was seen and foreseen in eighths, and the two likeliest explanations with their chances', () => {
  assert.equal(
    farBarLine('brood', surprise),
    'Place 5 is far off: brood 1, foreseen 4 to 6. Perhaps combs moved, about 5 in 10; brood dies, about 3 in 10.',
  );
});

test('E165 where both ends of what was foreseen are the same step of the ruler it is said once', () => {
  const line = farBarLine('food', { ...surprise, expected: { low: 0, likely: 0, high: 0.4 }, seen: 3.5 });
  assert.match(line, /^Place 5 is far off: food 3\.5, foreseen 0\. Perhaps/);
});
