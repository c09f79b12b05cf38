/**
 * A date that is not known to the day: from the earliest to the latest day, both included.
 * Several windows of one event are intersected; when nothing is left, that is a finding of its own
 * (somebody misread, or two events were taken for one), never an error.
 */
import { addDays, type Day, daysBetween, earlier, later } from './day.ts';

export interface Window {
  readonly earliest: Day;
  readonly latest: Day;
}

export function windowOf(earliest: Day, latest: Day = earliest): Window {
  return { earliest, latest };
}

export function shiftWindow(window: Window, byLeast: number, byMost: number = byLeast): Window {
  return { earliest: addDays(window.earliest, byLeast), latest: addDays(window.latest, byMost) };
}

/** The days common to all, or null when there is none (or none was given). */
export function intersect(windows: readonly Window[]): Window | null {
  const [first, ...rest] = windows;
  if (first === undefined) return null;
  const both = rest.reduce((a, b) => ({ earliest: later(a.earliest, b.earliest), latest: earlier(a.latest, b.latest) }), first);
  return both.earliest <= both.latest ? both : null;
}

export function holds(window: Window, day: Day): boolean {
  return window.earliest <= day && day <= window.latest;
}

/** Whole days from first to last, 0 for a single day. */
export function spanDays(window: Window): number {
  return daysBetween(window.earliest, window.latest);
}
