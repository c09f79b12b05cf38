/** The score of the queen's state: it is lawful, and on made-up colonies the filter tells more than the last look. */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { readSky } from '../world/sky.ts';
import { queenColony } from './queen-colony.ts';
import { scoreQueens } from './queen-state.ts';

const sky = readSky(readFileSync('examples/newyork-weather-2013-2014.csv', 'utf8'));

test('E69 on made-up colonies the exact filter gives the true state of the queen a higher chance than as last time does', () => {
  const score = scoreQueens(6, 500, sky);
  assert.ok(score.days > 1200 && score.colonies > 3);
  assert.ok(score.filter < score.asLastTime, `${score.filter} ${score.asLastTime}`);
  assert.ok(score.difference < 0, `${score.difference}`);
  assert.ok(score.calibration.every(({ said, was }) => Number.isFinite(said) && was >= 0 && was <= 1));
});

test('E69 a made-up colony is the same for the same seed, its notes are in order and lie in its days', () => {
  const colony = queenColony(3, sky);
  assert.deepEqual([...queenColony(3, sky).truth], [...colony.truth]);
  assert.ok(colony.notes.length > 10);
  assert.deepEqual(
    colony.notes.map(({ day }) => day),
    colony.notes.map(({ day }) => day).sort(),
  );
  assert.ok(colony.notes.every(({ day }) => colony.truth.has(day)));
});
