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
import { type CombCells, noCells, sharesOf } from './comb-cells.ts';
import type { CombRead } from './comb-read.ts';

/** True when brood of that age in days can be on the comb; see `possible-ages.ts`. */
export type Possible = (age: number) => boolean;

export interface CombSplit {
  readonly cells: CombCells;
  readonly shares: Shares;
  /** Share of each content from rounding and from what was not looked at; the reader's own error is not in it. */
  readonly ranges: Readonly<Record<Content, Range>>;
  /** guessed, when brood or food was not read at all. */
  readonly ink: Ink;
  /** The stages read cannot be there by what was read before: the eye was believed. */
  readonly surprising: boolean;
}

/** Normal quantile of .9: between minus and plus this many standard deviations lie eight of ten. */
export const eightOfTen = 1.2816;

/** Null when neither brood nor food was read and no class tells: nothing is known then. */
export function splitContents(read: CombRead, possible: Possible, calendar: BroodCalendar, book: FigureBook): CombSplit | null {
  const areas = areasOf(read, book);
  if (areas === null) return null;
  const { brood, food } = areas;
  const dronePart = droneOf(read, brood, book);
  const worker = brood - dronePart;
  const ages = workerAges(read, possible, calendar);
  const cells = noCells(calendar);
  ages.weights.forEach((weight, age) => { cells.worker[age] = worker * weight; });
  cells.drone.fill(dronePart / calendar.droneDays);
  const foods = foodOf(read, brood, food, book);
  const empty = Math.max(0, 1 - brood - food);
  const rested = restUp(cells, empty);
  const split: CombCells = { ...cells, ...foods, empty: empty - rested };
  const shares = sharesOf(split, calendar);
  return { cells: split, shares, ranges: rangesOf(shares, read, areas, book), ink: areas.ink, surprising: ages.surprising };
}

interface Areas { readonly brood: number; readonly food: number; readonly broodRead: boolean; readonly foodRead: boolean; readonly ink: Ink }

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

/** Weights by age in days that sum to 1: even over the ages that the youngest stage and the past allow. */
function workerAges(read: CombRead, possible: Possible, calendar: BroodCalendar): { readonly weights: readonly number[]; readonly surprising: boolean } {
  const from = youngestAge(read, calendar);
  const all = Array.from({ length: calendar.workerDays }, (_, age) => age);
  const seen = all.filter((age) => age >= from);
  const allowed = seen.filter(possible);
  const used = new Set(allowed.length > 0 ? allowed : seen);
  const eggsOnly = read.youngest === 'egg' && !all.slice(0, calendar.eggEnd).some((age) => used.has(age));
  if (eggsOnly) for (let age = 0; age < calendar.eggEnd; age += 1) used.add(age);
  return { weights: all.map((age) => (used.has(age) ? 1 / used.size : 0)), surprising: allowed.length === 0 || eggsOnly };
}

/** The least age of brood, in days, that the reading leaves; with nothing looked for, from the egg on. */
export function youngestAge(read: CombRead, calendar: BroodCalendar): number {
  switch (read.youngest) {
    case 'young larva': return calendar.eggEnd;
    case 'larva': return Math.min(calendar.youngEnd, calendar.sealedFrom - 1);
    case 'sealed': return calendar.sealedFrom;
    // No brood at all, and yet brood was read: the rulers are believed, the word is not.
    case 'none': return read.noEggs ? calendar.eggEnd : 0;
    case 'egg': return 0;
    case null: return read.noEggs ? calendar.eggEnd : 0;
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

function rangesOf(shares: Shares, read: CombRead, areas: Areas, book: FigureBook): Record<Content, Range> {
  const rounding = eightOfTen * value(book, 'eighth-rounding') * Math.sqrt(2 / read.facesRead);
  const { brood, food } = areas;
  const droneMost = read.drone !== null ? null : brood * rangeOf(book, read.combClass === 'mostly drone' ? 'drone-share-mostly' : 'drone-share-unread').high;
  const made = {} as Record<Content, Range>;
  for (const content of contents) {
    const likely = shares[content];
    const group = content === 'empty' ? 'empty' : content === 'honey' || content === 'nectar' || content === 'bread' ? 'food' : 'brood';
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
