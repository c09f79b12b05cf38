/**
 * The order of combs before winter: the cluster moves sideways along its food and often will not cross an empty comb or
 * turn back, so all stores hang on one side of the brood, without a gap. It leaves out how much food is enough.
 */
import { value } from '../figures/book.ts';
import { daysBetween } from '../numbers/day.ts';
import type { BarView } from '../colony/view.ts';
import type { Window } from '../numbers/window.ts';
import type { Advice, Saying } from './advice.ts';
import { fromEntries, placesSlot, saying, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { inAutumn } from './season.ts';
import { broodPlaces, isKnownBare, lastOpening, nestEntries, outsideHarm, soon } from './view-facts.ts';
import { weights } from './weights.ts';

export const autumnOrder: Rule = {
  key: 'autumn-order',
  about: 'Before winter, asks for the stores on one side of the brood and no empty comb between.',
  advise: (facts) => {
    const { view, book } = facts;
    const opened = lastOpening(view);
    if (!inAutumn(facts) || opened === null) return [];
    if (daysBetween(opened.day, view.day) > value(book, 'autumn-reading-days')) return [];
    const gap = gaps(facts);
    const behind = gap.length > 0 ? [] : behindBrood(facts);
    if (gap.length === 0 && behind.length === 0) return [];
    const window = outsideHarm(facts, soon(view.day, value(book, 'act-soon-days')));
    if (window === null) return [];
    return [gap.length > 0 ? closeGap(facts, gap, window) : oneSide(facts, behind, window)];
  },
};

const outward = ({ view }: Facts): 1 | -1 => (view.entrance === 'last' ? -1 : 1);

/** Honey enough on a comb to be a store. */
function isStore({ shares, built }: BarView, { book }: Facts): boolean {
  return shares !== null && (shares.honey + shares.nectar) * built >= value(book, 'store-comb-share');
}

/** Combs with next to nothing on them, and bare bars. */
function isEmpty(bar: BarView, { book }: Facts): boolean {
  if (isKnownBare(bar)) return true;
  return bar.shares !== null && bar.shares.empty >= value(book, 'empty-comb-share');
}

/** Empty places between the brood and a store outward of it. */
function gaps(facts: Facts): readonly number[] {
  const brood = broodPlaces(facts.view, facts.book);
  if (brood.length === 0) return [];
  const way = outward(facts);
  const last = way === 1 ? Math.max(...brood) : Math.min(...brood);
  const beyond = facts.view.bars.filter(({ place }) => (place - last) * way > 0).sort((a, b) => (a.place - b.place) * way);
  const farStore = beyond.findLastIndex((bar) => isStore(bar, facts));
  return beyond.slice(0, Math.max(0, farStore)).flatMap((bar) => (isEmpty(bar, facts) ? bar.place : []));
}

/** Stores between the entrance and the brood, where others hang outward of it. */
function behindBrood(facts: Facts): readonly number[] {
  const brood = broodPlaces(facts.view, facts.book);
  if (brood.length === 0) return [];
  const way = outward(facts);
  const [first, last] = way === 1 ? [Math.min(...brood), Math.max(...brood)] : [Math.max(...brood), Math.min(...brood)];
  const stores = facts.view.bars.filter((bar) => isStore(bar, facts)).map(({ place }) => place);
  const isBeyond = stores.some((place) => (place - last) * way > 0);
  return isBeyond ? stores.filter((place) => (place - first) * way < 0) : [];
}

function closeGap(facts: Facts, places: readonly number[], window: Window): Advice {
  return advice(facts, places, window, 'autumn.gap', saying('autumn.gap-why'));
}

function oneSide(facts: Facts, places: readonly number[], window: Window): Advice {
  return advice(facts, places, window, 'autumn.side', saying('autumn.side-why'));
}

function advice(facts: Facts, given: readonly number[], window: Window, key: string, why: Saying): Advice {
  const { view } = facts;
  const places = [...given].sort((a, b) => a - b);
  const cite = fromEntries(nestEntries(view), 'store-comb-share', 'empty-comb-share');
  return {
    rule: 'autumn-order',
    colony: view.colony,
    day: view.day,
    verb: 'open',
    act: 'move combs',
    places,
    window,
    say: saying(key, { places: placesSlot(places, cite), window: windowSlot(window, cite) }),
    reasons: [why, saying('autumn.why')],
    chance: null,
    wouldChange: [saying('autumn.change')],
    forbids: [{ act: 'spread the brood', window, why: saying('autumn.no-spread') }],
    cautions: ['stings', 'smoker', 'lifting'],
    weight: weights.autumnOrder,
  };
}
