/** A reign begins or ends: this queen in this colony, within a window. */
import * as z from 'zod/mini';
import { fault, unknown, windowFaults } from '../hive/faults.ts';
import { type Entry, idSchema, windowSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import type { ColonyDraft } from './state.ts';
import { happened, livingFaults } from './whose.ts';

const schema = z.strictObject({
  colony: idSchema,
  queen: idSchema,
  change: z.discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('began'),
      how: z.enum(['introduced', 'raised here', 'came with the swarm', 'found', 'unknown']),
      window: z.nullable(windowSchema),
    }),
    z.strictObject({
      kind: z.literal('ended'),
      how: z.enum(['removed', 'died', 'left with a swarm', 'superseded', 'lost', 'unknown']),
      window: windowSchema,
    }),
  ]),
});

export type ReignBody = z.infer<typeof schema>;

export const reignKind = entryKind<ReignBody, ColonyDraft>({
  kind: 'reign',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<ReignBody>): readonly Issue[] {
  const { colony, queen, change } = entry.body;
  const faults = [
    ...livingFaults(draft, entry, 'colony', colony),
    ...unknown(entry, 'queen', 'queen', queen, draft.queens),
    ...windowFaults(entry, 'change.window', change.window),
  ];
  if (faults.length > 0) return faults;
  return change.kind === 'began' ? begin(draft, entry, change) : end(draft, entry, change);
}

function begin(draft: ColonyDraft, entry: Entry<ReignBody>, change: ReignBody['change'] & { kind: 'began' }): readonly Issue[] {
  const { colony, queen } = entry.body;
  for (const [id, reigns] of draft.reigns) {
    if (!reigns.some((reign) => reign.queen === queen && reign.ended === null)) continue;
    const code = id === colony ? 'reign-begun-twice' : 'queen-in-two-colonies';
    return [fault(entry, code, 'queen', queen, `a queen whose reign in ${id} has ended`)];
  }
  const list = draft.reigns.get(colony) ?? [];
  list.push({ colony, queen, began: change.window, how: change.how, ended: null });
  draft.reigns.set(colony, list);
  happened(draft, colony, entry, { kind: 'queen began', queen, how: change.how });
  return fits;
}

/** A reign may end that was never said to begin: the queen was there, since an unknown day. */
function end(draft: ColonyDraft, entry: Entry<ReignBody>, change: ReignBody['change'] & { kind: 'ended' }): readonly Issue[] {
  const { colony, queen } = entry.body;
  const list = draft.reigns.get(colony) ?? [];
  const open = list.findLast((reign) => reign.queen === queen && reign.ended === null);
  if (open === undefined && list.some((reign) => reign.queen === queen)) {
    return [fault(entry, 'reign-ended-twice', 'queen', queen, 'a queen who still reigns here')];
  }
  if (open?.began && change.window.latest < open.began.earliest) {
    return [fault(entry, 'ended-before-begun', 'change.window', change.window.latest, `a day from ${open.began.earliest} on`)];
  }
  const reign = open ?? { colony, queen, began: null, how: 'unknown' as const, ended: null };
  reign.ended = { window: change.window, how: change.how };
  if (open === undefined) list.push(reign);
  draft.reigns.set(colony, list);
  happened(draft, colony, entry, { kind: 'queen ended', queen, how: change.how });
  return fits;
}
