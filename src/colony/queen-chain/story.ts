/**
 * Dated notes of one colony through the exact filter: what is believed of its queen on a day, and on the days
 * after it if nobody looks. Notes may come in any order; of one day, what was seen comes before what was done.
 */
import { type FigureBook, value } from '../../figures/book.ts';
import { addDays, type Day, daysBetween } from '../../numbers/day.ts';
import { seasonLaying } from '../season-laying.ts';
import { type Act, acts, afterAct } from './acts.ts';
import { broodSince, type BroodTables, broodTables } from './brood-since.ts';
import { type Drives, queenChain, type QueenChain } from './chain.ts';
import { type Belief, believedLaying, dayOn, doubted, weigh } from './filter.ts';
import { lookLogDensity, type QueenLook, type SeenConstants, seenConstants } from './seen.ts';

export interface QueenNote {
  readonly day: Day;
  /** Null when nothing was looked at. */
  readonly look: QueenLook | null;
  readonly act: Act | null;
}

/** All that the filter needs, worked out once for a book of figures. */
export interface QueenModel {
  readonly chain: QueenChain;
  readonly seen: SeenConstants;
  readonly brood: BroodTables;
  readonly book: FigureBook;
  /** Degrees north; null is taken as north. */
  readonly latitude: number | null;
}

export function queenModel(book: FigureBook, latitude: number | null = null): QueenModel {
  const chain = queenChain(book);
  return { chain, seen: seenConstants(chain, book), brood: broodTables(book), book, latitude };
}

/** Told of each day on the way: before its notes and, where it has some, after them. */
export type EachDay = (day: Day, belief: Belief, when: 'before' | 'after') => void;

/** What is believed at the end of that day, by the notes up to it. `logLikelihood` is that of all looks. */
export function believedOn(model: QueenModel, notes: readonly QueenNote[], on: Day, each: EachDay = () => undefined): Told {
  const known = inOrder(notes.filter(({ day }) => day <= on));
  const first = known[0]?.day ?? on;
  let belief = believedLaying(model.chain);
  let logLikelihood = 0;
  let next = 0;
  const days = daysBetween(first, on) + Math.round(value(model.book, 'queen-state-lead-days'));
  for (let left = days; left >= 0; left -= 1) {
    const day = addDays(on, -left);
    belief = through(model, belief, day);
    if (day === first) belief = doubted(model.chain, belief, value(model.book, 'queen-state-unknown-share'));
    each(day, belief, 'before');
    const from = next;
    for (; next < known.length && known[next]!.day === day; next += 1) {
      const told = noted(model, belief, known[next]!);
      belief = told.belief;
      logLikelihood += told.logLikelihood;
    }
    if (next > from) each(day, belief, 'after');
  }
  return { belief, logLikelihood };
}

export interface Told {
  readonly belief: Belief;
  readonly logLikelihood: number;
}

/** The day lived through, up to its evening. */
export function through(model: QueenModel, belief: Belief, day: Day): Belief {
  return dayOn(model.chain, belief, drivesOn(model, day), laysOn(model, day));
}

export function noted({ chain, seen, brood, book }: QueenModel, belief: Belief, { look, act }: QueenNote): Told {
  const weighed =
    look === null
      ? { belief, logLikelihood: 0 }
      : weigh(chain, belief, (state, daysIn, since) =>
          lookLogDensity(seen, state, daysIn, broodSince(brood, state, daysIn, since), look),
        );
  return act === null ? weighed : { ...weighed, belief: afterAct(chain, weighed.belief, act, book) };
}

/** Looks before acts, acts in the order of their list: a day's notes may have been written in any order. */
function inOrder(notes: readonly QueenNote[]): readonly QueenNote[] {
  const parts = notes.flatMap(({ day, look, act }): QueenNote[] => [
    ...(look === null ? [] : [{ day, look, act: null }]),
    ...(act === null ? [] : [{ day, look: null, act }]),
  ]);
  const rank = ({ act }: QueenNote): number => (act === null ? -1 : acts.indexOf(act));
  return parts.sort((a, b) => daysBetween(b.day, a.day) || rank(a) - rank(b));
}

/** Nothing is known of bees and room: the urge of an average colony, in the months of swarms. */
export function drivesOn({ book, latitude }: QueenModel, day: Day): Drives {
  const turn = latitude !== null && latitude < 0 ? monthsInHalfYear : 0;
  const month = ((Number(day.slice(monthFrom, monthTo)) - 1 + turn) % (2 * monthsInHalfYear)) + 1;
  const inMonths = month >= value(book, 'swarm-season-first-month') && month <= value(book, 'swarm-season-last-month');
  const season = seasonLaying(day, latitude, book);
  return { urge: inMonths ? value(book, 'queen-state-crowding') * season : 0, season, loss: 1 };
}

/** Chance that a sound queen lays at all. */
export function laysOn({ book, latitude }: QueenModel, day: Day): number {
  return Math.min(1, seasonLaying(day, latitude, book) / value(book, 'queen-state-laying-from-share'));
}

const monthsInHalfYear = 6;
/** Where the month stands in YYYY-MM-DD. */
const monthFrom = 5;
const monthTo = 7;
