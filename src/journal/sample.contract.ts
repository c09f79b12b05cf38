/**
 * Small kinds and entries for the tests of the journal and its stores: a jar that is filled and
 * emptied. They know nothing of bees, so that the journal's promises are seen to hold for any kind.
 */
import fc from 'fast-check';
import * as z from 'zod/mini';
import { dayFromNumber } from '../numbers/day.ts';
import type { Entry, Id } from './entry.ts';
import { type AnyKind, entryKind, fits } from './kind.ts';
import { correctionKind } from './kind-correction.ts';
import { voidKind } from './kind-void.ts';

export interface JarDraft {
  readonly grams: Map<string, number>;
  readonly told: Id[];
}

export function emptyJars(): JarDraft {
  return { grams: new Map(), told: [] };
}

const fillSchema = z.strictObject({
  jar: z.string().check(z.minLength(1), z.maxLength(20)),
  grams: z.number().check(z.minimum(0), z.maximum(5000)),
  eighths: z.optional(z.array(z.int().check(z.minimum(0), z.maximum(8))).check(z.maxLength(4))),
});

/** Version 2: version 1 had kilograms. */
export const fillKind = entryKind<z.infer<typeof fillSchema>, JarDraft>({
  kind: 'fill',
  version: 2,
  schema: fillSchema,
  upgrade: (_version, body) => {
    const old = body as { readonly jar: unknown; readonly kg: number };
    return { jar: old.jar, grams: old.kg * 1000 };
  },
  apply: (draft, { id, body }) => {
    draft.grams.set(body.jar, (draft.grams.get(body.jar) ?? 0) + body.grams);
    draft.told.push(id);
    return fits;
  },
});

const emptySchema = z.strictObject({ jar: z.string().check(z.minLength(1), z.maxLength(20)) });

export const emptyKind = entryKind<z.infer<typeof emptySchema>, JarDraft>({
  kind: 'empty-out',
  version: 1,
  schema: emptySchema,
  apply: (draft, { id, body }) => {
    if (!draft.grams.has(body.jar))
      return [{ code: 'no-such-jar', path: 'body.jar', found: body.jar, expected: 'a jar that was filled' }];
    draft.grams.set(body.jar, 0);
    draft.told.push(id);
    return fits;
  },
});

export const jarKinds: readonly AnyKind<JarDraft>[] = [correctionKind, voidKind, fillKind, emptyKind];

export const yard: Id = '00000000-0000-4000-8000-00000000aaaa';
export const keeper: Id = '00000000-0000-4000-8000-00000000bbbb';

/** The id that ends in this number. */
export function idOf(n: number): Id {
  return `00000000-0000-7000-8000-${n.toString(16).padStart(12, '0')}`;
}

export function filled(n: number, jar: string, grams: number, at = '2014-05-16', more: Partial<Entry> = {}): Entry {
  return {
    id: idOf(n),
    yard,
    at,
    noted: '2014-05-16T18:00:00Z',
    by: keeper,
    kind: 'fill',
    version: 2,
    body: { jar, grams },
    ...more,
  };
}

export function corrected(n: number, corrects: Id, body: object, knew: readonly Id[] = [], more: Partial<Entry> = {}): Entry {
  return {
    id: idOf(n),
    yard,
    at: '2014-05-20',
    noted: '2014-05-20T18:00:00Z',
    by: keeper,
    kind: 'correction',
    version: 1,
    body: { ...body, why: 'misread', knew },
    corrects,
    ...more,
  };
}

export function voided(n: number, corrects: Id, knew: readonly Id[] = [], more: Partial<Entry> = {}): Entry {
  return corrected(n, corrects, {}, knew, { kind: 'void', ...more });
}

const anyDay = fc.integer({ min: 15000, max: 16500 }).map(dayFromNumber);

/** Valid entries over a small set of ids, so that the same id comes up with other content now and then. */
export function anyEntry(ids = 200): fc.Arbitrary<Entry> {
  return fc
    .record({
      n: fc.integer({ min: 1, max: ids }),
      at: anyDay,
      clock: fc.option(fc.constantFrom('T08:15', 'T23:59'), { nil: '' }),
      noted: anyDay,
      jar: fc.string({ minLength: 1, maxLength: 20, unit: 'grapheme' }).filter((text) => text.length <= 20),
      grams: fc.double({ min: 0, max: 5000, noNaN: true }),
      kind: fc.constantFrom('fill', 'fill', 'empty-out', 'from-tomorrow'),
    })
    .map(({ n, at, clock, noted, jar, grams, kind }) => ({
      id: idOf(n),
      yard,
      at: `${at}${clock}`,
      noted: `${noted}T12:00:00Z`,
      by: keeper,
      kind,
      version: kind === 'fill' ? 2 : 1,
      body: kind === 'empty-out' ? { jar } : { jar, grams: grams === 0 ? 0 : grams },
    }));
}

/** Valid entries, each id once. */
export function anyJournal(maxLength = 60): fc.Arbitrary<readonly Entry[]> {
  return fc.uniqueArray(anyEntry(100000), { maxLength, selector: (entry) => entry.id });
}
