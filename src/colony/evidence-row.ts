/**
 * The evidence of all visits up to a day, each with the places that held brood then: those read with
 * brood, and those not opened whose last reading had brood that cannot all have emerged since.
 */
import { type FigureBook, value } from '../figures/book.ts';
import type { Id } from '../journal/entry.ts';
import { type Day, daysBetween } from '../numbers/day.ts';
import { broodRead } from './comb-read.ts';
import { type Evidence, evidenceOf } from './queen-evidence.ts';
import type { ColonyState } from './state.ts';
import { countedRows, visitsInOrder } from './visits-of.ts';

export interface EvidenceRow extends Evidence {
  /** Places believed to hold brood at that visit; all places read when there was none. */
  readonly broodPlaces: ReadonlySet<number>;
}

export function evidenceRow(state: ColonyState, colony: Id, until: Day, book: FigureBook): readonly EvidenceRow[] {
  const lasting = value(book, 'worker-total-days');
  const lastRead = new Map<number, { readonly day: Day; readonly brood: number | null }>();
  return visitsInOrder(state, colony, until).map((visit) => {
    for (const row of countedRows(state, visit)) lastRead.set(row.body.place, { day: visit.day, brood: broodRead(row.body) });
    const fresh = [...lastRead].filter(([, read]) => daysBetween(read.day, visit.day) < lasting);
    const withBrood = fresh.filter(([, read]) => (read.brood ?? 0) > 0).map(([place]) => place);
    const broodPlaces = new Set(withBrood.length > 0 ? withBrood : fresh.map(([place]) => place));
    return { ...evidenceOf(state, visit, broodPlaces), broodPlaces };
  });
}
