/**
 * Scores put together: for each thing counted by interval, pooled, and by yard; with the difference of the
 * blend to "as last time" and its range when colonies are drawn anew (paired bootstrap of B. Efron, colonies
 * whole, percentiles). Colonies of one yard move together, so that range is narrower than the truth.
 */
import { newStream, nextWord } from '../../src/numbers/streams.ts';
import type { Case } from './intervals.ts';
import { type Method, methods } from './methods.ts';
import { type Target, targets } from './read-counts.ts';

export interface MethodScore {
  readonly logRmse: number | null;
  readonly mae: number | null;
  readonly crpsLog: number | null;
  readonly cover50: number | null;
  readonly cover80: number | null;
  readonly cover90: number | null;
}

export interface Difference {
  readonly method: 'blend';
  /** logRMSE of the blend less that of "as last time": below 0 the blend is better. */
  readonly value: number | null;
  readonly lo95: number | null;
  readonly hi95: number | null;
}

export interface Scores {
  readonly from: number | null;
  readonly to: number | null;
  readonly n: number;
  /** Counts of nothing, and counts after one, that were not scored. */
  readonly zeros: number;
  readonly methods: Readonly<Record<Method, MethodScore>>;
  readonly difference: Difference;
  /** The same for each method: beyond what is asked, so that engine and challenger can be told apart. */
  readonly differences: Readonly<Record<Exclude<Method, 'persistence'>, Omit<Difference, 'method'>>>;
}

export interface TargetReport {
  readonly intervals: readonly ({ readonly k: number } & Scores)[];
  readonly pooled: Scores;
  readonly yards: Readonly<Record<string, { readonly n: number; readonly difference: Difference }>>;
}

export interface Report {
  readonly targets: Readonly<Record<Target, TargetReport>>;
}

type Marked = Case & { readonly marks: NonNullable<Case['marks']> };

const redraws = 2000;

export function reportOf(cases: readonly Case[], seed: number): Report {
  const of = (target: Target): TargetReport =>
    targetReport(
      cases.filter((each) => each.target === target),
      seed,
    );
  return { targets: Object.fromEntries(targets.map((target) => [target, of(target)])) as Record<Target, TargetReport> };
}

function targetReport(cases: readonly Case[], seed: number): TargetReport {
  const ks = [...new Set(cases.map(({ k }) => k))].sort((a, b) => a - b);
  const yards = [...new Set(cases.flatMap(({ yard }) => (yard === null ? [] : [yard])))].sort();
  return {
    intervals: ks.map((k) => ({
      k,
      ...scoresOf(
        cases.filter((each) => each.k === k),
        seed,
      ),
    })),
    pooled: scoresOf(cases, seed),
    yards: Object.fromEntries(
      yards.map((name) => {
        const { n, difference } = scoresOf(
          cases.filter(({ yard }) => yard === name),
          seed,
        );
        return [name, { n, difference }];
      }),
    ),
  };
}

function scoresOf(cases: readonly Case[], seed: number): Scores {
  const marked = cases.filter((each): each is Marked => each.marks !== null);
  const methodScores = methods.map((method) => [method, methodScore(marked, method)]);
  const difference = (method: Method): Omit<Difference, 'method'> => differenceOf(marked, method, seed);
  return {
    from: middle(marked.map(({ from }) => from)),
    to: middle(marked.map(({ to }) => to)),
    n: marked.length,
    zeros: cases.length - marked.length,
    methods: Object.fromEntries(methodScores) as Record<Method, MethodScore>,
    difference: { method: 'blend', ...difference('blend') },
    differences: { engine: difference('engine'), challenger: difference('challenger'), blend: difference('blend') },
  };
}

function methodScore(marked: readonly Marked[], method: Method): MethodScore {
  const mean = (of: (marks: Marked['marks'][Method]) => number): number | null =>
    marked.length === 0 ? null : marked.reduce((sum, { marks }) => sum + of(marks[method]), 0) / marked.length;
  const square = mean(({ logError }) => logError ** 2);
  return {
    logRmse: square === null ? null : Math.sqrt(square),
    mae: mean(({ error }) => error),
    crpsLog: mean(({ crpsLog }) => crpsLog),
    cover50: mean(({ held50 }) => Number(held50)),
    cover80: mean(({ held80 }) => Number(held80)),
    cover90: mean(({ held90 }) => Number(held90)),
  };
}

function differenceOf(marked: readonly Marked[], method: Method, seed: number): Omit<Difference, 'method'> {
  if (marked.length === 0) return { value: null, lo95: null, hi95: null };
  const sums = new Map<string, [n: number, own: number, last: number]>();
  for (const { colony, marks } of marked) {
    const sum = sums.get(colony) ?? [0, 0, 0];
    sums.set(colony, [sum[0] + 1, sum[1] + marks[method].logError ** 2, sum[2] + marks.persistence.logError ** 2]);
  }
  const all = [...sums.values()];
  const gap = (of: readonly (readonly [number, number, number])[]): number => {
    const [n, own, last] = of.reduce<readonly number[]>((a, b) => [a[0]! + b[0], a[1]! + b[1], a[2]! + b[2]], [0, 0, 0]);
    return Math.sqrt(own! / n!) - Math.sqrt(last! / n!);
  };
  const stream = newStream(seed, 0, 0, 0);
  const drawn = Array.from({ length: redraws }, () => gap(all.map(() => all[nextWord(stream) % all.length]!))).sort(
    (a, b) => a - b,
  );
  const at = (share: number): number => drawn[Math.min(redraws - 1, Math.floor(share * redraws))]!;
  return { value: gap(all), lo95: at(0.025), hi95: at(0.975) };
}

function middle(of: readonly number[]): number | null {
  if (of.length === 0) return null;
  const sorted = [...of].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}
