/**
 * Scores the exact filter of the queen's state on made-up colonies by log loss, beside "as last time": what the last
 * look showed, read by plain rules, stands until the next, with chances of what is then true as counted in another
 * half of the colonies (by days since the look, smoothed). The filter learns nothing from them.
 * `node --import tsx tools/score/queen-state.ts [--colonies N] [--seed N] [--json]`
 */
import { readFileSync } from 'node:fs';
import { printedBook } from '../../src/figures/book.ts';
import { type Day, daysBetween } from '../../src/numbers/day.ts';
import { reportedChances } from '../../src/colony/queen-chain/filter.ts';
import type { QueenLook } from '../../src/colony/queen-chain/seen.ts';
import { believedOn, queenModel, type QueenNote } from '../../src/colony/queen-chain/story.ts';
import type { QueenState } from '../../src/colony/queen-state.ts';
import { queenStates } from '../../src/colony/queen-state.ts';
import { readSky, type SkyDay } from '../world/sky.ts';
import { type QueenColony, queenColony } from './queen-colony.ts';

export interface QueenScore {
  readonly colonies: number;
  readonly days: number;
  /** Mean of −log of the chance that was given to the truth. */
  readonly filter: number;
  readonly asLastTime: number;
  /** Filter minus "as last time": mean over colonies, and its standard error. */
  readonly difference: number;
  readonly differenceError: number;
  readonly byState: Readonly<Record<string, { readonly days: number; readonly filter: number; readonly asLastTime: number }>>;
  readonly byDaysSinceLook: Readonly<
    Record<string, { readonly days: number; readonly filter: number; readonly asLastTime: number }>
  >;
  /** Of days on which a state was given a chance of about so much, the share on which it was true. */
  readonly calibration: readonly { readonly said: number; readonly was: number; readonly times: number }[];
}

/** What the last look showed, by rules a keeper would use at once. */
type Shown =
  | 'eggs'
  | 'eggs and open cells'
  | 'eggs and sealed cells'
  | 'open cells'
  | 'sealed cells'
  | 'left cells'
  | 'brood'
  | 'nothing'
  | 'drones';
type Gap = '0' | '1-4' | '5-9' | '10-16' | '17+';

/** One day of one colony that is scored. */
interface Row {
  readonly truth: QueenState;
  readonly last: Shown;
  readonly gap: Gap;
  readonly chances: Float64Array;
}

export function scoreQueens(colonies: number, seed: number, sky: ReadonlyMap<Day, SkyDay>): QueenScore {
  const model = queenModel(printedBook);
  const taught = new Map<string, number>();
  for (let i = 0; i < colonies; i += 1) teach(taught, queenColony(seed + i, sky));
  const scored = Array.from({ length: colonies }, (_, i) => rowsOf(queenColony(seed + colonies + i, sky), model));
  const rows = scored.flat();
  const last = (row: Row): number => lossOf(shareTaught(taught, row));
  const filter = (row: Row): number => lossOf(row.chances[queenStates.indexOf(row.truth)] ?? 0);
  const differences = scored.filter((own) => own.length > 0).map((own) => mean(own.map(filter)) - mean(own.map(last)));
  const spread = Math.sqrt(mean(differences.map((one) => (one - mean(differences)) ** 2)));
  const part = (key: (row: Row) => string) =>
    Object.fromEntries(
      [...new Set(rows.map(key))].sort().map((name) => {
        const own = rows.filter((row) => key(row) === name);
        return [name, { days: own.length, filter: mean(own.map(filter)), asLastTime: mean(own.map(last)) }];
      }),
    );
  return {
    colonies: differences.length,
    days: rows.length,
    filter: mean(rows.map(filter)),
    asLastTime: mean(rows.map(last)),
    difference: mean(differences),
    differenceError: spread / Math.sqrt(differences.length - 1),
    byState: part((row) => row.truth),
    byDaysSinceLook: part((row) => row.gap),
    calibration: calibrationOf(rows),
  };
}

/** Chances below this are not told apart, so that one day does not decide. */
const least = 1e-4;

function lossOf(chance: number): number {
  return -Math.log(Math.max(least, chance));
}

function looksOf(colony: QueenColony): readonly (QueenNote & { readonly look: QueenLook })[] {
  return colony.notes.flatMap((note) => (note.look === null ? [] : [{ ...note, look: note.look }]));
}

/** Days from the first look on; winter is left out, where nobody looks and little happens. */
function* daysOf(colony: QueenColony): Generator<{ day: Day; truth: QueenState; last: Shown; gap: Gap }> {
  const looks = looksOf(colony);
  let next = 0;
  for (const [day, truth] of colony.truth) {
    const last = looks[next - 1];
    if (last !== undefined && inSeason(day))
      yield { day, truth, last: shownBy(last.look), gap: gapOf(daysBetween(last.day, day)) };
    const now = looks[next];
    if (now?.day !== day) continue;
    next += 1;
    yield { day, truth: colony.afterVisit.get(day) ?? truth, last: shownBy(now.look), gap: '0' };
  }
}

