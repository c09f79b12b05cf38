/**
 * What one visit says about the queen, over all bars that were read: eggs, the youngest stage, how
 * much of the brood is drone, queen cells, and how much of the nest was looked at for each.
 */
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import { combRead } from './comb-read.ts';
import type { CellCounts, LookedFor, Stage } from './reading.ts';
import type { ColonyState, ReadingRow, Visit } from './state.ts';
import { countedRows, rowsByComb } from './visits-of.ts';

export interface Evidence {
  readonly visit: Id;
  readonly day: Day;
  readonly eggs: LookedFor;
  readonly youngest: Stage | null;
  /** Readings that show the youngest stage, or that looked for eggs and saw none. */
  readonly from: readonly Id[];
  /** Brood read, as the sum of shares of combs; null when no brood ruler was read. */
  readonly brood: number | null;
  readonly drone: number;
  readonly queenSeen: boolean;
  readonly manyEggs: boolean;
  readonly domedCaps: boolean;
  /** Queen cells summed over the bars looked at; null when cells were not looked for. */
  readonly cells: CellCounts | null;
  readonly cellPlaces: readonly number[];
  readonly cellRows: readonly Id[];
  readonly cellsCut: boolean;
  /** Share of the combs with brood whose eggs were looked for, and whose faces were looked over for cells, 0…1. */
  readonly eggShare: number;
  readonly cellShare: number;
}

/** Places that are believed to hold brood at the visit, of which a look is a share. */
export type BroodPlaces = ReadonlySet<number>;

const stageOrder: readonly Stage[] = ['egg', 'young larva', 'larva', 'sealed', 'none'];
const noCells: CellCounts = { open: 0, sealed: 0, torn: 0, emerged: 0 };

export function evidenceOf(state: ColonyState, visit: Visit, broodPlaces: BroodPlaces): Evidence {
  const rows = [...rowsByComb(countedRows(state, visit)).values()];
  const reads = rows.map((row) => ({ row, read: combRead(row.body) }));
  const youngest = stageOrder.find((stage) => reads.some(({ read }) => read.youngest === stage)) ?? null;
  const lookedForEggs = rows.filter((row) => row.body.eggs !== 'not looked' || row.body.youngest !== null);
  // Whoever says that larvae are the youngest has looked for eggs.
  const eggs: LookedFor = youngest === 'egg' ? 'seen' : lookedForEggs.length > 0 ? 'none seen' : 'not looked';
  const broods = reads.flatMap(({ read }) => (read.brood === null ? [] : [read.brood]));
  const drone = reads.reduce(
    (sum, { read }) => sum + (read.drone ?? (read.combClass === 'mostly drone' ? (read.brood ?? 0) : 0)),
    0,
  );
  const signs = new Set([...rows.flatMap((row) => row.body.signs), ...(visit.closed?.body.signs ?? [])]);
  const cellRows = rows.filter((row) => row.body.cellsLooked !== 'not looked' || row.body.cells !== null);
  const withCells = cellRows.filter((row) => row.body.cells !== null && total(row.body.cells) > 0);
  return {
    visit: visit.id,
    day: visit.day,
    eggs,
    youngest,
    from: reads
      .filter(
        ({ row, read }) =>
          (youngest !== null && read.youngest === youngest) || (eggs === 'none seen' && row.body.eggs === 'none seen'),
      )
      .map(({ row }) => row.entry),
    brood: broods.length === 0 ? null : broods.reduce((a, b) => a + b, 0),
    drone,
    queenSeen: rows.some((row) => row.body.queen === 'seen'),
    manyEggs: signs.has('several eggs in a cell'),
    domedCaps: signs.has('domed caps on worker cells'),
    cells: cellRows.length === 0 ? null : cellRows.reduce((sum, row) => addCells(sum, row.body.cells ?? noCells), noCells),
    cellPlaces: withCells.map((row) => row.body.place),
    cellRows: (withCells.length > 0 ? withCells : cellRows).map((row) => row.entry),
    cellsCut: visit.closed?.body.cellsCut === true,
    eggShare: shareOf(lookedForEggs, broodPlaces, () => 1),
    cellShare: shareOf(cellRows, broodPlaces, (row) => combRead(row.body).facesRead / 2),
  };
}

export function total(cells: CellCounts): number {
  return cells.open + cells.sealed + cells.torn + cells.emerged;
}

/** Cells were left that hold a queen to be, or that one has just left. */
export function livingCells(seen: Evidence): boolean {
  return seen.cells !== null && !seen.cellsCut && seen.cells.open + seen.cells.sealed + seen.cells.emerged > 0;
}

function addCells(a: CellCounts, b: CellCounts): CellCounts {
  return { open: a.open + b.open, sealed: a.sealed + b.sealed, torn: a.torn + b.torn, emerged: a.emerged + b.emerged };
}

/** Of the places that matter, the share that these readings looked at; no such place known: 1 when anything was looked at. */
function shareOf(rows: readonly ReadingRow[], broodPlaces: BroodPlaces, weight: (row: ReadingRow) => number): number {
  if (rows.length === 0) return 0;
  if (broodPlaces.size === 0) return 1;
  const looked = rows.filter((row) => broodPlaces.has(row.body.place)).reduce((sum, row) => sum + weight(row), 0);
  return Math.min(1, looked / broodPlaces.size);
}
