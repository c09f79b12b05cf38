/** A forecast as it was issued, so that it can be scored: what, for which day, with its range. */
import * as z from 'zod/mini';
import { unknown } from '../hive/faults.ts';
import { daySchema, dayOf, type Entry, idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  colony: idSchema,
  engine: z.string().check(z.maxLength(40)),
  digest: z.string().check(z.maxLength(80)),
  values: z
    .array(
      z.strictObject({
        what: z.string().check(z.maxLength(40)),
        day: daySchema,
        low: z.number(),
        likely: z.number(),
        high: z.number(),
      }),
    )
    .check(z.maxLength(400)),
});

export type ForecastIssuedBody = z.infer<typeof schema>;

export const forecastIssuedKind = entryKind<ForecastIssuedBody, ColonyDraft>({
  kind: 'forecast-issued',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<ForecastIssuedBody>): readonly Issue[] {
  const { colony } = entry.body;
  const faults = unknown(entry, 'colony', 'colony', colony, draft.colonies);
  if (faults.length > 0) return faults;
  draft.issued.push({ entry: entry.id, day: dayOf(entry.at), colony, kind: 'forecast', body: entry.body });
  return fits;
}
