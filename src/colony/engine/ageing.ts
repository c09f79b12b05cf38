/**
 * A day older: brood moves on by a cohort and loses its share where a stage ends, workers by another and lose
 * theirs by age and season. Two phases of loss, in the house and afield; the less is laid, the more both give
 * way to the loss of winter bees, who rear none. Ages at which bees change work are fixed.
 */
import type { EngineConstants } from './constants.ts';
import { adultDays, adultsAt, broodAt, broodDays, part } from './particle.ts';

/** Moves brood on with the eggs of the day; hands back the bees that emerge. */
export function ageBrood(c: EngineConstants, values: Float64Array, at: number, eggs: number): number {
  const first = at + broodAt;
  const emerging = values[first + broodDays - 1]! * c.emerges;
  for (let i = first + broodDays - 1; i > first; i -= 1) values[i] = values[i - 1]!;
  values[first] = eggs;
  values[first + c.hatchAge]! *= c.hatches;
  values[first + c.sealAge]! *= c.isSealed;
  return emerging;
}

/**
 * How far bees are worn by rearing, 0 … 1: by the open brood that each has to feed. Who rears none stays young and
 * lives a winter bee's life, in winter as in a summer colony without brood.
 */
export function wornBy(c: EngineConstants, share: number, openCells: number, bees: number): number {
  const each = openCells / Math.max(1, bees);
  return Math.min(1, Math.max(share * c.wornLeast, (each - c.wornFrom) / (c.wornBrood - c.wornFrom)));
}

/**
 * The age from which bees fly out: it stays with the bees that have reached it while nothing is reared, and comes
 * back to its usual place as they are worn. A day of wear w takes bees of age a, worn a/A a day so far in the mean,
 * to A/a of their way; so a′ = a + 1 − w·a/A. By spring it lies months back: winter bees begin to fly weeks after
 * they begin to rear.
 */
export function flightAgeOn(c: EngineConstants, flightAge: number, worn: number): number {
  return flightAge + 1 - (worn * flightAge) / c.forageAge;
}

/** Moves workers on with the bees that emerged; those of `flightAge` and older are lost afield. `hungry` is a loss of all. */
export function ageAdults(
  c: EngineConstants,
  values: Float64Array,
  at: number,
  worn: number,
  hungry: number,
  emerging: number,
): void {
  const times = Math.exp(values[at + part.lossLevel]! + values[at + part.loss]!);
  const house = Math.exp(-times * (worn * c.houseLoss + (1 - worn) * c.winterLoss) - hungry);
  const field = Math.exp(-times * (worn * c.fieldLoss + (1 - worn) * c.winterLoss) - hungry);
  const first = at + adultsAt;
  const last = first + adultDays - 1;
  const flying = first + Math.min(adultDays, Math.round(values[at + part.flightAge]!));
  // The last cohort keeps its own and takes in those that reach its age.
  values[last] = (values[last]! + values[last - 1]!) * (house + (field - house) * oldestFlying(c, values[at + part.flightAge]!));
  let i = last - 1;
  for (; i > flying; i -= 1) values[i] = values[i - 1]! * field;
  for (; i > first; i -= 1) values[i] = values[i - 1]! * house;
  values[first] = emerging;
}

/** Of those of all great ages, the share that flies: they emerged over weeks, and begin to over weeks. */
function oldestFlying(c: EngineConstants, flightAge: number): number {
  return Math.min(1, Math.max(0, (adultDays - flightAge) / c.oldestSpread));
}
