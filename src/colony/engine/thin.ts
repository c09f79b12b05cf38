/** A cloud with fewer particles, drawn by their shares: many are wanted where much is unknown, few where little is. */
import type { Cloud } from '../../numbers/particle-filter.ts';
import { systematicParents } from '../../numbers/resample.ts';
import { particleSize } from './particle.ts';

/** So many particles drawn by their shares, of equal share. */
export function thinned(cloud: Cloud, particles: number): Cloud {
  if (particles >= cloud.count) return cloud;
  const parents = systematicParents(
    cloud.logShares.map((share) => Math.exp(share)),
    1 / 2,
  );
  const chosen = Int32Array.from({ length: particles }, (_, i) => parents[Math.floor(((i + 1 / 2) * cloud.count) / particles)]!);
  return onlyOf(cloud, chosen);
}

/** Those particles alone, each with an equal share; they must have been chosen by their shares. */
export function onlyOf(cloud: Cloud, chosen: Int32Array): Cloud {
  const count = chosen.length;
  const values = new Float64Array(count * particleSize);
  chosen.forEach((from, to) =>
    values.set(cloud.values.subarray(from * particleSize, (from + 1) * particleSize), to * particleSize),
  );
  return {
    day: cloud.day,
    count,
    values,
    logShares: new Float64Array(count).fill(-Math.log(count)),
    roots: chosen.map((from) => cloud.roots[from]!),
  };
}
