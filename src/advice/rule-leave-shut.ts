/**
 * Days on which a look does harm: a virgin or a new queen, cold air, or a hive that was just opened. It
 * forbids opening; a stronger need beats the last of these, never a virgin's days.
 */
import { value } from '../figures/book.ts';
import type { FigureKey } from '../figures/list.ts';
import { addDays } from '../numbers/day.ts';
import { holds, type Window, windowOf } from '../numbers/window.ts';
import type { Act, Advice, Cite, Forbid, Saying } from './advice.ts';
import { byEntry, daySlot, figureNumber, fromEntries, numberSlot, placesSlot, saying, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { isColdToday, lastOpening, virginDaysOf, weatherCite } from './view-facts.ts';
import { weights } from './weights.ts';

export const leaveShut: Rule = {
  key: 'leave-shut',
  about: 'Says on which days a look does harm, and until when.',
  advise: (facts) =>
    [virgin(facts), introduced(facts), newlyLaying(facts), cold(facts), justOpened(facts)].filter((advice) => advice !== null),
};

function virgin(facts: Facts): Advice | null {
  const { queen, cells } = facts.view;
  const days = virginDaysOf(facts.view);
  if (days === null || !holds(days, facts.view.day)) return null;
  const cite = fromEntries(queen.from, 'queen-first-egg-age', 'queen-total-days');
  const seen =
    cells === null || cells.places.length === 0
      ? []
      : [saying('shut.cells', { places: placesSlot(cells.places, fromEntries(cells.from, 'queen-total-days')) })];
  const due = queen.firstEggs === null ? [] : [saying('eggs.due', { window: windowSlot(queen.firstEggs, cite) })];
  const laid = queen.lastLaid === null ? [] : [saying('eggs.last-laid', { window: windowSlot(queen.lastLaid, cite) })];
  const window = windowOf(facts.view.day, days.latest);
  return shut(facts, window, {
    say: saying('shut.virgin', { day: daySlot(window.latest, cite), window: windowSlot(days, cite) }),
    reasons: [...seen, ...laid, ...due, saying('shut.virgin-why')],
    wouldChange: [saying('shut.change-eggs')],
    why: saying('shut.virgin-why'),
    weight: weights.virgin,
  });
}

/** A queen that the keeper gave. */
function introduced(facts: Facts): Advice | null {
  const { view, book } = facts;
  const given = view.events.findLast(
    ({ event, day }) => event.kind === 'queen began' && event.how === 'introduced' && day <= view.day,
  );
  if (given === undefined || (view.queen.eggs === 'seen' && (lastOpening(view)?.day ?? '') > given.day)) return null;
  const window = windowOf(view.day, addDays(given.day, value(book, 'introduced-rest-days')));
  if (window.latest < view.day) return null;
  const cite = byEntry(given.entry);
  return shut(facts, window, {
    say: saying('shut.introduced', { day: daySlot(window.latest, cite), given: daySlot(given.day, cite) }),
    reasons: [saying('shut.introduced-why'), restReason(facts, 'introduced-rest-days')],
    wouldChange: [saying('shut.change-outside')],
    why: saying('shut.introduced-why'),
    weight: weights.virgin,
  });
}

/** A queen raised here that has just begun to lay. */
function newlyLaying(facts: Facts): Advice | null {
  const { view, book } = facts;
  if (view.queen.state !== 'new queen laying' || view.queen.firstEggs === null) return null;
  const window = windowOf(view.day, addDays(view.queen.firstEggs.earliest, value(book, 'new-laying-rest-days')));
  if (window.latest < view.day || view.day < view.queen.firstEggs.earliest) return null;
  const cite = fromEntries(view.queen.from, 'new-laying-rest-days');
  return shut(facts, window, {
    say: saying('shut.new-queen', {
      day: daySlot(window.latest, cite),
      window: windowSlot(view.queen.firstEggs, cite),
    }),
    reasons: [saying('shut.new-queen-why'), restReason(facts, 'new-laying-rest-days')],
    wouldChange: [saying('shut.change-outside')],
    why: saying('shut.new-queen-why'),
    weight: weights.virgin,
  });
}

function cold(facts: Facts): Advice | null {
  const { view, book, weather } = facts;
  const high = weather?.highC ?? null;
  if (high === null || !isColdToday(facts)) return null;
  const tooColdToGlance = high < value(book, 'glance-least-temp');
  const least: FigureKey = tooColdToGlance ? 'glance-least-temp' : 'open-brood-least-temp';
  const why = saying('shut.cold-why');
  const given: Given = {
    say: saying(tooColdToGlance ? 'shut.colder' : 'shut.cold', {
      high: numberSlot(high, 'degC', weatherCite(facts)),
      least: figureNumber(book, least, 'degC'),
    }),
    reasons: [why],
    wouldChange: [saying('shut.change-warm', { least: figureNumber(book, 'open-brood-least-temp', 'degC') })],
    why,
    weight: weights.cold,
  };
  return shut(facts, windowOf(view.day), given, tooColdToGlance ? ['open', 'lift brood', 'glance'] : ['open', 'lift brood']);
}

function justOpened(facts: Facts): Advice | null {
  const { view, book } = facts;
  const last = lastOpening(view);
  if (last === null) return null;
  const window = windowOf(view.day, addDays(last.day, value(book, 'visit-rest-days') - 1));
  if (window.latest < view.day) return null;
  const cite: Cite = byEntry(last.entry);
  return shut(facts, window, {
    say: saying('shut.opened', { day: daySlot(window.latest, cite), opened: daySlot(last.day, cite) }),
    reasons: [restReason(facts, 'visit-rest-days')],
    wouldChange: [saying('shut.change-need')],
    why: saying('shut.opened-why'),
    weight: weights.justOpened,
  });
}

interface Given {
  readonly say: Saying;
  readonly reasons: readonly Saying[];
  readonly wouldChange: readonly Saying[];
  readonly why: Saying;
  readonly weight: number;
}

function shut({ view }: Facts, window: Window, given: Given, acts: readonly Act[] = ['open', 'lift brood']): Advice {
  const { why, ...rest } = given;
  const forbids: readonly Forbid[] = acts.map((act) => ({ act, window, why }));
  return {
    rule: 'leave-shut',
    colony: view.colony,
    day: view.day,
    verb: 'leave shut',
    act: 'wait',
    places: [],
    window,
    chance: null,
    cautions: [],
    forbids,
    ...rest,
  };
}

function restReason({ book }: Facts, key: FigureKey): Saying {
  return saying('shut.rest', { days: figureNumber(book, key, 'days') });
}