function inSeason(day: Day): boolean {
  const month = Number(day.slice(5, 7));
  return month >= 4 && month <= 9;
}

function teach(taught: Map<string, number>, colony: QueenColony): void {
  for (const { truth, last, gap } of daysOf(colony)) {
    for (const key of [`${last}|${gap}|${truth}`, `${last}|${gap}`]) taught.set(key, (taught.get(key) ?? 0) + 1);
  }
}

/** Laplace's half for each of the nine. */
function shareTaught(taught: ReadonlyMap<string, number>, { truth, last, gap }: Row): number {
  const among = taught.get(`${last}|${gap}`) ?? 0;
  return ((taught.get(`${last}|${gap}|${truth}`) ?? 0) + 0.5) / (among + 0.5 * queenStates.length);
}

function rowsOf(colony: QueenColony, model: ReturnType<typeof queenModel>): readonly Row[] {
  const end = [...colony.truth.keys()].at(-1);
  if (end === undefined) return [];
  const believed = new Map<string, Float64Array>();
  believedOn(model, colony.notes, end, (day, belief, when) =>
    believed.set(`${day} ${when}`, reportedChances(model.chain, belief)),
  );
  return [...daysOf(colony)].flatMap(({ day, truth, last, gap }) => {
    const chances = believed.get(`${day} ${gap === '0' ? 'after' : 'before'}`);
    return chances === undefined ? [] : [{ truth, last, gap, chances }];
  });
}

function shownBy({ eggs, youngest, cells, domedCaps, manyEggs }: QueenLook): Shown {
  const [open, sealed] = [cells?.open ?? 0, cells?.sealed ?? 0];
  if (domedCaps === true || manyEggs === true) return 'drones';
  if (eggs === 'seen') return sealed > 0 ? 'eggs and sealed cells' : open > 0 ? 'eggs and open cells' : 'eggs';
  if (sealed > 0) return 'sealed cells';
  if (open > 0) return 'open cells';
  if ((cells?.torn ?? 0) + (cells?.emerged ?? 0) > 0) return 'left cells';
  return youngest === 'none' ? 'nothing' : 'brood';
}

function gapOf(days: number): Gap {
  if (days === 0) return '0';
  return days <= 4 ? '1-4' : days <= 9 ? '5-9' : days <= 16 ? '10-16' : '17+';
}

function calibrationOf(rows: readonly Row[]): QueenScore['calibration'] {
  const edges = [0, 0.02, 0.1, 0.25, 0.5, 0.75, 0.9, 0.98, 1.01];
  return edges.slice(0, -1).map((from, index) => {
    const to = edges[index + 1] ?? 2;
    const said = rows.flatMap(({ chances, truth }) =>
      queenStates.flatMap((state, at) => {
        const chance = chances[at] ?? 0;
        return chance >= from && chance < to ? [{ chance, was: state === truth ? 1 : 0 }] : [];
      }),
    );
    return { said: mean(said.map(({ chance }) => chance)), was: mean(said.map(({ was }) => was)), times: said.length };
  });
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((a, b) => a + b, 0) / values.length;
}

function table(score: QueenScore): string {
  const line = (name: string, { days, filter, asLastTime }: { days: number; filter: number; asLastTime: number }): string =>
    `${name.padEnd(18)} ${String(days).padStart(7)} ${filter.toFixed(3).padStart(8)} ${asLastTime.toFixed(3).padStart(13)}`;
  return [
    `Log loss of the queen's state, ${score.colonies} made-up colonies, April to September`,
    `${''.padEnd(18)} ${'days'.padStart(7)} ${'filter'.padStart(8)} ${'as last time'.padStart(13)}`,
    line('all', score),
    ...Object.entries(score.byState).map(([name, part]) => line(name, part)),
    'by days since the look (0: right after it)',
    ...Object.entries(score.byDaysSinceLook).map(([name, part]) => line(name, part)),
    `difference, mean of colonies: ${score.difference.toFixed(3)}, standard error ${score.differenceError.toFixed(3)}`,
    'calibration: said, was, times',
    ...score.calibration.map(({ said, was, times }) => `${said.toFixed(3)} ${was.toFixed(3)} ${times}`),
  ].join('\n');
}

if (process.argv[1]?.endsWith('queen-state.ts') === true) {
  const option = (name: string, other: number): number => {
    const at = process.argv.indexOf(name);
    return at < 0 ? other : Number(process.argv[at + 1]);
  };
  const sky = readSky(readFileSync('examples/newyork-weather-2013-2014.csv', 'utf8'));
  const score = scoreQueens(option('--colonies', 40), option('--seed', 1), sky);
  console.log(process.argv.includes('--json') ? JSON.stringify(score) : table(score));
}
