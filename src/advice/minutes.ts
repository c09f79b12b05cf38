/**
 * What is done in the minutes that the keeper has. What a rule asks for today comes first, the longest need first;
 * the rest goes to looks that the model holds worth it, on the fewest bars that tell. Where the model has not spoken
 * of a hive, rules alone decide.
 */
import { type HiveLook, planForMinutes } from '../colony/engine/look/plan-minutes.ts';
import { lookConstants } from '../colony/engine/look/look-constants.ts';
import { inLiftingOrder } from '../colony/engine/look/look-places.ts';
import type { Look, Question } from '../colony/foreseen.ts';
import type { ColonyView } from '../colony/view.ts';
import { type FigureBook, value } from '../figures/book.ts';
import type { Id } from '../journal/entry.ts';
import type { Advice, Saying } from './advice.ts';
import type { Stop } from './plan.ts';
import { worthALook } from './rule-worth-a-look.ts';

export interface MinutesStop {
  readonly colony: Id;
  readonly verb: 'open' | 'glance' | 'no visit';
  /** What is due, and why the whole hive is opened; empty when the model asks for some bars alone. */
  readonly says: readonly Saying[];
  /** What the model asks, the most valuable first. */
  readonly asks: readonly Question[];
  /** The fewest bars that answer it, in the order of lifting. */
  readonly places: readonly number[];
  readonly minutes: number;
}

export interface MinutesDay {
  readonly stops: readonly MinutesStop[];
  /** Asked for today, and more than the minutes allow. */
  readonly left: readonly Id[];
  /** Left shut, because a look would do harm. */
  readonly harmed: readonly Id[];
  readonly used: number;
}

/** `stops`: the round, the longest need first; `views`: of the same day. */
export function planMinutes(stops: readonly Stop[], views: readonly ColonyView[], minutes: number, book: FigureBook): MinutesDay {
  const duties = new Map(stops.flatMap((stop) => dutyOf(stop, book) ?? []).map((duty) => [duty.colony, duty]));
  const wanted = new Map(stops.map((stop) => [stop.colony, wantedOf(stop)]));
  const viewOf = new Map(views.map((view) => [view.colony, view]));
  const looks = stops.flatMap(({ colony }) => {
    const view = viewOf.get(colony);
    return view === undefined ? [] : (hiveLook(view, wanted.get(colony) ?? null, book) ?? []);
  });
  const plan = planForMinutes([...duties.values()], looks, minutes, lookConstants(book));
  return {
    left: plan.left,
    harmed: plan.harmed,
    used: plan.used,
    stops: plan.hives.map(({ colony, asks, places, whole: all, minutes: takes }) => {
      const due = duties.get(colony)?.advice ?? null;
      const look = asks.length > 0 ? (wanted.get(colony) ?? null) : null;
      // A look at the whole hive says itself why.
      const says = [due, all ? look : null];
      return {
        colony,
        verb: verbOf(look ?? due),
        says: says.flatMap((advice) => (advice === null ? [] : [advice.say])),
        asks: all ? [] : asks,
        places: inLiftingOrder(places, viewOf.get(colony)?.entrance ?? 'first'),
        minutes: takes,
      };
    }),
  };
}

interface Due {
  readonly colony: Id;
  readonly minutes: number;
  readonly opened: boolean;
  readonly advice: Advice;
}

/** What rules other than the model's ask for today; null when it takes no minutes. */
function dutyOf(stop: Stop, book: FigureBook): Due | null {
  const { colony } = stop;
  const now = todayOf(stop).filter((advice) => advice.rule !== worthALook.key);
  const advice = now.find((one) => one.verb !== 'no visit') ?? null;
  if (advice?.verb === 'open') return { colony, minutes: value(book, 'visit-minutes'), opened: true, advice };
  if (advice?.verb === 'glance') return { colony, minutes: value(book, 'glance-minutes'), opened: false, advice };
  const byHand = now.find((one) => handsOn.includes(one.act));
  if (byHand === undefined) return null;
  return { colony, minutes: value(book, 'no-visit-minutes'), opened: false, advice: byHand };
}

/** Acts that take minutes at the hive although it stays shut. */
const handsOn: readonly Advice['act'][] = ['feed', 'look from outside'];

/** The model's own advice, where it stands beside all others and nothing keeps the hive shut. */
function wantedOf(stop: Stop): Advice | null {
  if (stop.verb === 'leave shut') return null;
  return todayOf(stop).find(({ rule, verb }) => rule === worthALook.key && (verb === 'open' || verb === 'glance')) ?? null;
}

function todayOf({ first, more }: Stop): readonly Advice[] {
  return [first, ...more].filter((advice) => advice !== null && advice.window.earliest <= advice.day) as readonly Advice[];
}

function hiveLook(view: ColonyView, wanted: Advice | null, book: FigureBook): HiveLook | null {
  const { colony, foreseen, bars } = view;
  const look = foreseen === null || foreseen.day !== view.day ? null : foreseen.look;
  if (look?.harms === true) return { colony, look, takes: whole(bars.length, book) };
  if (look === null || wanted === null) return null;
  if (wanted.verb === 'glance') return { colony, look: roomAlone(look), takes: glanceTakes(book) };
  if (wanted.places.length === 0) return { colony, look: anything(look), takes: whole(bars.length, book) };
  const most = value(book, 'visit-minutes');
  const takes = { around: value(book, 'look-hive-minutes'), bar: value(book, 'look-bar-minutes'), most, bars: bars.length };
  return { colony, look, takes };
}

type Takes = HiveLook['takes'];

function whole(bars: number, book: FigureBook): Takes {
  const most = value(book, 'visit-minutes');
  return { around: most, bar: 0, most, bars };
}

function glanceTakes(book: FigureBook): Takes {
  const most = value(book, 'glance-minutes');
  return { around: most, bar: 0, most, bars: 0 };
}

/** What is left to change today is room: the chances of the questions are those of the day on which it is opened. */
function roomAlone({ questions, changesAct, harms }: Look): HiveLook['look'] {
  const places = questions.find(({ ask }) => ask === 'room')?.places ?? [];
  return { questions: [{ ask: 'room', chance: changesAct, places }], harms };
}

/** No bars are named, or nothing is likely and it is only that nobody looked for long: the whole hive is opened. */
function anything({ questions, changesAct, harms }: Look): HiveLook['look'] {
  return { questions: [{ ask: questions[0]?.ask ?? 'cells', chance: changesAct, places: [] }], harms };
}

function verbOf(advice: Advice | null): MinutesStop['verb'] {
  return advice === null || advice.verb === 'leave shut' ? 'no visit' : advice.verb;
}
