/**
 * The whole day of the model with its noise beside the same in C -O3: the same generator, constants and order of
 * draws. One run of each with no chance drawn (nothing pushed, no way of the queen taken) must come out the same to
 * 1e-9; with chance all numbers are held beside each other too, and what differs is told. The ageing alone in numpy
 * stands there for the record.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type EngineConstants, engineConstants, unknownGround } from '../../src/colony/engine/constants.ts';
import { colonyModel } from '../../src/colony/engine/model.ts';
import {
  adultsAt,
  broodAt,
  droneBroodAt,
  eyeGapAt,
  eyeVarianceAt,
  part,
  particleSize,
} from '../../src/colony/engine/particle.ts';
import { slowDays, type Wander } from '../../src/colony/engine/taken/wander.ts';
import { chainStates, stateIndex } from '../../src/colony/queen-chain/states.ts';
import { chainEvents } from '../../src/colony/queen-chain/ways.ts';
import { printedBook } from '../../src/figures/book.ts';
import { dayNumber } from '../../src/numbers/day.ts';
import { begin } from '../../src/numbers/particle-filter.ts';
import { newStream, setStream } from '../../src/numbers/streams.ts';

const constants = engineConstants(printedBook, { ...unknownGround, latitude: 41, comb: { built: 40_000, most: 80_000 } });
const from = dayNumber('2014-04-01');
const seed = 1;
const [count, days] = [2000, 200];

main();
inNumpy();

function main(): void {
  if (spawnSync('gcc', ['--version']).error !== undefined) return console.log('no gcc to stand beside');
  const still = beside(quiet(constants), 1);
  console.log(`no chance drawn: numbers ${still.apart.toExponential(1)} apart at most (at most 1e-9)`);
  const { ms, cMs, differ, apart } = beside(constants, 3);
  console.log(
    `the whole day of ${count} × ${days} days: ${ms.toFixed(0)} ms, C -O3 ${cMs.toFixed(0)} ms: ` +
      `${(ms / cMs).toFixed(1)} times (at most 3); with chance ${differ} of ${count} particles differ, the others ` +
      `${apart.toExponential(1)} at most`,
  );
}

/** No chance, bees worn in full; what it is held against is the benchmark of the ageing in `engine.ts`. */
function inNumpy(): void {
  const { hatchAge, sealAge, forageAge, houseLoss, fieldLoss, hatches, isSealed, emerges } = constants;
  const given = [count, days, hatchAge, sealAge, forageAge, houseLoss, fieldLoss, hatches, isSealed, emerges];
  const script = fileURLToPath(new URL('./c/ageing.py', import.meta.url));
  const { status, stdout } = spawnSync('python3', [script, ...given.map(String)], { encoding: 'utf8' });
  if (status !== 0) return console.log('no python with numpy to stand beside');
  console.log(`ageing of ${count} × ${days} days in numpy: ${Number(stdout.split(' ')[0]).toFixed(0)} ms`);
}

interface Beside {
  readonly ms: number;
  readonly cMs: number;
  /** Particles that are more than a millionth apart: a draw that fell on the other side by the last digit. */
  readonly differ: number;
  /** The largest difference of the rest, over the number or 1. */
  readonly apart: number;
}

