/**
 * The same balance with open brood and stored food: D. S. Khoury, A. B. Barron and M. R. Myerscough (2013),
 * "Modelling food and population dynamics in honey bee colonies", PLoS ONE 8(5):e59084. Sealed brood is a delay of
 * twelve days, before which there was none. Parameters were read in two second sources, the form of the equations in
 * one; the closed forms are worked out here from them and met by integration.
 */
import { rungeKuttaStep } from '../../numbers/runge-kutta.ts';
import { ratio } from './two-classes.ts';

export const foodCoefficients = {
  /** L: eggs a day. */
  laying: 2000,
  /** 1/phi: days as open brood, on average. */
  openDays: 9,
  /** tau: days under the cap. */
  sealedDays: 12,
  /** v: house bees at which half of the brood is reared. */
  halfHouseBees: 5000,
  /** b: grams of food at which half of the brood is reared. */
  halfFoodG: 500,
  /** a_min, a_max: recruitment a day with food in plenty, and what want of it adds. */
  recruitment: 0.25,
  recruitmentOfWant: 0.25,
  /** sigma: how foragers hold house bees back. */
  inhibition: 0.75,
  /** gamma_A, gamma_B: grams a day eaten by a bee, and by open brood. */
  eatenByBee: 0.007,
  eatenByBrood: 0.018,
  /** c: grams a day that a forager brings. */
  broughtByForager: 0.1,
} as const;

const { laying: L, openDays, sealedDays: tau, halfHouseBees: v, halfFoodG: b, inhibition: sigma } = foodCoefficients;
const phi = 1 / openDays;
const { recruitment: aMin, recruitmentOfWant: aMax, eatenByBee: gA, eatenByBrood: gB, broughtByForager: c } = foodCoefficients;

export interface FoodBalance {
  /** Food grows for ever; all settles; the colony dies with food left over. */
  readonly fate: 'food grows' | 'settles' | 'dies';
  readonly brood: number;
  readonly houseBees: number;
  readonly foragers: number;
  /** Grams; null where food grows, and where the colony dies and what is left hangs on how it began. */
  readonly foodG: number | null;
  /** Grams a day while all else stands; null but where food grows. */
  readonly foodGainG: number | null;
  /** Null where the colony dies. */
  readonly recruitedAfterDays: number | null;
}

export function foodBalance(death: number): FoodBalance {
  const plenty = inPlenty(death);
  if (plenty.gain > 0 && plenty.houseBees > 0) {
    const { houseBees, foragers, brood, gain } = plenty;
    const recruitedAfterDays = houseBees / (death * foragers);
    return { fate: 'food grows', brood, houseBees, foragers, foodG: null, foodGainG: gain, recruitedAfterDays };
  }
  const held = heldByFood(death);
  if (held === null) {
    return { fate: 'dies', brood: 0, houseBees: 0, foragers: 0, foodG: null, foodGainG: null, recruitedAfterDays: null };
  }
  return { fate: 'settles', foodGainG: null, ...held };
}

/** (i) Food in excess: J as without food; at rest H = L/(mJ) − v, F = J·H, B = m·F/φ. */
function inPlenty(death: number) {
  const J = ratio(death, aMin);
  const houseBees = L / (death * J) - v;
  const foragers = J * houseBees;
  const brood = (death * foragers) / phi;
  return { houseBees, foragers, brood, gain: c * foragers - gA * (houseBees + foragers) - gB * brood };
}

/** (ii) As much food comes as is eaten: p = H/F follows from the food alone, x = b²/(b² + f²) from recruitment. */
function heldByFood(death: number) {
  const p = c / gA - 1 - (gB * death) / (gA * phi);
  if (p <= 0) return null;
  const x = (death / p - aMin + sigma / (1 + p)) / aMax;
  const foragers = ((L * (1 - x) * p) / death - v) / p;
  if (x <= 0 || x >= 1 || foragers <= 0) return null;
  return {
    brood: (death * foragers) / phi,
    houseBees: p * foragers,
    foragers,
    foodG: b * Math.sqrt(1 / x - 1),
    recruitedAfterDays: p / death,
  };
}

/** Death rates of foragers below which food grows, and above which the colony dies. */
export function foodBorders(): { readonly growsBelow: number; readonly diesAbove: number } {
  const most = 1;
  const growsBelow = border(least, most, (death) => inPlenty(death).gain > 0);
  return { growsBelow, diesAbove: border(growsBelow + least, most, (death) => heldByFood(death) !== null) };
}

/** Brood, house bees, foragers and grams of food on each whole day, day 0 first; no brood before it. */
export function foodCourse(death: number, start: readonly number[], days: number): readonly (readonly number[])[] {
  // Open brood of every step: what emerges was sealed twelve days ago.
  const brood: number[] = [start[0] ?? 0];
  const sealedThen = (time: number): number => {
    const at = (time - tau) * stepsADay;
    const before = Math.floor(at + nearly);
    if (before < 0) return 0;
    const part = Math.max(0, at - before);
    return part < nearly ? brood[before]! : brood[before]! * (1 - part) + brood[before + 1]! * part;
  };
  const rates = (time: number, [B = 0, H = 0, F = 0, f = 0]: readonly number[]): readonly number[] => {
    if (H + F <= 0) return [-phi * B, 0, 0, -gB * B];
    const fed = (f * f) / (f * f + b * b);
    const S = (fed * H) / (H + v);
    const R = aMin + aMax * (1 - fed) - (sigma * F) / (H + F);
    return [L * S - phi * B, phi * sealedThen(time) - R * H, R * H - death * F, c * F - gA * (F + H) - gB * B];
  };
  const course: (readonly number[])[] = [start];
  for (let day = 0; day < days; day += 1) {
    let state = course[day]!;
    for (let i = 0; i < stepsADay; i += 1) {
      state = rungeKuttaStep(rates, day + i / stepsADay, state, 1 / stepsADay).map((one) => Math.max(0, one));
      brood.push(state[0]!);
    }
    course.push(state);
  }
  return course;
}

/** A death rate that every colony bears. */
const least = 0.01;
const stepsADay = 20;
/** Of a step: times that the rounding of sums moved off a step are on it. */
const nearly = 1e-6;
const halvings = 60;

/** Where a condition that holds at the low end ceases to hold. */
function border(low: number, high: number, holds: (at: number) => boolean): number {
  let [yes, no] = [low, high];
  for (let i = 0; i < halvings; i += 1) {
    const middle = (yes + no) / 2;
    if (holds(middle)) yes = middle;
    else no = middle;
  }
  return (yes + no) / 2;
}
