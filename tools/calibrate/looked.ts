/**
 * Whole looks at brood and cells, drawn as the model's densities say: the observations' own draws hand back one
 * number, which is less than a keeper notes. Every outcome of a look at brood is weighed by its density; they are
 * few and their chances sum to 1.
 */
import type { EngineConstants } from '../../src/colony/engine/constants.ts';
import { type BroodLook, broodLooked, type CellsLook, drawnCells } from '../../src/colony/engine/seen/looks.ts';
import { cellKinds } from '../../src/colony/queen-chain/cells-there.ts';
import { stages } from '../../src/colony/queen-chain/seen.ts';
import { nextUnit, type Stream } from '../../src/numbers/streams.ts';

/** All that a look at brood can come to. */
export const broodLooks: readonly Omit<BroodLook, 'share'>[] = (['seen', 'none seen'] as const).flatMap((eggs) =>
  stages.map((youngest) => ({ eggs, youngest })),
);

export function lookedForBrood(c: EngineConstants, values: Float64Array, share: number, stream: Stream): BroodLook {
  let left = nextUnit(stream);
  for (const look of broodLooks) {
    left -= Math.exp(broodLooked.density(c, values, 0, { ...look, share }));
    if (left < 0) return { ...look, share };
  }
  return { ...broodLooks[broodLooks.length - 1]!, share };
}

/** Cells of each kind; a few looks find what nobody can foresee, any number of any kind, fewer being likelier. */
export function lookedForCells(c: EngineConstants, values: Float64Array, share: number, stream: Stream): CellsLook {
  const unforeseen = nextUnit(stream) < c.looks.slip;
  const counts = unforeseen
    ? cellKinds.map(() => Math.floor(-Math.log2(nextUnit(stream))))
    : drawnCells(c, values, 0, share, stream);
  const [open = 0, sealed = 0, torn = 0, emerged = 0] = counts;
  return { cells: { open, sealed, torn, emerged }, share };
}
