/** `npm run checks`: ours, theirs, error and share of the tolerance of every check; exit code 1 when one does not stand. */
import { type Verdict, verdictOf } from './answer.ts';
import { type Check, checkTopics } from './check.ts';
import { checks } from './list.ts';

const judged = checks.map((check) => ({ check, verdict: verdictOf(check) }));

for (const topic of checkTopics) {
  console.log(`\n${topic}`);
  for (const { check, verdict } of judged) if (check.topic === topic) console.log(line(check, verdict));
}

const failed = judged.filter(({ verdict }) => !verdict.passes);
const count = (wanted: (check: Check) => boolean): number => checks.filter(wanted).length;
console.log(
  `\n${checks.length} checks: ${count((check) => !check.circular && check.differs === undefined)} count, ` +
    `${count((check) => check.circular)} circular, ${count((check) => check.differs !== undefined)} known to differ; ` +
    `${failed.length} failed`,
);
for (const { check } of failed) console.log(`failed: ${check.id}`);
process.exitCode = failed.length > 0 ? 1 : 0;

function line(check: Check, verdict: Verdict): string {
  const state = verdict.passes ? (check.differs === undefined ? 'ok' : 'differs') : 'FAILED';
  const share = verdict.share === null ? '' : `${Math.round(100 * verdict.share)} % of tolerance`;
  const error = verdict.error === null ? '' : `error ${short(verdict.error)}`;
  return [
    state.padEnd(8),
    check.id.padEnd(42),
    `ours ${short(verdict.ours)}`.padEnd(20),
    `theirs ${short(check.expected)} ${check.unit}`.padEnd(28),
    error.padEnd(18),
    share,
    check.circular ? '(circular)' : '',
  ]
    .join(' ')
    .trimEnd();
}

function short(value: number | string | null): string {
  if (typeof value !== 'number') return value ?? 'no answer';
  return `${Number(value.toPrecision(6))}`;
}
