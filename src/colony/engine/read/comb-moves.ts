/**
 * Combs that came into the colony's bay or went out of it, day by day, apart from splits, which say more. A comb
 * that goes is taken to leave its bees behind, one that comes to bring none: keepers brush or shake them off, and
 * those who do not are right again at the next count. Brood on a comb that hung nowhere is dead.
 */
import type { Id } from '../../../journal/entry.ts';
import { spotOn } from '../../../hive/hanging.ts';
import { combsOfHive } from '../../nest-bars.ts';
import type { Comb, Spot } from '../../../hive/state.ts';
import { addDays, type Day } from '../../../numbers/day.ts';
import type { Happening } from '../happening.ts';
import { amountsExpected } from './bar-amounts.ts';
import { partOfNest } from './part-of-nest.ts';
import { builtOf, lastReading, type RecordBook, troughOn } from './record-book.ts';

export interface CombMove {
  readonly day: Day;
  readonly happening: Happening;
}

export function combMoves(records: RecordBook): readonly CombMove[] {
  const gone = new Map<Day, Id[]>();
  const come = new Map<Day, { readonly comb: Id; readonly from: Spot }[]>();
  for (const comb of combsNear(records)) {
    for (const day of daysMoved(records, comb)) {
      const before = spotOn(comb, addDays(day, -1));
      const after = spotOn(comb, day);
      // A comb that gave way to another in the books was moved by nobody.
      if (before === null || after === null || (after.kind === 'away' && after.where === 'lost')) continue;
      const was = isOurs(records, before, addDays(day, -1));
      const is = isOurs(records, after, day);
      if (was && !is) gone.set(day, [...(gone.get(day) ?? []), comb.id]);
      if (!was && is) come.set(day, [...(come.get(day) ?? []), { comb: comb.id, from: before }]);
    }
  }
  const left = [...gone].flatMap(([day, combs]): CombMove[] => {
    const part = partOfNest(records, day, combs);
    // Bare bars take nothing with them.
    if (part.comb === 0) return [];
    return [{ day, happening: { kind: 'part left', ...part, bees: 0, queen: 'stayed' } }];
  });
  return [...left, ...[...come].flatMap(([day, combs]) => combs.flatMap((one) => broughtBy(records, day, one.comb, one.from)))];
}

function combsNear({ state, colony }: RecordBook): readonly Comb[] {
  const hives = new Set(colony.stays.map((stay) => stay.hive));
  return [...new Set([...hives].flatMap((hive) => combsOfHive(state, hive)))].filter((comb) => comb.placings.length > 1);
}

/** Days on which it was moved while the colony was there, apart from splits. */
function daysMoved({ state, colony, until }: RecordBook, comb: Comb): readonly Day[] {
  const splits = new Set<Id>();
  for (const { event, entry } of state.events.get(colony.id) ?? [])
    if ((event.kind === 'split off' || event.kind === 'split from') && event.combs.includes(comb.id)) splits.add(entry);
  const first = colony.stays[0]?.from ?? until;
  const end = colony.ended?.day ?? until;
  const moved = comb.placings.filter(({ from, entry }) => from > first && from <= end && from <= until && !splits.has(entry));
  return [...new Set(moved.map(({ from }) => from))];
}

function isOurs(records: RecordBook, spot: Spot, day: Day): boolean {
  if (spot.kind !== 'place') return false;
  const trough = troughOn(records, day);
  return trough !== null && trough.hive === spot.hive && trough.from <= spot.place && spot.place <= trough.to;
}

function broughtBy(records: RecordBook, day: Day, comb: Id, from: Spot): readonly CombMove[] {
  const trough = troughOn(records, day);
  const reading = lastReading(records, comb, day);
  if (trough === null || reading === null) return [];
  const held = amountsExpected(records, trough, reading, day);
  const broodCells = from.kind === 'place' ? (held.sealed ?? 0) + (held.open ?? 0) : 0;
  const wax = builtOf(reading, records.book) * trough.cellsPerBar;
  return [{ day, happening: { kind: 'joined', bees: 0, broodCells, honeyKg: held.honeyKg ?? 0, comb: wax } }];
}
