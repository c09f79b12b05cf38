/**
 * Simulation-based calibration of the colony's model with its filter: colonies drawn from the model itself,
 * 24 weekly visits, and how often the ranges hold the truth.
 *
 * `npm run calibrate -- [--replicates N] [--particles N] [--workers N] [--seed N] [--json]`
 */
import { parseArgs } from 'node:util';
import { printedBook, value } from '../../src/figures/book.ts';
import { replicatesOnWorkers } from './workers.ts';
import { asText, summarise } from './summary.ts';
import { weekly } from './truth.ts';

const { values } = parseArgs({
  options: {
    replicates: { type: 'string', default: '1000' },
    particles: { type: 'string', default: String(value(printedBook, 'engine-particles')) },
    workers: { type: 'string', default: '2' },
    seed: { type: 'string', default: '1' },
    json: { type: 'boolean', default: false },
  },
});

function whole(name: 'replicates' | 'particles' | 'workers' | 'seed'): number {
  const number = Number(values[name]);
  if (!Number.isInteger(number) || number < 1) throw new Error(`--${name}: a whole number above 0, not ${values[name]}`);
  return number;
}

const effort = { plan: weekly, particles: whole('particles'), seed: whole('seed') };
const started = performance.now();
const placed = await replicatesOnWorkers(effort, whole('replicates'), whole('workers'));
const seconds = (performance.now() - started) / 1000;
const summary = summarise(placed);
console.log(values.json ? JSON.stringify({ ...summary, ...effort, seconds }) : asText(summary, { ...effort, seconds }));
process.exitCode = summary.ok ? 0 : 1;
