/**
 * What brood there is to be seen when the last fertile egg was laid so many days ago and laying went on before:
 * chances of each stage by the windows of ages. A queen that has just begun has no older brood of her own; what
 * workers and drone layers lay counts as brood like any other, once it has the age.
 */
import { type FigureBook, rangeOf } from '../../figures/book.ts';
import type { Range } from '../../numbers/range.ts';
import { sinceMost } from './filter.ts';
import type { BroodThere } from './seen.ts';
import { chainStates, stateIndex } from './states.ts';

export interface BroodTables {
  /** By days since the last egg: what a colony that laid until then has. */
  readonly until: readonly BroodThere[];
  /** By days since the first egg: what a queen that has just begun has. */
  readonly begun: readonly BroodThere[];
}

export function broodTables(book: FigureBook): BroodTables {
  const [egg, larva, sealed] = [
    rangeOf(book, 'worker-egg-age'),
    rangeOf(book, 'worker-larva-age'),
    rangeOf(book, 'worker-sealed-age'),
  ];
  const emerging = rangeOf(book, 'worker-emerging-age');
  const days = Array.from({ length: sinceMost + 1 }, (_, day) => day);
  return {
    until: days.map((day) => ({
      egg: younger(day, { low: larva.low - 1, likely: 0, high: egg.high }),
      larva: younger(day, { low: sealed.low - 1, likely: 0, high: larva.high }),
      sealed: younger(day, { low: emerging.low - 1, likely: 0, high: emerging.high }),
    })),
    begun: days.map((day) => ({
      egg: 1,
      larva: 1 - younger(day, { low: larva.low - 1, likely: 0, high: larva.low }),
      sealed: 1 - younger(day, { low: sealed.low - 1, likely: 0, high: sealed.low + 1 }),
    })),
  };
}

export function broodSince(tables: BroodTables, state: number, daysIn: number, since: number): BroodThere {
  const last = sinceMost;
  const begins = state === stateIndex['new queen laying'] || chainStates[state]!.dronesOnly;
  if (!begins) return tables.until[Math.min(since, last)]!;
  const own = tables.begun[Math.min(daysIn, last)]!;
  // A new queen that pauses with the season has what she laid until then; others lay on.
  if (chainStates[state]!.queenLays && since > 0) return tables.until[Math.min(since, last)]!;
  const old = tables.until[Math.min(since, last)]!;
  return chainStates[state]!.queenLays
    ? own
    : { egg: own.egg, larva: either(own.larva, old.larva), sealed: either(own.sealed, old.sealed) };
}

/** 1 up to the low end, falling evenly to 0 at one past the high end. */
function younger(day: number, { low, high }: Range): number {
  if (day <= low) return 1;
  return day > high ? 0 : (high + 1 - day) / (high + 1 - low);
}

function either(a: number, b: number): number {
  return 1 - (1 - a) * (1 - b);
}
