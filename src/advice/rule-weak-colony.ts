/**
 * A colony too small for the cold to come, or small out of the cold: think of uniting it, health first. It leaves out
 * young colonies, which are small by nature, and never says with which other; the keeper knows the yard.
 */
import { value } from '../figures/book.ts';
import { addDays, daysBetween } from '../numbers/day.ts';
import { windowOf } from '../numbers/window.ts';
import type { FigureKey } from '../figures/list.ts';
import type { Advice } from './advice.ts';
import { figureNumber, fromEntries, rangeSlot, saying, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { inAutumn, inSpring } from './season.ts';
import { lastOpening, nestEntries } from './view-facts.ts';
import { weights } from './weights.ts';

export const weakColony: Rule = {
  key: 'weak-colony',
  about: 'Finds a colony too small before or after the cold, and thinks of uniting it, health first.',
  advise: (facts) => {
    const { view, book } = facts;
    const least: FigureKey | null = inAutumn(facts) ? 'winter-least-bees' : inSpring(facts) ? 'spring-least-bees' : null;
    const opened = lastOpening(view);
    if (least === null || opened === null) return [];
    if (daysBetween(opened.day, view.day) > value(book, 'autumn-reading-days')) return [];
    const bees = view.totals.adults.total;
    const isWeak = bees.likely > 0 && bees.likely < value(book, least);
    if (!isWeak || daysBetween(view.began.latest, view.day) < value(book, 'nucleus-days')) return [];
    return [hasSigns(facts) ? askFirst(facts, least) : think(facts, least)];
  },
};

/** Something was seen lately that is asked about first. */
function hasSigns({ view, book }: Facts): boolean {
  const since = addDays(view.day, -value(book, 'autumn-reading-days'));
  return view.visits.some(({ day, signs }) => day >= since && day <= view.day && signs.length > 0);
}

function think(facts: Facts, least: FigureKey): Advice {
  const window = weeksFrom(facts);
  const cite = fromEntries(nestEntries(facts.view), least);
  return {
    ...base(facts, least),
    verb: 'open',
    act: 'unite',
    window,
    say: saying('weak.say', { bees: rangeSlot(facts.view.totals.adults.total, 'bees', cite), window: windowSlot(window, cite) }),
    wouldChange: [saying('weak.change-count'), saying('weak.change-queen')],
    weight: weights.weakColony,
  };
}

function askFirst(facts: Facts, least: FigureKey): Advice {
  const window = weeksFrom(facts);
  const why = saying('weak.signs');
  const cite = fromEntries(nestEntries(facts.view), least);
  return {
    ...base(facts, least),
    verb: 'no visit',
    act: 'wait',
    window,
    say: saying('weak.ask', { bees: rangeSlot(facts.view.totals.adults.total, 'bees', cite) }),
    wouldChange: [saying('weak.change-signs')],
    forbids: [{ act: 'unite', window, why }],
    weight: weights.weakColony,
  };
}

function base({ view, book }: Facts, least: FigureKey) {
  return {
    rule: 'weak-colony',
    colony: view.colony,
    day: view.day,
    places: [],
    reasons: [
      saying('weak.least', { least: figureNumber(book, least, 'bees') }),
      saying('weak.health'),
      saying('weak.one-queen'),
    ],
    chance: null,
    forbids: [],
    cautions: ['stings', 'smoker', 'suspected illness'] as const,
  };
}

function weeksFrom({ view, book }: Facts): Advice['window'] {
  return windowOf(view.day, addDays(view.day, value(book, 'check-interval-rest')));
}
