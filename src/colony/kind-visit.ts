/**
 * The kind of entry for a visit as closed: its step of the fold. It moves the end of the bay, takes
 * combs out, and joins the readings that name it, whether they came before or after. Shape in `visit.ts`.
 */
import { fault, placeFaults, unknown } from '../hive/faults.ts';
import { bring, combAt } from '../hive/hanging.ts';
import type { Bay } from '../hive/state.ts';
import { moveBay, overlapping } from '../hive/stretch.ts';
import { dayOf, type Entry } from '../journal/entry.ts';
import { entryKind, fits } from '../journal/kind.ts';
import type { Issue } from '../numbers/result.ts';
import { openVisit } from './kind-reading.ts';
import type { Colony, ColonyDraft, Visit } from './state.ts';
import { type VisitBody, visitSchema } from './visit.ts';
import { bayOf, happened, lastStay, livingFaults } from './whose.ts';

export const visitKind = entryKind<VisitBody, ColonyDraft>({
  kind: 'visit',
  version: 1,
  schema: visitSchema,
  apply,
});

function apply(draft: ColonyDraft, entry: Entry<VisitBody>): readonly Issue[] {
  const { body } = entry;
  const faults = livingFaults(draft, entry, 'colony', body.colony);
  const hive = draft.hives.get(body.hive);
  if (hive === undefined) faults.push(...unknown(entry, 'hive', 'hive', body.hive, draft.hives));
  const colony = draft.colonies.get(body.colony);
  if (faults.length > 0 || colony === undefined || hive === undefined) return faults;
  if (lastStay(colony)?.hive !== body.hive)
    return [fault(entry, 'colony-elsewhere', 'hive', body.hive, `the hive of this colony, ${lastStay(colony)?.hive ?? ''}`)];
  const visit = draft.visits.get(body.visit) ?? null;
  faults.push(...joinFaults(entry, visit), ...barFaults(entry, hive.bars));
  const bay = bayOf(draft, colony);
  const ends = bay === null ? null : endsAfter(bay, body);
  if (ends !== null) faults.push(...endFaults(draft, entry, colony, ends, hive.bars));
  if (faults.length > 0) return faults;
  takeOut(draft, entry);
  if (bay !== null && ends !== null) moveBay(bay, ends.from, ends.to, entry);
  const closed = { entry: entry.id, body };
  if (visit !== null) visit.closed = closed;
  else
    openVisit(draft, {
      id: body.visit,
      day: dayOf(entry.at),
      by: entry.by,
      hive: body.hive,
      colony: body.colony,
      readings: [],
      closed,
    });
  if (body.cellsCut === true) happened(draft, body.colony, entry, { kind: 'cells cut' });
  return fits;
}

function joinFaults(entry: Entry<VisitBody>, visit: Visit | null): Issue[] {
  const { body } = entry;
  const faults: Issue[] = [];
  if (body.ended !== null && body.ended < body.began)
    faults.push(fault(entry, 'ended-before-begun', 'ended', body.ended, `a time from ${body.began} on`));
  if (visit === null) return faults;
  if (visit.closed !== null)
    faults.push(fault(entry, 'visit-closed-twice', 'visit', body.visit, `a visit that ${visit.closed.entry} has not closed`));
  if (visit.colony !== body.colony)
    faults.push(fault(entry, 'visit-of-another-colony', 'colony', body.colony, `the colony that was read, ${visit.colony}`));
  if (visit.hive !== body.hive)
    faults.push(fault(entry, 'visit-elsewhere', 'hive', body.hive, `the hive that was read, ${visit.hive}`));
  if (visit.day !== dayOf(entry.at))
    faults.push(fault(entry, 'visit-on-two-days', 'at', dayOf(entry.at), `the day of its readings, ${visit.day}`));
  return faults;
}

function barFaults(entry: Entry<VisitBody>, bars: number): Issue[] {
  const { given, taken, followerAfter, barsCounted, beesBars } = entry.body;
  const faults = [
    ...given.flatMap((place, i) => placeFaults(entry, `given.${i}`, place, bars)),
    ...taken.flatMap((place, i) => placeFaults(entry, `taken.${i}`, place, bars)),
    ...placeFaults(entry, 'followerAfter', followerAfter, bars),
  ];
  const { winter, visitKind: kind } = entry.body;
  if (winter !== undefined && kind !== 'closing for winter')
    faults.push(fault(entry, 'winter-of-another-visit', 'winter', kind, 'a visit for closing for winter'));
  const both = given.find((place) => taken.includes(place));
  if (both !== undefined)
    faults.push(fault(entry, 'given-and-taken', 'taken', both, 'a bar that was not given at the same visit'));
  if (barsCounted !== null && barsCounted > bars)
    faults.push(fault(entry, 'more-bars-than-places', 'barsCounted', barsCounted, `at most ${bars}`));
  if (beesBars !== null && beesBars > bars)
    faults.push(fault(entry, 'more-bars-than-places', 'beesBars', beesBars, `at most ${bars}`));
  return faults;
}

/** Bars given lengthen the bay, bars taken at an end shorten it, and the follower board has the last word. */
function endsAfter(bay: Bay, body: VisitBody): { from: number; to: number } {
  let from = Math.min(bay.from, ...body.given);
  let to = Math.max(bay.to, ...body.given);
  const taken = new Set(body.taken);
  while (to > from && taken.has(to)) to -= 1;
  while (from < to && taken.has(from)) from += 1;
  if (body.followerAfter !== null) to = body.followerAfter;
  return { from, to };
}

function endFaults(draft: ColonyDraft, entry: Entry, colony: Colony, ends: { from: number; to: number }, bars: number): Issue[] {
  const bay = bayOf(draft, colony);
  if (ends.to > bars) return [];
  if (ends.to < ends.from) return [fault(entry, 'bay-order', 'followerAfter', ends.to, `a place from ${ends.from} on`)];
  const other = overlapping(draft, bay?.hive ?? '', ends.from, ends.to, bay?.id ?? null);
  if (other === null) return [];
  return [
    fault(entry, 'bays-overlap', 'followerAfter', `${ends.from} to ${ends.to}`, `places outside ${other.from} to ${other.to}`),
  ];
}

/** Where a comb goes that is taken out is not asked at the hive: a box, until a placing says better. */
function takeOut(draft: ColonyDraft, entry: Entry<VisitBody>): void {
  for (const place of entry.body.taken) {
    const comb = combAt(draft, entry.body.hive, place);
    if (comb !== null) bring(draft, comb, { kind: 'away', where: 'box' }, entry);
  }
}