/** The quickest of so many runs of each, one after the other. */
function beside(c: EngineConstants, runs: number): Beside {
  const folder = mkdtempSync(join(tmpdir(), 'festoon-bench-'));
  try {
    writeFileSync(join(folder, 'given.h'), givenOf(c));
    const program = join(folder, 'day');
    const source = fileURLToPath(new URL('./c/day.c', import.meta.url));
    execFileSync('gcc', ['-O3', '-I', folder, '-o', program, source, '-lm']);
    let [ms, cMs] = [Infinity, Infinity];
    let here: Float64Array = new Float64Array();
    let there: Float64Array = here;
    for (let run = 0; run < runs; run += 1) {
      const start = begin({ model: colonyModel, constants, resampleBelow: 0 }, from, count, seed).values;
      const path = join(folder, 'particles');
      writeFileSync(path, start);
      const out = execFileSync(program, [path, count, from, days, seed].map(String), { encoding: 'utf8' });
      cMs = Math.min(cMs, Number(out.split(' ')[0]));
      there = Float64Array.from(new Float64Array(new Uint8Array(readFileSync(path)).buffer));
      const before = performance.now();
      lived(c, start);
      ms = Math.min(ms, performance.now() - before);
      here = start;
    }
    return { ms, cMs, ...compared(here, there) };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function lived(c: EngineConstants, values: Float64Array): void {
  const stream = newStream(seed, 1, 0, from);
  for (let p = 0; p < count; p += 1) {
    for (let day = from; day < from + days; day += 1) {
      colonyModel.step(c, day, values, p * particleSize, setStream(stream, seed, 1, p, day));
    }
  }
}

function compared(here: Float64Array, there: Float64Array): Pick<Beside, 'differ' | 'apart'> {
  let [differ, apart] = [0, 0];
  for (let at = 0; at < here.length; at += particleSize) {
    let own = 0;
    for (let i = at; i < at + particleSize; i += 1) {
      const off = Math.abs(here[i]! - there[i]!) / Math.max(1, Math.abs(here[i]!));
      own = off <= own ? own : off;
    }
    if (own <= 1e-6) apart = Math.max(apart, own);
    else differ += 1;
  }
  return { differ, apart };
}

/** Nothing is pushed by chance, and no way of the queen is ever taken. */
function quiet(c: EngineConstants): EngineConstants {
  const without = (wander: Wander): Wander => ({ ...wander, push: wander.push.map(() => 0) });
  const hazards = c.chain.hazards.map(() => 0);
  return {
    ...c,
    quick: without(c.quick),
    slow: without(c.slow),
    eyes: without(c.eyes),
    chain: { ...c.chain, hazards },
  };
}

/** The constants as C reads them; a record's numbers bear its name and theirs. */
function givenOf(c: EngineConstants): string {
  const ints = (name: string, list: ArrayLike<number>): string =>
    `static const int ${name}[] = {${Array.from(list).join(', ')}};`;
  const reals = (name: string, list: ArrayLike<number>): string =>
    `static const double ${name}[] = {${Array.from(list, (one) => one.toExponential(17)).join(', ')}};`;
  const whole = (name: string, value: number): string => `enum { ${name} = ${value} };`;
  const scalars = (prefix: string, record: object): readonly string[] =>
    Object.entries(record).flatMap(([key, value]) =>
      typeof value !== 'number'
        ? []
        : Number.isInteger(value) && (key.endsWith('Age') || key === 'rescueDays')
          ? [whole(prefix + key, value)]
          : [`static const double ${prefix}${key} = ${value.toExponential(17)};`],
    );
  const wanders = (name: string, wander: Wander): readonly string[] => [
    whole(`${name}_count`, wander.count),
    ints(`${name}_offset`, wander.offset),
    ...(['middle', 'kept', 'push'] as const).map((column) => reals(`${name}_${column}`, wander[column])),
  ];
  const { chain, season } = c;
  return [
    ...Object.entries(part).map(([name, at]) => whole(`at_${name}`, at)),
    ...Object.entries({ brood_at: broodAt, drone_brood_at: droneBroodAt, adults_at: adultsAt }).map(([n, at]) => whole(n, at)),
    ...Object.entries({ eye_gap_at: eyeGapAt, eye_variance_at: eyeVarianceAt, slow_days: slowDays }).map(([n, at]) =>
      whole(n, at),
    ),
    whole('particle_size', particleSize),
    whole('season_days', season.rise.length),
    reals('season_rise', season.rise),
    reals('season_fall', season.fall),
    ...scalars('season_', season),
    ...scalars('', c),
    ...(['stores', 'room', 'drones', 'queen'] as const).flatMap((name) => scalars(`${name}_`, c[name])),
    ...scalars('chain_', chain),
    ...scalars('chain_slows_', chain.slows),
    ...(['firstWay', 'to', 'event', 'scaledBy', 'rare', 'hazardAt', 'hazardDays'] as const).map((name) =>
      ints(`chain_${name}`, chain[name]),
    ),
    reals('chain_hazards', chain.hazards),
    ...wanders('quick', c.quick),
    ...wanders('slow', c.slow),
    ...wanders('eyes', c.eyes),
    ints(
      'state_lays',
      chainStates.map(({ queenLays }) => Number(queenLays)),
    ),
    ints(
      'state_drones',
      chainStates.map(({ dronesOnly }) => Number(dronesOnly)),
    ),
    whole('state_none', stateIndex.none),
    whole('state_orphaned', stateIndex.orphaned),
    whole('state_failing', stateIndex.failing),
    whole('state_drone_layer', stateIndex['drone layer']),
    whole('state_swarm_open', stateIndex['swarm cells open']),
    whole('state_swarm_sealed', stateIndex['swarm cells sealed']),
    whole('event_swarm', chainEvents.indexOf('swarm leaves')),
    whole('event_after', chainEvents.indexOf('after-swarm leaves')),
    whole('event_eggs', chainEvents.indexOf('eggs begin')),
  ].join('\n');
}
