/**
 * The queen by plain rules of dates: the best guess of her state on a day, since when, and the next
 * day on which a look would tell. It never says that there is no queen because no eggs were seen:
 * only when the days of every daughter she could have had are over.
 */
import { type FigureBook, rangeOf, value } from '../figures/book.ts';
import { addDays, type Day, daysBetween, later } from '../numbers/day.ts';
import type { Window } from '../numbers/window.ts';
import { afterVirgin, type QueenBreak, type QueenStory } from './queen-breaks.ts';
import { type Evidence, livingCells, total } from './queen-evidence.ts';
import type { CellsReading, QueenReading } from './view.ts';

export function queenReading(
  evidence: readonly Evidence[],
  story: QueenStory,
  cells: CellsReading | null,
  day: Day,
  book: FigureBook,
): QueenReading {
  const looked = evidence.findLast((seen) => seen.eggs !== 'not looked') ?? null;
  const staged = evidence.findLast((seen) => seen.youngest !== null) ?? null;
  const expected = virginOf(story.open, cells);
  const state = stateOf(evidence, looked, story, cells, expected, day, book);
  // Where no daughter is to be expected any more, no day is hers.
  const virgin = state === 'laying workers' || state === 'none' || state === 'drone layer' ? null : expected;
  const open = virgin === null && expected !== null ? null : story.open;
  const { lastLaid } = story;
  return {
    state,
    eggs: looked?.eggs ?? 'not looked',
    youngest: staged?.youngest ?? null,
    lastLaid: lastLaid?.window ?? null,
    contradictory: story.impossibleEggs || (lastLaid?.contradictory ?? false),
    virginDays:
      virgin === null ? null : { earliest: virgin.earliest, latest: addDays(virgin.latest, value(book, 'queen-first-egg-age')) },
    firstEggs: open?.firstEggs ?? (virgin === null ? null : afterVirgin(virgin, book)),
    nextTelling: nextTelling(open, virgin, looked, state, day, book),
    from: [...new Set([...(lastLaid?.from ?? looked?.from ?? []), ...(story.open?.entries ?? [])])],
  };
}

/** No virgin is to be expected until cells are seen: no eggs for once is not a queen lost. */
function isQuiet(open: QueenBreak): boolean {
  return open.cause === 'introduced' || open.cause === 'hived' || (open.cause === 'unseen' && !open.cells);
}

/** Cells that were seen narrow the days of the virgin; where they do not meet, the cells are believed. */
function virginOf(open: QueenBreak | null, cells: CellsReading | null): Window | null {
  const byCells = cells?.virginEmerges ?? null;
  if (open === null || isQuiet(open)) return byCells;
  if (byCells === null || open.virgin === null) return open.virgin ?? byCells;
  const earliest = later(open.virgin.earliest, byCells.earliest);
  const latest = open.virgin.latest < byCells.latest ? open.virgin.latest : byCells.latest;
  return earliest <= latest ? { earliest, latest } : byCells;
}

function stateOf(
  evidence: readonly Evidence[],
  looked: Evidence | null,
  story: QueenStory,
  cells: CellsReading | null,
  virgin: Window | null,
  day: Day,
  book: FigureBook,
): QueenReading['state'] {
  const { open } = story;
  if (looked !== null && layingWorkers(looked, open, day, book)) return 'laying workers';
  if (open !== null) return openState(open, looked, cells, virgin, day, book);
  if (looked === null) return 'unknown';
  if (virgin !== null && cells !== null) return byCells(looked, cells, virgin, day);
  // Cells were left, nobody has looked since, and their days are over: anything may have come of them.
  const left = evidence.findLast((seen) => seen.cells !== null || seen.cellsCut);
  if (looked.eggs !== 'seen' || (cells === null && left !== undefined && livingCells(left))) return 'unknown';
  if (looked.brood !== null && looked.brood > 0 && looked.drone / looked.brood >= value(book, 'drone-layer-share'))
    return 'drone layer';
  const ended = story.breaks.findLast((one) => one.ended !== null && one.cause !== 'hived')?.ended ?? null;
  if (ended !== null && daysBetween(ended, day) < value(book, 'requeened-first-workers')) return 'new queen laying';
  return daysBetween(looked.day, day) <= rangeOf(book, 'reading-holds-days').high ? 'laying' : 'unknown';
}

/** She lays and there are cells: what the cells are for is the news, and by their dates she may be gone. */
function byCells(looked: Evidence, cells: CellsReading, virgin: Window, day: Day): QueenReading['state'] {
  if (day > virgin.latest) return 'virgin';
  if (cells.likelyKind === 'supersedure' && looked.eggs === 'seen') return 'failing';
  const { counts, sealed } = cells;
  if (counts.sealed > 0 || counts.emerged > 0 || (sealed !== null && day > sealed.latest)) return 'cells sealed';
  return 'cells open';
}

