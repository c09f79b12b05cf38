/**
 * How much is laid on a day of the year, as a share of the queen's own peak: straight lines between
 * the middles of the months of the figures. South of the equator the year is turned by six months.
 */
import { type FigureBook, value } from '../figures/book.ts';
import { type Day, daysBetween } from '../numbers/day.ts';

const months = ['01', '02', '03', '04', '05', '06', '07', '08', '09', '10', '11', '12'] as const;
const middle = 15;
const halfYear = months.length / 2;

export function seasonLaying(day: Day, latitude: number | null, book: FigureBook): number {
  const [, month, date] = partsOf(day);
  const from = date >= middle ? month : month - 1;
  const start = `${shifted(day, from - month)}-${String(middle)}`;
  const end = `${shifted(day, from + 1 - month)}-${String(middle)}`;
  const t = daysBetween(start, day) / daysBetween(start, end);
  const turn = latitude !== null && latitude < 0 ? halfYear : 0;
  const at = (index: number): number => value(book, `laying-season-${monthName(index + turn)}`);
  return at(from) * (1 - t) + at(from + 1) * t;
}

function monthName(index: number): (typeof months)[number] {
  const found = months[((index % months.length) + months.length) % months.length];
  return found ?? '01';
}

/** Year and month, so many months on from the day's. */
function shifted(day: Day, by: number): string {
  const [year, month] = partsOf(day);
  const all = year * months.length + month + by;
  return `${String(Math.floor(all / months.length)).padStart(yearDigits, '0')}-${monthName(all)}`;
}

const yearDigits = 4;

/** Year, month from 0, date. */
function partsOf(day: Day): readonly [number, number, number] {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  return [year, month - 1, date];
}
