/**
 * The round: which hives, in which order. The longest need first, by what is lost in waiting and by how late it
 * is; hives to leave shut come last. What fits the minutes that the keeper has is in `minutes.ts`.
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
