/**
 * A swarm in its first weeks: straight comb while it still bends by hand, food while nothing comes in, and
 * the first eggs. It leaves out whether the swarm stays; a look from outside tells that.
 */
import type { ColonyView, VisitSummary } from '../colony/view.ts';
import { rangeOf, value } from '../figures/book.ts';
import { addDays, type Day, daysBetween, later } from '../numbers/day.ts';
import { type Window, windowOf } from '../numbers/window.ts';
import type { Advice, Cite } from './advice.ts';
import { byEntry, byFigure, daySlot, figureNumber, figureRange, placesSlot, saying, windowSlot, workedOut } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { lastEvent, outsideHarm } from './view-facts.ts';
import { weights } from './weights.ts';

interface Hived {
  readonly day: Day;
  readonly cite: Cite;
}

export const newSwarm: Rule = {
  key: 'new-swarm',
  about: 'Looks after a hived swarm in its first weeks: straight comb, food, first eggs.',
  advise: (facts) => {
    const { view, book } = facts;
    const hived = hivedOn(view);
    if (hived === null) return [];
    const age = daysBetween(hived.day, view.day);
    if (age < 0 || age > value(book, 'new-swarm-days')) return [];
    return [straightComb(facts, hived), feedIt(facts, hived), firstEggs(facts, hived)].filter((advice) => advice !== null);
  },
};

function hivedOn(view: ColonyView): Hived | null {
  const hived = lastEvent(view, 'swarm hived');
  return hived === null ? null : { day: hived.day, cite: byEntry(hived.entry) };
}

/** While comb is soft: a glance at the last bars, or bending back what was seen bent. */
function straightComb(facts: Facts, hived: Hived): Advice | null {
  const { view, book } = facts;
  const last = view.visits.findLast((visit) => visit.straight !== null && visit.day >= hived.day) ?? null;
  const bent = last !== null && last.straight !== 'straight';
  const softUntil = addDays(hived.day, rangeOf(book, 'soft-comb-days').high);
  if (view.day > softUntil && !bent) return null;
  const from =
    last === null || bent
      ? addDays(hived.day, value(book, 'swarm-settle-days'))
      : addDays(last.day, value(book, 'straight-again-days'));
  const earliest = later(view.day, from);
  const latest = later(earliest, addDays(hived.day, value(book, 'soft-comb-days')));
  if (!bent && earliest > softUntil) return null;
  const window = windowOf(earliest, latest);
  const places = lastCombs(view);
  return {
    rule: 'new-swarm',
    colony: view.colony,
    day: view.day,
    verb: 'glance',
    act: bent ? 'bend comb straight' : 'glance',
    places,
    window,
    say: sayStraight(hived, window, bent ? last : null, places),
    reasons: [
      saying('swarm.hived', { day: daySlot(hived.day, hived.cite) }),
      saying('swarm.soft', { days: figureNumber(book, 'soft-comb-days', 'days') }),
    ],
    chance: null,
    wouldChange: [saying('swarm.change-straight')],
    forbids: [],
    cautions: ['stings', 'smoker'],
    weight: bent ? weights.bentComb : weights.straightComb,
  };
}

function sayStraight(hived: Hived, window: Window, bent: VisitSummary | null, places: readonly number[]): Advice['say'] {
  const slot = windowSlot(window, hived.cite);
  if (bent === null) return saying('swarm.glance', { window: slot });
  const seen = { window: slot, seen: daySlot(bent.day, byEntry(bent.entry)) };
  if (places.length === 0) return saying('swarm.bend', seen);
  return saying('swarm.bend-at', { ...seen, places: placesSlot(places, byEntry(bent.entry)) });
}

/** The last two bars with comb, away from the entrance. */
function lastCombs(view: ColonyView): readonly number[] {
  const built = view.bars
    .filter((bar) => bar.kind === 'comb')
    .map((bar) => bar.place)
    .sort((a, b) => a - b);
  return view.entrance === 'last' ? built.slice(0, 2).reverse() : built.toReversed().slice(0, 2);
}

function feedIt(facts: Facts, hived: Hived): Advice | null {
  const { view, book } = facts;
  const fed = lastEvent(view, 'fed');
  const until = addDays(hived.day, rangeOf(book, 'soft-comb-days').high);
  if (view.day > until) return null;
  if (fed !== null && fed.day >= hived.day && daysBetween(fed.day, view.day) < value(book, 'fed-enough-days')) return null;
  if ((view.room?.nectarPerDay.low ?? 0) > 0) return null;
  const earliest = later(view.day, hived.day);
  const window = windowOf(earliest, later(earliest, addDays(hived.day, value(book, 'swarm-provision-days'))));
  return {
    rule: 'new-swarm',
    colony: view.colony,
    day: view.day,
    verb: 'no visit',
    act: 'feed',
    places: [],
    window,
    say: saying('swarm.feed', { window: windowSlot(window, hived.cite) }),
    reasons: [
      saying('swarm.hived', { day: daySlot(hived.day, hived.cite) }),
      saying('swarm.provision', { days: figureRange(book, 'swarm-provision-days', 'days') }),
    ],
    chance: null,
    wouldChange: [saying('swarm.change-nectar')],
    forbids: [{ act: 'take honey', window, why: saying('swarm.needs-all') }],
    cautions: ['stings'],
    weight: weights.feedSwarm,
  };
}

function firstEggs(facts: Facts, hived: Hived): Advice | null {
  const { view, book } = facts;
  if (view.queen.eggs === 'seen') return null;
  const cite = workedOut(hived.cite, ...view.queen.from.map(byEntry), byFigure('swarm-first-eggs'));
  const expected = view.queen.firstEggs ?? rangeWindow(facts, hived);
  const due = outsideHarm(facts, windowOf(expected.latest, addDays(expected.latest, value(book, 'act-soon-days'))));
  if (due === null) return null;
  const untouched = windowOf(hived.day, addDays(expected.earliest, -1));
  const quiet = untouched.latest >= untouched.earliest && untouched.latest < due.earliest;
  return {
    rule: 'new-swarm',
    colony: view.colony,
    day: view.day,
    verb: 'open',
    act: 'open',
    places: [],
    window: due,
    say: saying('swarm.first-eggs', { window: windowSlot(due, cite) }),
    reasons: [
      saying('swarm.hived', { day: daySlot(hived.day, hived.cite) }),
      saying('swarm.eggs-expected', { window: windowSlot(expected, cite) }),
      saying('swarm.eggs-young', { days: figureNumber(book, 'swarm-young-eggs', 'days') }),
    ],
    chance: null,
    wouldChange: [saying('swarm.change-eggs')],
    forbids: quiet
      ? [
          {
            act: 'lift brood',
            window: untouched,
            why: saying('swarm.untouched', { day: daySlot(expected.earliest, cite) }),
          },
        ]
      : [],
    cautions: ['stings', 'smoker'],
    weight: weights.firstEggs,
  };
}

function rangeWindow({ book }: Facts, hived: Hived): Window {
  const days = rangeOf(book, 'swarm-first-eggs');
  return windowOf(addDays(hived.day, days.low), addDays(hived.day, days.high));
}
