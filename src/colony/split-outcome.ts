/**
 * What becomes of one half of a split, as a plain recursion by days: brood ages in its cells, bees die by age, and a
 * queen lays what the whole colony's laid, less where there are fewer bees to feed her brood. No food, no weather, no
 * swarm; every stage begins evenly filled. The model of a colony does the same with chance and with all the rest.
 */
import { type FigureBook, rangeOf, value } from '../figures/book.ts';
import type { FigureKey } from '../figures/list.ts';
import { addDays, type Day } from '../numbers/day.ts';
import { seasonLaying } from './season-laying.ts';
import type { Survival } from './survival.ts';

/** What a course is worked out with, beside how workers die. */
export const courseFigures = [
  'worker-egg-days',
  'worker-sealed-days',
  'worker-total-days',
  'survival-egg-to-larva',
  'survival-larva-to-sealed',
  'survival-sealed-to-adult',
  'survival-to-sealed',
  'engine-half-bees',
  'laying-peak',
  'split-horizon-days',
] as const satisfies readonly FigureKey[];

export interface Brood {
  readonly eggs: number;
  readonly larvae: number;
  readonly sealed: number;
}

export interface Half extends Brood {
  /** Bees by whole days since they emerged. */
  readonly bees: readonly number[];
}

export interface DayOfHalf extends Brood {
  readonly day: Day;
  readonly bees: number;
}

export interface Colony {
  readonly on: Day;
  readonly bees: number;
  readonly brood: Brood;
  readonly survival: Survival;
}

/** The two halves on the evening of the split, when bees that fly have gone back: moved first. */
export function halves(colony: Colony, share: Shares, fieldAge: number): readonly [Half, Half] {
  const ages = agesOf(colony);
  const goes = ages.map((bees, age) => bees * share.bees * (age >= fieldAge ? 1 - share.driftsBack : 1));
  const part = (eggs: number, larvae: number, sealed: number): Brood => ({
    eggs: colony.brood.eggs * eggs,
    larvae: colony.brood.larvae * larvae,
    sealed: colony.brood.sealed * sealed,
  });
  return [
    { bees: goes, ...part(share.eggs, share.larvae, share.sealed) },
    { bees: ages.map((bees, age) => bees - goes[age]!), ...part(1 - share.eggs, 1 - share.larvae, 1 - share.sealed) },
  ];
}

/** The colony as it stands. */
export function wholeOf(colony: Colony): Half {
  return { bees: agesOf(colony), ...colony.brood };
}

/** Bees and brood of both; of the bees of the first a share is lost. */
export function united(from: Half, into: Half, lostShare: number): Half {
  return {
    bees: from.bees.map((bees, age) => bees * (1 - lostShare) + into.bees[age]!),
    eggs: from.eggs + into.eggs,
    larvae: from.larvae + into.larvae,
    sealed: from.sealed + into.sealed,
  };
}

/** Parts of the whole that move, 0 … 1, and of the flying bees moved those that go back. */
export interface Shares extends Brood {
  readonly bees: number;
  readonly driftsBack: number;
}

/** Bees of a colony that has stood still: as many of each age as live to it. */
function agesOf({ bees, survival }: Colony): readonly number[] {
  const alive = Array.from({ length: oldest }, (_, age) => survival.share(age));
  const sum = alive.reduce((a, b) => a + b, 0);
  return alive.map((one) => (bees * one) / sum);
}

/** Older bees than that are not told apart from none. */
const oldest = 120;

