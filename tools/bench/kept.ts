/**
 * The colonies of the demo yard from what was kept of them, as when the screens are opened again: alone in a process,
 * as the worker of the screens is, because what other benchmarks leave behind slows it by a quarter.
 */
import { readFileSync } from 'node:fs';
import { readJournal } from '../../src/apiary.ts';
import { foreseeColony } from '../../src/apiary/foresee.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { middle, timed } from './timed.ts';

const day = '2014-05-16';
const rounds = 5;

const lines = readFileSync(new URL('../../examples/ferry-road.jsonl', import.meta.url), 'utf8')
  .trim()
  .split('\n');
const apiary = readJournal(
  lines.map((line) => JSON.parse(line) as Entry),
  day,
);
const colonies = [...apiary.state.colonies.values()].filter((one) => one.ended === null);
// What was seen once or twice is not kept: it costs no more to live through again.
const forms = colonies.flatMap(({ id }) => {
  const { kept } = foreseeColony(apiary, id, day)!;
  return kept === null ? [] : [{ id, kept }];
});
const again = ({ id, kept }: (typeof forms)[number]): unknown => foreseeColony(apiary, id, day, kept);
const first = forms.map((form) => timed(() => again(form)));
const times = forms.map((form) => middle(rounds, () => again(form)));
const mean = (all: readonly number[]): string => (all.reduce((a, b) => a + b, 0) / all.length).toFixed(0);
console.log(
  `from what was kept: ${mean(times)} ms a colony (at most 100), the slowest ${Math.max(...times).toFixed(0)}; ` +
    `the first time ${mean(first)}; kept ${sizeMb().toFixed(2)} MB (at most 1)`,
);

function sizeMb(): number {
  const { kept } = forms[0]!;
  const { values, logShares, roots } = kept.left;
  const rest = JSON.stringify({ ...kept, left: { ...kept.left, values: 0, logShares: 0, roots: 0 } }).length;
  return (values.byteLength + logShares.byteLength + roots.byteLength + rest) / 2 ** 20;
}
