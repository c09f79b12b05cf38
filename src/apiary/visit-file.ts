/**
 * One visit written by hand or by another program, as one JSON object: what was read, bar by bar, with
 * the hive and the colony by name or id. It becomes the same entries that the Visit screen writes; their
 * ids come from the content, so that the same file given twice adds nothing.
 */
import * as z from 'zod/mini';
import type { ColonyState } from '../colony/state.ts';
import { cellsSchema, combClasses, faceSchema, lookedFor, stages } from '../colony/reading.ts';
import { temperNotes, temperWords, visitKinds } from '../colony/visit.ts';
import { atSchema, type Entry, type Id } from '../journal/entry.ts';
import { deriveId } from '../journal/derive-id.ts';
import { issuesOf } from '../journal/zod-issues.ts';
import { bad, good, type Result } from '../numbers/result.ts';
import { placeSchema } from '../hive/shapes.ts';

const eighths = z.nullable(z.number().check(z.multipleOf(0.5), z.minimum(0), z.maximum(8)));

const barSchema = z.strictObject({
  place: placeSchema,
  brood8: z.optional(eighths),
  food8: z.optional(eighths),
  /** Face by face, instead of both at once. */
  faces: z.optional(z.array(faceSchema).check(z.minLength(1), z.maxLength(2))),
  combClass: z.optional(z.nullable(z.enum(combClasses))),
  built8: z.optional(eighths),
  eggs: z.optional(z.enum(lookedFor)),
  youngest: z.optional(z.nullable(z.enum(stages))),
  cells: z.optional(z.nullable(cellsSchema)),
  queen: z.optional(z.enum(lookedFor)),
  signs: z.optional(z.array(z.string().check(z.maxLength(40)))),
});

export const visitFileSchema = z.strictObject({
  colony: z.string(),
  began: atSchema,
  ended: z.optional(z.nullable(atSchema)),
  kind: z.optional(z.enum(visitKinds)),
  by: z.optional(z.string()),
  bars: z.array(barSchema).check(z.maxLength(60)),
  barsCounted: z.optional(z.nullable(z.int().check(z.minimum(0), z.maximum(60)))),
  beesBars: z.optional(z.nullable(z.number().check(z.minimum(0), z.maximum(60)))),
  brushed: z.optional(z.nullable(z.boolean())),
  temper: z.optional(z.nullable(z.enum(temperWords))),
  temperNotes: z.optional(z.array(z.enum(temperNotes))),
  cellsCut: z.optional(z.nullable(z.boolean())),
  note: z.optional(z.string()),
});

type VisitFile = z.infer<typeof visitFileSchema>;

/** The file's JSON Schema, as the command prints it. */
export function visitFileJsonSchema(): unknown {
  return z.toJSONSchema(visitFileSchema, { unrepresentable: 'any', io: 'input' });
}

/** Entries of the visit, or the issues of the file. */
export function entriesOfVisitFile(json: unknown, state: ColonyState): Result<readonly Entry[]> {
  const parsed = visitFileSchema.safeParse(json);
  if (!parsed.success) return bad(...issuesOf(parsed.error.issues, json));
  const file = parsed.data;
  const colony = [...state.colonies.values()].find((each) => each.id === file.colony || each.name === file.colony);
  if (colony === undefined) {
    const known = [...state.colonies.values()].map((each) => each.name).join(', ');
    return bad({ code: 'unknown-colony', path: 'colony', found: file.colony, expected: `one of ${known}` });
  }
  const observers = [...state.observers.values()];
  const by = file.by === undefined ? observers[0] : observers.find((each) => each.id === file.by || each.name === file.by);
  const [yard] = state.yards.keys();
  const stay = colony.stays.at(-1);
  if (by === undefined || yard === undefined || stay === undefined) {
    return bad({ code: 'unknown-observer', path: 'by', found: file.by ?? 'nobody', expected: 'an observer of the journal' });
  }
  return good(writeEntries(file, { yard, by: by.id, colony: colony.id, hive: stay.hive, noted: notedOf(file) }));
}

/** Taken from the file like everything else, so that the same file makes the same entries: its own end, or its begin, as if in UTC. */
function notedOf(file: VisitFile): string {
  const at = file.ended ?? file.began;
  return `${at.length === daysLength ? `${at}T12:00` : at}:00Z`;
}

const daysLength = 'YYYY-MM-DD'.length;

interface Where {
  readonly yard: Id;
  readonly by: Id;
  readonly colony: Id;
  readonly hive: Id;
  readonly noted: string;
}

function writeEntries(file: VisitFile, where: Where): readonly Entry[] {
  const visit = deriveId('visit-file', { colony: where.colony, file });
  const entry = (kind: string, body: unknown): Entry => ({
    id: deriveId('visit-file-entry', { visit, kind, body }),
    yard: where.yard,
    at: file.began,
    noted: where.noted,
    by: where.by,
    kind,
    version: 1,
    body,
  });
  const readings = file.bars.map((bar) => entry('reading', readingBody(bar, file, visit, where.hive)));
  const note = file.note === undefined ? [] : [entry('note', { about: where.colony, text: file.note })];
  return [...readings, entry('visit', visitBody(file, visit, where)), ...note];
}

function readingBody(bar: VisitFile['bars'][number], file: VisitFile, visit: Id, hive: Id): unknown {
  const faces = bar.faces ?? [{ face: 'both', brood8: bar.brood8 ?? null, food8: bar.food8 ?? null }];
  return {
    visit,
    hive,
    place: bar.place,
    combClass: bar.combClass ?? null,
    faces,
    built8: bar.built8 ?? null,
    eggs: bar.eggs ?? 'not looked',
    youngest: bar.youngest ?? null,
    cells: bar.cells ?? null,
    cellsLooked: cellsLooked(bar.cells),
    queen: bar.queen ?? 'not looked',
    brushed: file.brushed ?? null,
    signs: bar.signs ?? [],
    method: 'eighths',
    light: null,
  };
}

function cellsLooked(cells: VisitFile['bars'][number]['cells']): (typeof lookedFor)[number] {
  if (cells === undefined || cells === null) return 'not looked';
  return Object.values(cells).some((count) => count > 0) ? 'seen' : 'none seen';
}

function visitBody(file: VisitFile, visit: Id, where: Where): unknown {
  return {
    visit,
    colony: where.colony,
    hive: where.hive,
    visitKind: file.kind ?? 'usual',
    began: file.began,
    ended: file.ended ?? null,
    order: 'from the follower',
    barsCounted: file.barsCounted ?? null,
    followerAfter: null,
    given: [],
    taken: [],
    beesBars: file.beesBars ?? null,
    straight: null,
    temper: file.temper ?? null,
    temperNotes: file.temperNotes ?? [],
    smokeMinutes: null,
    cellsCut: file.cellsCut ?? null,
    signs: [],
    sentence: '',
  };
}
