/**
 * The times in which a colony has no laying queen, or a new one not yet proven: begun by what was
 * noted (a swarm, a split, a queen taken away) or by brood that grew old without eggs, ended by eggs
 * that can only be laid since. Plain rules by dates; the running chances are another model's.
 */
import { type FigureBook, rangeOf, value } from '../figures/book.ts';
import type { Id } from '../journal/entry.ts';
import { addDays, type Day, daysBetween, later } from '../numbers/day.ts';
import { shiftWindow, type Window, windowOf } from '../numbers/window.ts';
import { agesOf } from './brood-dates.ts';
import { type LastLaid, nextLastLaid } from './last-laid.ts';
import { type Evidence, livingCells } from './queen-evidence.ts';
import { queenLoss } from './queen-loss.ts';
import { seasonLaying } from './season-laying.ts';
import type { ColonyState, DatedEvent } from './state.ts';

export interface QueenBreak {
  readonly cause: 'swarm' | 'queen gone' | 'split' | 'unseen' | 'hived' | 'introduced';
  /** When the old queen laid last. */
  readonly loss: Window;
  /** The day of the event, or of the visit that saw no eggs. */
  readonly noticed: Day;
  /** Queen cells with somebody in them, or just left, were seen since. */
  readonly cells: boolean;
  /** When a virgin emerges; null where a mated queen is the likely one. */
  readonly virgin: Window | null;
  readonly firstEggs: Window;
  /** False when it is not known which side of a split the queen went to. */
  readonly sure: boolean;
  readonly entries: readonly Id[];
  /** The visit whose eggs ended it; null while it is open. */
  readonly ended: Day | null;
}

export interface QueenStory {
  readonly breaks: readonly QueenBreak[];
  readonly open: QueenBreak | null;
  readonly lastLaid: LastLaid | null;
  /** Eggs were seen at a time at which, by the dates, there could be none. */
  readonly impossibleEggs: boolean;
}

interface Told {
  open: QueenBreak | null;
  readonly done: QueenBreak[];
  lastLaid: LastLaid | null;
  impossibleEggs: boolean;
}

export function queenStory(
  state: ColonyState,
  colony: Id,
  evidence: readonly Evidence[],
  until: Day,
  book: FigureBook,
): QueenStory {
  const told: Told = { open: null, done: [], lastLaid: null, impossibleEggs: false };
  const events = (state.events.get(colony) ?? []).filter((event) => event.day <= until);
  let next = 0;
  for (const seen of evidence) {
    for (; next < events.length && (events[next]?.day ?? '') <= seen.day; next += 1) takeEvent(state, told, events[next], book);
    takeEvidence(state, told, seen, book);
  }
  for (; next < events.length; next += 1) takeEvent(state, told, events[next], book);
  const { open, done, lastLaid, impossibleEggs } = told;
  return { breaks: open === null ? done : [...done, open], open, lastLaid, impossibleEggs };
}

function takeEvent(state: ColonyState, told: Told, dated: DatedEvent | undefined, book: FigureBook): void {
  if (dated === undefined) return;
  const { event, day, entry } = dated;
  switch (event.kind) {
    case 'swarm left':
      told.open = swarmed(told.open, event.window, entry, book);
      return;
    case 'swarm hived':
      told.open = hived(state, dated, event.parent, book);
      return;
    case 'queen ended':
      if (event.how === 'superseded' || (event.how === 'left with a swarm' && told.open?.cause === 'swarm')) return;
      told.open = orphaned('queen gone', day, entry, true, book);
      return;
    case 'queen began':
      told.open = began(state, told.open, dated, event, book);
      return;
    case 'split off':
      if (event.queenSide !== 'stayed') told.open = orphaned('split', day, entry, event.queenSide === 'went', book);
      return;
    case 'split from':
      if (event.queenSide !== 'went') told.open = orphaned('split', day, entry, event.queenSide === 'stayed', book);
      return;
    case 'took in':
      if (told.open !== null) {
        told.done.push({ ...told.open, ended: day });
        told.open = null;
      }
      return;
    case 'fed':
    case 'cells cut':
    case 'comb fell':
    case 'look':
    case 'ended':
    case 'united into':
      return;
  }
}

/** The old queen goes with the first swarm; another swarm of the same time takes a virgin and leaves one, a little later. */
function swarmed(open: QueenBreak | null, window: Window, entry: Id, book: FigureBook): QueenBreak {
  const emerges = rangeOf(book, 'virgin-emerges-after-sealing');
  if (open?.cause === 'swarm' && open.virgin !== null) {
    const virgin = { earliest: open.virgin.earliest, latest: later(open.virgin.latest, window.latest) };
    return { ...open, virgin, firstEggs: afterVirgin(virgin, book), entries: [...open.entries, entry] };
  }
  const virgin = shiftWindow(window, emerges.low, emerges.high);
  return {
    cause: 'swarm',
    loss: window,
    noticed: window.latest,
    virgin,
    firstEggs: afterVirgin(virgin, book),
    sure: true,
    cells: false,
    entries: [entry],
    ended: null,
  };
}

