/**
 * The queen's years: a young queen without a mark is marked while her colony is small, and an old one's successor is
 * thought of in time. Nothing here says that she is bad; temper, pattern and laying are other rules'.
 */
import { value } from '../figures/book.ts';
import { addDays, type Day, daysBetween } from '../numbers/day.ts';
import { windowOf } from '../numbers/window.ts';
import { markColour, markColours } from '../queens/mark-colour.ts';
import type { Advice, Cite } from './advice.ts';
import { byEntry, byFigure, daySlot, figureNumber, numberSlot, saying, term, workedOut } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { inSwarmSeason, inVisitSeason } from './season.ts';
import { lastEvent, soon } from './view-facts.ts';
import { weights } from './weights.ts';

export const markQueen: Rule = {
  key: 'mark-queen',
  about: 'Offers to mark a queen whose year is known, once she has laid for a while.',
  advise: (facts) => {
    const { view, book } = facts;
    const since = view.queenSince;
    const isMarked = view.queenMark !== null && view.queenMark !== 'none';
    if (since === null || isMarked || !wasRaisedHere(facts) || view.queen.state !== 'laying' || !inVisitSeason(facts)) return [];
    const reigns = daysBetween(since.latest, view.day);
    if (reigns < value(book, 'mark-after-days') || reigns > value(book, 'mark-until-days')) return [];
    if (view.cells !== null || yearIn(since.earliest) !== yearIn(since.latest)) return [];
    return [mark(facts, since.latest, soon(view.day, value(book, 'check-interval-rest')))];
  },
};

export const oldQueen: Rule = {
  key: 'old-queen',
  about: 'Thinks of a successor for a queen in her third season.',
  advise: (facts) => {
    const { view, book } = facts;
    const year = yearOf(facts);
    if (year === null || !inSwarmSeason(facts) || view.cells !== null) return [];
    if (view.queen.state !== 'laying' && view.queen.state !== 'failing') return [];
    const seasons = yearIn(view.day) - year + 1;
    if (seasons < value(book, 'old-queen-seasons')) return [];
    const window = windowOf(view.day, addDays(view.day, value(book, 'requeen-think-days')));
    return [successor(facts, seasons, window)];
  },
};

/** Only then the year of her reign is her own: one that came with a swarm, or was given, may be older. */
function wasRaisedHere({ view }: Facts): boolean {
  const began = lastEvent(view, 'queen began')?.event;
  return began?.kind === 'queen began' && began.how === 'raised here';
}

/** The year in which she began, or the last one of the colour that she bears; null when neither is known. */
function yearOf({ view }: Facts): number | null {
  const since = view.queenSince;
  if (since !== null) return yearIn(since.latest);
  const now = yearIn(view.day);
  const back = markColours.findIndex((_, years) => markColour(now - years) === view.queenMark);
  return back < 0 ? null : now - back;
}

function yearIn(day: Day): number {
  return Number(day.split('-')[0]);
}

function mark(facts: Facts, since: Day, window: Advice['window']): Advice {
  const colour = markColour(yearIn(since));
  const cite = reignCite(facts, 'mark-after-days');
  return {
    ...base(facts, window),
    rule: 'mark-queen',
    verb: 'no visit',
    act: 'mark the queen',
    say: saying('years.mark', { colour: term(`mark.${colour}`) }),
    reasons: [
      saying('years.unmarked'),
      saying('years.since', { day: daySlot(since, cite) }),
      saying('years.mark-how', { days: figureNumber(facts.book, 'mark-after-days', 'days') }),
    ],
    wouldChange: [saying('years.mark-change')],
    cautions: ['stings', 'smoker'],
    weight: weights.markQueen,
  };
}

function successor(facts: Facts, seasons: number, window: Advice['window']): Advice {
  const cite = reignCite(facts, 'old-queen-seasons');
  return {
    ...base(facts, window),
    rule: 'old-queen',
    verb: 'no visit',
    act: 'wait',
    say: saying('years.old', { n: numberSlot(seasons, 'count', cite) }),
    reasons: [
      saying('years.old-why'),
      saying('years.supersede'),
      saying('years.old-seasons', { n: figureNumber(facts.book, 'old-queen-seasons', 'count') }),
    ],
    wouldChange: [saying('years.old-change')],
    cautions: [],
    weight: weights.oldQueen,
  };
}

function base({ view }: Facts, window: Advice['window']) {
  return { colony: view.colony, day: view.day, places: [], window, chance: null, forbids: [] };
}

/** What is known of her reign. */
function reignCite({ view }: Facts, key: 'mark-after-days' | 'old-queen-seasons'): Cite {
  const began = lastEvent(view, 'queen began');
  return began === null ? workedOut(byFigure(key)) : workedOut(byEntry(began.entry), byFigure(key));
}
