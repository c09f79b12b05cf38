/**
 * What the cells of one comb hold, by day of age: shares of the whole comb that sum to 1. A cell that
 * a bee has left, or that was cleared, rests some days before it can be laid in again; all others
 * that are empty stay empty until somebody reads otherwise.
 */
import type { Shares } from '../hive/contents.ts';
import type { BroodCalendar } from './calendar.ts';

export interface CombCells {
  /** Worker brood by age in days, `workerDays` long. */
  readonly worker: Float64Array;
  /** Drone brood by age in days, `droneDays` long. */
  readonly drone: Float64Array;
  readonly honey: number;
  readonly nectar: number;
  readonly bread: number;
  /** Empty and not about to be laid in. */
  readonly empty: number;
  /** Worker cells emptied 0, 1, … days ago; the last of them are ready, or waiting for a queen that lays. */
  readonly resting: Float64Array;
  readonly restingDrone: Float64Array;
}

export function noCells(calendar: BroodCalendar): CombCells {
  return {
    worker: new Float64Array(calendar.workerDays),
    drone: new Float64Array(calendar.droneDays),
    honey: 0,
    nectar: 0,
    bread: 0,
    empty: 1,
    resting: new Float64Array(calendar.relayDays + 1),
    restingDrone: new Float64Array(calendar.relayDays + 1),
  };
}

/** The nine contents, both faces together; they sum to 1 as the cells do. */
export function sharesOf(cells: CombCells, calendar: BroodCalendar): Shares {
  const { worker } = cells;
  return {
    honey: cells.honey,
    nectar: cells.nectar,
    bread: cells.bread,
    empty: cells.empty + sum(cells.resting) + sum(cells.restingDrone),
    drone: sum(cells.drone),
    emerging: sum(worker, calendar.emergingFrom),
    sealed: sum(worker, calendar.sealedFrom, calendar.emergingFrom),
    larva: sum(worker, calendar.eggEnd, calendar.sealedFrom),
    egg: sum(worker, 0, calendar.eggEnd),
  };
}

export function sum(row: Float64Array, from = 0, to = row.length): number {
  let all = 0;
  for (let i = from; i < to; i += 1) all += row[i] ?? 0;
  return all;
}
