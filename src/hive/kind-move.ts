/**
 * One move of the hands at an open hive: a bar taken, put, swapped, turned, shifted, the follower board, a spacer. It is
 * relative to the row as it hung at that moment (`row.ts`); contents and marks travel with the comb.
 */
import * as z from 'zod/mini';
import { dayOf, type Entry, type Id, idSchema } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { fault, placeFaults, unknown } from './faults.ts';
import { bring, combAt, newComb, rehang } from './hanging.ts';
import { setWith } from './joined.ts';
import { awayWhere, moved, type Put } from './row.ts';
import type { Hung, Row } from './row-shape.ts';
import { placesTogether } from './row-sets.ts';
import { placeSchema } from './shapes.ts';
import type { Bay, Comb, Hive, HiveDraft } from './state.ts';
import { bayAt, moveBay, overlapping } from './stretch.ts';
import { isTooWide, widthsOf } from './widths.ts';

const most = 60;
const mostSpacerMm = 200;

const put = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('taken'), entry: idSchema }),
  z.strictObject({ kind: z.literal('comb'), comb: idSchema }),
  z.strictObject({ kind: z.literal('bare') }),
]);

const moveSchema = z.discriminatedUnion('do', [
  z.strictObject({ do: z.literal('take'), place: placeSchema, to: z.enum(awayWhere) }),
  z.strictObject({ do: z.literal('put'), place: placeSchema, what: put, room: z.enum(['free', 'make way']) }),
  z.strictObject({ do: z.literal('swap'), place: placeSchema, with: placeSchema }),
  z.strictObject({ do: z.literal('turn'), place: placeSchema }),
  z.strictObject({ do: z.literal('shift'), place: placeSchema, by: z.int().check(z.minimum(-most), z.maximum(most)) }),
  z.strictObject({ do: z.literal('follower'), place: placeSchema }),
  z.strictObject({
    do: z.literal('spacer'),
    place: placeSchema,
    widthMm: z.number().check(z.minimum(0), z.maximum(mostSpacerMm)),
  }),
]);

const schema = z.strictObject({
  hive: idSchema,
  /** The visit at which it was done; null where none was written. */
  visit: z.nullable(idSchema),
  /** The end wall toward which bars make way. */
  outward: z.enum(['first', 'last']),
  move: moveSchema,
});

export type MoveBody = z.infer<typeof schema>;

export const moveKind = entryKind<MoveBody, HiveDraft>({ kind: 'move', version: 1, schema, apply });

/** A comb of the journal, or null: a bar that nobody has read. */
type Bar = Id | null;

function apply(draft: HiveDraft, entry: Entry<MoveBody>): readonly Issue[] {
  const { hive: hiveId, move, outward } = entry.body;
  const hive = draft.hives.get(hiveId);
  if (hive === undefined) return unknown(entry, 'hive', 'hive', hiveId, draft.hives);
  const beyond = placeFaults(entry, 'move.place', move.place, hive.bars);
  if (beyond.length > 0) return beyond;
  const bay = bayAt(draft, hiveId, move.place);
  const row = rowOf(draft, hiveId, bay, move.place, hive.bars, outward);
  const hung = move.do === 'put' ? toPut(draft, entry, move.what) : { bars: [], issues: [] };
  if (hung.issues.length > 0) return hung.issues;
  const next = moved(row, move, hung.bars, () => unread);
  if (!next.ok) return next.issues.map(({ code, path, found, expected }) => fault(entry, code, `move.${path}`, found, expected));
  const faults = endFaults(draft, entry, bay, next.value);
  if (move.do === 'spacer') faults.push(...spacerFaults(draft, entry, hive, move));
  if (faults.length > 0) return faults;
  if (move.do === 'spacer') setSpacer(draft, hiveId, move.place, move.widthMm);
  else hang(draft, entry, bay, row, next.value);
  return fits;
}

/** A bar that nobody has read. */
const unread: Hung<Bar> = { what: null, bare: false, turned: false };

function rowOf(draft: HiveDraft, hive: Id, bay: Bay | null, place: number, bars: number, outward: Row<Bar>['outward']): Row<Bar> {
  const [from, to] = bay === null ? [place, place] : [bay.from, bay.to];
  const at = new Map<number, Hung<Bar>>();
  const gaps = draft.gaps.get(hive) ?? new Set<number>();
  for (let where = 1; where <= bars; where += 1) {
    const comb = combAt(draft, hive, where);
    const within = from <= where && where <= to;
    // Combs behind the follower board are known; those of another colony are not of this row.
    if (!within && overlapping(draft, hive, where, where, bay?.id ?? null) !== null) continue;
    if (comb !== null) at.set(where, hungOf(draft, comb));
    else if (within && bay !== null && !gaps.has(where)) at.set(where, unread);
  }
  return { bars, from, to, outward, at, gaps };
}

/** As it hangs, or hung last: who takes a bar and hangs it again has not turned it. */
function isTurned({ placings }: Comb): boolean {
  const spot = placings.findLast((placing) => placing.spot.kind === 'place')?.spot;
  return spot?.kind === 'place' && spot.facing === 'turned';
}

/** A comb as the row knows it. */
function hungOf(draft: HiveDraft, comb: Comb): Hung<Bar> {
  const set = setWith(draft.joined, comb.id);
  return { what: comb.id, bare: comb.built === 0, turned: isTurned(comb), ...(set === null ? {} : { joined: set.id }) };
}

