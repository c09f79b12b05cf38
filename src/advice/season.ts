/** Which part of the keeper's year a day is in, by months alone; the season proper comes with the weather. */
import { type FigureBook, value } from '../figures/book.ts';
import { addDays, type Day } from '../numbers/day.ts';
import type { Facts } from './rule.ts';

const monthsInYear = 12;
const halfYear = 6;
const halfMonth = 14;

/** Bees may swarm in this month. */
export function inSwarmSeason({ view, book, latitude }: Facts): boolean {
  return between(view.day, latitude, value(book, 'swarm-season-first-month'), value(book, 'swarm-season-last-month'));
}

/** Hives are opened in this month. */
export function inVisitSeason({ view, book, latitude }: Facts): boolean {
  return isVisitMonth(view.day, latitude, book);
}

export function isVisitMonth(day: Day, latitude: number | null, book: FigureBook): boolean {
  return between(day, latitude, value(book, 'visits-first-month'), value(book, 'visits-last-month'));
}

/** Bees build comb in this month, so that a bare bar is of use. */
export function inBuildingSeason({ view, book, latitude }: Facts): boolean {
  return between(view.day, latitude, value(book, 'building-first-month'), value(book, 'building-last-month'));
}

/** Colonies are made ready for the cold in this month. */
export function inAutumn({ view, book, latitude }: Facts): boolean {
  return between(view.day, latitude, value(book, 'autumn-first-month'), value(book, 'autumn-last-month'));
}

/** Colonies come out of the cold in this month. */
export function inSpring({ view, book, latitude }: Facts): boolean {
  return between(view.day, latitude, value(book, 'spring-first-month'), value(book, 'spring-last-month'));
}

/** True when a month without visits lies between the two days. */
export function winterBetween(from: Day, to: Day, latitude: number | null, book: FigureBook): boolean {
  for (let day = from; day < to; day = addDays(day, halfMonth)) if (!isVisitMonth(day, latitude, book)) return true;
  return !isVisitMonth(to, latitude, book);
}

/** The month as it would be in the north; without a latitude, the north is taken. */
function between(day: Day, latitude: number | null, first: number, last: number): boolean {
  const month = Number(day.split('-')[1]);
  const north = latitude !== null && latitude < 0 ? ((month - 1 + halfYear) % monthsInYear) + 1 : month;
  return first <= north && north <= last;
}
