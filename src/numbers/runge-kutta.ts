/**
 * Rates of change integrated over time by the classical method of fourth order of C. Runge (1895) and W. Kutta
 * (1901), at even steps. For smooth, unstiff rates; the error falls with the fourth power of the step.
 */
export type Rates = (time: number, state: readonly number[]) => readonly number[];

/** The state one step later. */
export function rungeKuttaStep(rates: Rates, time: number, state: readonly number[], step: number): readonly number[] {
  const moved = (by: number, along: readonly number[]): readonly number[] => state.map((one, i) => one + by * along[i]!);
  const a = rates(time, state);
  const b = rates(time + step / 2, moved(step / 2, a));
  const c = rates(time + step / 2, moved(step / 2, b));
  const d = rates(time + step, moved(step, c));
  return state.map((one, i) => one + (step / 6) * (a[i]! + 2 * b[i]! + 2 * c[i]! + d[i]!));
}
