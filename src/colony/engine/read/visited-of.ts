/**
 * The visits of one colony as the model takes them in, oldest first: what each counted, what it saw of eggs,
 * queen cells and the queen, and whose hand read. A learner's readings never count. What no colony can have, and
 * what was read before the colony was there, is refused with its field; the rest goes on.
 */
import type { Id } from '../../../journal/entry.ts';
import { dayNumber } from '../../../numbers/day.ts';
import type { Issue } from '../../../numbers/result.ts';
import { type EvidenceRow, evidenceRow } from '../../evidence-row.ts';
import type { Stage as StageRead } from '../../reading.ts';
import type { Visit } from '../../state.ts';
import { countedRows, isLearner } from '../../visits-of.ts';
import type { Stage } from '../../queen-chain/seen.ts';
import type { Seen, Visited } from '../run.ts';
import type { QueenMet } from '../seen/looks.ts';
import { countsOf } from './counts-of.ts';
import type { RecordBook } from './record-book.ts';
import { soundVisits } from './sound.ts';

export interface VisitsRead {
  /** Ascending by day; visits that say nothing to the model are not among them. */
  readonly visits: readonly Visited[];
  readonly issues: readonly Issue[];
}

export function visitedOf(records: RecordBook): VisitsRead {
  const { state, colony, until, book, visits } = records;
  const evidence = new Map(evidenceRow(state, colony.id, until, book).map((row) => [row.visit, row]));
  const tally = new Map<Id, number>();
  const rows = visits.map((visit): Visited => {
    const hand = handOf(records, visit, tally);
    const looks = looksOf(records, visit, evidence.get(visit.id) ?? null);
    return { day: dayNumber(visit.day), visit: visit.id, seen: { ...countsOf(records, visit, hand), ...looks } };
  });
  const first = dayNumber(colony.began.earliest);
  const all = [...rows, ...outsideOf(records)].sort((a, b) => a.day - b.day);
  const read = soundVisits(all, first, book);
  return { ...read, visits: read.visits.filter(({ seen }) => Object.keys(seen).length > 0) };
}

/** Looks from outside, by their entries: pollen carried in, and how many fly. */
function outsideOf({ state, colony, until }: RecordBook): readonly Visited[] {
  return (state.events.get(colony.id) ?? []).flatMap(({ day: on, entry, event }) => {
    if (event.kind !== 'look' || on > until) return [];
    const day = dayNumber(on);
    const pollen = event.pollenIn === null ? {} : { pollen: { seen: event.pollenIn, day } };
    return [{ day, visit: entry, seen: { flight: { flight: event.flight }, ...pollen } }];
  });
}

/** 0 for whoever had read most by then, this visit included; who came first when two read as much. */
function handOf({ state }: RecordBook, visit: Visit, tally: Map<Id, number>): 0 | 1 {
  const rows = countedRows(state, visit);
  for (const { by } of rows) tally.set(by, (tally.get(by) ?? 0) + 1);
  if (rows.length === 0 && !isLearner(state, visit.by)) tally.set(visit.by, (tally.get(visit.by) ?? 0) + 1);
  const own = mostOf(rows.map(({ by }) => by)) ?? visit.by;
  let first: Id | null = null;
  for (const [by, count] of tally) if (first === null || count > tally.get(first)!) first = by;
  return own === (first ?? own) ? 0 : 1;
}

function mostOf(names: readonly Id[]): Id | null {
  const counts = new Map<Id, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null;
}

const stageOf: Readonly<Record<StageRead, Stage>> = {
  egg: 'egg',
  'young larva': 'larva',
  larva: 'larva',
  sealed: 'sealed',
  none: 'none',
};

function looksOf({ state }: RecordBook, visit: Visit, row: EvidenceRow | null): Seen {
  if (row === null) return {};
  const { eggs, youngest, eggShare, cells, cellShare } = row;
  const counted = countedRows(state, visit);
  const queen = queenMetAt(counted, row);
  const classes = counted.flatMap(({ body }) => body.combClass ?? []);
  return {
    ...(eggs === 'not looked'
      ? {}
      : { brood: { eggs, youngest: youngest === null ? null : stageOf[youngest], share: eggShare } }),
    ...(cells === null ? {} : { cells: { cells, share: cellShare } }),
    ...(queen === null ? {} : { queen }),
    ...(row.manyEggs || row.domedCaps ? { signs: { manyEggs: row.manyEggs, domedCaps: row.domedCaps } } : {}),
    ...(classes.length === 0 ? {} : { building: { seen: classes.includes('building'), day: dayNumber(visit.day) } }),
  };
}

/** Null where nobody looked for her. */
function queenMetAt(rows: readonly { readonly body: Visit['readings'][number]['body'] }[], row: EvidenceRow): QueenMet | null {
  const looked = rows.filter(({ body }) => body.queen !== 'not looked');
  if (looked.length === 0) return null;
  const there = new Set(looked.map(({ body }) => body.place).filter((place) => row.broodPlaces.has(place)));
  const share = row.broodPlaces.size === 0 ? 1 : there.size / row.broodPlaces.size;
  return { seen: looked.some(({ body }) => body.queen === 'seen'), share };
}