/** A swarm whose parent had not swarmed before brings its laying queen; any other may have a virgin. */
function hived(state: ColonyState, dated: DatedEvent, parent: Id | null, book: FigureBook): QueenBreak {
  const before =
    parent === null
      ? []
      : (state.events.get(parent) ?? []).filter(
          ({ event, day }) =>
            event.kind === 'swarm left' &&
            day < dated.day &&
            daysBetween(day, dated.day) <= rangeOf(book, 'give-up-waiting').high,
        );
  const prime = parent !== null && before.length === 0;
  const first = rangeOf(book, 'swarm-first-eggs');
  const most = prime ? first.high : rangeOf(book, 'swarm-young-eggs').high;
  const firstEggs = { earliest: addDays(dated.day, first.low), latest: addDays(dated.day, most) };
  return {
    cause: 'hived',
    loss: windowOf(dated.day),
    noticed: dated.day,
    virgin: null,
    firstEggs,
    sure: true,
    cells: false,
    entries: [dated.entry],
    ended: null,
  };
}

function orphaned(cause: QueenBreak['cause'], day: Day, entry: Id, sure: boolean, book: FigureBook): QueenBreak {
  const { virgin, firstEggs } = emergency(windowOf(day), book);
  return {
    cause,
    loss: windowOf(day),
    noticed: day,
    virgin,
    firstEggs,
    sure,
    cells: false,
    entries: [entry],
    ended: null,
  };
}

function began(
  state: ColonyState,
  open: QueenBreak | null,
  dated: DatedEvent,
  event: DatedEvent['event'] & { kind: 'queen began' },
  book: FigureBook,
): QueenBreak | null {
  if (event.how === 'introduced') {
    const days = rangeOf(book, 'introduced-laying-days');
    const firstEggs = shiftWindow(windowOf(dated.day), days.low, days.high);
    const loss = open?.loss ?? windowOf(dated.day);
    return {
      cause: 'introduced',
      loss,
      noticed: dated.day,
      virgin: null,
      firstEggs,
      sure: true,
      cells: false,
      entries: [dated.entry],
      ended: null,
    };
  }
  const emerged = state.queens.get(event.queen)?.emerged ?? null;
  if (event.how !== 'raised here' || open === null || emerged === null) return open;
  return { ...open, virgin: emerged, firstEggs: afterVirgin(emerged, book), entries: [...open.entries, dated.entry] };
}

function takeEvidence(state: ColonyState, told: Told, seen: Evidence, book: FigureBook): void {
  told.lastLaid = nextLastLaid(told.lastLaid, seen, book);
  const cells = livingCells(seen);
  if (told.open !== null && cells) told.open = { ...told.open, cells };
  if (seen.eggs === 'seen') {
    const proven = addDays(seen.day, -agesOf('worker', 'egg', book).greatest);
    told.impossibleEggs = false;
    if (told.open === null || seen.manyEggs || proven <= told.open.loss.latest) return;
    const raised =
      told.open.cause === 'swarm' || told.open.cause === 'queen gone' || (told.open.cause === 'split' && told.open.sure);
    told.impossibleEggs = raised && seen.day < told.open.firstEggs.earliest;
    told.done.push({ ...told.open, ended: seen.day });
    told.open = null;
    return;
  }
  if (seen.eggs !== 'none seen' || told.lastLaid?.over !== true) return;
  if (told.open !== null) {
    if (told.open.cause === 'unseen') told.open = { ...told.open, noticed: seen.day };
    return;
  }
  // In the cold months a nest without eggs is as it should be.
  if (seasonLaying(seen.day, latitudeOf(state), book) < value(book, 'laying-season-03')) return;
  const { window } = told.lastLaid;
  const { virgin, firstEggs } = emergency(window, book);
  told.open = {
    cause: 'unseen',
    loss: window,
    noticed: seen.day,
    virgin,
    firstEggs,
    sure: true,
    cells,
    entries: seen.from,
    ended: null,
  };
}

function emergency(loss: Window, book: FigureBook): { readonly virgin: Window; readonly firstEggs: Window } {
  const { virginEmerges, firstEggs } = queenLoss(loss, book);
  return {
    virgin: { earliest: virginEmerges.earliest ?? loss.earliest, latest: virginEmerges.latest },
    firstEggs: { earliest: firstEggs.earliest ?? loss.earliest, latest: firstEggs.latest },
  };
}

export function afterVirgin(virgin: Window, book: FigureBook): Window {
  const age = rangeOf(book, 'queen-first-egg-age');
  return shiftWindow(virgin, age.low, age.high);
}

export function latitudeOf(state: ColonyState): number | null {
  for (const yard of state.yards.values()) return yard.latitude;
  return null;
}
