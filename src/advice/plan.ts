/**
 * The round: which hives, in which order, and which of them fit the minutes that the keeper has. The longest
 * need first, by what is lost in waiting and by how late it is; hives to leave shut come last.
 */
import { type FigureBook, printedBook, value } from '../figures/book.ts';
import type { Id } from '../journal/entry.ts';
import { addDays, type Day, daysBetween } from '../numbers/day.ts';
import type { Advice, Verb } from './advice.ts';

/** One stop of the round: a colony, its first advice and the rest. The front door shows it as it is. */
export interface Stop {
  readonly colony: Id;
  readonly verb: Verb;
  readonly first: Advice | null;
  readonly more: readonly Advice[];
  /** The day on which the slip turns up again: after a hive was left shut, or when what is ahead begins. */
  readonly turnsUp: Day | null;
}

/** The stops of a round, the longest need first. `kept` is the weighed advice of all colonies. */
export function planRound(
  colonies: readonly { readonly colony: Id }[],
  kept: readonly Advice[],
  day: Day,
  book: FigureBook = printedBook,
): readonly Stop[] {
  return colonies
    .map(({ colony }) =>
      stopOf(
        colony,
        kept.filter((advice) => advice.colony === colony),
        day,
        book,
      ),
    )
    .map((stop, index) => ({ stop, index, class: classOf(stop), need: needOf(stop, day, book) }))
    .sort((a, b) => a.class - b.class || b.need - a.need || a.index - b.index)
    .map(({ stop }) => stop);
}

function stopOf(colony: Id, advice: readonly Advice[], day: Day, book: FigureBook): Stop {
  const now = advice.filter((each) => each.window.earliest <= day).sort((a, b) => b.weight - a.weight);
  const ahead = advice.filter((each) => each.window.earliest > day).sort((a, b) => need(b, day, book) - need(a, day, book));
  const [first = null, ...more] = [...now, ...ahead];
  const verb = now.find((each) => each.verb !== 'no visit')?.verb ?? 'no visit';
  return { colony, verb, first, more, turnsUp: turnsUp(verb, now, ahead) };
}

function turnsUp(verb: Verb, now: readonly Advice[], ahead: readonly Advice[]): Day | null {
  if (verb === 'leave shut') {
    const latest = now
      .filter((each) => each.verb === 'leave shut')
      .map((each) => each.window.latest)
      .sort()
      .at(-1);
    return latest === undefined ? null : addDays(latest, 1);
  }
  if (now.length > 0) return null;
  return ahead.map((each) => each.window.earliest).sort()[0] ?? null;
}

/** What is lost by waiting, more with every day late, less with every day that it is still ahead. */
function need(advice: Advice, day: Day, book: FigureBook): number {
  const late = daysBetween(advice.window.earliest, day) / value(book, 'lateness-doubles-days');
  return late >= 0 ? advice.weight * (1 + late) : advice.weight / (1 - late);
}

function needOf(stop: Stop, day: Day, book: FigureBook): number {
  return Math.max(0, ...[stop.first, ...stop.more].map((advice) => (advice === null ? 0 : need(advice, day, book))));
}

/** A call to the authority first; then what is done today; what is only ahead; what is left shut; nothing due. */
function classOf(stop: Stop): number {
  if (stop.first === null) return order.length;
  if (stop.first.act === 'call the authority') return 0;
  if (stop.verb === 'leave shut' && stop.first.verb === 'leave shut') return order.indexOf('leave shut');
  return order.indexOf(stop.turnsUp === null ? 'today' : 'ahead');
}

const order: readonly string[] = ['call', 'today', 'ahead', 'leave shut'];

export interface Fitted {
  readonly chosen: readonly { readonly stop: Stop; readonly minutes: number }[];
  /** Due today, and more than the minutes allow. */
  readonly left: readonly Stop[];
  readonly used: number;
}

/** The stops that fit the minutes, in the order of the round; one that does not fit gives way to a shorter one behind it. */
export function fitMinutes(stops: readonly Stop[], minutes: number, book: FigureBook): Fitted {
  const chosen: { stop: Stop; minutes: number }[] = [];
  const left: Stop[] = [];
  let used = 0;
  for (const stop of stops) {
    const takes = minutesOf(stop, book);
    if (takes === 0) continue;
    if (used + takes <= minutes) {
      chosen.push({ stop, minutes: takes });
      used += takes;
    } else left.push(stop);
  }
  return { chosen, left, used };
}

/** Minutes a stop takes today; 0 when nothing is done there today. */
export function minutesOf(stop: Stop, book: FigureBook): number {
  if (stop.first === null || (stop.turnsUp !== null && stop.verb !== 'leave shut')) return 0;
  if (stop.verb === 'open') return fewBars(stop, book) ?? value(book, 'visit-minutes');
  if (stop.verb === 'glance') return value(book, 'glance-minutes');
  const all = [stop.first, ...stop.more];
  return all.some((advice) => handsOn.includes(advice.act)) ? value(book, 'no-visit-minutes') : 0;
}

/** Where the only reason to open names the bars that tell, the rest stays shut; null for a whole visit. */
function fewBars({ first, more }: Stop, book: FigureBook): number | null {
  const opens = [first, ...more].filter((advice) => advice?.verb === 'open');
  const [only] = opens;
  if (opens.length !== 1 || only?.rule !== 'worth-a-look' || only.places.length === 0) return null;
  const takes = value(book, 'look-hive-minutes') + only.places.length * value(book, 'look-bar-minutes');
  return Math.min(takes, value(book, 'visit-minutes'));
}

/** Acts that take minutes at the hive although it stays shut. */
const handsOn: readonly Advice['act'][] = ['feed', 'look from outside'];
