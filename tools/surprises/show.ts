/**
 * `node --import tsx tools/surprises/show.ts`: the worlds with what was named first in each colony, and one colony
 * after its swarm with every explanation in numbers, as docs/surprises.md has them.
 */
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { printedBook, value } from '../../src/figures/book.ts';
import type { Surprise } from '../../src/colony/foreseen.ts';
import type { Befalling } from '../../src/colony/engine/surprise/cause.ts';
import { surpriseLines } from '../../src/words/foreseen-lines.ts';
import { readSky } from '../world/sky.ts';
import { surpriseWorlds } from './list.ts';
import { namedFirst, surprisesIn } from './worlds.ts';

const seeds = [11, 12, 13, 14, 15, 16];
const particles = value(printedBook, 'engine-particles');
/** The colony of the worlds' first six that is told in full. */
export const workedSeed = 16;

/** The surprises of one colony, by the sky of the demo yard. */
export function workedSurprises(cause: Befalling, seed: number): readonly Surprise[] {
  const sky = readSky(readFileSync('examples/newyork-weather-2013-2014.csv', 'utf8'));
  return surprisesIn(surpriseWorlds[cause], sky, seed, particles);
}

function namedRows(): readonly string[] {
  return (Object.keys(surpriseWorlds) as Befalling[]).map((cause) => {
    const found = seeds.map((seed) => namedFirst(workedSurprises(cause, seed)) ?? 'nothing special');
    const others = found.filter((one) => one !== cause);
    return `${cause}: ${found.length - others.length} of ${found.length}${others.length === 0 ? '' : `; else ${others.join(', ')}`}`;
  });
}

function oneInNumbers(surprise: Surprise): readonly string[] {
  const chances = surprise.because.map(({ cause, chance }) => `${cause} ${chance.toFixed(3)}`).join(', ');
  return [surpriseLines(surprise).what, `  ${surprise.z.toFixed(2)} standard deviations; ${chances}`];
}

function main(): void {
  const one = workedSurprises('swarmed', workedSeed).flatMap(oneInNumbers);
  console.log([...namedRows(), '', ...one].join('\n'));
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) main();
