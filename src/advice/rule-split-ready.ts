/**
 * A strong colony in the swarm season: a split is a way to keep its bees, with what becomes of the side without a queen.
 * It is an offer; where queen cells hang, the rule of queen cells speaks.
 */
import { rangeOf, value } from '../figures/book.ts';
import { addDays, daysBetween } from '../numbers/day.ts';
import type { Advice } from './advice.ts';
import { figureRange, fromEntries, placesSlot, rangeSlot, saying, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { inSwarmSeason } from './season.ts';
import { broodPlaces, lastEvent, nestEntries, outsideHarm, soon } from './view-facts.ts';
import { weights } from './weights.ts';

export const splitReady: Rule = {
  key: 'split-ready',
  about: 'Offers a split of a strong colony in the swarm season.',
  advise: (facts) => {
    const { view, book } = facts;
    if (!inSwarmSeason(facts) || view.queen.state !== 'laying' || view.cells !== null) return [];
    const brood = broodPlaces(view, book);
    const bees = view.totals.adults.total;
    const isStrong = bees.likely >= rangeOf(book, 'strong-colony-bees').low && brood.length >= value(book, 'split-least-brood');
    if (!isStrong || wasParted(facts)) return [];
    const window = outsideHarm(facts, soon(view.day, value(book, 'check-interval-swarm')));
    return window === null ? [] : [offer(facts, brood, window)];
  },
};

/** It was split, or swarmed, so lately that both parts are still growing back. */
function wasParted({ view, book }: Facts): boolean {
  const parted = [lastEvent(view, 'split off'), lastEvent(view, 'swarm left')];
  return parted.some((one) => one !== null && daysBetween(one.day, view.day) < value(book, 'nucleus-days'));
}

function offer(facts: Facts, brood: readonly number[], window: Advice['window']): Advice {
  const { view, book } = facts;
  const cite = fromEntries(nestEntries(view), 'strong-colony-bees');
  const eggs = rangeOf(book, 'emergency-first-eggs');
  const first = {
    earliest: addDays(window.earliest, Math.round(eggs.low)),
    latest: addDays(window.latest, Math.round(eggs.high)),
  };
  return {
    rule: 'split-ready',
    colony: view.colony,
    day: view.day,
    verb: 'open',
    act: 'split',
    places: [],
    window,
    say: saying('split.say', { window: windowSlot(window, cite) }),
    reasons: [
      saying('split.strong', {
        bees: rangeSlot(view.totals.adults.total, 'bees', cite),
        places: placesSlot(brood, cite),
      }),
      saying('split.without', {
        days: figureRange(book, 'emergency-first-eggs', 'days'),
        window: windowSlot(first, fromEntries(nestEntries(view), 'emergency-first-eggs')),
      }),
      saying('split.with'),
      saying('split.unknown', { days: figureRange(book, 'comb-fell-look-days', 'days') }),
    ],
    chance: null,
    wouldChange: [saying('split.change-room'), saying('split.change-cells')],
    forbids: [],
    cautions: ['stings', 'smoker', 'lifting'],
    weight: weights.splitReady,
  };
}
