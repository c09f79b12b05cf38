/**
 * Queen cells by kind and age: open swarm cells leave days to act, sealed ones may mean that the swarm has
 * left, and cells that replace a queen are left alone. The only cells of a colony without eggs are never
 * to be cut. How the kind was told is the colony room's part.
 */
import type { CellsReading, ColonyView } from '../colony/view.ts';
import { value } from '../figures/book.ts';
import { addDays, type Day, daysBetween, later } from '../numbers/day.ts';
import { type Window, windowOf } from '../numbers/window.ts';
import type { Advice, Cite, Forbid, Saying } from './advice.ts';
import {
  byEntry,
  daySlot,
  figureNumber,
  figureRange,
  fromEntries,
  numberSlot,
  placesSlot,
  saying,
  term,
  windowSlot,
} from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { isColdToday, lastEvent, soon, virginDaysOf } from './view-facts.ts';
import { weights } from './weights.ts';

export const queenCells: Rule = {
  key: 'queen-cells',
  about: 'Says what queen cells mean, which to leave alone, and by when a swarm would leave.',
  advise: (facts) => {
    const cells = standingCells(facts.view);
    if (cells === null) return [];
    const { likelyKind } = cells;
    const { eggs } = facts.view.queen;
    if (swarmLeft(facts) !== null) return [leaveThem(facts, cells)];
    if (likelyKind === 'supersedure' || likelyKind === 'emergency' || eggs === 'none seen') return [leaveThem(facts, cells)];
    if (eggs === 'not looked') return [lookFirst(facts, cells)];
    return [cells.counts.sealed > 0 ? sealedSwarm(facts, cells) : openSwarm(facts, cells)];
  },
};

/** Cells that were seen and not cut since; null when there is nothing to say. */
function standingCells(view: ColonyView): CellsReading | null {
  const { cells } = view;
  if (cells === null || cells.counts.open + cells.counts.sealed === 0 || cells.places.length === 0) return null;
  const cut = lastEvent(view, 'cells cut');
  const read = view.visits.findLast((visit) => visit.kind !== 'glance');
  return cut !== null && (read === undefined || cut.day >= read.day) ? null : cells;
}

/** The swarm from these cells, where the journal says that it left. */
function swarmLeft({ view, book }: Facts): ColonyView['events'][number] | null {
  const left = lastEvent(view, 'swarm left');
  return left !== null && daysBetween(left.day, view.day) <= value(book, 'queen-total-days') ? left : null;
}

/** Cells of a colony that replaces its queen, that was seen without eggs, or whose swarm has left. */
function leaveThem(facts: Facts, cells: CellsReading): Advice {
  const { view, book } = facts;
  const left = swarmLeft(facts);
  const kind = left !== null ? 'after-swarm' : cells.likelyKind;
  const key = kind === 'supersedure' || kind === 'emergency' || kind === 'after-swarm' ? kind : 'only';
  const end = cells.virginEmerges?.latest ?? addDays(view.day, value(book, 'virgin-emerges-after-sealing'));
  const window = windowOf(view.day, key === 'supersedure' ? later(view.day, end) : untilMated(view, later(view.day, end)));
  const gone =
    left === null
      ? []
      : [
          saying('cells.left-on', { day: daySlot(left.day, byEntry(left.entry)) }),
          saying('cells.after-swarm', { days: figureRange(book, 'after-swarm-days', 'days') }),
        ];
  return {
    ...base(facts, cells),
    verb: key === 'supersedure' ? 'no visit' : 'leave shut',
    act: 'wait',
    window,
    say: saying(`cells.leave-${key}`, {
      places: placesSlot(cells.places, cite(cells)),
      window: windowSlot(window, cite(cells)),
    }),
    reasons: [counted(cells), ...gone, saying(`cells.why-${key}`), ...emerges(cells)],
    wouldChange: [saying(key === 'supersedure' ? 'cells.change-more' : 'cells.change-eggs')],
    forbids:
      key === 'supersedure'
        ? [dontCut(window, key)]
        : [dontCut(window, key), { act: 'open', window, why: saying('cells.dont-open') }],
    weight: weights.leaveCells,
  };
}

/** To the end of the virgin's days where they follow without a gap: the hive is then shut in one stretch. */
function untilMated(view: ColonyView, end: Day): Day {
  const days = virginDaysOf(view);
  return days !== null && days.earliest <= addDays(end, 1) ? later(end, days.latest) : end;
}

/** Cells without a look for eggs: which kind they are cannot be said, and none is to be cut. */
function lookFirst(facts: Facts, cells: CellsReading): Advice {
  const { book } = facts;
  const window = soon(firstMildDay(facts), value(book, 'act-now-days'));
  return {
    ...base(facts, cells),
    verb: 'open',
    act: 'open',
    window,
    say: saying('cells.look-first', {
      places: placesSlot(cells.places, cite(cells)),
      window: windowSlot(window, cite(cells)),
    }),
    reasons: [counted(cells), ...leaving(cells)],
    wouldChange: [saying('cells.change-eggs')],
    forbids: [dontCut(window, 'only')],
    weight: weights.swarmLeaves,
  };
}

