/**
 * The four ways to foresee a colony's next count, from its earlier rows alone: the model of the colony, the
 * challenger, the blend of the two, and "as last time". Each hands back quantiles of the count's logarithm.
 */
import {
  challengerBegins,
  challengerForesees,
  challengerNumbers,
  challengerOn,
  challengerSees,
} from '../../src/colony/engine/challenger.ts';
import { engineConstants, unknownGround } from '../../src/colony/engine/constants.ts';
import { blend, drawnForesight, type Foresight, normalForesight } from '../../src/colony/engine/foresight.ts';
import { colonyModel } from '../../src/colony/engine/model.ts';
import { type FigureBook, value } from '../../src/figures/book.ts';
import { begin, foresee, type Setup, step } from '../../src/numbers/particle-filter.ts';
import type { EngineConstants } from '../../src/colony/engine/constants.ts';
import type { Seens } from '../../src/colony/engine/seen/list.ts';
import type { ColonyCounts, CountRow, Target } from './read-counts.ts';
import { targets } from './read-counts.ts';

export const methods = ['engine', 'challenger', 'blend', 'persistence'] as const;
export type Method = (typeof methods)[number];

/** What was foreseen of one row, before the row was looked at; null where that was not counted, or never before. */
export type RowForesight = Readonly<Record<Target, Readonly<Record<Method, Foresight>> | null>>;

export interface Effort {
  readonly particles: number;
  readonly seed: number;
  /** The figures that forecasts rest on; scored are the printed ones. */
  readonly book: FigureBook;
}

const kinds = { adult_bees: 'bees', capped_worker_cells: 'sealed' } as const;
const rivals = { adult_bees: 'adults', capped_worker_cells: 'capped' } as const;
const drawsEach = 3;
const monthDays = 30;

/** One foresight a row of the colony, in order. */
export function foreseeColony(colony: ColonyCounts, effort: Effort): readonly RowForesight[] {
  const engine = engineForesights(colony, effort);
  const foreseenByRivals = {
    adult_bees: rivalForesights(colony, 'adult_bees', effort.book),
    capped_worker_cells: rivalForesights(colony, 'capped_worker_cells', effort.book),
  };
  return colony.rows.map((_, i) => {
    const of = (target: Target): RowForesight[Target] => {
      const model = engine[i]![target];
      const rival = foreseenByRivals[target][i]!;
      if (model === null || rival === null) return null;
      return { engine: model, ...rival, blend: blend(model, rival.challenger) };
    };
    return { adult_bees: of('adult_bees'), capped_worker_cells: of('capped_worker_cells') };
  });
}

function engineForesights(
  colony: ColonyCounts,
  { particles, seed, book }: Effort,
): readonly Readonly<Record<Target, Foresight | null>>[] {
  const constants = engineConstants(book, {
    ...unknownGround,
    beginning: { kind: colony.splitOn === null ? 'standing' : 'split' },
  });
  const setup: Setup<EngineConstants, Seens> = { model: colonyModel, constants, resampleBelow: 1 / 2 };
  const first = colony.rows[0]!.day;
  let cloud = begin(setup, colony.splitOn ?? first - value(book, 'engine-start-days'), particles, seed);
  const before = new Set<Target>();
  return colony.rows.map((row) => {
    cloud = step(setup, cloud, { day: row.day, seen: {} }, seed).state;
    const of = (target: Target): Foresight | null => {
      if (row.counts[target] === null || !before.has(target)) return null;
      return countedForesight(foresee(setup, cloud, kinds[target], drawsEach, seed), constants);
    };
    const foreseen = { adult_bees: of('adult_bees'), capped_worker_cells: of('capped_worker_cells') };
    cloud = step(setup, cloud, { day: row.day, seen: seenOn(row) }, seed).state;
    for (const target of targets) if (row.counts[target] !== null) before.add(target);
    return foreseen;
  });
}

interface Drawn {
  readonly values: Float64Array;
  readonly shares: Float64Array;
}

/**
 * Nothing, and next to nothing, is not scored: so what is foreseen is the count given that there is something to
 * count. A colony that may have died would else be foreseen as neither dead nor alive.
 */
function countedForesight({ values, shares: all }: Drawn, { counts }: EngineConstants): Foresight {
  const some = all.map((share, i) => (values[i]! < counts.least.bees ? 0 : share));
  const kept = some.reduce((a, b) => a + b, 0);
  const shares = kept > 0 ? some.map((share) => share / kept) : all;
  return drawnForesight(values, shares);
}

function seenOn(row: CountRow): { -readonly [K in keyof Seens]?: Seens[K] } {
  const seen: { -readonly [K in keyof Seens]?: Seens[K] } = {};
  for (const target of targets) {
    const count = row.counts[target];
    if (count !== null) seen[kinds[target]] = { count };
  }
  return seen;
}

/** Challenger and "as last time". A count of 0 has no logarithm and teaches neither; after it they keep to what was before. */
function rivalForesights(
  colony: ColonyCounts,
  target: Target,
  book: FigureBook,
): readonly (Readonly<Record<'challenger' | 'persistence', Foresight>> | null)[] {
  const numbers = challengerNumbers(book, rivals[target]);
  const walk = value(book, `as-last-time-${rivals[target]}-wander`);
  let state = challengerBegins(numbers, colony.splitOn ?? colony.rows[0]!.day, colony.splitOn !== null);
  let last: { readonly day: number; readonly log: number } | null = null;
  return colony.rows.map(({ day, counts }) => {
    const count = counts[target];
    if (count === null) return null;
    state = challengerOn(numbers, state, day);
    const { mean, sd } = challengerForesees(numbers, state);
    const spread = last === null ? 0 : Math.sqrt(2 * numbers.noise ** 2 + (walk ** 2 * (day - last.day)) / monthDays);
    const foreseen =
      last === null ? null : { challenger: normalForesight(mean, sd), persistence: normalForesight(last.log, spread) };
    if (count > 0) {
      state = challengerSees(numbers, state, Math.log(count));
      last = { day, log: Math.log(count) };
    }
    return foreseen;
  });
}
