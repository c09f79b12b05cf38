/**
 * Temper: what an edgy visit may come from, and when it is the colony's own. One bad day never asks for a
 * new queen; bees of a queen who is gone tell nothing of the new one.
 */
import type { VisitSummary } from '../colony/view.ts';
import { value } from '../figures/book.ts';
import { addDays, daysBetween } from '../numbers/day.ts';
import { windowOf } from '../numbers/window.ts';
import type { Advice, Saying } from './advice.ts';
import { byEntry, daySlot, figureNumber, fromEntries, numberSlot, saying, term, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { lastEvent } from './view-facts.ts';
import { weights } from './weights.ts';

const bad: readonly string[] = ['edgy', 'stinging'];
/** Notes that name another cause than the colony. */
const excuses: readonly string[] = ['after rain', 'robbing about', 'dropped a comb'];

/** Ways a reign begins in which the bees are her own from the first day. */
const cameWithHerBees: readonly string[] = ['came with the swarm', 'found'];

export const temper: Rule = {
  key: 'temper',
  about: 'Weighs edgy visits: what else they may come from, and when they are the colony’s own.',
  advise: (facts) => {
    const judged = recent(facts).filter((visit) => visit.temper !== null);
    const last = judged.at(-1);
    if (last === undefined || !isBad(last)) return [];
    const own = apart(
      facts,
      judged.filter((visit) => isBad(visit) && !isExcused(visit) && isOfThisQueen(facts, visit)),
    );
    const enough = own.length >= value(facts.book, 'temper-bad-visits');
    if (!isOfThisQueen(facts, last)) return oldQueensBees(facts, last);
    if (!enough) return [watch(facts, last, own)];
    return [thinkOfQueen(facts, own)];
  },
};

/** Not yet the colony's: note it, and what else it may be. */
function watch(facts: Facts, last: VisitSummary, own: readonly VisitSummary[]): Advice {
  const { view, book } = facts;
  const window = windowOf(view.day, addDays(view.day, value(book, 'visit-rest-days')));
  const needed = figureNumber(book, 'temper-bad-visits', 'count');
  return {
    ...base(facts, last),
    act: 'wait',
    window,
    say: saying('temper.once', {
      temper: term(`temper.${last.temper ?? 'edgy'}`),
      day: daySlot(last.day, byEntry(last.entry)),
    }),
    reasons: [
      ...noted(last),
      saying('temper.else'),
      saying('temper.so-far', {
        n: numberSlot(
          own.length,
          'count',
          fromEntries(
            own.map((visit) => visit.entry),
            'temper-apart-days',
          ),
        ),
        needed,
      }),
    ],
    wouldChange: [saying('temper.change-calm'), saying('temper.change-again')],
    forbids: [{ act: 'requeen', window, why: saying('temper.dont-requeen') }],
    weight: weights.temperOnce,
  };
}

function oldQueensBees(facts: Facts, last: VisitSummary): readonly Advice[] {
  const { view, book } = facts;
  const since = view.queenSince?.latest ?? view.day;
  const full = addDays(since, value(book, 'requeened-full-days'));
  if (full < view.day) return [];
  const window = windowOf(view.day, full);
  const cite = fromEntries([last.entry], 'requeened-full-days');
  const advice: Advice = {
    ...base(facts, last),
    act: 'wait',
    window,
    say: saying('temper.old-bees', {
      day: daySlot(window.latest, cite),
      temper: term(`temper.${last.temper ?? 'edgy'}`),
    }),
    reasons: [
      ...noted(last),
      saying('temper.turnover', {
        first: figureNumber(book, 'requeened-first-workers', 'days'),
        half: figureNumber(book, 'requeened-half-days', 'days'),
        full: figureNumber(book, 'requeened-full-days', 'days'),
      }),
    ],
    wouldChange: [saying('temper.change-calm')],
    forbids: [{ act: 'requeen', window, why: saying('temper.dont-requeen-new') }],
    weight: weights.temperOnce,
  };
  return [advice];
}

function thinkOfQueen(facts: Facts, own: readonly VisitSummary[]): Advice {
  const { view, book } = facts;
  const last = own.at(-1) as VisitSummary;
  const first = own[0] as VisitSummary;
  const window = windowOf(view.day, addDays(view.day, value(book, 'requeen-think-days')));
  const cite = fromEntries(
    own.map((visit) => visit.entry),
    'requeen-think-days',
  );
  return {
    ...base(facts, last),
    verb: 'no visit',
    act: 'requeen',
    window,
    say: saying('temper.requeen', {
      window: windowSlot(window, cite),
      first: daySlot(first.day, byEntry(first.entry)),
      last: daySlot(last.day, byEntry(last.entry)),
    }),
    reasons: [
      saying('temper.times', {
        n: numberSlot(own.length, 'count', cite),
        apart: figureNumber(book, 'temper-apart-days', 'days'),
      }),
      ...noted(last),
      saying('temper.else'),
      saying('temper.turnover', {
        first: figureNumber(book, 'requeened-first-workers', 'days'),
        half: figureNumber(book, 'requeened-half-days', 'days'),
        full: figureNumber(book, 'requeened-full-days', 'days'),
      }),
    ],
    wouldChange: [saying('temper.change-calm'), saying('temper.change-cause')],
    forbids: [],
    weight: weights.requeenForTemper,
  };
}

type Common = Pick<Advice, 'rule' | 'colony' | 'day' | 'verb' | 'places' | 'chance' | 'cautions'>;

function base({ view }: Facts, last: VisitSummary): Common {
  return {
    rule: 'temper',
    colony: view.colony,
    day: view.day,
    verb: 'no visit',
    places: [],
    chance: null,
    cautions: last.temper === 'stinging' || last.temperNotes.includes('followed people') ? ['stings', 'learners'] : ['stings'],
  };
}

function noted(visit: VisitSummary): readonly Saying[] {
  return visit.temperNotes.map((note) =>
    saying('temper.note', { note: term(`temper-note.${note}`), day: daySlot(visit.day, byEntry(visit.entry)) }),
  );
}

function recent({ view, book }: Facts): readonly VisitSummary[] {
  const within = value(book, 'temper-within-days');
  return view.visits.filter((visit) => visit.day <= view.day && daysBetween(visit.day, view.day) <= within);
}

/** Visits far enough from each other to be judged apart, the newest kept. */
function apart({ book }: Facts, visits: readonly VisitSummary[]): readonly VisitSummary[] {
  const days = value(book, 'temper-apart-days');
  const kept: VisitSummary[] = [];
  for (const visit of visits.toReversed()) {
    const next = kept.at(-1);
    if (next === undefined || daysBetween(visit.day, next.day) >= days) kept.push(visit);
  }
  return kept.toReversed();
}

/** False while most bees of the visit's day were daughters of the queen before. */
function isOfThisQueen({ view, book }: Facts, visit: VisitSummary): boolean {
  const began = lastEvent(view, 'queen began')?.event;
  if (began?.kind === 'queen began' && cameWithHerBees.includes(began.how)) return true;
  return view.queenSince === null || daysBetween(view.queenSince.latest, visit.day) >= value(book, 'requeened-full-days');
}

function isBad(visit: VisitSummary): boolean {
  return visit.temper !== null && bad.includes(visit.temper);
}

function isExcused(visit: VisitSummary): boolean {
  return visit.temperNotes.some((note) => excuses.includes(note));
}
