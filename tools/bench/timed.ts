/** Milliseconds that work takes in this process. */
export function timed(run: () => unknown): number {
  const from = performance.now();
  run();
  return performance.now() - from;
}

/** The middle of so many runs. */
export function middle(times: number, run: () => unknown): number {
  return Array.from({ length: times }, () => timed(run)).sort((a, b) => a - b)[Math.floor(times / 2)]!;
}
