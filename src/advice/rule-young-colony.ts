/**
 * Milestones of a split or nucleus: brood of its own queen by a day, and combs enough before winter. A hived swarm has a
 * rule of its own; what is not known of the nest says nothing.
 */
import { value } from '../figures/book.ts';
import type { FigureKey } from '../figures/list.ts';
import { daysBetween } from '../numbers/day.ts';
import type { Advice } from './advice.ts';
import { figureNumber, fromEntries, numberSlot, saying, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { inVisitSeason } from './season.ts';
import { broodPlaces, isKnownBare, lastOpening, nestEntries, outsideHarm, soon } from './view-facts.ts';
import { weights } from './weights.ts';

export const youngColony: Rule = {
  key: 'young-colony',
  about: 'Holds a split or nucleus against what it should have reached by its age.',
  advise: (facts) => {
    const { view, book } = facts;
    const opened = lastOpening(view);
    if ((view.origin !== 'split' && view.origin !== 'nucleus') || opened === null || !inVisitSeason(facts)) return [];
    if (view.queen.eggs === 'none seen' || view.cells !== null) return [];
    const age = daysBetween(view.began.latest, opened.day);
    if (age > value(book, 'young-colony-days') || !isKnown(facts)) return [];
    const behind = age >= value(book, 'young-combs-days') ? behindBy(facts) : null;
    const window = behind === null ? null : outsideHarm(facts, soon(view.day, value(book, 'check-interval-swarm')));
    return behind === null || window === null ? [] : [help(facts, behind, age, window)];
  },
};

/** Every bar of its bay is known. */
function isKnown({ view }: Facts): boolean {
  return view.bars.length > 0 && view.bars.every((bar) => isKnownBare(bar) || bar.shares !== null);
}

/** Combs with brood that it has, where they are fewer than they should be; null when it has enough. */
function behindBy({ view, book }: Facts): number | null {
  const combs = broodPlaces(view, book).length;
  return combs < value(book, 'young-least-brood') ? combs : null;
}

function help(facts: Facts, combs: number, age: number, window: Advice['window']): Advice {
  const { view, book } = facts;
  const key: FigureKey = 'young-least-brood';
  const cite = fromEntries(nestEntries(view), key, 'young-combs-days');
  return {
    rule: 'young-colony',
    colony: view.colony,
    day: view.day,
    verb: 'open',
    act: 'move combs',
    places: [],
    window,
    say: saying('young.say', { window: windowSlot(window, cite) }),
    reasons: [
      saying('young.behind', {
        n: numberSlot(combs, 'count', cite),
        days: numberSlot(age, 'days', cite),
        least: figureNumber(book, key, 'count'),
      }),
      saying('young.donor'),
      saying('young.queen'),
    ],
    chance: null,
    wouldChange: [saying('young.change')],
    forbids: [{ act: 'split', window, why: saying('young.no-split') }],
    cautions: ['stings', 'smoker', 'suspected illness'],
    weight: weights.youngColony,
  };
}
