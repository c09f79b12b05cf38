/**
 * From a coarse reading to the nine contents. Brood and food are read; what stage the brood is and
 * what kind the food is are worked out: brood as if laid evenly over the days that are possible, food
 * by figures. What was not looked at keeps its whole range, and the likely value is only a middle.
 */
import { type FigureBook, rangeOf, value } from '../figures/book.ts';
import { type Content, contents, type Ink, type Shares } from '../hive/contents.ts';
import { assert } from '../numbers/assert.ts';
import type { Range } from '../numbers/range.ts';
import type { BroodCalendar } from './calendar.ts';
import { type CombCells, noCells } from './comb-cells.ts';
import type { CombRead } from './comb-read.ts';

/** True when brood of that age in days can be on the comb; see `possible-ages.ts`. */
export type Possible = (age: number) => boolean;

export interface CombSplit {
  readonly shares: Shares;
  /** guessed, when brood or food was not read at all. */
  readonly ink: Ink;
  /** The stages read cannot be there by what was read before: the eye was believed. */
  readonly surprising: boolean;
  readonly areas: Areas;
  /** By age in days: 1 where worker brood of that age is taken to be, else 0. */
  readonly ages: readonly number[];
}

/** Normal quantile of .9: between minus and plus this many standard deviations lie eight of ten. */
export const eightOfTen = 1.2816;

/** Null when neither brood nor food was read and no class tells: nothing is known then. */
export function splitContents(read: CombRead, possible: Possible, calendar: BroodCalendar, book: FigureBook): CombSplit | null {
  const areas = areasOf(read, book);
  if (areas === null) return null;
  const drone = droneOf(read, areas.brood, book);
  const { ages, surprising } = workerAges(read, possible, calendar);
  const each = eachAge(areas.brood - drone, ages);
  const stage = (from: number, to: number): number => {
    let days = 0;
    for (let age = from; age < to; age += 1) days += ages[age] ?? 0;
    return days * each;
  };
  const shares: Shares = {
    ...foodOf(read, areas.brood, areas.food, book),
    empty: Math.max(0, 1 - areas.brood - areas.food),
    drone,
    emerging: stage(calendar.emergingFrom, calendar.workerDays),
    sealed: stage(calendar.sealedFrom, calendar.emergingFrom),
    larva: stage(calendar.eggEnd, calendar.sealedFrom),
    egg: stage(0, calendar.eggEnd),
  };
  return { shares, ink: areas.ink, surprising, areas, ages };
}

/** The same comb by days of age, to be carried to another day. */
export function cellsOf(split: CombSplit, calendar: BroodCalendar): CombCells {
  const { shares, areas, ages } = split;
  const cells = noCells(calendar);
  const each = eachAge(areas.brood - shares.drone, ages);
  ages.forEach((there, age) => {
    cells.worker[age] = there * each;
  });
  cells.drone.fill(shares.drone / calendar.droneDays);
  const rested = restUp(cells, shares.empty);
  return { ...cells, honey: shares.honey, nectar: shares.nectar, bread: shares.bread, empty: shares.empty - rested };
}

function eachAge(worker: number, ages: readonly number[]): number {
  let days = 0;
  for (const there of ages) days += there;
  return days === 0 ? 0 : worker / days;
}

export interface Areas {
  readonly brood: number;
  readonly food: number;
  readonly broodRead: boolean;
  readonly foodRead: boolean;
  readonly ink: Ink;
}

/** What one ruler left open is halved between what the other left: a middle, not a reading. */
function areasOf(read: CombRead, book: FigureBook): Areas | null {
  const bare = read.combClass === 'bare' || read.combClass === 'building';
  const noBrood = bare || read.combClass === 'food';
  const brood = read.brood ?? (noBrood ? 0 : null);
  const food = read.food ?? (bare ? 0 : null);
  if (brood === null && food === null) return null;
  if (brood !== null && food !== null) return { brood, food, broodRead: true, foodRead: true, ink: 'worked out' };
  const middle = (known: number): number => (1 - known) / 2;
  if (brood !== null) return { brood, food: middle(brood), broodRead: true, foodRead: false, ink: 'guessed' };
  assert(food !== null, 'brood or food was read');
  const most = read.combClass === 'mostly drone' ? value(book, 'drone-share-mostly') * (1 - food) : middle(food);
  return { brood: most, food, broodRead: false, foodRead: true, ink: 'guessed' };
}

