/**
 * No eggs seen: what to look for and when a look tells, and a comb of eggs as the test. Seeing no eggs
 * never says that there is no queen; a colony without eggs may have a young one.
 */
import { rangeOf, value } from '../figures/book.ts';
import { addDays, type Day } from '../numbers/day.ts';
import { windowOf } from '../numbers/window.ts';
import type { Advice, Chance, Cite, Saying } from './advice.ts';
import { byEntry, daySlot, figureNumber, figureRange, fromEntries, numberSlot, saying, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { inBuildingSeason, inVisitSeason } from './season.ts';
import { lastOpening, outsideHarm, soon, virginDaysOf } from './view-facts.ts';
import { weights } from './weights.ts';

export const noEggs: Rule = {
  key: 'no-eggs',
  about: 'After a look without eggs, says what to look for and on which day a look tells.',
  advise: (facts) => {
    const { view } = facts;
    const seen = lastOpening(view);
    if (view.queen.eggs !== 'none seen' || seen === null || !inVisitSeason(facts)) return [];
    if (view.queen.state === 'laying workers' || view.queen.state === 'drone layer') return [];
    if (hasStandingCells(facts)) return [];
    if (inBuildingSeason(facts) && isTestDue(facts))
      return [testComb(facts, seen.day, byEntry(seen.entry))].filter((advice) => advice !== null);
    return [nextLook(facts, seen.day, byEntry(seen.entry))].filter((advice) => advice !== null);
  },
};

/** The next look, on the day when it tells; until then, waiting. */
function nextLook(facts: Facts, seenOn: Day, seenCite: Cite): Advice | null {
  const { view, book } = facts;
  const telling = view.queen.nextTelling ?? addDays(seenOn, value(book, 'act-soon-days'));
  const wait = telling > view.day;
  const window = wait ? windowOf(view.day, telling) : outsideHarm(facts, soon(view.day, value(book, 'act-soon-days')));
  if (window === null) return null;
  const cite = queenCite(facts);
  const seen = daySlot(seenOn, seenCite);
  return {
    rule: 'no-eggs',
    colony: view.colony,
    day: view.day,
    verb: wait ? 'no visit' : 'open',
    act: wait ? 'wait' : 'open',
    places: [],
    window,
    say: wait
      ? saying('eggs.wait', { day: daySlot(telling, cite), seen })
      : saying('eggs.look', { window: windowSlot(window, cite), seen }),
    reasons: [...reasons(facts), ...lookedAt(facts), saying('eggs.look-for')],
    chance: missedCells(facts),
    wouldChange: [saying('eggs.change-eggs'), saying('eggs.change-cells')],
    forbids: dontReplace(facts, telling),
    cautions: ['stings', 'smoker'],
    weight: wait ? weights.waitForEggs : weights.lookForEggs,
  };
}

function testComb(facts: Facts, seenOn: Day, seenCite: Cite): Advice | null {
  const { view, book } = facts;
  const window = outsideHarm(facts, soon(view.day, value(book, 'act-soon-days')));
  if (window === null) return null;
  const cite = queenCite(facts);
  const answer = addDays(window.latest, rangeOf(book, 'test-comb-days').high);
  return {
    rule: 'no-eggs',
    colony: view.colony,
    day: view.day,
    verb: 'open',
    act: 'test with a comb of eggs',
    places: [],
    window,
    say: saying('eggs.test', { window: windowSlot(window, cite), days: figureRange(book, 'test-comb-days', 'days') }),
    reasons: [
      saying('eggs.none', { day: daySlot(seenOn, seenCite) }),
      ...reasons(facts),
      ...lookedAt(facts),
      saying('eggs.test-why'),
      saying('eggs.test-donor', { days: figureNumber(book, 'donor-checked-days', 'days') }),
    ],
    chance: missedCells(facts),
    wouldChange: [saying('eggs.change-eggs'), saying('eggs.change-test')],
    forbids: dontReplace(facts, answer),
    cautions: ['stings', 'smoker', 'suspected illness'],
    weight: weights.testComb,
  };
}

/** So long after the last laying that neither open brood nor a daughter's eggs are still to come. */
function isTestDue({ view, book }: Facts): boolean {
  const { lastLaid, firstEggs } = view.queen;
  const virginDays = virginDaysOf(view);
  if (lastLaid === null) return false;
  const hopeless = addDays(lastLaid.latest, value(book, 'hopeless-after-days')) <= view.day;
  const waiting = (firstEggs !== null && firstEggs.latest >= view.day) || (virginDays !== null && virginDays.latest >= view.day);
  return hopeless && !waiting;
}

function hasStandingCells({ view }: Facts): boolean {
  return view.cells !== null && view.cells.counts.open + view.cells.counts.sealed > 0;
}

function reasons(facts: Facts): readonly Saying[] {
  const { queen } = facts.view;
  const pause = inBuildingSeason(facts) ? [] : [saying('eggs.pause')];
  const cite = queenCite(facts);
  const laid = queen.lastLaid === null ? [] : [saying('eggs.last-laid', { window: windowSlot(queen.lastLaid, cite) })];
  const due = queen.firstEggs === null ? [] : [saying('eggs.due', { window: windowSlot(queen.firstEggs, cite) })];
  const torn = queen.contradictory ? [saying('eggs.contradict')] : [];
  return [
    ...pause,
    ...laid,
    ...due,
    ...torn,
    saying('eggs.stage', { days: figureNumber(facts.book, 'worker-egg-days', 'days') }),
  ];
}

/** How much was looked at: absence is only as good as the search. */
function lookedAt({ view }: Facts): readonly Saying[] {
  const seen = lastOpening(view);
  if (view.search === null || seen === null) return [];
  const { barsOpened, barsInBay, brushed } = view.search;
  const cite = byEntry(seen.entry);
  return [
    saying(brushed === true ? 'eggs.search-brushed' : 'eggs.search', {
      opened: numberSlot(barsOpened, 'bars', cite),
      all: numberSlot(barsInBay, 'bars', cite),
    }),
  ];
}

/** The chance that a few queen cells were all missed, where the search says it. */
function missedCells({ view }: Facts): Chance | null {
  const seen = lastOpening(view);
  const few = view.search?.missAll.find((row) => row.cells > 1) ?? null;
  if (few === null || seen === null) return null;
  const cite = fromEntries([seen.entry], 'cell-seen-chance');
  return {
    chance: few.chance,
    of: saying('eggs.missed', {
      n: numberSlot(few.cells, 'count', { kind: 'figure', key: 'cell-seen-chance' }),
      day: daySlot(seen.day, cite),
    }),
  };
}

function dontReplace(facts: Facts, until: Day): Advice['forbids'] {
  const window = windowOf(facts.view.day, until > facts.view.day ? until : facts.view.day);
  return (['requeen', 'unite'] as const).map((act) => ({ act, window, why: saying('eggs.dont-replace') }));
}

function queenCite({ view }: Facts): Cite {
  return fromEntries(view.queen.from, 'worker-egg-days', 'queen-first-egg-age');
}
