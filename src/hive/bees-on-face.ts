/** Bees on one face of comb, from its area and how much of it they cover. */

/** `coveredFraction` 0…1; `beesPerDm2` is the density where they cover it fully. */
export function beesOnFace(faceDm2: number, coveredFraction: number, beesPerDm2: number): number {
  return faceDm2 * coveredFraction * beesPerDm2;
}
