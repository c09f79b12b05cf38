/**
 * One comb on a later or an earlier day, with nothing known but the days between: brood grows older
 * and some of it is lost at hatching, sealing and emerging; a cell that was left is laid in again
 * after its rest, as far as the queen lays; food stays where it is. No sealed brood appears that was
 * not laid before. Drone brood is given the survival of workers: nothing better was found.
 */
import type { BroodCalendar } from './calendar.ts';
import { type CombCells, sum } from './comb-cells.ts';

/** Share of the cells that are ready on day `i` (0: from the reading to the day after) in which the queen lays. */
export type LayingShare = (i: number) => number;

/** The cells `days` after they were read. Negative days go back: see `before`. */
export function aged(cells: CombCells, days: number, calendar: BroodCalendar, laying: LayingShare): CombCells {
  if (days < 0) return before(cells, -days);
  const next: CombCells = {
    ...cells,
    worker: cells.worker.slice(),
    drone: cells.drone.slice(),
    resting: cells.resting.slice(),
    restingDrone: cells.restingDrone.slice(),
  };
  const { survive } = calendar;
  for (let i = 0; i < days; i += 1) {
    const share = laying(i);
    const freed = older(next.worker, calendar.eggEnd, calendar.sealedFrom, survive);
    const freedDrone = older(next.drone, calendar.droneEggEnd, calendar.droneSealedFrom, survive);
    next.worker[0] = layIn(next.resting, freed, share);
    next.drone[0] = layIn(next.restingDrone, freedDrone, share);
  }
  return next;
}

/**
 * The cells so many days earlier: what is brood now and had been laid by then, younger. What its
 * cells held before, and the bees that emerged since, left no trace: those cells count as empty, so
 * the brood of that day is at least this.
 */
function before(cells: CombCells, days: number): CombCells {
  const back = (row: Float64Array): Float64Array => row.map((_, age) => row[age + days] ?? 0);
  const worker = back(cells.worker);
  const drone = back(cells.drone);
  const lost = sum(cells.worker) + sum(cells.drone) - sum(worker) - sum(drone);
  return { ...cells, worker, drone, empty: cells.empty + lost };
}

/** One day older, in place; answers the share of the comb that was left or cleared. */
function older(row: Float64Array, eggEnd: number, sealedFrom: number, survive: BroodCalendar['survive']): number {
  const last = row.length - 1;
  let freed = row[last] ?? 0;
  row.copyWithin(1, 0, last);
  row[0] = 0;
  freed += lose(row, eggEnd, survive.hatch) + lose(row, sealedFrom, survive.seal) + lose(row, last, survive.emerge);
  return freed;
}

function lose(row: Float64Array, age: number, kept: number): number {
  const was = row[age] ?? 0;
  row[age] = was * kept;
  return was - was * kept;
}

/** The freed cells come to rest, those that have rested are laid in as far as the share goes; answers what was laid. */
function layIn(resting: Float64Array, freed: number, share: number): number {
  const last = resting.length - 1;
  let ready = resting[last] ?? 0;
  if (last > 0) {
    ready += resting[last - 1] ?? 0;
    resting.copyWithin(1, 0, last);
    resting[0] = freed;
  } else ready += freed;
  const laid = ready * share;
  resting[last] = ready - laid;
  return laid;
}
