/**
 * What the model tells takes the place of the plain rules where it knows better: bees, laying, the queen's state
 * when one is likely enough, and the days that follow from it. Where nothing was told of a colony for the day, or
 * no state stands out, the plain rules go on speaking.
 */
import { type FigureBook, value } from '../../figures/book.ts';
import type { Id } from '../../journal/entry.ts';
import type { Day } from '../../numbers/day.ts';
import { nothing, type Range } from '../../numbers/range.ts';
import type { DayBelief, Foreseen } from '../foreseen.ts';
import { type Believed, type Outlook, plainOutlook } from '../outlook.ts';
import type { ColonyState } from '../state.ts';
import type { QueenReading, Total } from '../view.ts';
import { visitsInOrder } from '../visits-of.ts';
import { tails } from './tell/told-range.ts';

/** `told`: what the model told, by colony; of another day than the view's it is not used. */
export function modelOutlook(told: ReadonlyMap<Id, Foreseen>): Outlook {
  return (state, colony, day, book) => {
    const plain = plainOutlook(state, colony, day, book);
    const foreseen = told.get(colony.id);
    const today = foreseen === undefined || foreseen.day !== day ? null : beliefToday(foreseen);
    if (foreseen === undefined || today === null) return plain;
    return {
      ...plain,
      adults: adultsBy(plain.adults, today.values.bees),
      queen: queenBy(plain.queen, foreseen, book),
      laying: layingBy(plain, foreseen, lastVisitDay(state, colony.id, day)),
      layingPerDay: today.values.laidPerDay.likely > 0 ? today.values.laidPerDay : null,
      foreseen,
    };
  };
}

/** The row of the day itself, with all that was seen on it. */
export function beliefToday({ line, day }: Foreseen): DayBelief | null {
  return line.findLast((row) => row.day === day && row.when !== 'before the visit' && row.when !== 'ahead') ?? null;
}

/** A count of this day stands as it was made; else the narrower of the two, and the model's is carried, not seen. */
function adultsBy(plain: Total, told: Range): Total {
  if (plain.ink === 'seen' || (plain.ink !== 'guessed' && width(plain.total) <= width(told))) return plain;
  return { seen: nothing, carried: told, total: told, ink: 'worked out' };
}

function width({ low, high }: Range): number {
  return low > 0 ? Math.log(high / low) : Infinity;
}

function queenBy(plain: QueenReading, foreseen: Foreseen, book: FigureBook): QueenReading {
  const { states, nextTelling, harmful } = foreseen.queen;
  const [likeliest] = states;
  const sure = likeliest !== undefined && likeliest.chance >= value(book, 'queen-told-chance');
  const state = sure ? likeliest.state : plain.state;
  const virgin = harmful.find(({ window, why }) => why === 'virgin' && window.latest >= foreseen.day)?.window ?? null;
  return {
    ...plain,
    state,
    virginDays: virgin,
    firstEggs: plain.firstEggs ?? (state === 'new queen laying' ? (foreseen.turnover?.laysSince ?? null) : null),
    nextTelling,
  };
}

/** Since the last visit the model is believed; what earlier visits found out about days before them is in the plain story. */
function layingBy(plain: Believed, foreseen: Foreseen, since: Day | null): (day: Day) => number {
  const rows = foreseen.line.filter((row) => (since === null || row.day >= since) && row.when !== 'before the visit');
  return (day) => {
    if (since !== null && day <= since) return plain.laying(day);
    const row = rows.findLast((one) => one.day <= day) ?? rows[0];
    return row === undefined ? plain.laying(day) : layingChanceOf(row);
  };
}

/** Chance that worker eggs are laid, as far as two ranges tell: how much of the belief lies above none. */
export function layingChanceOf({ values, half }: DayBelief): number {
  const { low, likely, high } = values.laidPerDay;
  // The ends of the wide range, of the inner one and the middle, and what lies above each of them at least.
  const ends: readonly (readonly [number, number])[] = [
    [low, 1],
    [half.laidPerDay.low, belowInner],
    [likely, belowMiddle],
    [half.laidPerDay.high, 1 - belowMiddle],
    [high, 1 - belowInner],
  ];
  return ends.find(([end]) => end > 0)?.[1] ?? 0;
}

/** Between the tenth and the fourth part, and between the fourth part and the half. */
const belowInner = 1 - (tails.wide + tails.half) / 2;
const belowMiddle = 1 - (tails.half + 1 / 2) / 2;

function lastVisitDay(state: ColonyState, colony: Id, day: Day): Day | null {
  return visitsInOrder(state, colony, day).at(-1)?.day ?? null;
}
