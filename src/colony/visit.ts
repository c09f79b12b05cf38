/**
 * A visit as closed: one entry that holds what concerns the whole hive. Its readings are entries of
 * their own that name it, so that two phones can read one hive, and a visit that was never closed
 * still tells what was read. The room's kind for it is in `kind-visit.ts`.
 */
import * as z from 'zod/mini';
import { atSchema, idSchema } from '../journal/entry.ts';

export const visitKinds = ['usual', 'first of the year', 'glance', 'after a swarm', 'closing for winter'] as const;
export const winterTasks = ['entrance', 'mouseGuard', 'followerBoard', 'roof', 'tilt', 'bareBars', 'mites'] as const;
const task = z.optional(z.enum(['done', 'not done']));
export const temperWords = ['calm', 'lively', 'edgy', 'stinging'] as const;
export const temperNotes = [
  'followed people',
  'stung through smoke',
  'ran on the combs',
  'after rain',
  'robbing about',
  'dropped a comb',
] as const;

const place = z.int().check(z.minimum(1), z.maximum(60));
const places = z.array(place).check(z.maxLength(60));

export const visitSchema = z.strictObject({
  visit: idSchema,
  colony: idSchema,
  hive: idSchema,
  visitKind: z.enum(visitKinds),
  began: atSchema,
  ended: z.nullable(atSchema),
  order: z.enum(['from the follower', 'from the entrance']),
  /** Bars that hang in the bay at closing: the closing check. */
  barsCounted: z.nullable(z.int().check(z.minimum(0), z.maximum(60))),
  /** Last place of the bay after closing: where the follower board stands. */
  followerAfter: z.nullable(place),
  /** Bars hung in or taken out at the end of the row. */
  given: places,
  taken: places,
  /** Bars with bees on them, counted at a glance; null when not counted. */
  beesBars: z.nullable(z.number().check(z.minimum(0), z.maximum(60))),
  /** Straight comb on the last bars: asked at a glance. */
  straight: z.nullable(z.enum(['straight', 'bent', 'crossed'])),
  temper: z.nullable(z.enum(temperWords)),
  temperNotes: z.array(z.enum(temperNotes)),
  /** Minutes since the smoker was lit, at closing. */
  smokeMinutes: z.nullable(z.number().check(z.minimum(0), z.maximum(600))),
  /** Queen cells that were cut out at this visit. */
  cellsCut: z.nullable(z.boolean()),
  /** Closing for winter: what is absent was not asked. */
  winter: z.optional(
    z.strictObject({
      entrance: task,
      mouseGuard: task,
      followerBoard: task,
      roof: task,
      tilt: task,
      bareBars: task,
      mites: task,
    }),
  ),
  signs: z.array(z.string().check(z.maxLength(40))).check(z.maxLength(12)),
  /** The sentence that the keeper confirmed. */
  sentence: z.string().check(z.maxLength(600)),
});

export type VisitBody = z.infer<typeof visitSchema>;
export type WinterTask = (typeof winterTasks)[number];
export type WinterList = NonNullable<VisitBody['winter']>;
export type VisitKind = (typeof visitKinds)[number];

type Asked = Exclude<
  keyof VisitBody,
  'visit' | 'colony' | 'hive' | 'visitKind' | 'began' | 'ended' | 'order' | 'sentence' | 'winter'
>;

/** All that a closing asks, not answered. */
export function nothingAnswered(): Pick<VisitBody, Asked> {
  return {
    barsCounted: null,
    followerAfter: null,
    given: [],
    taken: [],
    beesBars: null,
    straight: null,
    temper: null,
    temperNotes: [],
    smokeMinutes: null,
    cellsCut: null,
    signs: [],
  };
}
