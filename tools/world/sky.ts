/**
 * The weather that the made-up bees live in: real days, read from the file in `examples`, and what they
 * mean for flying and for flowers. The flowers follow warmth summed over 10 degC since New Year.
 */
import { type Day, dayOfYear } from '../../src/numbers/day.ts';

export interface SkyDay {
  readonly day: Day;
  readonly lowC: number;
  readonly highC: number;
  readonly rainMm: number;
  readonly windMs: number;
  /** Degree days over 10 degC since 1 January, simple mean of low and high. */
  readonly warmth: number;
}

/** Rows of `location,date,precipitation,temp_max,temp_min,wind,weather`, one a day, as a map by day. */
export function readSky(csv: string): ReadonlyMap<Day, SkyDay> {
  const days = new Map<Day, SkyDay>();
  let warmth = 0;
  for (const line of csv.trim().split('\n').slice(1)) {
    const [, day = '', rain, high, low, wind] = line.split(',');
    if (day.endsWith('-01-01')) warmth = 0;
    warmth += Math.max(0, (Number(high) + Number(low)) / 2 - 10);
    days.set(day, { day, lowC: Number(low), highC: Number(high), rainMm: Number(rain), windMs: Number(wind), warmth });
  }
  return days;
}

/** 0…1: how much of a perfect flying day it is. */
export function flying(sky: SkyDay): number {
  const warm = clamp((sky.highC - 11) / 10);
  const rain = sky.rainMm > 10 ? 0.25 : sky.rainMm > 2 ? 0.55 : 1;
  const wind = sky.windMs > 7.5 ? 0.7 : 1;
  return warm * rain * wind;
}

/** Warmth against nectar on offer: maple, fruit and dandelion, locust, linden and clover, the gap of summer. */
const bloom = [
  [0, 0],
  [15, 0.2],
  [45, 0.48],
  [110, 0.62],
  [200, 0.8],
  [280, 1],
  [480, 0.9],
  [650, 0.5],
  [850, 0.26],
  [1150, 0.16],
  [1800, 0.06],
] as const;

/** 0…1: nectar on offer; goldenrod and aster come by date, in September. */
export function nectarOnOffer(sky: SkyDay): number {
  const doy = dayOfYear(sky.day);
  const autumn = 0.5 * Math.exp(-(((doy - 256) / 13) ** 2));
  if (sky.lowC < -3 || doy > 300) return 0;
  return Math.max(along(bloom, sky.warmth) * (doy > 290 ? 0 : 1), autumn);
}

/** Suits opening a hive, as a careful keeper would judge it. */
export function suitsOpening(sky: SkyDay, leastC = 15): boolean {
  return sky.highC >= leastC && sky.rainMm < 2.6 && sky.windMs < 8.4;
}

export function clamp(x: number, low = 0, high = 1): number {
  return Math.min(high, Math.max(low, x));
}

function along(points: readonly (readonly [number, number])[], x: number): number {
  for (let i = 1; i < points.length; i += 1) {
    const [x0, y0] = points[i - 1] ?? [0, 0];
    const [x1, y1] = points[i] ?? [0, 0];
    if (x <= x1) return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  return points.at(-1)?.[1] ?? 0;
}