function droneOf(read: CombRead, brood: number, book: FigureBook): number {
  if (read.drone !== null) return Math.min(read.drone, brood);
  return brood * value(book, read.combClass === 'mostly drone' ? 'drone-share-mostly' : 'drone-share-unread');
}

/** The ages over which the brood is taken as laid evenly: those that the youngest stage and the past allow. */
function workerAges(
  read: CombRead,
  possible: Possible,
  calendar: BroodCalendar,
): { readonly ages: readonly number[]; readonly surprising: boolean } {
  const from = youngestAge(read, calendar);
  const ages: number[] = [];
  let allowed = 0;
  let eggs = 0;
  for (let age = 0; age < calendar.workerDays; age += 1) {
    const there = age >= from && possible(age) ? 1 : 0;
    ages.push(there);
    allowed += there;
    if (age < calendar.eggEnd) eggs += there;
  }
  const none = allowed === 0;
  if (none) for (let age = from; age < calendar.workerDays; age += 1) ages[age] = 1;
  const eggsMissing = !none && read.youngest === 'egg' && eggs === 0;
  if (eggsMissing) ages.fill(1, 0, calendar.eggEnd);
  return { ages, surprising: none || eggsMissing };
}

/** The least age of brood, in days, that the reading leaves; with nothing looked for, from the egg on. */
export function youngestAge(read: CombRead, calendar: BroodCalendar): number {
  switch (read.youngest) {
    case 'young larva':
      return calendar.eggEnd;
    case 'larva':
      return Math.min(calendar.youngEnd, calendar.sealedFrom - 1);
    case 'sealed':
      return calendar.sealedFrom;
    // No brood at all, and yet brood was read: the rulers are believed, the word is not.
    case 'none':
      return read.noEggs ? calendar.eggEnd : 0;
    case 'egg':
      return 0;
    case null:
      return read.noEggs ? calendar.eggEnd : 0;
  }
}

function foodOf(read: CombRead, brood: number, food: number, book: FigureBook): { honey: number; nectar: number; bread: number } {
  const breadShare = value(book, brood > 0 ? 'food-bread-share-brood' : 'food-bread-share-food');
  const honey = Math.min(food, read.sealedFood ?? food * (1 - breadShare) * value(book, 'food-sealed-share'));
  const bread = Math.min(food - honey, food * breadShare);
  return { honey, nectar: food - honey - bread, bread };
}

/** Where she lays, as many cells rest between two broods as are laid in the days of rest; answers how much of the empty that is. */
function restUp(cells: CombCells, empty: number): number {
  const days = cells.resting.length - 1;
  const each = Math.min(cells.worker[0] ?? 0, days === 0 ? 0 : empty / days);
  for (let i = 0; i < days; i += 1) cells.resting[i] = each;
  return each * days;
}

/** Share of each content from rounding and from what was not looked at; the reader's own error is not in it. */
export function contentRanges(split: CombSplit, read: CombRead, book: FigureBook): Readonly<Record<Content, Range>> {
  const { shares, areas } = split;
  const rounding = eightOfTen * value(book, 'eighth-rounding') * Math.sqrt(2 / read.facesRead);
  const { brood, food } = areas;
  const droneMost =
    read.drone !== null
      ? null
      : brood * rangeOf(book, read.combClass === 'mostly drone' ? 'drone-share-mostly' : 'drone-share-unread').high;
  const made = {} as Record<Content, Range>;
  for (const content of contents) {
    const likely = shares[content];
    const group =
      content === 'empty' ? 'empty' : content === 'honey' || content === 'nectar' || content === 'bread' ? 'food' : 'brood';
    const known = group === 'empty' ? areas.broodRead && areas.foodRead : group === 'food' ? areas.foodRead : areas.broodRead;
    if (!known) {
      const rest = group === 'empty' ? 1 - (areas.broodRead ? brood : food) : group === 'food' ? 1 - brood : 1 - food;
      made[content] = { low: 0, likely, high: Math.max(likely, rest) };
      continue;
    }
    const area = group === 'empty' ? 1 : group === 'food' ? food : brood;
    // An empty area is certain enough to be none: the ruler stood at 0 and the class says so too.
    const part = group === 'empty' ? 1 : area === 0 ? 0 : likely / area;
    const half = rounding * part;
    const high = content === 'drone' && droneMost !== null ? Math.max(likely + half, droneMost) : likely + half;
    made[content] = { low: Math.max(0, likely - half), likely, high: Math.min(1, high) };
  }
  return made;
}
