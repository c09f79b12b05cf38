/**
 * More bars without comb than a colony keeps warm and builds straight: the outer ones out, the follower board up. A
 * swarm in its first weeks is left out, because all its bars are bare; so are bars of which nobody knows.
 */
import { value } from '../figures/book.ts';
import { addDays, daysBetween, later } from '../numbers/day.ts';
import { windowOf } from '../numbers/window.ts';
import type { Advice } from './advice.ts';
import { figureNumber, fromEntries, numberSlot, placesSlot, saying, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { isKnownBare, lastEvent, nestEntries } from './view-facts.ts';
import { weights } from './weights.ts';

export const bareBars: Rule = {
  key: 'bare-bars',
  about: 'Asks for bare bars to be taken out where more hang in the bay than a colony builds at a time.',
  advise: (facts) => {
    const { view, book } = facts;
    if (isNewSwarm(facts)) return [];
    const bare = view.bars.filter(isKnownBare).map((bar) => bar.place);
    const most = value(book, 'most-unbuilt-bars');
    const outer = outerRun(facts);
    const over = Math.min(bare.length - most, outer.length);
    return over <= 0 || view.bars.length === bare.length ? [] : [takeOut(facts, outer.slice(0, over), bare.length)];
  },
};

/** A colony that has still to build all of its comb. */
function isNewSwarm({ view, book }: Facts): boolean {
  const hived = lastEvent(view, 'swarm hived') ?? lastEvent(view, 'split from');
  return hived !== null && daysBetween(hived.day, view.day) <= value(book, 'new-swarm-days');
}

/** Bare bars from the follower board inward, up to the first that is not. */
function outerRun({ view }: Facts): readonly number[] {
  const inward = view.entrance === 'last' ? view.bars : view.bars.toReversed();
  const end = inward.findIndex((bar) => !isKnownBare(bar));
  return inward.slice(0, end < 0 ? 0 : end).map((bar) => bar.place);
}

function takeOut({ view, book }: Facts, places: readonly number[], bare: number): Advice {
  const cite = fromEntries(nestEntries(view), 'most-unbuilt-bars');
  const window = windowOf(view.day, later(view.day, addDays(view.day, value(book, 'act-soon-days'))));
  return {
    rule: 'bare-bars',
    colony: view.colony,
    day: view.day,
    verb: 'glance',
    act: 'glance',
    places,
    window,
    say: saying('bare.say', {
      n: numberSlot(places.length, 'bars', cite),
      places: placesSlot(
        [...places].sort((a, b) => a - b),
        cite,
      ),
      window: windowSlot(window, cite),
    }),
    reasons: [
      saying('bare.count', { n: numberSlot(bare, 'bars', cite), most: figureNumber(book, 'most-unbuilt-bars', 'bars') }),
      saying('bare.why'),
    ],
    chance: null,
    wouldChange: [saying('bare.change')],
    forbids: [{ act: 'give a bare bar', window, why: saying('bare.no-more') }],
    cautions: ['stings'],
    weight: weights.bareBars,
  };
}
