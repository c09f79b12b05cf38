/**
 * A piece was cut or broken from the comb of a place, and tied to another bar or put away. It takes its part of what the
 * comb held; both are read anew when somebody looks.
 */
import * as z from 'zod/mini';
import { dayOf, type Entry, idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { fault, placeFaults, unknown } from './faults.ts';
import { bring, combAt, newComb, occupant } from './hanging.ts';
import { eighthsInWhole, placeSchema } from './shapes.ts';
import { awayPlaces, type Bay, type Comb, type HiveDraft, type Spot } from './state.ts';
import { bayAt, moveBay, overlapping } from './stretch.ts';

const schema = z.strictObject({
  hive: idSchema,
  visit: z.nullable(idSchema),
  /** Where the comb hangs from which it comes. */
  place: placeSchema,
  /** The id that this comb gets where none is known to hang. */
  comb: idSchema,
  /** How much of that comb, in eighths. */
  share8: z.number().check(z.multipleOf(0.5), z.minimum(0.5), z.maximum(7.5)),
  to: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('place'), place: placeSchema }),
    z.strictObject({ kind: z.literal('away'), where: z.enum(awayPlaces) }),
  ]),
});

export type CombPieceBody = z.infer<typeof schema>;

export const combPieceKind = entryKind<CombPieceBody, HiveDraft>({ kind: 'comb-piece', version: 1, schema, apply });

function apply(draft: HiveDraft, entry: Entry<CombPieceBody>): readonly Issue[] {
  const { hive: id, place, share8, to } = entry.body;
  const hive = draft.hives.get(id);
  if (hive === undefined) return unknown(entry, 'hive', 'hive', id, draft.hives);
  const faults = [
    ...placeFaults(entry, 'place', place, hive.bars),
    ...(to.kind === 'place' ? placeFaults(entry, 'to.place', to.place, hive.bars) : []),
  ];
  if (faults.length > 0) return faults;
  const parent = combAt(draft, id, place) ?? unreadComb(draft, entry);
  if (parent === null || parent.built === 0) return [fault(entry, 'no-comb-there', 'place', place, 'a place with a comb')];
  const bay = bayAt(draft, id, place);
  const hangs = to.kind === 'place' ? hangFaults(draft, entry, bay, to.place) : [];
  if (hangs.length > 0) return hangs;
  if (parent.at === null) {
    draft.combs.set(parent.id, parent);
    bring(draft, parent, { kind: 'place', hive: id, place, facing: 'as built' }, entry);
  }
  const share = share8 / eighthsInWhole;
  const piece = { ...newComb(entry.id), born: parent.born, built: parent.built === null ? null : parent.built * share };
  if (parent.built !== null) parent.built *= 1 - share;
  draft.combs.set(piece.id, piece);
  draft.pieces.push({ piece: piece.id, parent: parent.id, day: dayOf(entry.at), share });
  const spot: Spot = to.kind === 'place' ? { kind: 'place', hive: id, place: to.place, facing: 'as built' } : to;
  bring(draft, piece, spot, entry);
  if (bay !== null && to.kind === 'place') moveBay(bay, Math.min(bay.from, to.place), Math.max(bay.to, to.place), entry);
  return fits;
}

/** The comb of a bar that nobody has read; null where there is no bar, or another comb bears its id. */
function unreadComb(draft: HiveDraft, { body }: Entry<CombPieceBody>): Comb | null {
  const gone = draft.gaps.get(body.hive)?.has(body.place) === true || draft.combs.has(body.comb);
  const bay = bayAt(draft, body.hive, body.place);
  return gone || bay === null || body.place < bay.from || body.place > bay.to ? null : newComb(body.comb);
}

/** Another comb hangs there, or another colony has the place. */
function hangFaults(draft: HiveDraft, entry: Entry<CombPieceBody>, bay: Bay | null, place: number): Issue[] {
  const { hive } = entry.body;
  const other = occupant(draft, hive, place, new Set());
  if (other !== null) return [fault(entry, 'place-occupied', 'to.place', place, `a place without comb: ${other.id} hangs there`)];
  const held = overlapping(draft, hive, place, place, bay?.id ?? null);
  if (held === null) return [];
  return [fault(entry, 'bays-overlap', 'to.place', place, `a place outside ${held.from} to ${held.to}`)];
}
