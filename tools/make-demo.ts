/**
 * Writes the demo yard: `node --import tsx tools/make-demo.ts` tells the story of Ferry Road again and
 * puts its journal into `examples`. The same seed gives the same bytes; a test compares them.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { ferryRoad } from './world/ferry-road.ts';

const text = ferryRoad(readFileSync('examples/newyork-weather-2013-2014.csv', 'utf8'));
writeFileSync('examples/ferry-road.jsonl', text);
process.stdout.write(`examples/ferry-road.jsonl: ${text.trim().split('\n').length} entries, ${text.length} bytes\n`);
