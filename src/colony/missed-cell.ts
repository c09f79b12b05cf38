/** What a search for queen cells can have missed. Cells are taken to be spread over the faces without regard to each other. */

export interface Missed {
  /** Chance that not one of them was seen. */
  readonly missAll: number;
  /** Chance that at least one of them was missed. */
  readonly missAny: number;
}

/** `shareLooked` of the faces looked at and `seeChance` to see a cell on such a face, both 0…1. */
export function missedCell(cells: number, shareLooked: number, seeChance: number): Missed {
  const seen = shareLooked * seeChance;
  return { missAll: (1 - seen) ** cells, missAny: 1 - seen ** cells };
}
