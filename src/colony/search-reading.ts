/** How complete the search of the last visit was, and what it could have missed: "none seen" is worth as much as what was looked at. */
import { type FigureBook, value } from '../figures/book.ts';
import type { EvidenceRow } from './evidence-row.ts';
import { missedCell } from './missed-cell.ts';
import type { ColonyState, Visit } from './state.ts';
import type { Search } from './view.ts';
import { countedRows } from './visits-of.ts';

/** Numbers of cells for which the chance to have missed all is told: one, a supersedure's few, a swarm's many. */
const few = 3;
const many = 10;
const askedFor = [1, few, many] as const;

export function searchReading(
  state: ColonyState,
  visit: Visit,
  evidence: EvidenceRow,
  barsInBay: number,
  book: FigureBook,
): Search {
  const rows = countedRows(state, visit);
  const brushed = rows.map((row) => row.body.brushed);
  const shareLooked = evidence.cellShare;
  return {
    barsInBay,
    barsOpened: new Set(rows.map((row) => row.body.place)).size,
    brushed: brushed.includes(false) ? false : brushed.includes(true) ? true : null,
    shareLooked,
    missAll: askedFor.map((cells) => ({
      cells,
      chance: missedCell(cells, shareLooked, value(book, 'cell-seen-chance')).missAll,
    })),
  };
}
