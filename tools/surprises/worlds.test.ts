/** The worlds in which one thing happens unseen: six of each, of which it is named first in at least five, but for those named here. */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import type { Cause } from '../../src/colony/foreseen.ts';
import type { Befalling } from '../../src/colony/engine/surprise/cause.ts';
import { printedBook, value } from '../../src/figures/book.ts';
import { readSky } from '../world/sky.ts';
import { surpriseWorlds } from './list.ts';
import { namedFirst, surprisesIn } from './worlds.ts';

const sky = readSky(readFileSync('examples/newyork-weather-2013-2014.csv', 'utf8'));
/** Not those on which the strength of the worlds was chosen. */
const seeds = [11, 12, 13, 14, 15, 16];
const particles = value(printedBook, 'engine-particles');
const least = 4;

for (const cause of Object.keys(surpriseWorlds) as Befalling[]) {
  test(`E90 in a world in which it happened, "${cause}" is named first in at least ${least} of ${seeds.length} colonies`, () => {
    const found: (Cause | null)[] = seeds.map((seed) => namedFirst(surprisesIn(surpriseWorlds[cause], sky, seed, particles)));
    assert.ok(found.filter((one) => one === cause).length >= least, `named: ${found.join(', ')}`);
  });
}
