/** The scores as a table to read, one line a method; figures to three digits, nothing where nothing was scored. */
import { methods } from './methods.ts';
import type { Report, Scores, TargetReport } from './report.ts';

const titles = { adult_bees: 'Adult bees', capped_worker_cells: 'Sealed worker cells' } as const;

export function reportTable(report: Report): string {
  return Object.entries(titles)
    .map(([target, title]) => `${title}\n${targetTable(report.targets[target as keyof typeof titles])}`)
    .join('\n\n');
}

function targetTable({ intervals, pooled, yards }: TargetReport): string {
  if (intervals.length === 0) return '  nothing to score: no colony was counted twice';
  const parts = [
    ...intervals.map((scores) => block(`interval ${scores.k}`, scores)),
    block('all together', pooled),
    ...Object.entries(yards).map(
      ([yard, { n, difference }]) => `  yard ${yard}: n ${n}, blend less last time ${sign(difference.value)}${ends(difference)}`,
    ),
  ];
  return parts.join('\n');
}

function block(title: string, scores: Scores): string {
  const days = scores.n === 0 ? '' : `, day ${scores.from} to ${scores.to}`;
  const zeros = scores.zeros === 0 ? '' : `, ${scores.zeros} of nothing not scored`;
  const head = `  ${title}${days}: n ${scores.n}${zeros}`;
  if (scores.n === 0) return head;
  const columns = `    ${'method'.padEnd(12)} logRMSE      MAE  CRPS    50 %  80 %  90 %  less last time`;
  const rows = methods.map((method) => {
    const { logRmse, mae, crpsLog, cover50, cover80, cover90 } = scores.methods[method];
    const gap = method === 'persistence' ? '' : `  ${sign(scores.differences[method].value)}${ends(scores.differences[method])}`;
    const held = [cover50, cover80, cover90].map((share) => (share ?? 0).toFixed(2).padStart(6)).join('');
    const name = method === 'persistence' ? 'last time' : method;
    return `    ${name.padEnd(12)} ${three(logRmse)} ${String(Math.round(mae ?? 0)).padStart(8)}  ${three(crpsLog)}${held}${gap}`;
  });
  return [head, columns, ...rows].join('\n');
}

function three(number: number | null): string {
  return (number ?? 0).toFixed(3).padStart(6);
}

function sign(number: number | null): string {
  return number === null ? 'none' : `${number < 0 ? '−' : '+'}${Math.abs(number).toFixed(3)}`;
}

function ends({ lo95, hi95 }: { readonly lo95: number | null; readonly hi95: number | null }): string {
  return lo95 === null || hi95 === null ? '' : ` (${sign(lo95)} to ${sign(hi95)})`;
}
