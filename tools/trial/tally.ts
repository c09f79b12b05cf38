/** What is counted in a colony-season, and how a policy's seasons are summed: means with standard errors, paired differences. */

export const measures = ['openings', 'swarms', 'starvations', 'notLaying'] as const;
export type Measure = (typeof measures)[number];
export type Tally = Readonly<Record<Measure, number>>;

export interface Mean {
  readonly mean: number;
  /** Standard error of the mean; 0 for one season. */
  readonly se: number;
}

export interface Difference extends Mean {
  readonly lo95: number;
  readonly hi95: number;
}

/** Two-sided 95 % of a normal: seasons are thousands. */
const z95 = 1.959964;

export function meanOf(values: readonly number[]): Mean {
  const n = values.length;
  const mean = values.reduce((a, b) => a + b, 0) / n;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, se: n > 1 ? Math.sqrt(squares / (n - 1) / n) : 0 };
}

/** Of `a` less `b`, season by season: both lived under the same seeds. */
export function pairedDifference(a: readonly number[], b: readonly number[]): Difference {
  const { mean, se } = meanOf(a.map((value, i) => value - b[i]!));
  return { mean, se, lo95: mean - z95 * se, hi95: mean + z95 * se };
}
