/** What a visit was, in a row: when, by whom, how much was opened, temper, signs. A learner's signs stay in the journal. */
import type { Id } from '../journal/entry.ts';
import type { ColonyState, Visit } from './state.ts';
import type { VisitSummary } from './view.ts';
import { countedRows } from './visits-of.ts';

export function visitSummary(state: ColonyState, visit: Visit): VisitSummary {
  const body = visit.closed?.body ?? null;
  const rows = countedRows(state, visit);
  const closedBy = visit.closed?.entry ?? null;
  const signs: { readonly code: string; readonly entry: Id }[] = rows.flatMap((row) =>
    row.body.signs.map((code) => ({ code, entry: row.entry })),
  );
  if (closedBy !== null) for (const code of body?.signs ?? []) signs.push({ code, entry: closedBy });
  return {
    id: visit.id,
    day: visit.day,
    kind: body?.visitKind ?? 'not closed',
    by: visit.by,
    barsOpened: new Set(visit.readings.map((row) => row.body.place)).size,
    temper: body?.temper ?? null,
    temperNotes: body?.temperNotes ?? [],
    straight: body?.straight ?? null,
    ...(body?.winter === undefined ? {} : { winter: body.winter }),
    signs,
    cellsCut: body?.cellsCut === true,
    entry: closedBy ?? visit.readings[0]?.entry ?? visit.id,
  };
}
