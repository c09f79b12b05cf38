/** The trial's tables as text: a row a policy, means ± standard errors, then differences with their 95 % ranges, then the gates. */
import type { Gate } from './gates.ts';
import { type Measure, measures } from './tally.ts';
import type { WorldTable } from './trial.ts';

const heads: Readonly<Record<Measure, string>> = {
  openings: 'openings',
  swarms: 'swarms',
  starvations: 'stores ran out',
  notLaying: 'days not laid',
};

export function reportOf(tables: readonly WorldTable[], gates: readonly Gate[]): string {
  return [...tables.map(worldPart), gatesPart(gates)].join('\n\n');
}

function worldPart({ world, seasons, rows }: WorldTable): string {
  const means = rows.map(({ policy, means: m }) => [
    policy,
    ...measures.map((measure) => `${fixed(m[measure].mean, measure)} ± ${fixed(m[measure].se, measure, 1)}`),
  ]);
  const rivals = rows[0]?.less.map(({ rival }) => rival) ?? [];
  const less = rivals.flatMap((rival) => [
    [`less ${rival}`, ...measures.map(() => '')],
    ...rows.flatMap(({ policy, less: all }) => {
      const by = all.find((one) => one.rival === rival)?.by ?? null;
      if (by === null) return [];
      const cell = (measure: Measure): string =>
        `${signed(by[measure].mean, measure)} [${signed(by[measure].lo95, measure)}, ${signed(by[measure].hi95, measure)}]`;
      return [[`  ${policy}`, ...measures.map(cell)]];
    }),
  ]);
  const title = `World of ${world}: ${seasons} colony-seasons, each under every policy`;
  return `${title}\n${aligned([['', ...measures.map((measure) => heads[measure])], ...means, ...less])}`;
}

function gatesPart(gates: readonly Gate[]): string {
  const rows = gates.map(({ world, what, found, limit, met }) => [
    met ? 'met' : 'NOT MET',
    world,
    what,
    found.toFixed(4),
    `limit ${limit}`,
  ]);
  return rows.length === 0 ? '' : aligned(rows);
}

/** Rare losses need more places than openings. */
function fixed(value: number, measure: Measure, more = 0): string {
  return value.toFixed((measure === 'openings' || measure === 'notLaying' ? 2 : 3) + more);
}

function signed(value: number, measure: Measure): string {
  return `${value < 0 ? '−' : '+'}${fixed(Math.abs(value), measure)}`;
}

function aligned(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => row[i]?.length ?? 0)));
  return rows
    .map((row) => row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!))).join('  '))
    .join('\n');
}
