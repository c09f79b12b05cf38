/** How much a queen laid, from the sealed brood that is in the nest now. Steady laying over the sealed time is assumed. */

export interface LayingRate {
  /** Bees emerging in a day. */
  readonly emergingPerDay: number;
  /** Eggs that were laid in a day for that. */
  readonly laidPerDay: number;
}

/** `survival`: share of the eggs still alive in the cells that are sealed now, above 0. */
export function layingRate(sealedWorkerCells: number, sealedDays: number, survival: number): LayingRate {
  const emergingPerDay = sealedWorkerCells / sealedDays;
  return { emergingPerDay, laidPerDay: emergingPerDay / survival };
}
