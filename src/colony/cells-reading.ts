/**
 * Queen cells as last looked for: how many of which age, what kind they may be, and the days that
 * follow from them. A whole search that saw none bounds the age of what a later one sees. Kinds are
 * told by number, ages and setting, and left open where these do not tell.
 */
import { type FigureBook, rangeOf, value } from '../figures/book.ts';
import { addDays, type Day, daysBetween, earlier, later } from '../numbers/day.ts';
import { intersect, shiftWindow, type Window } from '../numbers/window.ts';
import { agesOf } from './brood-dates.ts';
import type { QueenBreak } from './queen-breaks.ts';
import { type Evidence, total } from './queen-evidence.ts';
import type { CellCounts } from './reading.ts';
import type { CellsReading } from './view.ts';

/** Null when no cells stand: none seen, cut at that visit, or so old that all must have emerged. */
export function cellsReading(
  evidence: readonly Evidence[],
  open: QueenBreak | null,
  day: Day,
  book: FigureBook,
): CellsReading | null {
  const index = evidence.findLastIndex((seen) => seen.cells !== null || seen.cellsCut);
  const seen = evidence[index];
  if (seen === undefined || seen.cells === null || seen.cellsCut || total(seen.cells) === 0) return null;
  if (daysBetween(seen.day, day) > agesOf('queen', 'sealed', book).greatest) return null;
  const bound = noneBefore(evidence.slice(0, index), seen.day, book);
  const sealed = sealedWindow(seen.cells, seen.day, bound, book);
  const likelyKind = kindOf(seen, open, book);
  const byCells = virginWindow(seen.cells, seen.day, sealed, book);
  const virginEmerges =
    byCells === null || open === null || open.virgin === null ? byCells : (intersect([byCells, open.virgin]) ?? byCells);
  return {
    counts: seen.cells,
    likelyKind,
    sealed,
    leaves: likelyKind === 'swarm' || likelyKind === null ? leavesWindow(seen, sealed, virginEmerges, open, book) : null,
    virginEmerges,
    places: seen.cellPlaces,
    from: seen.cellRows,
  };
}

/** The last day on which a whole search saw no cells: whatever was seen later was at most an egg then. */
function noneBefore(evidence: readonly Evidence[], day: Day, book: FigureBook): Day | null {
  const enough = value(book, 'look-enough-share');
  const none = evidence.findLast(
    (seen) => seen.cells !== null && total(seen.cells) === 0 && seen.cellShare >= enough && seen.day < day,
  );
  return none?.day ?? null;
}

/** When the first of them was or will be sealed; cells torn down hold nobody and tell no day. */
function sealedWindow(counts: CellCounts, day: Day, bound: Day | null, book: FigureBook): Window | null {
  const sealing = agesOf('queen', 'sealing', book);
  const oldest = agesOf('queen', 'sealed', book).greatest;
  const notBefore = (first: Day): Day => (bound === null ? first : later(first, addDays(bound, sealing.least)));
  if (counts.sealed + counts.emerged > 0) {
    return { earliest: earlier(day, notBefore(addDays(day, -(oldest - sealing.least)))), latest: day };
  }
  if (counts.open === 0) return null;
  const last = addDays(day, sealing.greatest);
  return { earliest: earlier(last, notBefore(day)), latest: last };
}

/**
 * A first swarm leaves when the first cell is sealed, given weather, or from the visit on when it has
 * not left by then; once it is gone, an after-swarm leaves when the first virgin is out.
 */
function leavesWindow(
  seen: Evidence,
  sealed: Window | null,
  virgin: Window | null,
  open: QueenBreak | null,
  book: FigureBook,
): Window | null {
  if (open?.cause === 'swarm') return virgin;
  if (sealed === null || (seen.cells?.emerged ?? 0) > 0) return null;
  const at = rangeOf(book, 'swarm-leaves-at-sealing');
  const late = Math.round(at.high - at.low);
  return { earliest: later(sealed.earliest, seen.day), latest: addDays(later(sealed.latest, seen.day), late) };
}

function virginWindow(counts: CellCounts, day: Day, sealed: Window | null, book: FigureBook): Window | null {
  if (sealed === null) return null;
  const after = rangeOf(book, 'virgin-emerges-after-sealing');
  const window = shiftWindow(sealed, after.low, after.high);
  if (counts.emerged > 0) return { earliest: earlier(window.earliest, day), latest: day };
  return { earliest: later(window.earliest, day), latest: later(window.latest, day) };
}

function kindOf(seen: Evidence, open: QueenBreak | null, book: FigureBook): CellsReading['likelyKind'] {
  if (open?.cause === 'swarm') return 'swarm';
  if (open !== null && open.sure && open.cause !== 'introduced' && open.cause !== 'hived' && open.cause !== 'unseen')
    return 'emergency';
  const counts = seen.cells;
  if (counts === null) return null;
  const n = total(counts);
  const mixed = counts.open > 0 && counts.sealed + counts.torn + counts.emerged > 0;
  const swarm = rangeOf(book, 'swarm-cells-count');
  const supersedure = rangeOf(book, 'supersedure-cells-count');
  if (open?.cause === 'unseen') return n >= swarm.low && mixed ? 'swarm' : null;
  if (n > supersedure.high || (n >= swarm.low && mixed)) return 'swarm';
  return n < swarm.low && !mixed ? 'supersedure' : null;
}
