/**
 * Which hours of a day suit opening, from the lowest and highest temperature as typed: a cosine between the
 * two with its top at one hour. It is crude: no cloud, no gusts, no hour of rain; the hours proper come with
 * the weather. Suits is never "safe".
 */
import { type FigureBook, value } from '../figures/book.ts';
import type { Celsius } from '../numbers/units.ts';
import type { DayWeather } from '../weather/state.ts';

export type Suits = 'yes' | 'brief' | 'no';

export interface OpeningHours {
  /** By hour of the day, 0…23. */
  readonly hours: readonly { readonly hour: number; readonly celsius: Celsius; readonly suits: Suits }[];
  /** The longest stretch of hours that suit lifting brood, end not included; null when there is none. */
  readonly full: Stretch | null;
  /** The longest stretch for a glance, the full one included; null when there is none. */
  readonly brief: Stretch | null;
  /** What keeps the day from suiting, where it is not the cold. */
  readonly but: 'wind' | 'rain' | null;
}

export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly lowC: Celsius;
  readonly highC: Celsius;
}

const hoursInDay = 24;

/** Null when lowest or highest was not typed: then nothing is known. */
export function suitsOpening(weather: DayWeather | null, book: FigureBook): OpeningHours | null {
  if (weather === null || weather.lowC === null || weather.highC === null) return null;
  const { lowC, highC } = weather;
  const but = keptFrom(weather, book);
  const hours = Array.from({ length: hoursInDay }, (_, hour) => {
    const celsius = temperatureAt(hour, lowC, highC, value(book, 'warmest-hour'));
    return { hour, celsius, suits: but === null ? suitsAt(hour, celsius, book) : ('no' as const) };
  });
  return { hours, full: longest(hours, ['yes']), brief: longest(hours, ['yes', 'brief']), but };
}

/** Temperature of an hour on a cosine between the ends, warmest at `warmest`. */
export function temperatureAt(hour: number, low: Celsius, high: Celsius, warmest: number): Celsius {
  const angle = (2 * Math.PI * (hour - warmest)) / hoursInDay;
  return (low + high) / 2 + ((high - low) / 2) * Math.cos(angle);
}

function suitsAt(hour: number, celsius: Celsius, book: FigureBook): Suits {
  if (hour < value(book, 'opening-first-hour') || hour >= value(book, 'opening-last-hour')) return 'no';
  if (celsius >= value(book, 'open-brood-least-temp')) return 'yes';
  return celsius >= value(book, 'glance-least-temp') ? 'brief' : 'no';
}

function keptFrom(weather: DayWeather, book: FigureBook): 'wind' | 'rain' | null {
  if (weather.rainMm !== null && weather.rainMm > value(book, 'opening-most-rain')) return 'rain';
  if (weather.windMs !== null && weather.windMs >= value(book, 'wind-stop')) return 'wind';
  return null;
}

type Hour = OpeningHours['hours'][number];

function longest(hours: readonly Hour[], wanted: readonly Suits[]): Stretch | null {
  const runs: Hour[][] = [];
  for (const hour of hours) {
    if (!wanted.includes(hour.suits)) continue;
    const run = runs.at(-1);
    if (run !== undefined && run.at(-1)?.hour === hour.hour - 1) run.push(hour);
    else runs.push([hour]);
  }
  const best = runs.reduce<readonly Hour[]>((a, b) => (b.length > a.length ? b : a), []);
  const [first] = best;
  if (first === undefined) return null;
  const degrees = best.map((hour) => hour.celsius);
  return { from: first.hour, to: first.hour + best.length, lowC: Math.min(...degrees), highC: Math.max(...degrees) };
}
