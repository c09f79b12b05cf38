/**
 * How solid the sealed brood is, from patches that were counted cell by cell at one visit, taken
 * together. A count tells of brood that has emerged since once the sealed stage is over, and is then left out.
 */
import { type FigureBook, value } from '../figures/book.ts';
import { type Day, daysBetween } from '../numbers/day.ts';
import { pattern } from './pattern.ts';
import type { ColonyState, Visit } from './state.ts';
import type { ColonyView } from './view.ts';
import { countedRows } from './visits-of.ts';

/** Of the newest of these visits at which a patch was counted; null when there is none, or it is too old. */
export function solidBrood(state: ColonyState, visits: readonly Visit[], day: Day, book: FigureBook): ColonyView['solid'] {
  for (const visit of [...visits].reverse()) {
    if (daysBetween(visit.day, day) > value(book, 'worker-sealed-days')) return null;
    const rows = countedRows(state, visit).filter((row) => row.body.patch);
    if (rows.length === 0) continue;
    const occupied = rows.reduce((all, row) => all + (row.body.patch?.occupied ?? 0), 0);
    const cells = rows.reduce((all, row) => all + (row.body.patch?.cells ?? 0), 0);
    return { ...pattern(Math.min(occupied, cells), cells), from: rows.map((row) => row.entry) };
  }
  return null;
}
