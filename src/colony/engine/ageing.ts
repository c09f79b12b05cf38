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

/** Moves workers on with the bees that emerged. `share` is the season's share of laying; `hungry` a loss of all ages. */
export function ageAdults(
  c: EngineConstants,
  values: Float64Array,
  at: number,
  share: number,
  hungry: number,
  emerging: number,
): void {
  const winter = 1 - Math.min(1, share / c.winterFromShare);
  const times = Math.exp(values[at + part.lossLevel]! + values[at + part.loss]!);
  const house = Math.exp(-times * ((1 - winter) * c.houseLoss + winter * c.winterLoss) - hungry);
  const field = Math.exp(-times * ((1 - winter) * c.fieldLoss + winter * c.winterLoss) - hungry);
  const first = at + adultsAt;
  const last = first + adultDays - 1;
  const foraging = first + c.forageAge;
  // The last cohort keeps its own and takes in those that reach its age.
  values[last] = (values[last]! + values[last - 1]!) * field;
  let i = last - 1;
  for (; i > foraging; i -= 1) values[i] = values[i - 1]! * field;
  for (; i > first; i -= 1) values[i] = values[i - 1]! * house;
  values[first] = emerging;
}
