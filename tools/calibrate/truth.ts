/**
 * Made-up colonies whose truth is known: drawn from the model's own beginning, lived through day by day as it
 * happens (nothing is guided), and looked at every week by the observations' own chance. Every third visit opens
 * part of the combs, every fifth is another hand's; a full box is read as "at least".
 */
import { engineConstants, type EngineConstants, unknownGround } from '../../src/colony/engine/constants.ts';
import { colonyModel } from '../../src/colony/engine/model.ts';
import type { Count } from '../../src/colony/engine/seen/counts.ts';
import type { Seens } from '../../src/colony/engine/seen/list.ts';
import { printedBook } from '../../src/figures/book.ts';
import { dayNumber } from '../../src/numbers/day.ts';
import type { Data } from '../../src/numbers/particle-filter.ts';
import { newStream, nextUnit, type Stream } from '../../src/numbers/streams.ts';
import { lookedForBrood, lookedForCells } from './looked.ts';

export interface Story {
  /** The colony on the day of each visit, as the visit found it, and on the day of the count that comes next. */
  readonly found: readonly Float64Array[];
  readonly visits: readonly Data<Seens>[];
  /** Bees as counted a week after the last visit. */
  readonly nextCount: number;
}

export interface Plan {
  /** Day number on which the model begins, before the first visit. */
  readonly beginsOn: number;
  readonly firstVisit: number;
  readonly visits: number;
  readonly everyDays: number;
}

export const weekly: Plan = {
  beginsOn: dayNumber('2013-03-04'),
  firstVisit: dayNumber('2013-04-15'),
  visits: 24,
  everyDays: 7,
};

/** Comb of a trough half built; the queen's changes are proposed as the figures say. */
export function filterConstants(): EngineConstants {
  return engineConstants(printedBook, { ...unknownGround, comb: { built: 45_000, most: 90_000 } });
}

const purpose = { begin: 20, day: 21, look: 22 } as const;
/** Bees that a box shows before it is simply full. */
const fullBox = 32_000;
const partly = 0.55;

export function tell(plan: Plan, constants: EngineConstants, seed: number, replicate: number): Story {
  const c: EngineConstants = { ...constants, queen: { ...constants.queen, guided: 1 } };
  const values = new Float64Array(colonyModel.size);
  const stream = (what: number, day: number): Stream => newStream(seed, what, replicate, day);
  colonyModel.initial(c, plan.beginsOn, values, 0, stream(purpose.begin, 0));
  const found: Float64Array[] = [];
  const visits: Data<Seens>[] = [];
  let day = plan.beginsOn;
  for (let visit = 0; visit <= plan.visits; visit += 1) {
    const until = plan.firstVisit + visit * plan.everyDays;
    for (; day < until; day += 1) colonyModel.step(c, day, values, 0, stream(purpose.day, day));
    found.push(values.slice());
    if (visit < plan.visits) visits.push({ day, seen: lookedAt(c, values, visit, stream(purpose.look, day)) });
  }
  const nextCount = colonyModel.observations.bees.draw(c, values, 0, stream(purpose.look, day));
  return { found, visits, nextCount };
}

function lookedAt(c: EngineConstants, values: Float64Array, visit: number, stream: Stream): Data<Seens>['seen'] {
  const share = visit % 3 === 2 ? partly + 0.3 * nextUnit(stream) : 1;
  const like: Count = { count: 0, share, hand: visit % 5 === 4 ? 1 : 0 };
  const counted = (kind: 'bees' | 'bars' | 'sealed' | 'open' | 'honeyKg', how: Count): Count => ({
    ...how,
    count: colonyModel.observations[kind].draw(c, values, 0, stream, how),
  });
  const bees = counted('bees', like);
  const full = bees.count >= fullBox * share;
  const glance = visit % 2 === 1 ? { bars: counted('bars', { count: 0, hand: like.hand! }) } : {};
  return {
    bees: full ? { ...bees, count: fullBox * share, atLeast: true } : bees,
    ...glance,
    sealed: counted('sealed', like),
    open: counted('open', like),
    honeyKg: counted('honeyKg', like),
    built: { cells: colonyModel.observations.built.draw(c, values, 0, stream) },
    brood: lookedForBrood(c, values, share, stream),
    cells: lookedForCells(c, values, share, stream),
    queen: { seen: colonyModel.observations.queen.draw(c, values, 0, stream, { seen: true, share }) === 1, share },
  };
}
