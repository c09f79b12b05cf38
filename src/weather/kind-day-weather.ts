/** The temperature of a day as the keeper typed it: lowest and highest, with the unit typed. */
import * as z from 'zod/mini';
import { typedSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
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
  apply: () => fits,
});
