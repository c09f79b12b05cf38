/** The temperature of a day as the keeper typed it: lowest and highest, with the unit typed. */
import * as z from 'zod/mini';
import { dayOf, type Entry, typedSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { inBase, type Typed } from '../numbers/units.ts';
import type { WeatherDraft } from './state.ts';

const schema = z.strictObject({
  low: z.nullable(typedSchema),
  high: z.nullable(typedSchema),
  windMs: z.optional(z.nullable(z.number().check(z.minimum(0), z.maximum(60)))),
  rainMm: z.optional(z.nullable(z.number().check(z.minimum(0), z.maximum(500)))),
});

export type DayWeatherBody = z.infer<typeof schema>;

export const dayWeatherKind = entryKind<DayWeatherBody, WeatherDraft>({
  kind: 'day-weather',
  version: 1,
  schema,
  apply,
});

/** Beyond these no yard's air has been measured on land in any inhabited place: a slip of the finger. */
const coldest = -70;
const hottest = 60;

function apply(draft: WeatherDraft, entry: Entry<DayWeatherBody>): readonly Issue[] {
  const { low, high, windMs = null, rainMm = null } = entry.body;
  const lowC = low === null ? null : inBase(low, 'degC');
  const highC = high === null ? null : inBase(high, 'degC');
  const faults = [...typedFaults(entry, 'low', low, lowC), ...typedFaults(entry, 'high', high, highC)];
  if (lowC !== null && highC !== null && lowC > highC)
    faults.push(issue(entry, 'low-above-high', 'low', `${lowC} above ${highC}`, 'the lower one first'));
  if (faults.length > 0) return faults;
  const day = dayOf(entry.at);
  draft.weather.set(day, { day, lowC, highC, typedLow: low, typedHigh: high, windMs, rainMm, entry: entry.id });
  return fits;
}

function typedFaults(entry: Entry, path: string, typed: Typed | null, celsius: number | null): Issue[] {
  if (typed === null) return [];
  if (celsius === null) return [issue(entry, 'unit-does-not-fit', `${path}.unit`, typed.unit, 'degC or degF')];
  if (celsius >= coldest && celsius <= hottest) return [];
  return [issue(entry, 'temperature-impossible', `${path}.value`, typed.value, `between ${coldest} and ${hottest} degC`)];
}

function issue(entry: Entry, code: string, path: string, found: unknown, expected: string): Issue {
  return { code, path, found: String(found), expected, entry: entry.id };
}
