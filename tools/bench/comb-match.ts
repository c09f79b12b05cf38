/**
 * Thirty combs matched to thirty bars, new and gone ones allowed; and the assignment alone beside trying all of them
 * on 8 × 8, and beside SciPy's on 30 × 30, where that is installed.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { type CombBefore, type CombToday, matchCombs } from '../../src/colony/comb-match.ts';
import { printedBook } from '../../src/figures/book.ts';
import { leastAssignment } from '../../src/numbers/assignment.ts';
import { newStream, nextUnit } from '../../src/numbers/streams.ts';
import { middle, timed } from './timed.ts';

const stream = newStream(1, 1, 0, 0);
const runs = 51;

main();

function main(): void {
  const combs = Array.from({ length: 30 }, (_, i) => ({
    place: i + 1,
    mark: null,
    brood: nextUnit(stream),
    food: nextUnit(stream) / 4,
  }));
  const last = combs.map(({ brood, food, ...rest }): CombBefore => {
    return { ...rest, brood: { expected: brood, sd: 0.15 }, food: { expected: food, sd: 0.1 } };
  });
  const today: readonly CombToday[] = combs.map((comb, i) => ({ ...comb, place: combs[(i + 7) % combs.length]!.place }));
  const match = (): unknown => matchCombs(last, today, printedBook);
  const first = timed(match);
  const ms = middle(runs, match);
  console.log(`combs 30 × 30: ${ms.toFixed(2)} ms, the first time ${first.toFixed(1)} ms (aim: at most 20)`);
  const small = squareOf(8);
  const [quick, slow] = [middle(runs, () => leastAssignment(small, 8)), middle(3, () => leastOfAll(small))];
  console.log(
    `8 × 8 alone, with all gaps: ${quick.toFixed(3)} ms; trying all 40 320, without gaps: ${slow.toFixed(1)} ms, ` +
      `${(slow / quick).toFixed(0)} times as long`,
  );
  besideScipy(squareOf(30));
}

function squareOf(size: number): readonly (readonly number[])[] {
  return Array.from({ length: size }, () => Array.from({ length: size }, () => nextUnit(stream)));
}

function leastOfAll(costs: readonly (readonly number[])[], row = 0, used = 0): number {
  if (row === costs.length) return 0;
  let least = Infinity;
  costs[row]!.forEach((cost, column) => {
    if ((used & (1 << column)) === 0) least = Math.min(least, cost + leastOfAll(costs, row + 1, used | (1 << column)));
  });
  return least;
}

/** The same costs; SciPy finds the assignment alone, here the gaps of all rows come with it. */
function besideScipy(costs: readonly (readonly number[])[]): void {
  const ours = middle(runs, () => leastAssignment(costs, costs.length));
  const script = fileURLToPath(new URL('./c/assignment.py', import.meta.url));
  const { status, stdout } = spawnSync('python3', [script, String(runs)], { input: JSON.stringify(costs), encoding: 'utf8' });
  if (status !== 0) return console.log('no python with scipy to stand beside');
  const [theirs, total] = stdout.split(' ').map(Number);
  const apart = Math.abs(leastAssignment(costs, costs.length).total - total!);
  console.log(
    `30 × 30 alone, with all gaps: ${ours.toFixed(2)} ms; SciPy without gaps ${theirs!.toFixed(2)} ms: ` +
      `${(ours / theirs!).toFixed(1)} times; totals ${apart.toExponential(1)} apart`,
  );
}