/** What is to be put, or why it cannot be; of combs that have grown together all. */
function toPut(
  draft: HiveDraft,
  entry: Entry<MoveBody>,
  what: Put,
): { readonly bars: readonly Hung<Bar>[]; readonly issues: readonly Issue[] } {
  if (what.kind === 'bare') return { bars: [{ what: entry.id, bare: true, turned: false }], issues: [] };
  const path = what.kind === 'taken' ? 'move.what.entry' : 'move.what.comb';
  const comb = what.kind === 'comb' ? draft.combs.get(what.comb) : takenBy(draft, what.entry);
  const named = what.kind === 'comb' ? what.comb : what.entry;
  if (comb === undefined)
    return { bars: [], issues: [fault(entry, 'unknown-comb', path, named, 'a comb that was taken before')] };
  const all = (setWith(draft.joined, comb.id)?.combs ?? [comb.id]).flatMap((id) => draft.combs.get(id) ?? []);
  const issues = all.flatMap((one) => combFault(one, entry, path) ?? []);
  const inmostFirst = entry.body.outward === 'last' ? all : all.toReversed();
  return { bars: inmostFirst.map((one) => hungOf(draft, one)), issues };
}

function combFault(comb: Comb, entry: Entry<MoveBody>, path: string): Issue | null {
  if (comb.ended !== null) return fault(entry, 'comb-ended', path, comb.id, `a comb that did not end on ${comb.ended}`);
  if (comb.born !== null && dayOf(entry.at) < comb.born.earliest)
    return fault(entry, 'placed-before-born', path, dayOf(entry.at), `a day from ${comb.born.earliest} on`);
  if (comb.at?.kind === 'away' && (comb.at.where === 'melted' || comb.at.where === 'given away'))
    return fault(entry, 'comb-ended', path, comb.id, 'a comb that was neither melted nor given away');
  if (comb.at?.kind === 'place')
    return fault(entry, 'comb-in-two-places', path, comb.id, `a comb in hand or put away: it hangs at place ${comb.at.place}`);
  return null;
}

/** What a move took. */
function takenBy(draft: HiveDraft, entry: Id): Comb | undefined {
  return [...draft.combs.values()].find(({ placings }) =>
    placings.some((placing) => placing.entry === entry && placing.spot.kind === 'away'),
  );
}

function endFaults(draft: HiveDraft, entry: Entry<MoveBody>, bay: Bay | null, { from, to }: Row<Bar>): Issue[] {
  const other = overlapping(draft, entry.body.hive, from, to, bay?.id ?? null);
  if (other === null) return [];
  return [fault(entry, 'bays-overlap', 'move.place', `${from} to ${to}`, `places outside ${other.from} to ${other.to}`)];
}

function hang(draft: HiveDraft, entry: Entry<MoveBody>, bay: Bay | null, before: Row<Bar>, after: Row<Bar>): void {
  const { hive, move } = entry.body;
  if (move.do === 'take') {
    const going = placesTogether(before, move.place).map((place) => before.at.get(place)?.what ?? entry.id);
    const combs = going.map((id) => draft.combs.get(id) ?? newComb(id));
    for (const comb of combs) draft.combs.set(comb.id, comb);
    rehang(
      draft,
      combs.map((comb) => ({ comb, spot: { kind: 'away', where: move.to } })),
      entry,
    );
  }
  if (move.do === 'put' && move.what.kind === 'bare') draft.combs.set(entry.id, { ...newComb(entry.id), built: 0 });
  rehang(
    draft,
    [...after.at].flatMap(([place, { what, turned }]) => {
      const comb = what === null ? undefined : draft.combs.get(what);
      return comb === undefined
        ? []
        : [{ comb, spot: { kind: 'place', hive, place, facing: turned ? 'turned' : 'as built' } as const }];
    }),
    entry,
  );
  // A bare bar behind the follower board gives way to wood that nobody has read.
  for (const [place, { what }] of after.at) {
    const there = what === null ? combAt(draft, hive, place) : null;
    if (there !== null) bring(draft, there, { kind: 'away', where: 'hand' }, entry);
  }
  draft.gaps.set(hive, new Set(after.gaps));
  if (bay !== null) moveBay(bay, after.from, after.to, entry);
}

/** A strip that makes it wider than it is; taking one out, or a thinner one, is never refused. */
function spacerFaults(
  draft: HiveDraft,
  entry: Entry<MoveBody>,
  hive: Hive,
  spacer: { readonly place: number; readonly widthMm: number },
): Issue[] {
  const widths = widthsOf(draft, hive, spacer);
  if (!isTooWide(widths) || widths.sumMm <= widthsOf(draft, hive).sumMm) return [];
  const [sum, length] = [Math.round(widths.sumMm), Math.round(widths.lengthMm ?? 0)];
  return [fault(entry, 'wider-than-trough', 'move.widthMm', `${sum} mm`, `at most ${length} mm of bars`)];
}

function setSpacer(draft: HiveDraft, hive: Id, place: number, widthMm: number): void {
  const spacers = draft.spacers.get(hive) ?? new Map<number, number>();
  if (widthMm > 0) spacers.set(place, widthMm);
  else spacers.delete(place);
  draft.spacers.set(hive, spacers);
}
