/**
 * How long a state lasts, as chances of whole days and as daily hazards. Chances are given for lasting exactly
 * 1, 2, … days; a hazard is the chance to leave on a day, given that one is still there. Several ways out of one
 * state share its days: each takes its part of what is left.
 */
import { assert } from '../../numbers/assert.ts';
import type { Range } from '../../numbers/range.ts';

/** Chances of lasting exactly index + 1 days; they sum to 1. */
export type Lasting = readonly number[];

/** A triangle over a figure's range, both ends within reach; never shorter than a day. */
export function lastingBetween({ low, likely, high }: Range): Lasting {
  const first = Math.max(1, Math.round(low));
  const last = Math.max(first, Math.round(high));
  const top = Math.min(Math.max(likely, first), last);
  return evened(last, (days) => {
    if (days < first) return 0;
    return days <= top ? (days - first + 1) / (top - first + 1) : (last + 1 - days) / (last + 1 - top);
  });
}

/** Log-normal of that mean and log spread, cut to the ends and spread over whole days. */
export function lastingSkewed({ low, likely: mean, high }: Range, logSpread: number): Lasting {
  const middle = Math.log(mean) - (logSpread * logSpread) / 2;
  return evened(Math.round(high), (days) => {
    if (days < Math.round(low)) return 0;
    const z = (Math.log(days) - middle) / logSpread;
    return Math.exp(-(z * z) / 2) / days;
  });
}

/** Exactly so many days. */
export function lastingExactly(days: number): Lasting {
  return evened(Math.max(1, Math.round(days)), (at) => (at === Math.max(1, Math.round(days)) ? 1 : 0));
}

/** One of several ways out: how likely it is in the end, and when, if it is this one. */
export interface Part {
  readonly chance: number;
  readonly lasting: Lasting;
}

/** Daily hazards of each part, index 0 for the first day in the state. Where the chances sum to 1 the last day ends it. */
export function sharedHazards(parts: readonly Part[]): readonly Float64Array[] {
  const whole = parts.reduce((sum, { chance }) => sum + chance, 0);
  assert(whole > 0 && whole <= 1 + tiny, `ways out that are at most certain together, not ${whole}`);
  const days = Math.max(...parts.map(({ lasting }) => lasting.length));
  const hazards = parts.map(() => new Float64Array(days));
  let left = 1;
  for (let day = 0; day < days; day += 1) {
    const leaving = parts.map(({ chance, lasting }) => chance * (lasting[day] ?? 0));
    leaving.forEach((part, index) => (hazards[index]![day] = left > tiny ? Math.min(1, part / left) : 0));
    left -= leaving.reduce((sum, part) => sum + part, 0);
  }
  return hazards;
}

/** Hazards of a single certain way. */
export function hazardsOf(lasting: Lasting): Float64Array {
  return sharedHazards([{ chance: 1, lasting }])[0]!;
}

/** Below this nothing is left to leave: rounding of the sum of chances. */
const tiny = 1e-12;

function evened(days: number, weight: (days: number) => number): Lasting {
  const weights = Array.from({ length: days }, (_, index) => weight(index + 1));
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((one) => one / sum);
}
