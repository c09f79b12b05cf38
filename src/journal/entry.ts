/**
 * One entry of the journal: a fact that never changes. Everything else in the program is derived
 * from entries and can be thrown away. A correction is a later entry that names this one.
 */
import * as z from 'zod/mini';
import { isDay } from '../numbers/day.ts';

/** A local day of the yard, or a local day and time: `2014-05-16` or `2014-05-16T14:05`. */
export type At = string;
/** An instant in UTC to the second: `2014-05-16T18:05:00Z`. */
export type Instant = string;
export type Id = string;

export interface Entry<B = unknown> {
  readonly id: Id;
  readonly yard: Id;
  /** When it was so: the likely day; a window lives in the body. It orders the fold. */
  readonly at: At;
  /** When it was written down. */
  readonly noted: Instant;
  /** The observer who wrote it. */
  readonly by: Id;
  readonly kind: string;
  readonly version: number;
  readonly body: B;
  /** The entry that this one corrects or voids. */
  readonly corrects?: Id;
}

const uuid = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;
const clock = /^T([01]\d|2[0-3]):[0-5]\d$/;
const instant = /^(\d{4}-\d{2}-\d{2})T([01]\d|2[0-3]):[0-5]\d:[0-5]\dZ$/;

export function isAt(text: unknown): text is At {
  if (typeof text !== 'string') return false;
  return isDay(text.slice(0, 10)) && (text.length === 10 || clock.test(text.slice(10)));
}

export function isInstant(text: unknown): text is Instant {
  return typeof text === 'string' && isDay(instant.exec(text)?.[1]);
}

export function dayOf(at: At): string {
  return at.slice(0, 10);
}

export const idSchema = z.string().check(z.regex(uuid));
export const daySchema = z.string().check(z.refine(isDay, 'a day YYYY-MM-DD that exists'));
export const atSchema = z.string().check(z.refine(isAt, 'a day YYYY-MM-DD, or with THH:MM'));
export const instantSchema = z.string().check(z.refine(isInstant, 'an instant YYYY-MM-DDTHH:MM:SSZ'));
/** A date with its window and how it is known. */
export const windowSchema = z.strictObject({ earliest: daySchema, latest: daySchema });
/** Value and unit as typed; see `numbers/units.ts`. */
export const typedSchema = z.strictObject({ value: z.number(), unit: z.string().check(z.maxLength(8)) });
export const nameSchema = z.string().check(z.trim(), z.minLength(1), z.maxLength(60));
export const textSchema = z.string().check(z.maxLength(4000));

export const envelopeSchema = z.strictObject({
  id: idSchema,
  yard: idSchema,
  at: atSchema,
  noted: instantSchema,
  by: idSchema,
  kind: z.string().check(z.regex(/^[a-z][a-z-]{0,39}$/)),
  version: z.int().check(z.minimum(1), z.maximum(999)),
  body: z.unknown(),
  corrects: z.optional(idSchema),
});
