/**
 * Writes the demo yard: `node --import tsx tools/make-demo.ts` tells the story of Ferry Road again, adds to it the
 * forecasts that the program would have issued after each visit, and puts the journal into `examples`. The same seed
 * and the same program give the same bytes; tests compare them.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { issuedForecasts } from './demo/issued-forecasts.ts';
import { ferryRoadEntries } from './world/ferry-road.ts';
import { linesOf } from './world/scribe.ts';

const began = performance.now();
const told = ferryRoadEntries(readFileSync('examples/newyork-weather-2013-2014.csv', 'utf8'));
const forecasts = issuedForecasts(told);
const text = linesOf([...told, ...forecasts]);
writeFileSync('examples/ferry-road.jsonl', text);
const seconds = ((performance.now() - began) / 1000).toFixed(0);
process.stdout.write(
  `examples/ferry-road.jsonl: ${told.length} entries and ${forecasts.length} forecasts, ${text.length} bytes, in ${seconds} s\n`,
);
