/**
 * From the draft to entries of the journal: a bar put down is one reading, a bar taken up again is a
 * correction of it (or takes it back), closing is one visit. Bars that were not opened make nothing:
 * they stay unknown. Pure: ids and moments are handed in, sentences come from `words`.
 */
import type { DoneWithFallen, FallenComb } from '../../../apiary/visit-terms.ts';
import type { Reading } from '../../../colony/reading.ts';
import type { VisitBody } from '../../../colony/visit.ts';
import { type At, dayOf, type Entry, type Id, type Instant } from '../../../journal/entry.ts';
import { type ArrangedDraft, arrangementOf, barsHung } from './arrangement.ts';
import type { Draft, Seen, VisitMove, Written } from './draft.ts';

/** When something was tapped, as entries have it. */
export interface Stamp {
  readonly noted: Instant;
  readonly at: At;
}

export function readingOf(draft: Pick<Draft, 'visit' | 'hive'>, place: number, seen: Seen): Reading {
  return {
    visit: draft.visit,
    hive: draft.hive,
    place,
    combClass: seen.combClass,
    faces: [{ face: 'both', brood8: seen.brood8, food8: seen.food8 }],
    ...(seen.combClass === 'bare' ? { built8: 0 } : {}),
    ...(seen.attached === undefined ? {} : { attached: seen.attached }),
    ...(seen.double === undefined ? {} : { double: seen.double }),
    ...(seen.of === undefined ? {} : { of: seen.of }),
    eggs: seen.eggs,
    youngest: seen.youngest,
    cells: seen.cells,
    cellsLooked: seen.cellsLooked,
    queen: seen.queen,
    brushed: seen.brushed,
    signs: [...seen.signs],
    method: seen.asExpected === true ? 'as expected' : 'eighths',
    light: null,
  };
}

/** `place`: where it hangs as it is read. */
export function readingEntry(draft: Draft, id: Id, place: number, seen: Seen, stamp: Stamp): Entry {
  return envelope(draft, id, stamp, 'reading', readingOf(draft, place, seen));
}

export function fellEntry(
  draft: Draft,
  id: Id,
  fallen: { readonly place: number; readonly what: FallenComb; readonly done: DoneWithFallen },
  stamp: Stamp,
): Entry {
  const { colony, hive, visit } = draft;
  return envelope(draft, id, stamp, 'comb-fell', { colony, hive, visit, ...fallen });
}

export function moveEntry(draft: Draft, { entry, move }: VisitMove, stamp: Stamp): Entry {
  return envelope(draft, entry, stamp, 'move', { hive: draft.hive, visit: draft.visit, outward: draft.bay.follower, move });
}

/** An entry about combs, its body made by the tap. */
export function bodyEntry(draft: Draft, id: Id, kind: string, body: unknown, stamp: Stamp): Entry {
  return envelope(draft, id, stamp, kind, body);
}

/** Changes a reading that is in the journal; its own time stays. */
export function correctionEntry(draft: Draft, id: Id, written: Written, seen: Seen, stamp: Stamp, why: string): Entry {
  const body = { body: readingOf(draft, written.readAt ?? written.place, seen), why, knew: [...written.corrections] };
  return { ...envelope(draft, id, stamp, 'correction', body), corrects: written.reading };
}

/** Takes an entry back: a reading of a bar that was not opened after all, a fall that did not happen. */
export function voidEntry(draft: Draft, id: Id, target: Id, knew: readonly Id[], stamp: Stamp, why: string): Entry {
  return { ...envelope(draft, id, stamp, 'void', { why, knew: [...knew] }), corrects: target };
}

export function noteEntry(draft: Draft, id: Id, text: string, stamp: Stamp): Entry {
  return envelope(draft, id, stamp, 'note', { about: draft.colony, text });
}

export function visitEntry(draft: Draft, id: Id, stamp: Stamp, smokeMinutes: number | null, sentence: string): Entry {
  return envelope(
    draft,
    id,
    stamp,
    'visit',
    visitBody(draft, dayOf(stamp.at) === dayOf(draft.began) ? stamp.at : null, smokeMinutes, sentence),
  );
}

export function visitBody(draft: Draft, ended: At | null, smokeMinutes: number | null, sentence: string): VisitBody {
  const { closing } = draft;
  const signs = [...new Set(draft.read.flatMap((row) => row.seen.signs))];
  return {
    visit: draft.visit,
    colony: draft.colony,
    hive: draft.hive,
    visitKind: draft.visitKind,
    began: draft.began,
    ended,
    order: draft.order,
    barsCounted: closing.barsCounted,
    followerAfter: followerAfter(draft),
    given: [...givenPlaces(draft)],
    taken: [...takenPlaces(draft)],
    beesBars: closing.beesBars,
    straight: closing.straight,
    temper: closing.temper,
    temperNotes: [...closing.temperNotes],
    smokeMinutes,
    cellsCut: closing.cellsCut,
    ...(Object.keys(closing.winter ?? {}).length === 0 || closing.winter === undefined ? {} : { winter: closing.winter }),
    signs: signs.slice(0, 12),
    sentence: sentence.slice(0, 600),
  };
}

/** Bars hung in at the end of the row: the places beyond the old end, toward the follower board. */
export function givenPlaces(draft: Draft): readonly number[] {
  const { from, to } = arrangementOf(draft).row;
  return Array.from({ length: draft.closing.given }, (_, index) =>
    draft.bay.follower === 'last' ? to + 1 + index : from - 1 - index,
  );
}

/** Bars taken out at the end of the row, the last first. */
export function takenPlaces(draft: Draft): readonly number[] {
  const { from, to } = arrangementOf(draft).row;
  return Array.from({ length: draft.closing.taken }, (_, index) => (draft.bay.follower === 'last' ? to - index : from + index));
}

/** The last place of the bay at the follower board after the visit. */
export function rowEnd(draft: ArrangedDraft & Pick<Draft, 'closing'>): number {
  const { row } = arrangementOf(draft);
  const outwards = draft.closing.given - draft.closing.taken + draft.closing.follower;
  return draft.bay.follower === 'last' ? row.to + outwards : row.from - outwards;
}

/** Bars that should hang in the bay now, by what the journal said and what was done today. */
export function barsExpected(draft: ArrangedDraft & Pick<Draft, 'closing'>): number {
  return barsHung(arrangementOf(draft)) + draft.closing.given - draft.closing.taken;
}

/**
 * Null when nobody looked: neither moved, nor counted. The journal's follower board stands at the last
 * place of the bay; where it stands before the first, bars given and taken say all, and this is null.
 */
function followerAfter(draft: Draft): number | null {
  const { given, taken, follower, barsCounted } = draft.closing;
  if (draft.bay.follower === 'first') return null;
  return given + taken > 0 || follower !== 0 || barsCounted !== null ? rowEnd(draft) : null;
}

/** A visit has one day: what is tapped after midnight, or the morning after, belongs to the day on which the hive was opened. */
function envelope(draft: Draft, id: Id, stamp: Stamp, kind: string, body: unknown): Entry {
  return {
    id,
    yard: draft.yard,
    at: onVisitDay(draft, stamp.at),
    noted: stamp.noted,
    by: draft.by,
    kind,
    version: 1,
    body,
  };
}

export function onVisitDay(draft: Pick<Draft, 'began'>, at: At): At {
  return dayOf(at) === dayOf(draft.began) ? at : draft.began;
}