function openSwarm(facts: Facts, cells: CellsReading): Advice {
  const { view, book } = facts;
  const leaves = cells.leaves;
  const end = leaves === null ? addDays(view.day, value(book, 'act-soon-days')) : addDays(leaves.earliest, -1);
  const from = firstMildDay(facts);
  const window = windowOf(from, later(from, end));
  return {
    ...base(facts, cells),
    verb: 'open',
    act: 'split',
    window,
    say: saying('cells.open-swarm', {
      kind: kindTerm(cells),
      places: placesSlot(cells.places, cite(cells)),
      window: windowSlot(window, cite(cells)),
    }),
    reasons: [
      counted(cells),
      ...leaving(cells),
      saying('cells.age', { days: figureNumber(book, 'swarm-leaves-at-sealing', 'days') }),
    ],
    wouldChange: [saying('cells.change-none'), saying('cells.change-weather')],
    forbids: [],
    weight: weights.swarmLeaves,
  };
}

function sealedSwarm(facts: Facts, cells: CellsReading): Advice {
  const { view, book } = facts;
  const gone = cells.leaves !== null && cells.leaves.earliest <= view.day;
  const window = soon(firstMildDay(facts), value(book, 'act-now-days'));
  const slots = { places: placesSlot(cells.places, cite(cells)), window: windowSlot(window, cite(cells)) };
  if (gone) {
    return {
      ...base(facts, cells),
      verb: 'glance',
      act: 'glance',
      window,
      say: saying('cells.may-have-left', slots),
      reasons: [counted(cells), ...leaving(cells), saying('cells.fewer-bees')],
      wouldChange: [saying('cells.change-bees')],
      forbids: [dontCut(windowOf(view.day, later(window.latest, cells.virginEmerges?.latest ?? window.latest)), 'left')],
      weight: weights.swarmLeaves,
    };
  }
  return {
    ...base(facts, cells),
    verb: 'open',
    act: 'split',
    window,
    say: saying('cells.sealed-swarm', slots),
    reasons: [
      counted(cells),
      ...leaving(cells),
      saying('cells.age', { days: figureNumber(book, 'swarm-leaves-at-sealing', 'days') }),
    ],
    wouldChange: [saying('cells.change-weather')],
    forbids: [],
    weight: weights.swarmLeaves,
  };
}

/** Swarms do not leave on a day too cold to lift brood: the hive stays shut until tomorrow. */
function firstMildDay(facts: Facts): Day {
  return isColdToday(facts) ? addDays(facts.view.day, 1) : facts.view.day;
}

type Common = Pick<Advice, 'rule' | 'colony' | 'day' | 'places' | 'chance' | 'cautions'>;

function base({ view }: Facts, cells: CellsReading): Common {
  return {
    rule: 'queen-cells',
    colony: view.colony,
    day: view.day,
    places: [...cells.places].sort((a, b) => a - b),
    chance: null,
    cautions: ['stings', 'smoker', 'local code'],
  };
}

function counted(cells: CellsReading): Saying {
  return saying('cells.counted', {
    open: numberSlot(cells.counts.open, 'count', counts(cells)),
    sealed: numberSlot(cells.counts.sealed, 'count', counts(cells)),
    places: placesSlot(cells.places, cite(cells)),
  });
}

function leaving(cells: CellsReading): readonly Saying[] {
  const sealed = cells.sealed === null ? [] : [saying('cells.sealing', { window: windowSlot(cells.sealed, cite(cells)) })];
  const leaves = cells.leaves === null ? [] : [saying('cells.leaves', { window: windowSlot(cells.leaves, cite(cells)) })];
  return [...sealed, ...leaves];
}

function emerges(cells: CellsReading): readonly Saying[] {
  return cells.virginEmerges === null ? [] : [saying('cells.emerges', { window: windowSlot(cells.virginEmerges, cite(cells)) })];
}

function dontCut(window: Window, why: string): Forbid {
  return { act: 'cut queen cells', window, why: saying(`cells.dont-cut-${why}`) };
}

function kindTerm(cells: CellsReading): ReturnType<typeof term> {
  return term(cells.likelyKind === 'swarm' ? 'cells.swarm' : 'cells.any');
}

/** Counted cells are said in full: the first reading answers for them. */
function counts(cells: CellsReading): Cite {
  const [first] = cells.from;
  return first === undefined ? cite(cells) : { kind: 'entry', id: first };
}

function cite(cells: CellsReading): Cite {
  return fromEntries(cells.from, 'swarm-leaves-at-sealing', 'queen-total-days');
}
