/**
 * What one particle is: where each number of a colony stands in its stretch of the long array. Bees are bees
 * as a careful count finds them: those afield and on the walls are not in it. Drones, stores, comb and mites
 * have no place yet; each will be a further stretch at the end.
 */

/** Cohorts of worker brood by whole days since laying. */
export const broodDays = 21;
/** Cohorts of workers by whole days since they emerged; the last one holds all that are older. */
export const adultDays = 80;

const names = [
  /** How laying and losses stand today to what is expected, logarithms. */
  'laying',
  'loss',
  /** What the colony is like, logarithms of ratios to the figures. */
  'capacity',
  'lossLevel',
  /** What the counts are like: logarithm of count over bees, of count over sealed cells. */
  'adultsScale',
  'cappedScale',
  /** What the place is like: days by which spring and autumn are late; logarithm of the season's power. */
  'rise',
  'fall',
  'depth',
  /** Day number from which a queen lays. */
  'laysFrom',
] as const;

export type Part = (typeof names)[number];

/** Offsets of single numbers in a particle. */
export const part = Object.fromEntries(names.map((name, index) => [name, index])) as Readonly<Record<Part, number>>;
export const broodAt = names.length;
export const adultsAt = broodAt + broodDays;
export const particleSize = adultsAt + adultDays;

/** All workers of a particle. */
export function adultsOfParticle(values: Float64Array, at: number): number {
  let sum = 0;
  for (let i = at + adultsAt; i < at + particleSize; i += 1) sum += values[i]!;
  return sum;
}

/** Sealed worker brood of a particle: cohorts from the age of sealing on. */
export function cappedOfParticle(values: Float64Array, at: number, sealAge: number): number {
  let sum = 0;
  for (let i = at + broodAt + sealAge; i < at + adultsAt; i += 1) sum += values[i]!;
  return sum;
}
