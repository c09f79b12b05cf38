/**
 * Scores many made-up trials of spring splits, of two worlds that are not the model, over scales of counting,
 * places, dates, intervals and ways to a queen: `node --import tsx tools/score/try-splits.ts [TRIALS [SEED]]`.
 * A line for each trial: logRMSE of the blend less that of "as last time" by interval; at the end, all together.
 */
import { argv } from 'node:process';
import { printedBook } from '../../src/figures/book.ts';
import { type Case, casesOf } from './intervals.ts';
import { madeUpSplits, readWorldSky } from './made-up-splits.ts';
import { methods } from './methods.ts';
import { readCounts } from './read-counts.ts';
import { reportOf, type Scores } from './report.ts';
import { splitPlan } from './split-plan.ts';
import { hash32 } from '../world/chance.ts';

const effort = { particles: 300, seed: 1, book: printedBook };
const colonies = 24;
const usualTrials = 24;

const trials = Number(argv[2] ?? usualTrials);
const seed = Number(argv[3] ?? 1);
const sky = readWorldSky();
const all: Case[] = [];
const tally = { intervals: 0, better: 0, pooled: 0, surely: 0, held: 0 };
for (let n = 0; n < trials; n += 1) {
  const plan = splitPlan(seed, n, colonies);
  const files = madeUpSplits(plan, sky);
  const read = readCounts(files.counts, files.starts);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const cases = casesOf(read.value, effort, hash32).filter(({ target }) => target === 'adult_bees');
  all.push(...cases.map((one) => ({ ...one, colony: `${n} ${one.colony}` })));
  const { intervals, pooled } = reportOf(cases, seed).targets.adult_bees;
  const gaps = intervals.map(({ difference }) => difference.value ?? 0);
  const held = pooled.methods.blend.cover80 ?? 0;
  tally.intervals += gaps.length;
  tally.better += gaps.filter((gap) => gap < 0).length;
  tally.pooled += Number((pooled.difference.value ?? 0) <= -0.04);
  tally.surely += Number((pooled.difference.hi95 ?? 0) < 0);
  tally.held += Number(held >= 0.72 && held <= 0.95);
  const where = `${plan.name}: ${plan.ways.join('+')}, scale ${plan.scale}, days ${plan.visits.join(' ')}`;
  console.log(`${where}: ${gaps.map(three).join(' ')}, together ${three(pooled.difference.value)}, 80 % held ${two(held)}`);
}
const { intervals, pooled } = reportOf(all, seed).targets.adult_bees;
for (const { k, ...scores } of intervals) console.log(line(`interval ${k}`, scores));
console.log(line('together', pooled));
console.log(
  `blend better in ${tally.better} of ${tally.intervals} intervals; of ${trials} trials better by 0.04 in ${tally.pooled}, ` +
    `surely better in ${tally.surely}, 80 % ranges held 0.72 to 0.95 in ${tally.held}`,
);

function line(title: string, scores: Scores): string {
  const each = methods.map((method) => {
    const { logRmse, cover80, crpsLog } = scores.methods[method];
    return `${method} ${three(logRmse)} (CRPS ${three(crpsLog)}, 80 % held ${two(cover80)})`;
  });
  return `${title}: n ${scores.n}: ${each.join(', ')}; blend less last time ${three(scores.difference.value)}`;
}

function three(number: number | null): string {
  return (number ?? 0).toFixed(3);
}

function two(number: number | null): string {
  return (number ?? 0).toFixed(2);
}
