/**
 * The model of a colony: its ageing beside the same in C, a visit taken in, a yard from scratch, growth with
 * days and particles. Ratios are of one run; times are of this
 * machine. The whole day with its noise beside C is `model-day.ts`, a yard from what was kept
 * `kept.ts`.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ageAdults, ageBrood } from '../../src/colony/engine/ageing.ts';
import { engineConstants, unknownGround } from '../../src/colony/engine/constants.ts';
import { adultsAt, broodAt, part, particleSize } from '../../src/colony/engine/particle.ts';
import { beginColony, crowdOf, engineSetup, meet } from '../../src/colony/engine/run.ts';
import { thinned } from '../../src/colony/engine/thin.ts';
import { printedBook } from '../../src/figures/book.ts';
import { dayNumber } from '../../src/numbers/day.ts';
import { goOn } from '../../src/numbers/particle-filter.ts';
import { middle, timed } from './timed.ts';
import { yardFromScratch } from './yard.ts';

const constants = engineConstants(printedBook, { ...unknownGround, latitude: 41, comb: { built: 40_000, most: 80_000 } });
const setup = engineSetup(constants, printedBook);
const may = dayNumber('2014-05-01');

ageing(2000, 200);
visit();
growth();
await yard();

/** A laying of 1000 eggs and one more for each particle, no chance, bees worn in full. */
function ageing(count: number, days: number): void {
  const values = new Float64Array(count * particleSize);
  for (let p = 0; p < count; p += 1) values[p * particleSize + part.flightAge] = constants.forageAge;
  const run = (): void => {
    for (let day = 0; day < days; day += 1) {
      for (let p = 0; p < count; p += 1) {
        const at = p * particleSize;
        ageAdults(constants, values, at, 1, 0, ageBrood(constants, values, at, 1000 + p));
      }
    }
  };
  run();
  for (let p = 0; p < count; p += 1) values.fill(0, p * particleSize + broodAt, (p + 1) * particleSize);
  const ms = timed(run);
  let sum = 0;
  for (let p = 0; p < count; p += 1) for (let i = broodAt; i < particleSize; i += 1) sum += values[p * particleSize + i]!;
  const c = inC(count, days);
  if (c === null) return console.log(`ageing of ${count} × ${days} days: ${ms.toFixed(0)} ms; no gcc to stand beside it`);
  const off = Math.abs(sum / c.sum - 1);
  const times = `${(ms / c.ms).toFixed(1)} times (at most 6)`;
  const apart = `sums ${off.toExponential(1)} apart (at most 1e-9)`;
  console.log(`ageing of ${count} × ${days} days: ${ms.toFixed(0)} ms, C -O3 ${c.ms.toFixed(0)} ms: ${times}; ${apart}`);
}

function inC(count: number, days: number): { readonly ms: number; readonly sum: number } | null {
  const folder = mkdtempSync(join(tmpdir(), 'festoon-bench-'));
  try {
    const program = join(folder, 'ageing');
    execFileSync('gcc', ['-O3', '-o', program, fileURLToPath(new URL('./c/ageing.c', import.meta.url)), '-lm']);
    const c = constants;
    const given = [count, days, particleSize, broodAt, adultsAt, c.hatchAge, c.sealAge, c.forageAge];
    const losses = [c.houseLoss, c.fieldLoss, c.hatches, c.isSealed, c.emerges];
    const out = execFileSync(program, [...given, ...losses].map(String), { encoding: 'utf8' });
    const [ms, sum] = out.trim().split(' ').map(Number);
    return { ms: ms!, sum: sum! };
  } catch {
    return null;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function visit(): void {
  const crowd = { ...crowdOf(printedBook), wideVisits: 0 };
  const begun = beginColony(setup, may - 42, crowd, 1);
  const left = { ...begun, cloud: thinned(goOn(setup, begun.cloud, may - 10, 1), crowd.usual), visits: 3 };
  const seen = { bees: { count: 12_000 }, sealed: { count: 11_000 }, open: { count: 8000 }, honeyKg: { count: 6 } };
  const once = (): unknown => meet(setup, left, { day: may, visit: 'v', seen }, crowd, 1);
  once();
  console.log(`one visit after 10 days, ${crowd.usual} particles: ${middle(5, once).toFixed(0)} ms (at most 50)`);
}

function growth(): void {
  const cloud = beginColony(setup, may, { ...crowdOf(printedBook), wide: 2000 }, 1).cloud;
  const of = (particles: number, days: number): string =>
    `${particles} × ${days}: ${middle(3, () => goOn(setup, thinned(cloud, particles), may + days, 1)).toFixed(0)} ms`;
  console.log(`days: ${[25, 50, 100].map((days) => of(1000, days)).join(', ')}`);
  console.log(`particles: ${[500, 1000, 2000].map((particles) => of(particles, 50)).join(', ')}`);
}

async function yard(): Promise<void> {
  for (const workers of [1, 2]) {
    const { colonies, ms } = await yardFromScratch(workers);
    const asked = workers === 2 ? ' (at most 20)' : '';
    console.log(`${colonies} colonies × 2 years from scratch, ${workers} at work: ${(ms / 1000).toFixed(1)} s${asked}`);
  }
}
