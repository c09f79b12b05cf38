/**
 * Which counts are scored: interval k leads from a colony's count k to its next, or from round k to the next
 * round where rounds are given. First counts are not scored; nor are counts of 0, nor what follows one: no
 * logarithm tells how far off they were. How many were left out is told.
 */
import type { Foresight } from '../../src/colony/engine/foresight.ts';
import { foreseeColony, type Effort, type Method } from './methods.ts';
import type { ColonyCounts, Target } from './read-counts.ts';
import { targets } from './read-counts.ts';
import { marksOf, type Marks } from './marks.ts';
import { methods } from './methods.ts';

export interface Case {
  readonly target: Target;
  readonly colony: string;
  readonly yard: string | null;
  readonly k: number;
  /** Days since the split, else since the colony's first row. */
  readonly from: number;
  readonly to: number;
  /** Null when the count, or the one before it, was 0. */
  readonly marks: Readonly<Record<Method, Marks>> | null;
}

export function casesOf(colonies: readonly ColonyCounts[], effort: Effort, seedOf: (colony: string) => number): readonly Case[] {
  const rounds = { adult_bees: roundsOf(colonies, 'adult_bees'), capped_worker_cells: roundsOf(colonies, 'capped_worker_cells') };
  return colonies.flatMap((colony) => {
    const foreseen = foreseeColony(colony, { ...effort, seed: seedOf(colony.colony) });
    return targets.flatMap((target) => casesOfTarget(colony, target, rounds[target], (row) => foreseen[row]![target]));
  });
}

/** Rounds in which somebody counted it, ascending. */
function roundsOf(colonies: readonly ColonyCounts[], target: Target): readonly number[] {
  const all = colonies.flatMap(({ rows }) =>
    rows.flatMap(({ round, counts }) => (round !== null && counts[target] !== null ? [round] : [])),
  );
  return [...new Set(all)].sort((a, b) => a - b);
}

type Foreseen = (row: number) => Readonly<Record<Method, Foresight>> | null;

function casesOfTarget(colony: ColonyCounts, target: Target, rounds: readonly number[], foreseen: Foreseen): readonly Case[] {
  const origin = colony.splitOn ?? colony.rows[0]!.day;
  const counted = colony.rows.flatMap((row, index) => {
    const count = row.counts[target];
    return count === null ? [] : [{ ...row, index, count }];
  });
  return counted.flatMap((row, i): readonly Case[] => {
    const last = counted[i - 1];
    if (last === undefined) return [];
    // A colony that was passed over in a round has no interval to or from that round.
    if (row.round !== null && last.round !== null && rounds.indexOf(row.round) !== rounds.indexOf(last.round) + 1) return [];
    const foresights = row.count > 0 && last.count > 0 ? foreseen(row.index) : null;
    return [
      {
        target,
        colony: colony.colony,
        yard: colony.yard,
        k: last.round ?? i,
        from: last.day - origin,
        to: row.day - origin,
        marks: foresights === null ? null : marksOfAll(foresights, row.count),
      },
    ];
  });
}

function marksOfAll(foresights: Readonly<Record<Method, Foresight>>, count: number): Readonly<Record<Method, Marks>> {
  return Object.fromEntries(methods.map((method) => [method, marksOf(foresights[method], count)])) as Record<Method, Marks>;
}
