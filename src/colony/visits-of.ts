/**
 * Visits of a colony in order, and which readings of them count: a learner's are kept and shown with
 * their name, and never mixed into what the colony is believed to be.
 */
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import type { CellCounts, FaceReading, Reading } from './reading.ts';
import type { ColonyState, ReadingRow, Reign, Visit } from './state.ts';

/** Visits up to and on the day, oldest first; of one day in the order of the fold. */
export function visitsInOrder(state: ColonyState, colony: Id, until: Day): readonly Visit[] {
  const found: Visit[] = [];
  for (const id of state.visitsOf.get(colony) ?? []) {
    const visit = state.visits.get(id);
    if (visit !== undefined && visit.day <= until) found.push(visit);
  }
  return found.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
}

/** The readings that count. */
export function countedRows(state: ColonyState, visit: Visit): readonly ReadingRow[] {
  const learners = visit.readings.some((row) => isLearner(state, row.by));
  return learners ? visit.readings.filter((row) => !isLearner(state, row.by)) : visit.readings;
}

export function isLearner(state: ColonyState, by: Id): boolean {
  return state.observers.get(by)?.role === 'learner';
}

/**
 * One reading a comb: the last of several of one person; when two people read one face each, both faces
 * together; when two people read the whole comb, the mean of both. Whatever either of them saw was seen.
 * The entry is the later one's.
 */
export function rowsByComb(rows: readonly ReadingRow[]): Map<Id, ReadingRow> {
  const found = new Map<Id, ReadingRow>();
  for (const row of rows) {
    const old = found.get(row.comb);
    found.set(row.comb, old === undefined ? row : joined(old, row));
  }
  return found;
}

function joined(first: ReadingRow, second: ReadingRow): ReadingRow {
  const [a] = first.body.faces;
  const [b] = second.body.faces;
  const single = first.body.faces.length === 1 && second.body.faces.length === 1;
  if (!single || a === undefined || b === undefined) return second;
  if (a.face === b.face && first.by !== second.by) return { ...second, body: twoReaders(first.body, second.body, a, b) };
  if (a.face === 'both' || b.face === 'both' || a.face === b.face) return second;
  return { ...second, body: bothFaces(first.body, second.body) };
}

/** Two people read the same: they err apart, so that the mean is nearer; of cells the one who found more missed fewer. */
function twoReaders(a: Reading, b: Reading, one: FaceReading, other: FaceReading): Reading {
  const mean = (x: number | null | undefined, y: number | null | undefined): number | null =>
    typeof x === 'number' && typeof y === 'number' ? (x + y) / 2 : (x ?? y ?? null);
  const face: FaceReading = {
    face: one.face,
    brood8: mean(one.brood8, other.brood8),
    food8: mean(one.food8, other.food8),
    drone8: mean(one.drone8, other.drone8),
    sealedFood8: mean(one.sealedFood8, other.sealedFood8),
    bees8: mean(one.bees8, other.bees8),
  };
  const cells = a.cells === null || b.cells === null ? (a.cells ?? b.cells) : moreCells(a.cells, b.cells);
  return { ...bothFaces(a, b), faces: [face], cells };
}

function moreCells(a: CellCounts, b: CellCounts): CellCounts {
  return {
    open: Math.max(a.open, b.open),
    sealed: Math.max(a.sealed, b.sealed),
    torn: Math.max(a.torn, b.torn),
    emerged: Math.max(a.emerged, b.emerged),
  };
}

const youngestFirst = ['egg', 'young larva', 'larva', 'sealed', 'none', null] as const;

function bothFaces(a: Reading, b: Reading): Reading {
  const either = (x: Reading['eggs'], y: Reading['eggs']): Reading['eggs'] =>
    x === 'seen' || y === 'seen' ? 'seen' : x === 'none seen' && y === 'none seen' ? 'none seen' : 'not looked';
  const cells =
    a.cells === null
      ? b.cells
      : b.cells === null
        ? a.cells
        : {
            open: a.cells.open + b.cells.open,
            sealed: a.cells.sealed + b.cells.sealed,
            torn: a.cells.torn + b.cells.torn,
            emerged: a.cells.emerged + b.cells.emerged,
          };
  return {
    ...b,
    faces: [...a.faces, ...b.faces],
    cells,
    eggs: either(a.eggs, b.eggs),
    queen: either(a.queen, b.queen),
    cellsLooked: either(a.cellsLooked, b.cellsLooked),
    youngest: youngestFirst.find((stage) => stage === a.youngest || stage === b.youngest) ?? null,
    signs: [...new Set([...a.signs, ...b.signs])],
    brushed: a.brushed === true && b.brushed === true ? true : a.brushed === false || b.brushed === false ? false : null,
  };
}

/** The reign of the queen who is believed to reign on the day; null when none is recorded, or the last has ended. */
export function currentQueen(state: ColonyState, colony: Id, day: Day): Reign | null {
  const reigns = state.reigns.get(colony) ?? [];
  const open = reigns.findLast(
    (reign) => (reign.began === null || reign.began.earliest <= day) && (reign.ended === null || reign.ended.window.latest > day),
  );
  if (open === undefined || open.how === 'came with the swarm') return open ?? null;
  const gone = (state.events.get(colony) ?? []).some(
    ({ event }) =>
      event.kind === 'swarm left' &&
      event.window.latest <= day &&
      (open.began === null || event.window.earliest > open.began.latest),
  );
  return gone ? null : open;
}
