/**
 * Eggs of a day: what the queen could lay, times the season, times a saturating share of the bees that are
 * there to feed and warm. The saturation is that of the published colony balance of D. S. Khoury, M. R.
 * Myerscough and A. B. Barron (2011), PLoS ONE 6(4):e18491; it is what keeps a colony from growing without end.
 */
import type { EngineConstants } from './constants.ts';
import { part } from './particle.ts';
import { seasonShare } from './season.ts';

/** The season's share of the peak for a particle on a day. */
export function shareOn(c: EngineConstants, day: number, values: Float64Array, at: number): number {
  return seasonShare(c.season, day, values[at + part.rise]!, values[at + part.fall]!, values[at + part.depth]!);
}

/** E = Q·s·e^x·N / (w + N), eggs a day. */
export function eggsOn(c: EngineConstants, share: number, adults: number, values: Float64Array, at: number): number {
  const best = c.capacity * Math.exp(values[at + part.capacity]! + values[at + part.laying]!);
  return (best * share * adults) / (c.halfBees + adults);
}
