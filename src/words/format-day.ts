/**
 * Days and windows as they are said: "16 May", with the year when it is not today's; "between 16 and
 * 21 May". Month names come from the catalogue; no clock and no time zone is asked.
 */
import { type Day, weekday } from '../numbers/day.ts';
import type { Window } from '../numbers/window.ts';
import type { TextKey } from './catalogue.ts';
import { fill } from './fill.ts';
import type { Manner } from './say.ts';

/** "16 May", or "16 May 2013" when the year is not today's or today is not known. */
export function formatDay(day: Day, manner: Manner): string {
  return sayDay(day, !sameYear(day, manner), manner);
}

/** "Fri 16 May 2014". */
export function formatWeekday(day: Day, manner: Manner): string {
  const name = fill(`weekday.${weekday(day)}` as TextKey, {}, manner);
  return fill('day.weekday', { weekday: name, day: sayDay(day, true, manner) }, manner);
}

/** "between 16 and 21 May", "between 28 May and 2 June", "on 16 May". */
export function formatWindow(window: Window, manner: Manner): string {
  if (window.earliest === window.latest) return fill('window.on', { day: formatDay(window.earliest, manner) }, manner);
  return fill('window.between', { from: shortFrom(window, manner), to: formatDay(window.latest, manner) }, manner);
}

/** "16 to 21 May", "16 May": for lists and tables. */
export function formatSpan(window: Window, manner: Manner): string {
  if (window.earliest === window.latest) return formatDay(window.earliest, manner);
  return fill('window.span', { from: shortFrom(window, manner), to: formatDay(window.latest, manner) }, manner);
}

/** The first day without its month when the last day has the same. */
function shortFrom(window: Window, manner: Manner): string {
  const { earliest, latest } = window;
  if (earliest.slice(0, 7) === latest.slice(0, 7)) return String(Number(earliest.slice(8)));
  const oneYear = earliest.slice(0, 4) === latest.slice(0, 4);
  return oneYear ? sayDay(earliest, false, manner) : sayDay(earliest, true, manner);
}

function sameYear(day: Day, manner: Manner): boolean {
  return manner.today !== undefined && manner.today.slice(0, 4) === day.slice(0, 4);
}

function sayDay(day: Day, withYear: boolean, manner: Manner): string {
  const date = String(Number(day.slice(8)));
  const month = fill(`month.${Number(day.slice(5, 7))}` as TextKey, {}, manner);
  return withYear ? fill('day.year', { date, month, year: day.slice(0, 4) }, manner) : fill('day.plain', { date, month }, manner);
}
