/**
 * The one place of the screens that reads the clock: today in the yard's time zone, the time of an
 * entry, and the instant at which it was noted. The demo yard has a today of its own.
 */
import type { At, Instant } from '../../../journal/entry.ts';
import type { Day } from '../../../numbers/day.ts';

export interface LocalTime {
  readonly day: Day;
  /** HH:MM by 24 hours. */
  readonly time: string;
}

export function localTime(now: Date, timeZone: string | null): LocalTime {
  const parts = partsOf(now, timeZone) ?? partsOf(now, null) ?? [];
  const of = (type: string): string => parts.find((part) => part.type === type)?.value ?? '';
  return { day: `${of('year').padStart(4, '0')}-${of('month')}-${of('day')}`, time: `${of('hour')}:${of('minute')}` };
}

export function atOf(day: Day, time: string): At {
  return `${day}T${time}`;
}

export function instantOf(now: Date): Instant {
  return `${now.toISOString().slice(0, 19)}Z`;
}

export function deviceTimeZone(): string {
  return new Intl.DateTimeFormat().resolvedOptions().timeZone;
}

/** Null for a time zone that this browser does not know: the device's own is taken then. */
function partsOf(now: Date, timeZone: string | null): Intl.DateTimeFormatPart[] | null {
  try {
    return new Intl.DateTimeFormat('en-GB', {
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
      hourCycle: 'h23',
      ...(timeZone === null ? {} : { timeZone }),
    }).formatToParts(now);
  } catch {
    return null;
  }
}
