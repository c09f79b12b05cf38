/**
 * Food that runs out: honey within reach against the bees that eat it. It never says how much sugar to give,
 * and it never asks to lift brood for it.
 */
import { rangeOf, value } from '../figures/book.ts';
import { addDays, daysBetween } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';
import { windowOf } from '../numbers/window.ts';
import type { Advice } from './advice.ts';
import { byEntry, daySlot, figureNumber, fromEntries, numberSlot, rangeSlot, saying, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { inVisitSeason } from './season.ts';
import { type StoresLeft, storesLeft } from './stores-left.ts';
import { lastEvent, lastOpening, nestEntries } from './view-facts.ts';
import { weights } from './weights.ts';

export const storesLow: Rule = {
  key: 'stores-low',
  about: 'Says when the honey within reach does not last, by the bees and the season.',
  advise: (facts) => {
    const { view, book } = facts;
    const cold = !inVisitSeason(facts);
    const left = storesLeft(view, book, cold);
    if (left === null || isTooOld(facts, left, cold) || isSupplied(facts)) return [];
    const urgent = left.days.likely <= value(book, 'stores-urgent-days');
    const low = left.days.likely <= value(book, cold ? 'stores-warn-days-cold' : 'stores-warn-days');
    if (!low || (!urgent && (view.room?.nectarPerDay.low ?? 0) > 0)) return [];
    return [feed(facts, left, urgent)];
  },
};

function feed(facts: Facts, left: StoresLeft, urgent: boolean): Advice {
  const { view, book } = facts;
  const cite = fromEntries(nestEntries(view), ...left.figures);
  const within = urgent ? value(book, 'act-now-days') : value(book, 'act-soon-days');
  const window = windowOf(view.day, addDays(view.day, within));
  const read = lastOpening(view);
  const seen =
    read === null
      ? []
      : [
          saying('stores.read', {
            day: daySlot(read.day, byEntry(read.entry)),
            honey: rangeSlot(left.honeyKg, 'kg', cite),
          }),
        ];
  const gap =
    left.reachKg.likely < left.honeyKg.likely ? [saying('stores.gap', { reach: rangeSlot(left.reachKg, 'kg', cite) })] : [];
  return {
    rule: 'stores-low',
    colony: view.colony,
    day: view.day,
    verb: 'no visit',
    act: 'feed',
    places: [],
    window,
    say: saying(urgent ? 'stores.urgent' : 'stores.low', {
      window: windowSlot(window, cite),
      reach: rangeSlot(left.reachKg, 'kg', cite),
      days: numberSlot(Math.floor(left.days.likely), 'days', cite),
    }),
    reasons: [
      ...seen,
      ...gap,
      saying('stores.eaters', {
        bees: rangeSlot(left.bees, 'bees', cite),
        days: rangeSlot(wholeDays(left.days), 'days', cite),
      }),
      saying('stores.short', { least: figureNumber(book, 'least-stores', 'kg') }),
    ],
    chance: null,
    wouldChange: [saying('stores.change-nectar'), saying('stores.change-weighed')],
    forbids: [{ act: 'take honey', window, why: saying('stores.keep') }],
    cautions: ['stings', 'lifting'],
    weight: urgent ? weights.starving : weights.storesLow,
  };
}

function wholeDays({ low, likely, high }: Range): Range {
  return { low: Math.floor(low), likely: Math.floor(likely), high: Math.round(high) };
}

/** In the season, a reading of weeks ago says nothing of food; a visit is due instead. */
function isTooOld({ view, book }: Facts, left: StoresLeft, cold: boolean): boolean {
  return !cold && daysBetween(left.readOn, view.day) > value(book, 'reading-holds-days');
}

/** Fed since, or a swarm in its first days, which its own rule looks after. */
function isSupplied({ view, book }: Facts): boolean {
  const fed = lastEvent(view, 'fed');
  const hived = lastEvent(view, 'swarm hived');
  const justFed = fed !== null && daysBetween(fed.day, view.day) < value(book, 'fed-enough-days');
  return justFed || (hived !== null && daysBetween(hived.day, view.day) <= rangeOf(book, 'soft-comb-days').high);
}
