/**
 * What to do in so many minutes: first what rules ask for, in their own order; then the questions of all hives,
 * taken by what an answer is worth a minute. The way to a hive and its lid are paid once; a bar that is lifted for
 * one question answers another for nothing. A further question takes bars only where it is worth a look by itself.
 */
import type { Id } from '../../../journal/entry.ts';
import type { Look, Question } from '../../foreseen.ts';
import type { LookConstants } from './look-constants.ts';

/** What a rule asks for at a hive today. No look takes its minutes. */
export interface Duty {
  readonly colony: Id;
  readonly minutes: number;
  /** All bars are lifted: whatever the model asks is answered on the way. */
  readonly opened: boolean;
}

export interface HiveLook {
  readonly colony: Id;
  readonly look: Pick<Look, 'questions' | 'harms'>;
  /** Minutes around it and for a bar, and at most; `bars` are lifted where a question names none. */
  readonly takes: { readonly around: number; readonly bar: number; readonly most: number; readonly bars: number };
}

export interface PlannedHive {
  readonly colony: Id;
  readonly duty: Duty | null;
  readonly asks: readonly Question[];
  /** In the order in which they are asked. */
  readonly places: readonly number[];
  /** A question names no bars: all are lifted, and answer every other one. */
  readonly whole: boolean;
  /** All together. */
  readonly minutes: number;
  /** Sum over its questions of the chance that the answer changes what is done, times what is lost by being late. */
  readonly value: number;
}

export interface MinutesPlan {
  /** Duties first, then the most valuable minute. */
  readonly hives: readonly PlannedHive[];
  /** Hives for which no time is left: duties, then looks. */
  readonly left: readonly Id[];
  /** Left shut although something is asked, because a look would do harm. */
  readonly harmed: readonly Id[];
  readonly used: number;
}

/** A duty that does not fit gives way to a shorter one behind it; its hive is not opened for less. */
export function planForMinutes(
  duties: readonly Duty[],
  looks: readonly HiveLook[],
  minutes: number,
  c: LookConstants,
): MinutesPlan {
  const hives = new Map<Id, PlannedHive>();
  let used = 0;
  for (const duty of duties) {
    if (used + duty.minutes > minutes) continue;
    hives.set(duty.colony, { colony: duty.colony, duty, asks: [], places: [], whole: false, minutes: duty.minutes, value: 0 });
    used += duty.minutes;
  }
  const waits = (colony: Id): boolean => duties.some((duty) => duty.colony === colony && (duty.opened || !hives.has(colony)));
  const open = looks.filter(({ colony, look }) => !look.harms && !waits(colony));
  const asked = new Set(open.flatMap((hive) => hive.look.questions.map((question) => ({ hive, question }))));
  for (;;) {
    const best = bestOf([...asked], hives, minutes - used, c);
    if (best === null) break;
    hives.set(best.hive.colony, withQuestion(best, hives.get(best.hive.colony), c));
    used += best.costs;
    asked.delete(best.asked);
  }
  const wanted = [...duties, ...open].map(({ colony }) => colony);
  return {
    hives: [...hives.values()],
    left: [...new Set(wanted)].filter((colony) => !hives.has(colony)),
    harmed: looks.filter(({ colony, look }) => look.harms && !hives.has(colony)).map(({ colony }) => colony),
    used,
  };
}

interface Asked {
  readonly hive: HiveLook;
  readonly question: Look['questions'][number];
}

interface Offer extends Asked {
  readonly asked: Asked;
  readonly costs: number;
}

/** The offer that is worth most a minute, of those that fit; what costs nothing more is worth it whatever it is. */
function bestOf(asked: readonly Asked[], hives: ReadonlyMap<Id, PlannedHive>, left: number, c: LookConstants): Offer | null {
  let best: Offer | null = null;
  let most = -Infinity;
  for (const one of asked) {
    const planned = hives.get(one.hive.colony);
    const costs = moreMinutes(one, planned);
    const worth = worthOf(one, c);
    const further = planned !== undefined && planned.asks.length > 0;
    if (costs > left || (costs > 0 && further && worth < c.choice.chance)) continue;
    const aMinute = costs === 0 ? Infinity : worth / costs;
    if (best === null || aMinute > most) {
      best = { ...one, asked: one, costs };
      most = aMinute;
    }
  }
  return best;
}

function withQuestion({ hive, question, costs }: Offer, planned: PlannedHive | undefined, c: LookConstants): PlannedHive {
  return {
    colony: hive.colony,
    duty: planned?.duty ?? null,
    asks: [...(planned?.asks ?? []), question.ask],
    places: [...new Set([...(planned?.places ?? []), ...question.places])],
    whole: planned?.whole === true || question.places.length === 0,
    minutes: (planned?.minutes ?? 0) + costs,
    value: (planned?.value ?? 0) + worthOf({ question }, c),
  };
}

function worthOf({ question }: Pick<Asked, 'question'>, c: LookConstants): number {
  return question.chance * c.cost[question.ask];
}

/** Minutes that a question adds to what is planned of its hive. */
function moreMinutes({ hive, question }: Asked, planned: PlannedHive | undefined): number {
  if (planned?.whole === true) return 0;
  const { around, bar, most, bars } = hive.takes;
  const lifted = planned?.places ?? [];
  const after = question.places.length === 0 ? Math.max(bars, lifted.length) : new Set([...lifted, ...question.places]).size;
  const taking = (count: number): number => Math.min(most, around + count * bar);
  return taking(after) - (planned === undefined || planned.asks.length === 0 ? 0 : taking(lifted.length));
}
