/**
 * One colony of the journal lived through by the model to a day: what it tells, and what is kept so that the next
 * visit costs one step. What was kept is believed only while everything it was made from still stands in the
 * journal; a visit corrected late, another figure or another model makes it live the colony through again.
 */
import { type FigureBook, value } from '../../figures/book.ts';
import { figures } from '../../figures/list.ts';
import { canonicalText, hashOfText } from '../../journal/canonical.ts';
import type { Id } from '../../journal/entry.ts';
import { type Day, dayFromNumber, dayNumber } from '../../numbers/day.ts';
import { type Cloud, goOn } from '../../numbers/particle-filter.ts';
import type { Issue } from '../../numbers/result.ts';
import type { DayBelief, Foreseen, Look, MovedComb, Surprise } from '../foreseen.ts';
import type { ColonyState } from '../state.ts';
import { engineConstants } from './constants.ts';
import { type GroundRead, groundOf } from './read/ground-of.ts';
import { mayBeMoved, movedCombs } from './read/moved-combs.ts';
import { type RecordBook, recordBook } from './read/record-book.ts';
import { surpriseContextOf } from './read/surprise-context.ts';
import { visitedOf } from './read/visited-of.ts';
import {
  beginColony,
  crowdOf,
  engineSetup,
  type EngineSetup,
  keep,
  type Kept,
  type Left,
  type Seen,
  meet,
  unkeep,
  type Visited,
} from './run.ts';
import { surprisesOf } from './surprise/surprises-of.ts';
import type { Ahead } from './tell/ahead.ts';
import { beliefOn } from './tell/belief.ts';
import { engineName, tell } from './tell/tell.ts';
import { thinned } from './thin.ts';

/** Plain data, safe to store and send; at most a megabyte. */
export interface KeptColony {
  /** Of all that it was made from. */
  readonly key: string;
  readonly left: Kept;
  readonly behind: readonly DayBelief[];
  readonly surprises: readonly Surprise[];
  readonly moved: readonly MovedComb[];
}

export interface LivedColony {
  readonly foreseen: Foreseen;
  /** Null where so little was seen that living it through again costs less than keeping it. */
  readonly kept: KeptColony | null;
  /** What the model refused of the journal. */
  readonly issues: readonly Issue[];
  /** Visits taken in now; the others stood in what was kept. */
  readonly steps: number;
}

/** What is asked beside the colony itself. */
export interface Asked {
  /** Days ahead whose counts are forecast. */
  readonly daysIssued: readonly number[];
  readonly lookOf: (ahead: Ahead, setup: EngineSetup, day: Day) => Look;
}

/** Throws when the colony is not in the state. */
export function liveColony(
  state: ColonyState,
  colony: Id,
  day: Day,
  book: FigureBook,
  kept: KeptColony | null,
  asked: Asked,
): LivedColony {
  const records = recordBook(state, colony, day, book);
  const read = groundOf(records);
  const { visits, issues } = visitedOf(records);
  const setup = engineSetup(engineConstants(book, read.ground), book);
  const seed = seedOf(colony);
  const run: Run = { records, read, visits, setup, seed, today: dayNumber(day) };
  const through = liveThrough(run, kept !== null && isStanding(run, kept) ? kept : null);
  const { surprises, moved } = through;
  const key = keyOf(run, visits.length);
  const foreseen = tell(
    setup,
    { colony, digest: key, left: through.left, visits, behind: lineBehind(run, through), surprises, moved },
    run.today,
    asked.daysIssued,
    (ahead) => asked.lookOf(ahead, setup, day),
    book,
    seed,
  );
  const enough = through.left.visits >= crowdOf(book).wideVisits;
  const form = enough ? { key, left: keep(through.left), behind: through.behind, surprises, moved } : null;
  return { foreseen, kept: form, issues, steps: through.left.visits - through.from };
}

interface Run {
  readonly records: RecordBook;
  readonly read: GroundRead;
  readonly visits: readonly Visited[];
  readonly setup: EngineSetup;
  readonly seed: number;
  readonly today: number;
}

interface Through {
  readonly left: Left;
  readonly behind: readonly DayBelief[];
  readonly surprises: readonly Surprise[];
  readonly moved: readonly MovedComb[];
  /** Visits that stood in what was kept. */
  readonly from: number;
}

