/** What the combs as read say of the cells that are built: nearly exact where all were read, and a floor where not. */
import { logNormalDensity, normalBelow } from '../../../numbers/normal.ts';
import type { Observation } from '../../../numbers/particle-filter.ts';
import { nextNormal } from '../../../numbers/streams.ts';
import type { EngineConstants } from '../constants.ts';
import { part } from '../particle.ts';

export interface Built {
  /** Worker cells of the combs as read, or last read. */
  readonly cells: number;
  /** Some combs were never read: there may be more. */
  readonly atLeast?: boolean;
}

export const builtSeen: Observation<EngineConstants, Built> = {
  density: (c, values, at, { cells, atLeast }) => {
    const middle = Math.log(Math.max(1, values[at + part.comb]!));
    const seen = Math.log(Math.max(1, cells));
    if (atLeast === true) return Math.log(normalBelow((middle - seen) / c.counts.builtNoise));
    return logNormalDensity(seen, middle, c.counts.builtNoise);
  },
  draw: (c, values, at, stream) => Math.max(1, values[at + part.comb]!) * Math.exp(c.counts.builtNoise * nextNormal(stream)),
};