/** The half on each day from the split's evening on. `laysFrom` is null where nobody will lay. */
export function courseOf(half: Half, colony: Colony, laysFrom: Day | null, days: number, book: FigureBook): readonly DayOfHalf[] {
  const [hatch, seal, emerge] = [value(book, 'worker-egg-days'), sealingAge(book), value(book, 'worker-total-days')].map(
    Math.round,
  );
  const lives = { hatch: hatch!, seal: seal!, emerge: emerge! };
  let brood = spread(half, lives);
  let bees: readonly number[] = Array.from({ length: oldest }, (_, age) => half.bees[age] ?? 0);
  const lasting = bees.map((_, age) => kept(colony.survival, age));
  const loss = lossesOf(book);
  const best = layingOf(colony, book);
  const rows = [rowOf(colony.on, brood, bees, lives)];
  for (let ahead = 1; ahead <= days; ahead += 1) {
    const day = addDays(colony.on, ahead);
    const emerging = brood[lives.emerge - 1]! * loss.emerges;
    const all = bees.reduce((a, b) => a + b, 0);
    const living = bees.map((many, age) => many * lasting[age]!);
    // The last age keeps its own and takes in those that reach it.
    bees = [emerging, ...living.slice(0, oldest - 2), living[oldest - 1]! + living[oldest - 2]!];
    const eggs = laysFrom !== null && day >= laysFrom ? best(day, all) : 0;
    brood = [eggs, ...brood.slice(0, -1)];
    brood[lives.hatch]! *= loss.hatches;
    brood[lives.seal]! *= loss.isSealed;
    rows.push(rowOf(day, brood, bees, lives));
  }
  return rows;
}

function lossesOf(book: FigureBook) {
  return {
    hatches: value(book, 'survival-egg-to-larva'),
    isSealed: value(book, 'survival-larva-to-sealed'),
    emerges: value(book, 'survival-sealed-to-adult'),
  };
}

interface Ages {
  readonly hatch: number;
  readonly seal: number;
  readonly emerge: number;
}

function sealingAge(book: FigureBook): number {
  return value(book, 'worker-total-days') - value(book, 'worker-sealed-days');
}

/** Share of bees of an age that live another day. */
function kept(survival: Survival, age: number): number {
  const now = survival.share(age);
  return now > 0 ? survival.share(age + 1) / now : 0;
}

/** Brood by whole days since laying, each stage evenly filled. */
function spread({ eggs, larvae, sealed }: Brood, { hatch, seal, emerge }: Ages): number[] {
  return Array.from({ length: emerge }, (_, age) => {
    if (age < hatch) return eggs / hatch;
    return age < seal ? larvae / (seal - hatch) : sealed / (emerge - seal);
  });
}

/** Eggs a day as the whole colony's sealed brood tells, by season and bees, N/(w + N) as in the model; at most what a queen ever lays. */
function layingOf({ on, bees, brood }: Colony, book: FigureBook): (day: Day, now: number) => number {
  const half = value(book, 'engine-half-bees');
  const before = brood.sealed / value(book, 'worker-sealed-days') / value(book, 'survival-to-sealed');
  const then = seasonLaying(on, null, book);
  const crowd = (now: number): number => now / (half + now);
  const most = rangeOf(book, 'laying-peak').high;
  const whole = crowd(bees) * then;
  if (whole <= 0) return () => 0;
  return (day, now) => Math.min(most, (before * crowd(now) * seasonLaying(day, null, book)) / whole);
}

function rowOf(day: Day, brood: readonly number[], bees: readonly number[], { hatch, seal }: Ages): DayOfHalf {
  const sum = (from: number, to?: number): number => brood.slice(from, to).reduce((a, b) => a + b, 0);
  return { day, bees: bees.reduce((a, b) => a + b, 0), eggs: sum(0, hatch), larvae: sum(hatch, seal), sealed: sum(seal) };
}

export interface Story {
  readonly lowestBees: number;
  readonly lowestOn: Day;
  /** First day after the lowest with as many bees as on the split's evening; null within the days followed. */
  readonly recoversOn: Day | null;
}

export function storyOf(rows: readonly DayOfHalf[]): Story {
  const first = rows[0]!;
  const lowest = rows.reduce((low, row) => (row.bees < low.bees ? row : low), first);
  const recovered = rows.find((row) => row.day >= lowest.day && row.bees >= first.bees);
  return { lowestBees: lowest.bees, lowestOn: lowest.day, recoversOn: recovered?.day ?? null };
}
