/** The weather part of the state: what the keeper typed for a day. Imports and forecasts come with the season. */
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import type { Celsius, Typed } from '../numbers/units.ts';

export interface DayWeather {
  readonly day: Day;
  readonly lowC: Celsius | null;
  readonly highC: Celsius | null;
  readonly typedLow: Typed | null;
  readonly typedHigh: Typed | null;
  readonly windMs: number | null;
  readonly rainMm: number | null;
  /** The entry that typed it; what advice cites. */
  readonly entry?: Id;
}

export interface WeatherDraft {
  readonly weather: Map<Day, DayWeather>;
}

export function emptyWeather(): WeatherDraft {
  return { weather: new Map() };
}
