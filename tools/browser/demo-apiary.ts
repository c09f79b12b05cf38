/** The demo yard of the tree, folded to its own today: what a browser test holds the screens against. */
import { readFileSync } from 'node:fs';
import { type Apiary, demoDay, readJournal } from '../../src/apiary.ts';
import type { Entry } from '../../src/journal/entry.ts';

export function demoApiary(): Apiary {
  const lines = readFileSync('examples/ferry-road.jsonl', 'utf8').trim().split('\n');
  return readJournal(
    lines.map((line) => JSON.parse(line) as Entry),
    demoDay,
  );
}
