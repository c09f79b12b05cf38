/**
 * The colony as a balance of house bees and foragers, without brood, food or season: D. S. Khoury, M. R. Myerscough
 * and A. B. Barron (2011), "A quantitative model of honey bee colony population dynamics", PLoS ONE 6(4):e18491.
 * Its use here is as a check on what a death rate of foragers does; the model of a colony is another. Equations and
 * coefficients were read in two second sources that agree.
 */
import { rungeKuttaStep } from '../../numbers/runge-kutta.ts';

export const twoClassCoefficients = {
  /** L: eggs a day at most. */
  laying: 2000,
  /** w: bees at which half of them come to be. */
  halfBees: 27000,
  /** alpha: house bees that take to the field in a day, when there are no foragers. */
  recruitment: 0.25,
  /** sigma: how foragers hold them back. */
  inhibition: 0.75,
} as const;

const { laying: L, halfBees: w, recruitment: alpha, inhibition: sigma } = twoClassCoefficients;

/** The balance at which the colony stands still, in closed form; no bees where foragers die too fast. */
export interface Balance {
  /** J: foragers for each house bee, in the balance or on the way to nothing. */
  readonly foragersPerHouseBee: number;
  readonly houseBees: number;
  readonly foragers: number;
  /** 1/R: days in the house before the field. */
  readonly recruitedAfterDays: number;
}

export function twoClassBalance(death: number): Balance {
  const J = ratio(death, alpha);
  // N* = (L/m)·(1 + J)/J − w
  const N = Math.max(0, ((L / death) * (1 + J)) / J - w);
  return { foragersPerHouseBee: J, houseBees: N / (1 + J), foragers: (N * J) / (1 + J), recruitedAfterDays: 1 / (death * J) };
}

/** m·J² − A·J − alpha = 0 with A = alpha − sigma − m. */
export function ratio(death: number, recruitment: number): number {
  const A = recruitment - sigma - death;
  return (A + Math.sqrt(A * A + (2 + 2) * death * recruitment)) / (2 * death);
}

/** The death rate at which N* is nothing: m = ρ·(α + σ + √((α − σ)² + 4σρ)) / 2(α − ρ), ρ = L/w. */
export function twoClassCollapse(): number {
  const rho = L / w;
  return (rho * (alpha + sigma + Math.sqrt((alpha - sigma) ** 2 + (2 + 2) * sigma * rho))) / (2 * (alpha - rho));
}

/** House bees and foragers on each whole day, day 0 first. */
export function twoClassCourse(death: number, start: readonly [number, number], days: number): readonly (readonly number[])[] {
  const rates = (_: number, [H = 0, F = 0]: readonly number[]): readonly number[] => {
    const N = H + F;
    if (N <= 0) return [0, 0];
    const R = alpha - (sigma * F) / N;
    return [(L * N) / (w + N) - H * R, H * R - death * F];
  };
  const course: (readonly number[])[] = [start];
  for (let day = 0; day < days; day += 1) {
    let state = course[day]!;
    for (let i = 0; i < stepsADay; i += 1) state = rungeKuttaStep(rates, day + i / stepsADay, state, 1 / stepsADay);
    course.push(state);
  }
  return course;
}

const stepsADay = 10;