function liveThrough(run: Run, kept: KeptColony | null): Through {
  const { setup, seed, visits, records } = run;
  const crowd = crowdOf(records.book);
  const c = setup.constants;
  let left = kept === null ? beginColony(setup, run.read.begins, crowd, seed) : unkeep(kept.left);
  let told = { surprises: kept?.surprises ?? [], moved: kept?.moved ?? [] };
  const behind = [...(kept?.behind ?? [])];
  const from = left.visits;
  const telling = visits.findLastIndex(({ seen }) => isOpened(seen));
  const thin = value(records.book, 'engine-line-particles');
  visits.slice(from).forEach((visited, i) => {
    behind.push(...between(run, left, visited.day));
    const since = left.visits === 0 ? null : left.cloud.day;
    const { left: next, met } = meet(setup, left, visited, crowd, seed);
    behind.push(
      beliefOn(c, thinned(met.before, thin), 'before the visit'),
      beliefOn(c, thinned(met.after, thin), 'after the visit'),
    );
    // A first visit cannot surprise: nothing was known that it could contradict.
    if (from + i === telling) told = since === null ? { surprises: [], moved: [] } : toldOf(run, met.before, visited, since);
    left = next;
  });
  return { left, behind: recent(run, behind), ...told, from };
}

/** What a visit showed otherwise; where that may be combs that were moved, which hangs where. */
function toldOf(
  { records, setup, seed }: Run,
  before: Cloud,
  visited: Visited,
  since: number,
): Pick<Through, 'surprises' | 'moved'> {
  const context = surpriseContextOf(records, visited, visited.day - since);
  const surprises = surprisesOf(setup, before, visited.seen, context, seed);
  return { surprises, moved: mayBeMoved(surprises, context) ? movedCombs(records, visited) : [] };
}

/** Somebody looked inside: a look from outside leaves the surprises of the last opening as they are. */
function isOpened({ pollen: _, flight: __, ...inside }: Seen): boolean {
  return Object.keys(inside).length > 0;
}

/** The line up to the day itself; between visits only so far back as it is drawn finely. */
function lineBehind(run: Run, { left, behind }: Through): readonly DayBelief[] {
  return [...behind, ...between(run, left, run.today)];
}

/** Days between visits, by a thin cloud of its own, so that how the line is drawn does not touch what is believed. */
function between(run: Run, left: Left, until: number): readonly DayBelief[] {
  const { setup, seed, records, read } = run;
  if (left.visits === 0 && read.ground.beginning.kind === 'standing') return [];
  const every = value(records.book, 'engine-line-days');
  const first = run.today - value(records.book, 'engine-line-behind');
  if (until < first) return [];
  const rows: DayBelief[] = [];
  let cloud: Cloud = thinned(left.cloud, value(records.book, 'engine-line-particles'));
  for (let day = left.cloud.day + every; day < until; day += every) {
    cloud = goOn(setup, cloud, day, seed);
    if (day >= first) rows.push(beliefOn(setup.constants, cloud, 'between'));
  }
  return rows;
}

/** Far back only visits are kept, and nothing beyond a year. */
function recent({ today, records }: Run, rows: readonly DayBelief[]): readonly DayBelief[] {
  const fine = dayFromNumber(today - value(records.book, 'engine-line-behind'));
  const all = dayFromNumber(today - value(records.book, 'engine-line-most'));
  return rows.filter((row) => row.day >= (row.when === 'between' ? fine : all));
}

/** True while everything that was taken in stands as it was. */
function isStanding(run: Run, { left, key }: KeptColony): boolean {
  return left.visits <= run.visits.length && left.day <= run.today && keyOf(run, left.visits) === key;
}

/** Of the model, the figures, the ground, the first so many visits and all that befell the colony before the last of these. */
function keyOf({ read, visits, records }: Run, count: number): string {
  const taken = visits.slice(0, count);
  const last = taken.at(-1)?.day ?? read.begins;
  const { latitude, beginning, comb, told } = read.ground;
  const own = [...records.book.overrides.values()].map(({ key, value: likely, low, high }) => [key, likely, low, high]);
  const befell = [...told].filter(([day]) => day < last);
  return hashOfText(canonicalText([engineName, printedKey, own, latitude, beginning, comb, read.begins, befell, taken]));
}

const printedKey = hashOfText(canonicalText(figures.map(({ key, value: likely, low, high }) => [key, likely, low, high])));

/** Each colony has chance of its own, the same on every device. */
function seedOf(colony: Id): number {
  return Number.parseInt(hashOfText(colony).slice(0, seedDigits), hexadecimal);
}

const seedDigits = 7;
const hexadecimal = 16;
