/** A queen: her mark, when she emerged, whose daughter she is. */
import * as z from 'zod/mini';
import { unknown, windowFaults } from '../hive/faults.ts';
import { type Entry, idSchema, nameSchema, windowSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import type { ColonyDraft } from './state.ts';

const schema = z.strictObject({
  queen: idSchema,
  name: z.nullable(nameSchema),
  mark: z.nullable(z.enum(['white', 'yellow', 'red', 'green', 'blue', 'none'])),
  emerged: z.nullable(windowSchema),
  clipped: z.nullable(z.boolean()),
  motherColony: z.nullable(idSchema),
});

export type QueenBody = z.infer<typeof schema>;

export const queenKind = entryKind<QueenBody, ColonyDraft>({
  kind: 'queen',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<QueenBody>): readonly Issue[] {
  const { queen, ...rest } = entry.body;
  const faults = [
    ...windowFaults(entry, 'emerged', rest.emerged),
    ...unknown(entry, 'colony', 'motherColony', rest.motherColony, draft.colonies),
  ];
  if (faults.length > 0) return faults;
  draft.queens.set(queen, { id: queen, ...rest });
  return fits;
}
