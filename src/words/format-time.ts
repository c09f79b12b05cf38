/** Hours of the day and lengths of time: "11 to 16 h" or "11 am to 4 pm", "1 h 20 min". */
import { fill } from './fill.ts';
import type { Manner } from './say.ts';

/** A whole hour of the day, 0…24. */
export function formatHour(hour: number, manner: Manner): string {
  if (manner.hours === 24) return fill('clock.24', { hour: String(hour) }, manner);
  const half = hour % 24 < 12 ? 'clock.am' : 'clock.pm';
  return fill(half, { hour: String(hour % 12 === 0 ? 12 : hour % 12) }, manner);
}

/** From one whole hour to another. */
export function formatHours(from: number, to: number, manner: Manner): string {
  if (manner.hours === 24) return fill('clock.hours-24', { from: String(from), to: String(to) }, manner);
  return fill('clock.hours', { from: formatHour(from, manner), to: formatHour(to, manner) }, manner);
}

/** The time in an `At` with a clock ("2014-05-16T14:05"), as "14:05" or "2:05 pm"; null when it has none. */
export function formatClock(at: string, manner: Manner): string | null {
  const found = /T(\d{2}):(\d{2})/.exec(at);
  if (found === null) return null;
  const hour = Number(found[1]);
  const minutes = found[2] ?? '00';
  if (manner.hours === 24) return `${found[1]}:${minutes}`;
  return fill(hour < 12 ? 'clock.am' : 'clock.pm', { hour: `${hour % 12 === 0 ? 12 : hour % 12}:${minutes}` }, manner);
}

export function formatDuration(minutes: number, manner: Manner): string {
  const all = Math.round(minutes);
  const hours = Math.floor(all / 60);
  const rest = all % 60;
  if (hours === 0) return fill('duration.minutes', { n: String(rest) }, manner);
  if (rest === 0) return fill('duration.hours', { n: String(hours) }, manner);
  return fill('duration.both', { hours: String(hours), minutes: String(rest) }, manner);
}
