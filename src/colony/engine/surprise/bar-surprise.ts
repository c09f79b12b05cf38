/**
 * A bar that holds otherwise than expected, with what may lie behind it: closed forms for one comb, because no
 * particle knows single bars. Of brood and food the one that differs more is told; both weigh in the explanations.
 */
import { eighthsInWhole } from '../../../hive/shapes.ts';
import { logMix, logSum } from '../../../numbers/log-sum.ts';
import { logNormalDensity, normalBelow, normalQuantile } from '../../../numbers/normal.ts';
import type { Cause, Surprise } from '../../foreseen.ts';
import { eightOfTen } from '../../split-contents.ts';
import type { BarPart, BarSeen } from './bar-seen.ts';
import { inDays } from './cause.ts';
import { named } from './named.ts';
import type { SurpriseConstants } from './surprise-constants.ts';

/**
 * Null when it is as expected, or was not read. Expected and seen in eighths of the comb. `movedFit`: by how much
 * better all bars of the visit fit combs that were moved than combs that hang as they did, a logarithm; null for a
 * bar by itself.
 */
export function barSurprise(
  bar: BarSeen,
  sinceDays: number,
  surprise: SurpriseConstants,
  movedFit: number | null = null,
): Surprise | null {
  const part = bar[fartherPart(bar)];
  const z = barZ(part);
  if (part.read === null || Math.abs(z) < surprise.leastSd) return null;
  const eighths = (share: number): number => Math.min(1, Math.max(0, share)) * eighthsInWhole;
  return {
    what: 'bar',
    place: bar.place,
    expected: {
      low: eighths(part.expected - eightOfTen * part.sd),
      likely: eighths(part.expected),
      high: eighths(part.expected + eightOfTen * part.sd),
    },
    seen: eighths(part.read),
    z,
    because: named(rivals(bar, sinceDays, surprise, movedFit), surprise.leastChance),
  };
}

/** The content that lies farther from what was expected. */
export function fartherPart({ brood, food }: BarSeen): 'brood' | 'food' {
  return Math.abs(barZ(food)) > Math.abs(barZ(brood)) ? 'food' : 'brood';
}

/**
 * Of many numbers one is always off: from how many standard deviations on the farthest of `count` is as unlikely as
 * one number alone that is `leastSd` off.
 */
export function leastOfMany(count: number, leastSd: number): number {
  const one = 2 * (1 - normalBelow(leastSd));
  const each = -Math.expm1(Math.log1p(-one) / Math.max(1, count));
  return -normalQuantile(each / 2);
}

/** Standard deviations from what was expected; 0 where it was not read. */
export function barZ({ read, expected, sd }: BarPart): number {
  return read === null ? 0 : (read - expected) / sd;
}

type Density = (part: BarPart, read: number) => number;

function rivals(
  { brood, food }: BarSeen,
  sinceDays: number,
  surprise: SurpriseConstants,
  movedFit: number | null,
): readonly { readonly cause: Cause; readonly log: number }[] {
  const { perDay, otherHand, moved } = surprise;
  const log = (onBrood: Density, onFood: Density): number => of(brood, onBrood) + of(food, onFood);
  const asUsual: Density = ({ expected, sd }, read) => logMix(logNormalDensity(read, expected, sd), 0, surprise.outliers);
  const hand =
    (spread: number): Density =>
    ({ expected, sd }, read) =>
      logNormalDensity(read, expected, Math.hypot(sd, expected * Math.expm1(spread)));
  const { low, high } = surprise.broodDead;
  const dead: Density = ({ expected, sd }, read) => evenly(read, expected * (1 - high), expected * (1 - low), sd);
  const more: Density = ({ expected, sd }, read) => evenly(read, expected, 1, sd);
  const less: Density = ({ expected, sd }, read) => evenly(read, 0, expected, sd);
  const anything: Density = () => 0;
  const days = (rate: number): number => Math.log(inDays(rate, { sinceDays }));
  return [
    { cause: 'just chance', log: log(asUsual, asUsual) },
    {
      cause: 'combs moved',
      log: Math.log(moved) + (movedFit === null ? log(anything, anything) : log(asUsual, asUsual) + movedFit),
    },
    { cause: 'counted by another hand', log: Math.log(otherHand) + log(hand(surprise.handBrood), hand(surprise.handFood)) },
    { cause: 'brood dying', log: days(perDay.dying) + log(dead, asUsual) },
    { cause: 'flow started', log: days(perDay.flow) + log(asUsual, more) },
    { cause: 'flow ended', log: days(perDay.flow) + log(asUsual, less) },
    { cause: 'robbed', log: days(perDay.robbed) + log(asUsual, less) },
    { cause: 'queen lost', log: days(perDay.lost) + log(less, asUsual) },
  ];
}

function of(part: BarPart, density: Density): number {
  return part.read === null ? 0 : density(part, part.read);
}

/** Spread evenly from `low` to `high`, seen with that error: the log density, by steps fine beside the error. */
function evenly(read: number, low: number, high: number, sd: number): number {
  const steps = 1 + Math.ceil((2 * Math.max(0, high - low)) / sd);
  const at = Array.from({ length: steps }, (_, i) => low + ((high - low) * (i + 1 / 2)) / steps);
  return logSum(at.map((middle) => logNormalDensity(read, middle, sd))) - Math.log(steps);
}
