/**
 * Combs were moved without a note. Within the hive the whole is as expected, but combs that were opened hold
 * another share of it, and single bars hold what is expected elsewhere; between hives a comb or two came or went
 * with what was on it. A swap of like combs shows nowhere and is left out.
 */
import { nextNormal, nextUnit, type Stream } from '../../../numbers/streams.ts';
import { adultDays, adultsAt, broodAt, broodDays, part } from '../particle.ts';
import type { CauseRule, Given } from './cause.ts';
import { between, scaleRun } from './scale-run.ts';

export const combsMoved: CauseRule = {
  cause: 'combs moved',
  prior: ({ surprise }) => surprise.moved,
  change: (given, values, at, stream) => {
    if (nextUnit(stream) < 1 / 2) within(given, values, at, stream);
    else cameOrWent(given, values, at, stream);
    return 0;
  },
  reads: ['bees', 'bars', 'sealed', 'open', 'honeyKg', 'built', 'pattern'],
};

/** What the opened combs hold of the whole, drawn anew; where all were opened, all is there. */
function within({ opened, surprise }: Given, values: Float64Array, at: number, stream: Stream): void {
  if (opened <= 0 || opened >= 1) return;
  const redrawn = (): number => {
    const logit = Math.log(opened / (1 - opened)) + surprise.movedSpread * nextNormal(stream);
    return 1 / (1 + Math.exp(-logit)) / opened;
  };
  scaleRun(values, at + broodAt, broodDays, redrawn());
  values[at + part.honeyKg]! *= redrawn();
}

/** A comb or two, of brood or of food, came from another hive or went there. */
function cameOrWent({ combs, surprise }: Given, values: Float64Array, at: number, stream: Stream): void {
  const all = Math.max(2, combs ?? usualCombs);
  const moved = Math.min(all - 1, Math.round(between(surprise.movedCombs, stream))) / all;
  const came = nextUnit(stream) < 1 / 2;
  const times = (share: number): number => (came ? 1 + share : Math.max(0, 1 - share));
  const onBrood = nextUnit(stream) < 1 / 2;
  // The combs of a nest are about half brood combs: one of them holds twice its part of the brood.
  if (onBrood) {
    scaleRun(values, at + broodAt, broodDays, times(2 * moved));
    scaleRun(values, at + adultsAt, adultDays, times(moved));
  } else values[at + part.honeyKg]! *= times(2 * moved);
  values[at + part.comb]! *= times(moved);
}

/** Where nobody knows how many combs hang there. */
const usualCombs = 10;
