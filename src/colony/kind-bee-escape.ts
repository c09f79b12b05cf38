/** A bee escape was set between the nest and bars to be emptied of bees, or taken out again. */
import * as z from 'zod/mini';
import { fault, placeFaults, unknown } from '../hive/faults.ts';
import { placeSchema } from '../hive/shapes.ts';
import { type Entry, idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import type { ColonyDraft } from './state.ts';
import { happened, livingFaults } from './whose.ts';

const schema = z.strictObject({
  colony: idSchema,
  hive: idSchema,
  visit: z.nullable(idSchema),
  what: z.enum(['set', 'taken out']),
  /** The last bar on the nest's side of it; null: not said. */
  after: z.nullable(placeSchema),
});

export type BeeEscapeBody = z.infer<typeof schema>;

export const beeEscapeKind = entryKind<BeeEscapeBody, ColonyDraft>({ kind: 'bee-escape', version: 1, schema, apply });

function apply(draft: ColonyDraft, entry: Entry<BeeEscapeBody>): readonly Issue[] {
  const { colony, hive: id, what, after } = entry.body;
  const hive = draft.hives.get(id);
  const faults = livingFaults(draft, entry, 'colony', colony);
  faults.push(
    ...(hive === undefined ? unknown(entry, 'hive', 'hive', id, draft.hives) : placeFaults(entry, 'after', after, hive.bars)),
  );
  if (faults.length > 0) return faults;
  const last = (draft.events.get(colony) ?? []).findLast(({ event }) => event.kind === 'bee escape')?.event;
  const isIn = last?.kind === 'bee escape' && last.what === 'set';
  if (isIn === (what === 'set'))
    return [fault(entry, 'bee-escape-twice', 'what', what, isIn ? 'taken out: one is in' : 'set: none is in')];
  happened(draft, colony, entry, { kind: 'bee escape', what, after });
  return fits;
}
