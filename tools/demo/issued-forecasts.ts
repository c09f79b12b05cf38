/**
 * A journal lived through visit by visit: after each one the forecast that the program would have issued then, from
 * nothing but the entries that had been noted by then. Ids follow from the content, so that the same journal gives
 * the same entries. Advice is issued too where the program is used; nothing here needs it.
 */
import { readJournal } from '../../src/apiary.ts';
import { foreseeColony, type KeptColony } from '../../src/apiary/foresee.ts';
import { digestOf, forecastIssued } from '../../src/apiary/issued.ts';
import type { VisitBody } from '../../src/colony/visit.ts';
import { derivedEntry } from '../../src/journal/derive-id.ts';
import { dayOf, type Entry, type Id } from '../../src/journal/entry.ts';
import { byOrder } from '../../src/journal/order.ts';

/** Forecasts that stand in the journal already are left out of what is known, and are not given back. */
export function issuedForecasts(
  journal: readonly Entry[],
  isMeant: (visit: Entry<VisitBody>) => boolean = () => true,
): readonly Entry[] {
  const own = journal.filter((entry) => entry.kind !== 'forecast-issued');
  const counted = new Set(own.filter(({ kind }) => kind === 'reading').map(({ body }) => (body as { visit: Id }).visit));
  const visits = (own.filter(({ kind }) => kind === 'visit') as Entry<VisitBody>[]).filter(
    (entry) => (counted.has(entry.body.visit) || entry.body.beesBars !== null) && isMeant(entry),
  );
  const kept = new Map<Id, KeptColony>();
  return visits.sort(byOrder).map((visit) => issuedAfter(visit, own, kept));
}

/** What was kept of the colony makes this one step; it is renewed. */
function issuedAfter(visit: Entry<VisitBody>, journal: readonly Entry[], kept: Map<Id, KeptColony>): Entry {
  const { colony } = visit.body;
  const day = dayOf(visit.at);
  const known = journal.filter((entry) => entry.noted <= visit.noted);
  const apiary = readJournal(known, day);
  const made = foreseeColony(apiary, colony, day, kept.get(colony) ?? null);
  if (made !== null && made.kept !== null) kept.set(colony, made.kept);
  const body = forecastIssued(apiary, colony, day, digestOf(known), made?.foreseen ?? null);
  const { yard, at, by } = visit;
  return derivedEntry({ yard, at, noted: aSecondAfter(visit.noted), by, kind: 'forecast-issued', version: 1, body });
}

function aSecondAfter(noted: string): string {
  return new Date(Date.parse(noted) + 1000).toISOString().replace('.000Z', 'Z');
}