function openState(
  open: QueenBreak,
  looked: Evidence | null,
  cells: CellsReading | null,
  virgin: Window | null,
  day: Day,
  book: FigureBook,
): QueenReading['state'] {
  if (!open.sure) return 'unknown';
  const enough = value(book, 'look-enough-share');
  const none = looked !== null && looked.eggs === 'none seen' && looked.eggShare >= enough && looked.day > open.firstEggs.latest;
  if (none) return 'none';
  if (virgin === null || day > open.firstEggs.latest) return 'unknown';
  if (day >= virgin.earliest || (cells !== null && cells.counts.emerged > 0)) return 'virgin';
  // A first swarm leaves when the first cell is sealed.
  if (open.cause === 'swarm') return 'cells sealed';
  if (cells !== null && total(cells.counts) > 0) {
    return cells.counts.sealed > 0 || (cells.sealed !== null && day > cells.sealed.latest) ? 'cells sealed' : 'cells open';
  }
  const sealedFor = rangeOf(book, 'virgin-emerges-after-sealing').low;
  return day >= addDays(virgin.earliest, -sealedFor) ? 'cells sealed' : 'cells open';
}

function layingWorkers(looked: Evidence, open: QueenBreak | null, day: Day, book: FigureBook): boolean {
  if (!looked.manyEggs) return false;
  if (looked.domedCaps) return true;
  return open !== null && day >= addDays(open.loss.latest, rangeOf(book, 'laying-workers-onset').low);
}

/** The next day on which eggs would be there to see if all went well, or any day when nothing is in the way. */
function nextTelling(
  open: QueenBreak | null,
  virgin: Window | null,
  looked: Evidence | null,
  state: QueenReading['state'],
  day: Day,
  book: FigureBook,
): Day | null {
  if (state === 'laying' || state === 'new queen laying') return null;
  const eggDays = value(book, 'no-eggs-after');
  const likely = ((): Day | null => {
    if (open?.cause === 'introduced') return addDays(open.firstEggs.earliest, eggDays);
    if (open?.cause === 'hived') return addDays(open.loss.latest, value(book, 'swarm-first-eggs') + eggDays);
    if (virgin !== null) return addDays(virgin.latest, value(book, 'queen-first-egg-age') + eggDays);
    // Cells on what brood there is, or eggs again: a few days tell.
    return open !== null && isQuiet(open) ? addDays(open.noticed, value(book, 'test-comb-days')) : null;
  })();
  if (likely === null) return day;
  if (looked === null || looked.day < likely) return later(likely, day);
  const last = open?.firstEggs.latest ?? likely;
  return later(day, looked.day < last ? addDays(last, 1) : addDays(looked.day, value(book, 'test-comb-days')));
}

/** Chance that she laid on a day, by plain rules: what carries combs forward that nobody opened. */
export function layingChance(story: QueenStory, book: FigureBook): (day: Day) => number {
  const swarmStop = Math.round(value(book, 'swarm-shortening'));
  const eggDays = Math.round(value(book, 'no-eggs-after'));
  const pauses = story.breaks.map((one) => pauseOf(one, swarmStop, eggDays, book));
  return (day) => {
    let chance = 1;
    for (const { from, likelyTo, to, unsure } of pauses) {
      if (day < from || day >= to) continue;
      chance = Math.min(chance, unsure || day >= likelyTo ? evenChance : 0);
    }
    return chance;
  };
}

/** Neither is known better than the other. */
const evenChance = 0.5;
/** Until somebody has looked. */
const endless: Day = '9999-12-31';

function pauseOf(one: QueenBreak, swarmStop: number, eggDays: number, book: FigureBook): Pause {
  const from = one.cause === 'swarm' ? addDays(one.loss.latest, -swarmStop) : addDays(one.loss.latest, 1);
  const likely = likelyEggs(one, book);
  if (one.ended === null) return { from, likelyTo: likely, to: endless, unsure: !one.sure };
  // A look that saw eggs proves laying for the days that an egg lasts; before that the likely day stands.
  const proven = addDays(one.ended, -eggDays);
  if (one.cause === 'unseen') return { from, likelyTo: likely, to: proven, unsure: false };
  const to = likely < proven ? likely : proven;
  return { from, likelyTo: to, to, unsure: !one.sure };
}

/** The day from which eggs are likely again; where none were seen for once, the day after that look. */
function likelyEggs(one: QueenBreak, book: FigureBook): Day {
  switch (one.cause) {
    case 'hived':
      return addDays(one.loss.latest, value(book, 'swarm-first-eggs'));
    case 'introduced':
      return addDays(one.noticed, value(book, 'introduced-laying-days'));
    case 'swarm':
    case 'queen gone':
    case 'split':
    case 'unseen':
      if (isQuiet(one)) return addDays(one.noticed, 1);
      return one.virgin === null ? one.firstEggs.latest : addDays(one.virgin.latest, value(book, 'queen-first-egg-age'));
  }
}

interface Pause {
  readonly from: Day;
  /** Before this she did not lay; from this on an even chance. */
  readonly likelyTo: Day;
  readonly to: Day;
  readonly unsure: boolean;
}
