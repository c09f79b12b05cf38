/**
 * A look from outside, nothing opened: how many fly, and, where the keeper cared to, one minute counted at
 * the entrance, what the window shows, what is heard after a knock, and dead bees before the entrance.
 */
import * as z from 'zod/mini';
import { fault, unknown } from '../hive/faults.ts';
import { dayOf, type Entry, idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import type { ColonyDraft } from './state.ts';
import { coloniesIn, happened } from './whose.ts';

/** Bees that came in while the entrance was watched, and those of them with pollen on their legs; null: not told apart. */
const minuteSchema = z.strictObject({
  seconds: z.int().check(z.minimum(10), z.maximum(600)),
  in: z.int().check(z.minimum(0), z.maximum(2000)),
  withPollen: z.nullable(z.int().check(z.minimum(0), z.maximum(2000))),
});

export const windowWords = ['full of bees', 'some bees', 'no bees'] as const;
export const humWords = ['short and even', 'long and uneven', 'nothing heard'] as const;
export const deadWords = ['none', 'a few', 'many'] as const;

const schema = z.strictObject({
  hive: idSchema,
  colony: z.nullable(idSchema),
  flight: z.enum(['none', 'few', 'many']),
  pollenIn: z.nullable(z.boolean()),
  seen: z.array(z.string().check(z.maxLength(40))).check(z.maxLength(12)),
  /** The rest is absent where nobody looked, counted or knocked. */
  minute: z.optional(minuteSchema),
  window: z.optional(z.enum(windowWords)),
  hum: z.optional(z.enum(humWords)),
  dead: z.optional(z.enum(deadWords)),
});

export type LookBody = z.infer<typeof schema>;

export const lookKind = entryKind<LookBody, ColonyDraft>({
  kind: 'look',
  version: 1,
  schema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<LookBody>): readonly Issue[] {
  const { hive, colony, seen, flight, pollenIn: _said, ...more } = entry.body;
  const faults = unknown(entry, 'hive', 'hive', hive, draft.hives);
  if (colony !== null) faults.push(...unknown(entry, 'colony', 'colony', colony, draft.colonies));
  faults.push(...minuteFaults(entry));
  if (faults.length > 0) return faults;
  const there = coloniesIn(draft, hive, dayOf(entry.at)).filter((one) => one.ended === null);
  const whose = colony ?? (there.length === 1 ? there[0]?.id : undefined);
  if (whose !== undefined) happened(draft, whose, entry, { kind: 'look', seen, flight, pollenIn: pollenOf(entry.body), ...more });
  return fits;
}

/** Pollen counted is pollen seen. None in a minute says nothing of the rest of the day. */
function pollenOf({ pollenIn, minute }: LookBody): boolean | null {
  return (minute?.withPollen ?? 0) > 0 ? true : pollenIn;
}

function minuteFaults(entry: Entry<LookBody>): Issue[] {
  const { minute, pollenIn, flight } = entry.body;
  if (minute === undefined) return [];
  const { in: cameIn, withPollen } = minute;
  if (withPollen !== null && withPollen > cameIn)
    return [fault(entry, 'part-above-whole', 'minute.withPollen', withPollen, `at most the ${cameIn} that came in`)];
  if (pollenIn === false && withPollen !== null && withPollen > 0)
    return [fault(entry, 'pollen-and-none', 'pollenIn', 'no', `yes: ${withPollen} with pollen were counted`)];
  if (flight === 'none' && cameIn > 0)
    return [fault(entry, 'flight-and-none', 'flight', 'none', `few or many: ${cameIn} came in while it was watched`)];
  return [];
}
