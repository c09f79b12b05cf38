/** What the trial holds the model's own choice to, in each world, and whether it is met; limits set before it was run. */
import type { WorldTable } from './trial.ts';

export interface Gate {
  readonly world: string;
  readonly what: string;
  readonly found: number;
  readonly limit: number;
  readonly met: boolean;
}

/** Fewer openings than the rival, as a share; upper 95 % of the difference in losses a colony-season. */
const limits = { fewer: { 'every 7 days': 0.3, 'simple rule': 0.15 }, worse: 0.015 } as const;

export function gatesOf({ world, rows }: WorldTable): readonly Gate[] {
  const own = rows.find(({ policy }) => policy === 'festoon');
  if (own === undefined) return [];
  return Object.entries(limits.fewer).flatMap(([rival, fewer]) => {
    const other = rows.find(({ policy }) => policy === rival);
    const by = own.less.find((one) => one.rival === rival)?.by ?? null;
    if (other === undefined || by === null) return [];
    const share = 1 - own.means.openings.mean / other.means.openings.mean;
    return [
      { world, what: `fewer openings than ${rival}`, found: share, limit: fewer, met: share >= fewer },
      ...(['swarms', 'starvations'] as const).map((measure) => ({
        world,
        what: `${measure} less those of ${rival}, upper 95 %`,
        found: by[measure].hi95,
        limit: limits.worse,
        met: by[measure].hi95 < limits.worse,
      })),
    ];
  });
}
