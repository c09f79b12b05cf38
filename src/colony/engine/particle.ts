/**
 * What one particle is: where each number of a colony stands in its stretch of the long array. Bees are bees
 * as a careful count finds them: those afield and on the walls are not in it. A place for mites is one more
 * name; what a day does to them is one more function of the day.
 */

/** Cohorts of worker brood by whole days since laying. */
export const broodDays = 21;
export const droneBroodDays = 24;
/** Cohorts of workers by whole days since they emerged; the last one holds all that are older. */
export const adultDays = 80;

/** Observers who are told apart: whoever reads most, and everybody else. */
export const hands = 2;

const names = [
  /** How laying, losses and nectar stand today to what is expected, logarithms. */
  'laying',
  'loss',
  'flow',
  /** What the colony is like, logarithms of ratios to the figures. */
  'capacity',
  'lossLevel',
  /** What the place is like: days by which spring and autumn are late; logarithm of the season's power. */
  'rise',
  'fall',
  'depth',
  /** What the counts of each hand are like: logarithm of what is read over what is there. */
  'beesScale',
  'beesScaleOther',
  'barsScale',
  'barsScaleOther',
  'sealedScale',
  'sealedScaleOther',
  'openScale',
  'openScaleOther',
  'honeyScale',
  'honeyScaleOther',
  /** The queen's state in the chain, days in it, and the day number from which the present queen lays. */
  'queen',
  'queenDays',
  'queenFrom',
  /** Age in days from which bees fly out. */
  'flightAge',
  /** Grown drones. */
  'drones',
  'honeyKg',
  'breadKg',
  /** Worker cells built, and as many as the bars that hang there can hold. */
  'comb',
  'combMost',
] as const;

export type Part = (typeof names)[number];

/** Offsets of single numbers in a particle. */
export const part = Object.fromEntries(names.map((name, index) => [name, index])) as Readonly<Record<Part, number>>;

/** Scales of counting. What the counts so far say of each is carried beside it and worked out, not left to luck. */
export const eyes = names.filter((name) => /Scale(Other)?$/.test(name));
/** For each of `eyes`: how far the middle of what is known of it lies from the number drawn; then its variance. */
export const eyeGapAt = names.length;
export const eyeVarianceAt = eyeGapAt + eyes.length;

export const broodAt = eyeVarianceAt + eyes.length;
export const droneBroodAt = broodAt + broodDays;
export const adultsAt = droneBroodAt + droneBroodDays;
export const particleSize = adultsAt + adultDays;

/** Sum of a run of cohorts, `from` … `to` − 1, of a stretch that begins at `at`. */
export function cohorts(values: Float64Array, at: number, from: number, to: number): number {
  let sum = 0;
  for (let i = at + from; i < at + to; i += 1) sum += values[i]!;
  return sum;
}

/** All workers of a particle. Two sums side by side: one after the other each addition waits for the last. */
export function adultsOfParticle(values: Float64Array, at: number): number {
  const half = adultDays / 2;
  const end = at + adultsAt + half;
  let [young, old] = [0, 0];
  for (let i = at + adultsAt; i < end; i += 1) {
    young += values[i]!;
    old += values[i + half]!;
  }
  return young + old;
}

/** Sealed worker brood of a particle: cohorts from the age of sealing on. */
export function cappedOfParticle(values: Float64Array, at: number, sealAge: number): number {
  return cohorts(values, at + broodAt, sealAge, broodDays);
}

/** Eggs and larvae of a particle. */
export function openOfParticle(values: Float64Array, at: number, sealAge: number): number {
  return cohorts(values, at + broodAt, 0, sealAge);
}

/** Worker cells that hold brood, as they are counted by the hand that reads most. */
export function broodCellsOfParticle(values: Float64Array, at: number): number {
  return cohorts(values, at + broodAt, 0, broodDays) * Math.exp(values[at + part.sealedScale]!);
}
