/**
 * What to look at in so many minutes: questions of all hives, taken by what an answer is worth a minute. The way to
 * a hive and its lid are paid once; a bar that is lifted for one question answers another for nothing.
 */
import type { Id } from '../../../journal/entry.ts';
import type { Look, Question } from '../../foreseen.ts';
import type { LookConstants } from './look-constants.ts';

export interface PlannedHive {
  readonly colony: Id;
  readonly asks: readonly Question[];
  /** In the order in which they are asked. */
  readonly places: readonly number[];
  readonly minutes: number;
  /** Sum over its questions of the chance that the answer changes what is done, times what is lost by being late. */
  readonly value: number;
}

export interface MinutesPlan {
  /** The most valuable minute first. */
  readonly hives: readonly PlannedHive[];
  readonly used: number;
}

/** `bars`: how many are lifted where a question names none. Hives that a look would harm are left out. */
export function planForMinutes(
  looks: readonly { readonly colony: Id; readonly look: Look; readonly bars: number }[],
  minutes: number,
  c: LookConstants,
): MinutesPlan {
  const hives = new Map<Id, PlannedHive>();
  const open = looks
    .filter(({ look }) => !look.harms)
    .flatMap(({ colony, look, bars }) => look.questions.map((asked) => ({ colony, bars, ...asked })));
  const left = new Set(open);
  let used = 0;
  for (;;) {
    const offers = [...left]
      .map((asked) => ({ asked, costs: minutesFor(hives.get(asked.colony), asked.places, asked.bars, c) }))
      .filter(({ costs }) => used + costs <= minutes);
    const [best] = offers.sort((a, b) => worth(b, c) - worth(a, c));
    if (best === undefined) return { hives: [...hives.values()], used };
    const { asked, costs } = best;
    const before = hives.get(asked.colony);
    hives.set(asked.colony, {
      colony: asked.colony,
      asks: [...(before?.asks ?? []), asked.ask],
      places: [...new Set([...(before?.places ?? []), ...asked.places])],
      minutes: (before?.minutes ?? 0) + costs,
      value: (before?.value ?? 0) + asked.chance * c.cost[asked.ask],
    });
    used += costs;
    left.delete(asked);
  }
}

/** Minutes that a look takes, or that more bars add to one that is planned already. */
export function minutesFor(planned: PlannedHive | undefined, places: readonly number[], bars: number, c: LookConstants): number {
  const lifted = new Set(planned?.places ?? []);
  const more = places.length === 0 ? Math.max(0, bars - lifted.size) : places.filter((place) => !lifted.has(place)).length;
  return (planned === undefined ? c.hiveMinutes : 0) + more * c.barMinutes;
}

interface Offer {
  readonly asked: { readonly ask: Question; readonly chance: number };
  readonly costs: number;
}

/** What costs nothing more is worth it whatever it is. */
function worth({ asked, costs }: Offer, c: LookConstants): number {
  return costs === 0 ? Infinity : (asked.chance * c.cost[asked.ask]) / costs;
}
