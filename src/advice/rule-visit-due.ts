/**
 * When the next visit is due, by what was seen: days after queen cells were cut, a week in the swarm season,
 * longer outside it, and no visit in the cold months. The weekday plays no part.
 */
import { rangeOf, value } from '../figures/book.ts';
import type { FigureKey } from '../figures/list.ts';
import { addDays, daysBetween, later } from '../numbers/day.ts';
import { type Window, windowOf } from '../numbers/window.ts';
import type { Advice, Saying } from './advice.ts';
import { byEntry, daySlot, figureNumber, figureRange, fromEntries, saying, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { isFirstOfYear } from './rule-spring-look.ts';
import { lookToday } from './rule-worth-a-look.ts';
import { inSwarmSeason, inVisitSeason, isVisitMonth } from './season.ts';
import { lastEvent, lastOpening, outsideHarm, soon } from './view-facts.ts';
import { weights } from './weights.ts';

export const visitDue: Rule = {
  key: 'visit-due',
  about: 'Says when the next visit is due, by what was seen at the last one.',
  advise: (facts) => {
    const { view } = facts;
    const last = lastOpening(view);
    if (last === null)
      return inVisitSeason(facts) && !isNewSwarm(facts) ? [never(facts)].filter((advice) => advice !== null) : [];
    if (last.cellsCut && !isPast(facts)) return [recheck(facts)].filter((advice) => advice !== null);
    if (!inVisitSeason(facts) || isNewSwarm(facts)) return [];
    return [usual(facts)].filter((advice) => advice !== null);
  },
};

/** Days after cells were cut, before a cell begun over a young larva is sealed. */
function recheck(facts: Facts): Advice | null {
  const { view, book } = facts;
  const last = lastOpening(view);
  if (last === null) return null;
  const days = rangeOf(book, 'recheck-after-cutting');
  const from = addDays(last.day, days.low);
  const found = due(facts, windowOf(from, addDays(last.day, days.high)));
  if (found === null) return null;
  const cite = fromEntries([last.entry], 'recheck-after-cutting');
  return {
    ...base(facts, found),
    say: saying(found.late ? 'due.recheck-late' : 'due.recheck', {
      window: windowSlot(found.late ? found.was : found.window, cite),
      cut: daySlot(last.day, byEntry(last.entry)),
    }),
    reasons: [saying('due.recheck-why', { days: figureRange(book, 'recheck-after-cutting', 'days') }), saying('due.only-cells')],
    wouldChange: [saying('due.change-swarm')],
    weight: weights.recheck,
  };
}

function usual(facts: Facts): Advice | null {
  const { view, book } = facts;
  const last = lastOpening(view);
  if (last === null) return null;
  const swarming = inSwarmSeason(facts) && mayLeave(facts);
  const key: FigureKey = swarming ? 'check-interval-swarm' : 'check-interval-rest';
  const days = rangeOf(book, key);
  const usually = windowOf(addDays(last.day, days.likely), addDays(last.day, days.high));
  if (isFirstOfYear(facts)) return null;
  // Where the model has spoken, it says when a look is worth it.
  if (lookToday(facts) !== null) return null;
  if (!isVisitMonth(usually.latest, facts.latitude, book)) return null;
  const found = due(facts, usually);
  if (found === null) return null;
  const cite = fromEntries([last.entry], key);
  return {
    ...base(facts, found),
    say: saying(found.late ? 'due.late' : 'due.open', {
      window: windowSlot(found.late ? found.was : found.window, cite),
      last: daySlot(last.day, byEntry(last.entry)),
    }),
    reasons: [seasonReason(facts, swarming), ...seenThen(facts)],
    wouldChange: [saying('due.change-swarm'), saying('due.change-outside')],
    weight: weights.visitDue,
  };
}

/** No opening is in the journal; a colony just begun is given time to settle. */
function never(facts: Facts): Advice | null {
  if (daysBetween(facts.view.began.latest, facts.view.day) < value(facts.book, 'visit-rest-days')) return null;
  const found = due(facts, soon(facts.view.day, value(facts.book, 'act-soon-days')));
  if (found === null) return null;
  const cite = fromEntries([], 'act-soon-days');
  return {
    ...base(facts, found),
    say: saying('due.never', { window: windowSlot(found.window, cite) }),
    reasons: [saying('due.never-why')],
    wouldChange: [saying('due.change-outside')],
    weight: weights.visitDue,
  };
}

interface Due {
  readonly window: Window;
  readonly late: boolean;
  /** As it stood at the last visit, to be named when it is past. */
  readonly was: Window;
}

/** The window when it is near or past; past ones keep their first day, so that they count as late. */
function due(facts: Facts, window: Window): Due | null {
  const { view, book } = facts;
  if (daysBetween(view.day, window.earliest) > value(book, 'due-warn-days')) return null;
  const late = view.day > window.latest;
  const found = outsideHarm(facts, windowOf(later(view.day, window.earliest), later(view.day, window.latest)));
  if (found === null) return null;
  return {
    window:
      found.earliest > view.day ? found : windowOf(window.earliest < view.day ? window.earliest : found.earliest, found.latest),
    late,
    was: window,
  };
}

/** A colony with a laying queen and its own grown bees may swarm. */
function mayLeave({ view }: Facts): boolean {
  return view.queen.state === 'laying' || view.queen.state === 'cells open' || view.queen.state === 'unknown';
}

function isNewSwarm({ view, book }: Facts): boolean {
  const hived = lastEvent(view, 'swarm hived');
  return hived !== null && daysBetween(hived.day, view.day) <= value(book, 'new-swarm-days');
}

/** The recheck is given up when a week has gone: by then a usual visit is due. */
function isPast({ view, book }: Facts): boolean {
  const last = lastOpening(view);
  return last !== null && daysBetween(last.day, view.day) > value(book, 'check-interval-swarm');
}

function seasonReason({ book }: Facts, swarming: boolean): Saying {
  return swarming
    ? saying('due.swarm-season', { days: figureNumber(book, 'swarm-leaves-at-sealing', 'days') })
    : saying('due.rest', { days: figureNumber(book, 'check-interval-rest', 'days') });
}

/** What was seen at the last opening, where it matters for the next. */
function seenThen({ view }: Facts): readonly Saying[] {
  return view.queen.eggs === 'not looked' ? [saying('due.not-looked')] : [];
}

type Common = Omit<Advice, 'say' | 'reasons' | 'wouldChange' | 'weight'>;

function base({ view }: Facts, found: Due): Common {
  return {
    rule: 'visit-due',
    colony: view.colony,
    day: view.day,
    verb: 'open',
    act: 'open',
    places: [],
    window: found.window,
    chance: null,
    forbids: [],
    cautions: ['stings', 'smoker'],
  };
}
