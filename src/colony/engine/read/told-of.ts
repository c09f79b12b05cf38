/**
 * What the journal says befell a colony, as happenings of the model by day. Happenings of a day come after its
 * visit, because keepers look first and act then; a swarm or a loss that a visit found out about is put before it.
 * How many bees go with combs is taken as their part of what those combs last held.
 */
import { type FigureBook, rangeOf, value } from '../../../figures/book.ts';
import { type Day, daysBetween, dayNumber } from '../../../numbers/day.ts';
import { inBase, type Typed } from '../../../numbers/units.ts';
import type { Window } from '../../../numbers/window.ts';
import type { ColonyEvent, DatedEvent } from '../../state.ts';
import { viewOf } from '../../view-of.ts';
import type { Happening } from '../happening.ts';
import { combMoves } from './comb-moves.ts';
import { partOfNest } from './part-of-nest.ts';
import { type RecordBook, troughOn } from './record-book.ts';

type Told = Map<number, Happening[]>;

export function toldOf(records: RecordBook): ReadonlyMap<number, readonly Happening[]> {
  const { state, colony, until } = records;
  const told: Told = new Map();
  const add = (day: number, ...happenings: readonly Happening[]): void => {
    if (happenings.length > 0) told.set(day, [...(told.get(day) ?? []), ...happenings]);
  };
  for (const moved of combMoves(records)) add(dayNumber(moved.day), moved.happening);
  for (const dated of state.events.get(colony.id) ?? []) {
    if (dated.day <= until) add(...happeningsOf(records, dated));
  }
  for (const [day, cells] of baysOf(records)) add(dayNumber(day), { kind: 'bars', cells });
  return new Map([...told].sort(([a], [b]) => a - b));
}

/** The number of the day, and what happened then. */
function happeningsOf(records: RecordBook, dated: DatedEvent): readonly [number, ...Happening[]] {
  const { event } = dated;
  const day = dayNumber(dated.day);
  switch (event.kind) {
    case 'swarm left':
      return [swarmDay(records, event.window), { kind: 'swarm left' }];
    case 'split off':
      return [day, { kind: 'part left', ...partOfNest(records, dated.day, event.combs), queen: event.queenSide }];
    case 'split from':
      return [day, ...queenOfSplit(event.queenSide)];
    case 'took in':
      return [day, ...joinedBy(records, dated.day, event.from)];
    case 'queen began':
      return [day, ...begun(event)];
    case 'queen ended':
      return lost(records, day, event);
    case 'cells cut':
      return [day, { kind: 'cells cut' }];
    case 'fed': {
      const kg = storesFrom(event.what, event.amount, records.book);
      return kg === null ? [day] : [day, { kind: 'fed', kg }];
    }
    case 'swarm hived':
    case 'comb fell':
    case 'bee escape':
    case 'united into':
    case 'look':
    case 'ended':
      return [day];
  }
}

/**
 * Before the visit of its last possible day, which found it; after that visit when it was seen to leave on that
 * very day and the visit was not one after a swarm.
 */
function swarmDay({ visits }: RecordBook, { earliest, latest }: Window): number {
  const looked = visits.some((visit) => visit.day === latest && visit.closed?.body.visitKind !== 'after a swarm');
  return dayNumber(latest) - (earliest === latest && looked ? 0 : 1);
}

function queenOfSplit(side: 'stayed' | 'went' | 'unknown'): readonly Happening[] {
  if (side === 'unknown') return [];
  return [{ kind: side === 'went' ? 'queen found' : 'queen gone' }];
}

function begun({ how }: ColonyEvent & { kind: 'queen began' }): readonly Happening[] {
  if (how === 'introduced') return [{ kind: 'queen given' }];
  return how === 'found' ? [{ kind: 'queen found' }] : [];
}

/** A queen who left with a swarm is in the swarm's happening; one superseded left a daughter who lays. */
function lost(
  { state, colony }: RecordBook,
  day: number,
  { queen, how }: ColonyEvent & { kind: 'queen ended' },
): readonly [number, ...Happening[]] {
  if (how === 'left with a swarm' || how === 'superseded') return [day];
  const reign = (state.reigns.get(colony.id) ?? []).findLast((one) => one.queen === queen && one.ended !== null);
  const window = reign?.ended?.window ?? null;
  if (window === null) return [day, { kind: 'queen gone' }];
  // Somewhere in the window: its middle is nobody's guess but the nearest to all.
  return [dayNumber(window.earliest) + Math.floor(daysBetween(window.earliest, window.latest) / 2), { kind: 'queen gone' }];
}

/** Kilograms of stores that food becomes; null where it is not known, or becomes none. */
export function storesFrom(what: string, amount: Typed | null, book: FigureBook): number | null {
  if (amount === null) return null;
  const kg = inBase(amount, 'kg');
  const litres = inBase(amount, 'l');
  const weight =
    kg ?? (litres === null ? null : litres * value(book, what === 'own honey' ? 'honey-kg-per-l' : 'syrup-kg-per-l'));
  if (weight === null) return null;
  if (what === 'own honey') return weight;
  if (what === 'dry sugar' || what === 'candy') return weight * value(book, 'syrup-yield');
  return what === 'sugar syrup' ? weight * value(book, 'syrup-sugar-share') * value(book, 'syrup-yield') : null;
}

/** What the other colony was believed to hold; when she who came with it laid, a laying queen is there. */
function joinedBy({ state, book }: RecordBook, day: Day, from: string): readonly Happening[] {
  if (!state.colonies.has(from)) return [];
  const view = viewOf(state, from, day, book, undefined, 0);
  const { totals, queen } = view;
  const likely = (name: keyof typeof totals): number => totals[name].total.likely;
  const broodCells = likely('egg') + likely('larva') + likely('sealed') + likely('emerging');
  const joined: Happening = {
    kind: 'joined',
    bees: likely('adults'),
    broodCells,
    honeyKg: likely('honeyKg'),
    comb: likely('workerCells'),
  };
  return queen.state === 'laying' ? [joined, { kind: 'queen found' }] : [joined];
}

/** Worker cells that the bars of the bay can hold, from each day on which its ends moved. */
function baysOf(records: RecordBook): ReadonlyMap<Day, number> {
  const { state, colony, until } = records;
  const found = new Map<Day, number>();
  for (const stay of colony.stays) {
    const moves = state.bays.get(stay.bay ?? '')?.moves ?? [];
    for (const day of [stay.from, ...moves.map((move) => move.day)]) {
      if (day < stay.from || day > until) continue;
      const trough = troughOn(records, day);
      if (trough !== null) found.set(day, (trough.to - trough.from + 1) * trough.cellsPerBar);
    }
  }
  return found;
}

/** The likely share of its parent's bees that a swarm takes. */
export function swarmShare(book: FigureBook): number {
  return rangeOf(book, 'swarm-share').likely;
}
