/**
 * Civil days without a clock and without a time zone: a day is a local calendar day of the yard,
 * written YYYY-MM-DD. Arithmetic is on the proleptic Gregorian calendar by day numbers
 * (days since 1970-01-01), after the civil-day method published by H. Hinnant ("chrono-compatible
 * low-level date algorithms", days_from_civil and civil_from_days).
 */
import { assert } from './assert.ts';

export type Day = string;

const pattern = /^(\d{4})-(\d{2})-(\d{2})$/;
const monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

function isLeap(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

/** True for a day that exists: 2014-02-29 does not. */
export function isDay(text: unknown): text is Day {
  if (typeof text !== 'string') return false;
  const found = pattern.exec(text);
  if (found === null) return false;
  const month = Number(found[2]);
  const length = monthDays[month - 1];
  if (length === undefined) return false;
  const days = month === 2 && isLeap(Number(found[1])) ? length + 1 : length;
  const date = Number(found[3]);
  return date >= 1 && date <= days;
}

/** Days since 1970-01-01. Throws on a text that is no day. */
export function dayNumber(day: Day): number {
  assert(isDay(day), `a day YYYY-MM-DD, not ${day}`);
  const month = Number(day.slice(5, 7));
  const year = Number(day.slice(0, 4)) - (month <= 2 ? 1 : 0);
  const era = Math.floor(year / 400);
  const yearOfEra = year - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + Number(day.slice(8)) - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146097 + dayOfEra - 719468;
}

/** The day with that number; the inverse of `dayNumber`. */
export function dayFromNumber(n: number): Day {
  const z = n + 719468;
  const era = Math.floor(z / 146097);
  const dayOfEra = z - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * dayOfYear + 2) / 153);
  const date = dayOfYear - Math.floor((153 * shifted + 2) / 5) + 1;
  const month = shifted < 10 ? shifted + 3 : shifted - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`;
}

export function addDays(day: Day, days: number): Day {
  return dayFromNumber(dayNumber(day) + Math.round(days));
}

/** Whole days from `from` to `to`; negative when `to` is earlier. */
export function daysBetween(from: Day, to: Day): number {
  return dayNumber(to) - dayNumber(from);
}

/** 1 for 1 January. */
export function dayOfYear(day: Day): number {
  return daysBetween(`${day.slice(0, 4)}-01-01`, day) + 1;
}

/** 0 for Monday … 6 for Sunday. */
export function weekday(day: Day): number {
  return (((dayNumber(day) + 3) % 7) + 7) % 7;
}

export function earlier(a: Day, b: Day): Day {
  return a < b ? a : b;
}

export function later(a: Day, b: Day): Day {
  return a > b ? a : b;
}
