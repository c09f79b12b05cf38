/**
 * The journal as four tidy tables, one row a thing and one column a variable: visits, faces, colonies, reigns. Entered
 * values as typed, eighths as eighths; days and times as the journal has them. Advice and forecasts are left out.
 */
import { readJournal } from '../apiary.ts';
import type { ColonyState, ReadingRow, Visit } from '../colony/state.ts';
import type { Entry } from '../journal/entry.ts';
import type { Cell, CsvTable } from '../sheets/csv.ts';

export { csvText } from '../sheets/csv.ts';

export const tableNames = ['visits', 'faces', 'colonies', 'reigns'] as const;
export type TableName = (typeof tableNames)[number];

export function tableOf(name: TableName, entries: readonly Entry[]): CsvTable {
  return tables[name](readJournal(entries).state);
}

const tables: Readonly<Record<TableName, (state: ColonyState) => CsvTable>> = {
  visits: visitTable,
  faces: faceTable,
  colonies: colonyTable,
  reigns: reignTable,
};

/** A column is a name and what stands in it for a thing. */
type Columns<T> = readonly (readonly [name: string, of: (thing: T) => Cell | undefined])[];

function tabled<T>(columns: Columns<T>, things: readonly T[]): CsvTable {
  return {
    columns: columns.map(([name]) => name),
    rows: things.map((thing) => columns.map(([, of]) => of(thing) ?? null)),
  };
}

function visitTable(state: ColonyState): CsvTable {
  const body = (visit: Visit) => visit.closed?.body;
  const list = (items: readonly (string | number)[] | undefined): Cell => (items === undefined ? null : items.join('; '));
  const columns: Columns<Visit> = [
    ['visit_id', ({ id }) => id],
    ['day', ({ day }) => day],
    ['colony', ({ colony }) => state.colonies.get(colony)?.name],
    ['colony_id', ({ colony }) => colony],
    ['hive', ({ hive }) => state.hives.get(hive)?.name],
    ['by', ({ by }) => state.observers.get(by)?.name],
    ['closed', ({ closed }) => closed !== null],
    ['kind', (visit) => body(visit)?.visitKind],
    ['began', (visit) => body(visit)?.began],
    ['ended', (visit) => body(visit)?.ended],
    ['bars_read', ({ readings }) => new Set(readings.map((row) => row.body.place)).size],
    ['bars_counted', (visit) => body(visit)?.barsCounted],
    ['follower_after_place', (visit) => body(visit)?.followerAfter],
    ['places_given', (visit) => list(body(visit)?.given)],
    ['places_taken', (visit) => list(body(visit)?.taken)],
    ['bars_with_bees', (visit) => body(visit)?.beesBars],
    ['straight', (visit) => body(visit)?.straight],
    ['temper', (visit) => body(visit)?.temper],
    ['temper_notes', (visit) => list(body(visit)?.temperNotes)],
    ['smoke_minutes', (visit) => body(visit)?.smokeMinutes],
    ['cells_cut', (visit) => body(visit)?.cellsCut],
    ['signs', (visit) => list(body(visit)?.signs)],
    ['sentence', (visit) => body(visit)?.sentence],
  ];
  return tabled(columns, visitsByDay(state));
}

interface FaceRow {
  readonly visit: Visit;
  readonly row: ReadingRow;
  readonly face: ReadingRow['body']['faces'][number];
}

function faceTable(state: ColonyState): CsvTable {
  const columns: Columns<FaceRow> = [
    ['reading_id', ({ row }) => row.entry],
    ['visit_id', ({ visit }) => visit.id],
    ['at', ({ row }) => row.at],
    ['colony', ({ visit }) => state.colonies.get(visit.colony)?.name],
    ['hive', ({ row }) => state.hives.get(row.body.hive)?.name],
    ['by', ({ row }) => state.observers.get(row.by)?.name],
    ['role', ({ row }) => state.observers.get(row.by)?.role],
    ['place', ({ row }) => row.body.place],
    ['comb_id', ({ row }) => row.comb],
    ['face', ({ face }) => face.face],
    ['class', ({ row }) => row.body.combClass],
    ['brood_eighths', ({ face }) => face.brood8],
    ['food_eighths', ({ face }) => face.food8],
    ['drone_eighths', ({ face }) => face.drone8],
    ['sealed_food_eighths', ({ face }) => face.sealedFood8],
    ['bees_eighths', ({ face }) => face.bees8],
    ['built_eighths', ({ row }) => row.body.built8],
    ['eggs', ({ row }) => row.body.eggs],
    ['youngest', ({ row }) => row.body.youngest],
    ['queen_cells_looked', ({ row }) => row.body.cellsLooked],
    ['queen_cells_open', ({ row }) => row.body.cells?.open],
    ['queen_cells_sealed', ({ row }) => row.body.cells?.sealed],
    ['queen_cells_torn', ({ row }) => row.body.cells?.torn],
    ['queen_cells_emerged', ({ row }) => row.body.cells?.emerged],
    ['queen', ({ row }) => row.body.queen],
    ['brushed', ({ row }) => row.body.brushed],
    ['at_walls', ({ row }) => row.body.attached],
    ['signs', ({ row }) => row.body.signs.join('; ')],
    ['method', ({ row }) => row.body.method],
    ['light', ({ row }) => row.body.light],
  ];
  const faces = visitsByDay(state).flatMap((visit) =>
    visit.readings.flatMap((row) => row.body.faces.map((face) => ({ visit, row, face }))),
  );
  return tabled(columns, faces);
}

function colonyTable(state: ColonyState): CsvTable {
  const columns: Columns<ColonyState['colonies'] extends ReadonlyMap<string, infer C> ? C : never> = [
    ['colony_id', ({ id }) => id],
    ['name', ({ name }) => name],
    ['origin', ({ origin }) => origin],
    ['parent', ({ parent }) => (parent === null ? null : (state.colonies.get(parent)?.name ?? parent))],
    ['began_earliest', ({ began }) => began.earliest],
    ['began_latest', ({ began }) => began.latest],
    ['hive', ({ stays }) => state.hives.get(stays.at(-1)?.hive ?? '')?.name],
    ['ended_on', ({ ended }) => ended?.day],
    ['ended_how', ({ ended }) => ended?.how],
    ['united_into', ({ ended }) => (ended?.into ? (state.colonies.get(ended.into)?.name ?? ended.into) : null)],
  ];
  return tabled(columns, [...state.colonies.values()]);
}

function reignTable(state: ColonyState): CsvTable {
  const all = [...state.reigns.values()].flat();
  const columns: Columns<(typeof all)[number]> = [
    ['colony', ({ colony }) => state.colonies.get(colony)?.name],
    ['colony_id', ({ colony }) => colony],
    ['queen_id', ({ queen }) => queen],
    ['queen_name', ({ queen }) => state.queens.get(queen)?.name],
    ['queen_mark', ({ queen }) => state.queens.get(queen)?.mark],
    ['began_how', ({ how }) => how],
    ['began_earliest', ({ began }) => began?.earliest],
    ['began_latest', ({ began }) => began?.latest],
    ['ended_how', ({ ended }) => ended?.how],
    ['ended_earliest', ({ ended }) => ended?.window.earliest],
    ['ended_latest', ({ ended }) => ended?.window.latest],
  ];
  return tabled(columns, all);
}

function visitsByDay(state: ColonyState): readonly Visit[] {
  return [...state.visits.values()].sort((a, b) => (a.day === b.day ? (a.id < b.id ? -1 : 1) : a.day < b.day ? -1 : 1));
}
