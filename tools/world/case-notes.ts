/**
 * A journal laid out as a bee scientist would lay out field sheets: visits of each colony with their
 * readings, learners' left out, corrections worked in. It knows nothing of the program's own estimates.
 */
import type { Reading } from '../../src/colony/reading.ts';
import type { VisitBody } from '../../src/colony/visit.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { type Day, daysBetween } from '../../src/numbers/day.ts';

export interface Sheet {
  readonly entry: Entry;
  readonly body: Reading;
}

export interface CaseVisit {
  readonly entry: Entry;
  readonly day: Day;
  readonly body: VisitBody;
  readonly sheets: readonly Sheet[];
  /** Every bar of the bay was opened. */
  readonly whole: boolean;
}

export interface QueenEvent {
  readonly entry: Entry;
  readonly day: Day;
  /** Latest day on which she may still have laid. */
  readonly latest: Day;
  readonly what: 'gone' | 'came' | 'raised';
}

export interface CaseFile {
  readonly colony: string;
  readonly visits: readonly CaseVisit[];
  readonly queens: readonly QueenEvent[];
  readonly hivedAsSwarm: { readonly entry: Entry; readonly day: Day } | null;
  readonly swarmsLeft: readonly { readonly entry: Entry; readonly day: Day }[];
  readonly ended: Day | null;
  /** Days on which combs with brood came or went by hand: a split. */
  readonly disturbed: readonly Day[];
}

interface Bodies {
  readonly [key: string]: unknown;
}

export function caseFiles(journal: readonly Entry[]): readonly CaseFile[] {
  const entries = settled(journal);
  const learners = new Set(
    ofKind(entries, 'observer')
      .filter((e) => text(e, 'role') === 'learner')
      .map((e) => text(e, 'observer')),
  );
  const ids = new Set<string>();
  for (const e of ofKind(entries, 'colony')) ids.add(text(e, 'colony'));
  for (const e of [...ofKind(entries, 'split'), ...ofKind(entries, 'swarm')])
    if (text(e, 'child') !== '') ids.add(text(e, 'child'));
  const sheets = new Map<string, Sheet[]>();
  for (const entry of ofKind(entries, 'reading')) {
    if (learners.has(entry.by)) continue;
    const body = entry.body as Reading;
    sheets.set(body.visit, [...(sheets.get(body.visit) ?? []), { entry, body }]);
  }
  return [...ids].map((colony) => caseOf(entries, colony, sheets));
}

/** Readings of the person who made the visit, one a bar. */
export function mainSheets(visit: CaseVisit): readonly Sheet[] {
  const seen = new Set<number>();
  return visit.sheets.filter(
    (sheet) => sheet.entry.by === visit.entry.by && !seen.has(sheet.body.place) && seen.add(sheet.body.place),
  );
}

function caseOf(entries: readonly Entry[], colony: string, sheets: ReadonlyMap<string, readonly Sheet[]>): CaseFile {
  const of = (kind: string, key: string): readonly Entry[] => ofKind(entries, kind).filter((e) => text(e, key) === colony);
  const hived = of('swarm', 'child').find((e) => text(e, 'what') === 'hived');
  const left = of('swarm', 'from').filter((e) => ['left', 'hived'].includes(text(e, 'what')));
  const ended = of('colony-ended', 'colony')[0];
  return {
    colony,
    visits: of('visit', 'colony').map((entry) => visitOf(entry, sheets.get(text(entry, 'visit')) ?? [])),
    queens: [
      ...of('reign', 'colony').map(queenOf),
      ...left.map((entry): QueenEvent => ({ entry, day: dayOf(entry), latest: latest(entry), what: 'gone' })),
      ...of('split', 'child')
        .filter((e) => text(e, 'queenSide') === 'stayed')
        .map((entry): QueenEvent => ({ entry, day: dayOf(entry), latest: dayOf(entry), what: 'gone' })),
    ],
    hivedAsSwarm: hived === undefined ? null : { entry: hived, day: dayOf(hived) },
    swarmsLeft: left.map((entry) => ({ entry, day: dayOf(entry) })),
    ended: ended === undefined ? null : dayOf(ended),
    disturbed: [...of('split', 'from'), ...of('split', 'child')].map(dayOf),
  };
}

function visitOf(entry: Entry, sheets: readonly Sheet[]): CaseVisit {
  const body = entry.body as VisitBody;
  const places = new Set(sheets.filter((sheet) => sheet.entry.by === entry.by).map((sheet) => sheet.body.place));
  const bars = (body.barsCounted ?? 0) - body.given.length + body.taken.length;
  return { entry, day: dayOf(entry), body, sheets, whole: places.size >= bars };
}

function queenOf(entry: Entry): QueenEvent {
  const change = (entry.body as { change: { kind: string; how: string; window: { latest: Day } | null } }).change;
  const what = change.kind === 'ended' ? 'gone' : change.how === 'raised here' ? 'raised' : 'came';
  return { entry, day: dayOf(entry), latest: change.window?.latest ?? dayOf(entry), what };
}

function settled(journal: readonly Entry[]): readonly Entry[] {
  const struck = new Set(ofKind(journal, 'void').map((e) => e.corrects));
  const newest = new Map(ofKind(journal, 'correction').map((e) => [e.corrects, e.body as { body?: unknown; at?: string }]));
  return journal
    .filter((e) => !struck.has(e.id))
    .map((e) => {
      const change = newest.get(e.id);
      return change === undefined ? e : { ...e, body: change.body ?? e.body, at: change.at ?? e.at };
    });
}

function ofKind(entries: readonly Entry[], kind: string): readonly Entry[] {
  return entries.filter((e) => e.kind === kind);
}

function text(entry: Entry, key: string): string {
  const value = (entry.body as Bodies)[key];
  return typeof value === 'string' ? value : '';
}

function latest(entry: Entry): Day {
  return (entry.body as { window: { latest: Day } }).window.latest;
}

function dayOf(entry: Entry): Day {
  return entry.at.slice(0, 10);
}

/** Visits of one colony in pairs, the earlier first, at most so many days apart. */
export function pairs(
  file: CaseFile,
  atMost: number,
): readonly { readonly before: CaseVisit; readonly after: CaseVisit; readonly days: number }[] {
  return file.visits.flatMap((after, i) => {
    const before = file.visits[i - 1];
    if (before === undefined) return [];
    const days = daysBetween(before.day, after.day);
    return days > 0 && days <= atMost ? [{ before, after, days }] : [];
  });
}
