/** A measurement of the keeper's own, as typed; it stands on top of the printed figures. */
import * as z from 'zod/mini';
import { dayOf, type Entry, idSchema, typedSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { inBase } from '../numbers/units.ts';
import { fault, unknown } from './faults.ts';
import { type HiveDraft, type MeasurementKind, measurementKinds } from './state.ts';

const schema = z.strictObject({
  what: z.enum(measurementKinds),
  typed: typedSchema,
  comb: z.optional(z.nullable(idSchema)),
  hive: z.optional(z.nullable(idSchema)),
});

export type MeasurementBody = z.infer<typeof schema>;

export const measurementKind = entryKind<MeasurementBody, HiveDraft>({
  kind: 'measurement',
  version: 1,
  schema,
  apply,
});

/** Each kind of measurement with the unit it may be typed in; null: a plain count of that name. */
const units = {
  'cells along 10 cm': { base: null, count: 'cells' },
  'honey comb weight': { base: 'kg', count: '' },
  'bees on a face': { base: null, count: 'bees' },
  'box length': { base: 'mm', count: '' },
} as const satisfies Record<MeasurementKind, { base: 'kg' | 'mm' | null; count: string }>;

function apply(draft: HiveDraft, entry: Entry<MeasurementBody>): readonly Issue[] {
  const { what, typed, comb = null, hive = null } = entry.body;
  const { base, count } = units[what];
  const faults = [...unknown(entry, 'comb', 'comb', comb, draft.combs), ...unknown(entry, 'hive', 'hive', hive, draft.hives)];
  const right = base === null ? typed.unit === count : inBase(typed, base) !== null;
  if (!right)
    faults.push(
      fault(entry, 'unit-does-not-fit', 'typed.unit', typed.unit, base === null ? count : `a unit that turns into ${base}`),
    );
  if (!(typed.value > 0)) faults.push(fault(entry, 'value-not-positive', 'typed.value', typed.value, 'a number above 0'));
  if (faults.length > 0) return faults;
  draft.measurements.push({ entry: entry.id, day: dayOf(entry.at), what, typed, comb, hive });
  return fits;
}
