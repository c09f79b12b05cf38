/** `npm run devices -- [--seeds N] [--from S] [--browser]`: one yard on several devices, N seeds from S on; 1 when anything was found. */
import { parseArgs } from 'node:util';
import { runDevices } from './run-devices.ts';

const { values } = parseArgs({
  options: {
    seeds: { type: 'string', default: '1000' },
    from: { type: 'string', default: '1' },
    browser: { type: 'boolean', default: false },
  },
});
const [seeds, from] = [Number(values.seeds), Number(values.from)];
if (!Number.isInteger(seeds) || !Number.isInteger(from) || seeds < 1 || from < 0) {
  console.error(`seeds: ${values.seeds} from ${values.from}; whole numbers from 1 are expected`);
  process.exit(2);
}
const makeCopy = values.browser ? (await import('./browser-copy.ts')).browserCopy : undefined;
const sums = { steps: 0, entries: 0, setBacks: 0, conflicts: 0, found: 0 };
for (let seed = from; seed < from + seeds; seed += 1) {
  const run = await runDevices(seed, makeCopy === undefined ? {} : { makeCopy });
  for (const name of ['steps', 'entries', 'setBacks', 'conflicts'] as const) sums[name] += run[name];
  sums.found += run.found.length > 0 ? 1 : 0;
  for (const what of run.found) console.log(`seed ${seed}: ${what}`);
}
console.log(
  `${seeds} seeds: ${sums.steps} steps, ${sums.entries} entries, ${sums.setBacks} times set back, ${sums.conflicts} rival corrections; ` +
    `${sums.found} seeds with something found`,
);
process.exit(sums.found > 0 ? 1 : 0);
