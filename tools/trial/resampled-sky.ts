/**
 * A spring and summer that never was, of real days: spells of one to two weeks of either year of the weather
 * file, moved by up to a week, put one after the other. Warmth since New Year is summed over the made-up year.
 */
import { addDays, type Day, daysBetween } from '../../src/numbers/day.ts';
import type { Chance } from '../world/chance.ts';
import type { SkyDay } from '../world/sky.ts';

const years = ['2013', '2014'] as const;
const spell = [7, 15] as const;
const shift = 7;

/** Days `from` … `to`, both included, of a year that the file holds. */
export function resampledSky(real: ReadonlyMap<Day, SkyDay>, from: Day, to: Day, luck: Chance): readonly SkyDay[] {
  const days: SkyDay[] = [];
  let warmth = real.get(addDays(from, -1))?.warmth ?? 0;
  let left = 0;
  let year: (typeof years)[number] = years[0];
  let moved = 0;
  for (let day = from; day <= to; day = addDays(day, 1)) {
    if (left === 0) {
      left = luck.whole(...spell);
      year = luck.pick(years);
      moved = luck.whole(-shift, shift);
    }
    left -= 1;
    const found = real.get(addDays(`${year}${day.slice(4)}`, moved));
    if (found === undefined) throw new Error(`no weather for the day ${moved} days from ${day} in ${year}`);
    warmth += Math.max(0, (found.highC + found.lowC) / 2 - 10);
    days.push({ ...found, day, warmth });
  }
  if (days.length !== daysBetween(from, to) + 1) throw new Error(`${days.length} days from ${from} to ${to}`);
  return days;
}
