/**
 * One reading: what was read of one bar at one visit, as typed, in eighths of both faces together
 * (or of one face). Nulls are "not read", which is never zero.
 */
import * as z from 'zod/mini';
import { attachments } from '../hive/attachments.ts';
import { idSchema } from '../journal/entry.ts';

export const stages = ['egg', 'young larva', 'larva', 'sealed', 'none'] as const;
export const combClasses = ['bare', 'building', 'food', 'food and brood', 'brood', 'mostly drone'] as const;
/** Seen, looked for and none seen, or not looked for. */
export const lookedFor = ['seen', 'none seen', 'not looked'] as const;
/** 'as expected': nothing strange was seen, and what should be there was filled in. */
export const methods = ['eighths', 'painted', 'counted', 'as expected'] as const;
export const readAs = ['set', 'follower'] as const;
export const lights = ['sun', 'shade', 'dull'] as const;

const eighths = z.nullable(z.number().check(z.multipleOf(0.5), z.minimum(0), z.maximum(8)));
const count = z.int().check(z.minimum(0), z.maximum(200));

export const cellsSchema = z.strictObject({ open: count, sealed: count, torn: count, emerged: count });

export const faceSchema = z.strictObject({
  /** Both faces together, or one of them: the face toward place 1, or the face away from it. */
  face: z.enum(['both', 'toward first', 'toward last']),
  /** Eighths with brood of any age, drone included. */
  brood8: eighths,
  /** Eighths with honey, nectar or bee bread. */
  food8: eighths,
  /** Of the brood eighths, those that are drone. */
  drone8: z.optional(eighths),
  /** Of the food eighths, those that are sealed honey. */
  sealedFood8: z.optional(eighths),
  /** Eighths of the face covered by bees. */
  bees8: z.optional(eighths),
});

/** Cells of one patch of sealed brood, counted one by one: how many hold brood. */
export const patchSchema = z.strictObject({
  occupied: z.int().check(z.minimum(0), z.maximum(2000)),
  cells: z.int().check(z.minimum(1), z.maximum(2000)),
});

export const readingSchema = z.strictObject({
  visit: idSchema,
  hive: idSchema,
  place: z.int().check(z.minimum(1), z.maximum(60)),
  /** The comb when its identity is known; without it, the comb that hangs there, or a new one. */
  comb: z.optional(idSchema),
  /**
   * 'set': read as one with all combs that have grown together with it; 'follower': the comb on the follower board beside
   * the place; absent: of this bar alone.
   */
  of: z.optional(z.enum(readAs)),
  combClass: z.optional(z.nullable(z.enum(combClasses))),
  faces: z.array(faceSchema).check(z.minLength(1), z.maxLength(2)),
  /** Share of the full outline that is built, in eighths; null: as last time. */
  built8: z.optional(eighths),
  /** How it hangs at walls and floor; absent or null: not looked. */
  attached: z.optional(z.nullable(z.enum(attachments))),
  /** Two combs hang side by side on the bar and are read as one; absent or null: not looked. */
  double: z.optional(z.nullable(z.boolean())),
  eggs: z.enum(lookedFor),
  youngest: z.nullable(z.enum(stages)),
  cells: z.nullable(cellsSchema),
  cellsLooked: z.enum(lookedFor),
  queen: z.enum(lookedFor),
  brushed: z.nullable(z.boolean()),
  /** A counted patch of sealed brood on this comb; absent or null: not counted. */
  patch: z.optional(z.nullable(patchSchema)),
  /** What was seen that is not right, by sign code; see `signs.ts`. */
  signs: z.array(z.string().check(z.maxLength(40))).check(z.maxLength(12)),
  method: z.enum(methods),
  light: z.nullable(z.enum(lights)),
});

export type Reading = z.infer<typeof readingSchema>;
export type FaceReading = z.infer<typeof faceSchema>;
export type CellCounts = z.infer<typeof cellsSchema>;
export type Stage = (typeof stages)[number];
export type LookedFor = (typeof lookedFor)[number];
