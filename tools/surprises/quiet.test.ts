/** Worlds in which nothing happens but the season: nothing special may be made of them, or every alarm is worth nothing. */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { printedBook, value } from '../../src/figures/book.ts';
import { readSky } from '../world/sky.ts';
import { quietWorld } from './list.ts';
import { namedFirst, surprisesIn } from './worlds.ts';

const sky = readSky(readFileSync('examples/newyork-weather-2013-2014.csv', 'utf8'));
const days = ['2013-05-16', '2013-06-07', '2013-07-01', '2013-07-25', '2013-08-17'];
const seeds = [21, 22, 23, 24];
const particles = value(printedBook, 'engine-particles');

test('E91 at nine of ten quiet visits nothing special is named first, from May to August', () => {
  const found = days.flatMap((day) => seeds.map((seed) => namedFirst(surprisesIn(quietWorld(day), sky, seed, particles))));
  const special = found.filter((cause) => cause !== null);
  assert.ok(special.length <= found.length / 10, `named: ${special.join(', ')} of ${found.length}`);
});
