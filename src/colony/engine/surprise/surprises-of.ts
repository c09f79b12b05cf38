/**
 * What surprised at a visit: the three things that lay farthest from what was foreseen before they were seen, each
 * with rival explanations. The explanations are judged by all that was seen together; for each thing those are
 * named that touch it. What was foreseen of things nobody looked at is left out.
 */
import { normalBelow, normalQuantile } from '../../../numbers/normal.ts';
import type { Cloud } from '../../../numbers/particle-filter.ts';
import type { Surprise } from '../../foreseen.ts';
import type { EngineSetup, Seen } from '../run.ts';
import { movedFitOf } from './bar-pattern.ts';
import type { BarSeen } from './bar-seen.ts';
import { barSurprise, barZ } from './bar-surprise.ts';
import type { Given } from './cause.ts';
import { type Rival, rivalsOf } from './evidence.ts';
import { type Foretold, foretoldOf } from './foretold.ts';
import { named } from './named.ts';

export type SurpriseContext = Omit<Given, 'engine' | 'day'>;

/** What would be known of a visit if nothing is known but when the last one was. */
export function plainContext(surprise: Given['surprise'], sinceDays: number): SurpriseContext {
  return { surprise, sinceDays, opened: 1, combs: null, bars: [] };
}

/** `cloudBefore` stands on the visit's day and has not seen it. The most surprising first; empty when all is as foreseen. */
export function surprisesOf(
  setup: EngineSetup,
  cloudBefore: Cloud,
  seen: Seen,
  context: SurpriseContext,
  seed: number,
): readonly Surprise[] {
  const { surprise, bars, sinceDays } = context;
  const far = onceEach(foretoldOf(setup, cloudBefore, seen, seed).filter(({ z }) => Math.abs(z) >= surprise.leastSd));
  const odd = oddBars(bars, sinceDays, surprise);
  if (far.length === 0 && odd.length === 0) return [];
  const given: Given = { ...context, engine: setup.constants, day: cloudBefore.day };
  const rivals = far.length === 0 ? [] : rivalsOf(setup, cloudBefore, seen, given, seed);
  const whole = far.map((one) => ({ size: Math.abs(one.z), surprise: toldOf(one, rivals, surprise.leastChance) }));
  return [...whole, ...odd]
    .sort((a, b) => b.size - a.size)
    .slice(0, most)
    .map((one) => one.surprise);
}

const most = 3;

function toldOf({ kind, what, expected, seen, z }: Foretold, rivals: readonly Rival[], least: number): Surprise {
  const touching = rivals.filter(({ rule }) => rule === null || rule.reads.includes(kind));
  return { what, place: null, expected, seen, z, because: named(touching, least) };
}

/** Of two counts of one thing the one farther off. */
function onceEach(all: readonly Foretold[]): readonly Foretold[] {
  return all.filter(
    (one) => !all.some((other) => other.what === one.what && other !== one && Math.abs(other.z) > Math.abs(one.z)),
  );
}

/** Of many bars one is always off: its size is that of the farthest of so many. */
function oddBars(
  bars: readonly BarSeen[],
  sinceDays: number,
  surprise: Given['surprise'],
): readonly { readonly size: number; readonly surprise: Surprise }[] {
  const read = bars.flatMap(({ brood, food }) => [brood, food]).filter((part) => part.read !== null).length;
  const movedFit = movedFitOf(bars, surprise.outliers);
  return bars.flatMap((bar) => {
    const found = barSurprise(bar, sinceDays, surprise, movedFit);
    if (found === null) return [];
    const size = farthestOf(read, Math.max(Math.abs(barZ(bar.brood)), Math.abs(barZ(bar.food))));
    return size < surprise.leastSd ? [] : [{ size, surprise: found }];
  });
}

/** As unlikely as so many standard deviations, of the farthest of n, either way. */
function farthestOf(n: number, z: number): number {
  const one = 2 * (1 - normalBelow(z));
  const any = -Math.expm1(n * Math.log1p(-Math.min(one, 1 - leastChance)));
  return any >= 1 ? 0 : -normalQuantile(Math.max(leastChance, any / 2));
}

const leastChance = 1e-9;
