/**
 * How many adult bees: from the faces that they covered, or the bars with bees counted at a glance;
 * carried from the last such count through swarms and splits, and wider each day. Without a count
 * all that is known is what the combs can hold.
 */
import { type FigureBook, rangeOf, value } from '../figures/book.ts';
import { beesOnFace } from '../hive/bees-on-face.ts';
import { hiveMeasures } from '../hive/hive-measures.ts';
import { addDays, type Day, daysBetween } from '../numbers/day.ts';
import { nothing, type Range, scaleRange, timesRange } from '../numbers/range.ts';
import { combRead } from './comb-read.ts';
import type { Colony, ColonyEvent, ColonyState, Visit } from './state.ts';
import type { Total } from './view.ts';
import { countedRows, rowsByComb, visitsInOrder } from './visits-of.ts';
import { bayOf } from './whose.ts';
import { carriedSd, factorOf } from './widen.ts';

export function adultsOn(state: ColonyState, colony: Colony, day: Day, book: FigureBook): Total {
  const visits = visitsInOrder(state, colony.id, day);
  const last = visits.at(-1) ?? null;
  for (let i = visits.length - 1; i >= 0; i -= 1) {
    const visit = visits[i];
    const counted = visit === undefined ? null : countedBees(state, visit, book);
    if (visit === undefined || counted === null) continue;
    const changed = timesRange(counted, changesSince(state, visit, day, book));
    const range = timesRange(changed, factorOf(carriedSd(daysBetween(visit.day, day), book)));
    const fresh = visit.id === last?.id;
    return {
      seen: fresh ? range : nothing,
      carried: fresh ? nothing : range,
      total: range,
      ink: visit.day === day ? 'seen' : 'worked out',
    };
  }
  const range = swarmOf(state, colony, day, book) ?? capacity(state, colony, book);
  return { seen: nothing, carried: range, total: range, ink: 'guessed' };
}

/** Null when neither covered faces nor bars with bees were noted. */
function countedBees(state: ColonyState, visit: Visit, book: FigureBook): Range | null {
  const hive = state.hives.get(visit.hive);
  if (hive === undefined) return null;
  const { fullFaceDm2 } = hiveMeasures(hive, book);
  const onDm2 = rangeOf(book, 'bees-per-dm2');
  const error = timesRange(scaleRange(onDm2, 1 / onDm2.likely), factorOf(value(book, 'reader-error-adults')));
  const rows = [...rowsByComb(countedRows(state, visit)).values()].map((row) => combRead(row.body));
  const covered = rows.flatMap((read) => (read.bees === null ? [] : [read.bees]));
  const beesBars = visit.closed?.body.beesBars ?? null;
  if (covered.length > 0 && (beesBars === null || covered.length * 2 >= beesBars)) {
    const faces = covered.reduce((sum, share) => sum + 2 * share, 0);
    return scaleRange(error, beesOnFace(fullFaceDm2, faces, onDm2.likely));
  }
  if (beesBars === null) return null;
  return timesRange(scaleRange(error, beesOnFace(fullFaceDm2, 2 * beesBars, onDm2.likely)), rangeOf(book, 'bees-bar-cover'));
}

/** What swarms and splits left since the count, as a factor; on its own day keepers count first, but after a swarm. */
function changesSince(state: ColonyState, visit: Visit, to: Day, book: FigureBook): Range {
  const one = { low: 1, likely: 1, high: 1 };
  const after = afterSwarm(visit);
  const events = (state.events.get(visit.colony) ?? []).filter(
    ({ day, event }) => day <= to && (day > visit.day || (day === visit.day && !(after && event.kind === 'swarm left'))),
  );
  return events.reduce((factor, { event }) => timesRange(factor, partLeft(state, event, book)), one);
}

function afterSwarm(visit: Visit): boolean {
  return visit.closed?.body.visitKind === 'after a swarm';
}

function partLeft(state: ColonyState, event: ColonyEvent, book: FigureBook): Range {
  const one = { low: 1, likely: 1, high: 1 };
  if (event.kind === 'swarm left') {
    const share = rangeOf(book, 'swarm-share');
    return { low: 1 - share.high, likely: 1 - share.likely, high: 1 - share.low };
  }
  if (event.kind === 'split off') {
    const left = combsLeft(state, event);
    return { low: left * left, likely: left, high: Math.sqrt(left) };
  }
  return one;
}

/** Share of the combs that stayed, by what hangs now in both. */
function combsLeft(state: ColonyState, event: ColonyEvent & { kind: 'split off' }): number {
  const child = state.colonies.get(event.child);
  const from = state.colonies.get(child?.parent ?? '');
  const bay = from === undefined ? null : bayOf(state, from);
  const stayed =
    bay === null
      ? 0
      : [...(state.placed.get(bay.hive)?.keys() ?? [])].filter((place) => bay.from <= place && place <= bay.to).length;
  return Math.max(stayed, 1) / Math.max(stayed + event.combs.length, 1);
}

/** Bees by the last count up to the day, as they were before anything was done on it; null where nobody had counted. */
export function beesCounted(state: ColonyState, colony: Colony, day: Day, book: FigureBook): number | null {
  for (const visit of [...visitsInOrder(state, colony.id, day)].reverse()) {
    const counted = countedBees(state, visit, book);
    if (counted !== null) return counted.likely * changesSince(state, visit, addDays(day, -1), book).likely;
  }
  return null;
}

/** Bees that a hived swarm is likely to have had on the day; null where its parent had not been counted. */
export function swarmBees(state: ColonyState, colony: Colony, day: Day, book: FigureBook): number | null {
  return swarmOf(state, colony, day, book)?.likely ?? null;
}

/** A hived swarm has the share of its parent that goes with one, where the parent had been counted. */
function swarmOf(state: ColonyState, colony: Colony, day: Day, book: FigureBook): Range | null {
  const parent = colony.parent === null ? undefined : state.colonies.get(colony.parent);
  if (colony.origin !== 'swarm' || parent === undefined) return null;
  const visit = visitsInOrder(state, parent.id, colony.began.latest).findLast(
    (one) => countedBees(state, one, book) !== null && !afterSwarm(one),
  );
  const counted = visit === undefined ? null : countedBees(state, visit, book);
  if (visit === undefined || counted === null) return null;
  return timesRange(timesRange(counted, rangeOf(book, 'swarm-share')), factorOf(carriedSd(daysBetween(visit.day, day), book)));
}

/** From none to every face of the bay covered as thickly as faces ever are; the middle is only a middle. */
function capacity(state: ColonyState, colony: Colony, book: FigureBook): Range {
  const bay = bayOf(state, colony);
  const hive = bay === null ? undefined : state.hives.get(bay.hive);
  if (bay === null || hive === undefined) return nothing;
  const bars = bay.to - bay.from + 1;
  const high = beesOnFace(hiveMeasures(hive, book).fullFaceDm2, 2 * bars, value(book, 'bees-per-dm2-capacity'));
  return { low: 0, likely: high / 2, high };
}
