/**
 * Comb that runs across bars, has grown together, or on to the walls: put right while it is soft and light, on a day that
 * is not hot; old and heavy comb is left for a cool morning. A hived swarm's first combs are another rule's.
 */
import type { ColonyView, VisitSummary } from '../colony/view.ts';
import { rangeOf, value } from '../figures/book.ts';
import { type Day, daysBetween } from '../numbers/day.ts';
import { type Window, windowOf } from '../numbers/window.ts';
import type { Advice, Cite } from './advice.ts';
import { daySlot, figureNumber, fromEntries, placesSlot, saying, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { inVisitSeason } from './season.ts';
import { lastEvent, lastVisit, nestEntries, outsideHarm, soon } from './view-facts.ts';
import { weights } from './weights.ts';

export const crossedComb: Rule = {
  key: 'crossed-comb',
  about: 'Says when crossed or attached comb is best put right, and when not to touch it.',
  advise: (facts) => {
    const crooked = inVisitSeason(facts) ? crookedIn(facts) : null;
    if (crooked === null) return [];
    if (isHot(facts)) return [notToday(facts, crooked)];
    const { view, book } = facts;
    const days = crooked.isSoft ? value(book, 'act-soon-days') : value(book, 'crossed-wait-days');
    const window = outsideHarm(facts, soon(view.day, days));
    return window === null ? [] : [putRight(facts, crooked, window)];
  },
};

interface Crooked {
  readonly what: 'joined' | 'crossed' | 'attached';
  readonly places: readonly number[];
  readonly seen: VisitSummary;
  readonly isSoft: boolean;
}

function crookedIn(facts: Facts): Crooked | null {
  const { view } = facts;
  const seen = lastVisit(view);
  if (seen === null || isFirstWeeks(facts)) return null;
  const joined = (view.joined ?? []).flatMap((set) => set.places);
  if (joined.length > 0) return { what: 'joined', places: joined, seen, isSoft: areSoft(facts, joined) };
  const told = view.visits.findLast(({ straight, day }) => straight !== null && day <= view.day) ?? null;
  if (told !== null && told.straight === 'crossed')
    return { what: 'crossed', places: [], seen: told, isSoft: isSoftOn(facts, told.day) };
  const attached = view.bars.filter((bar) => bar.attached === 'attached').map(({ place }) => place);
  const soft = attached.filter((place) => areSoft(facts, [place]));
  return soft.length === 0 ? null : { what: 'attached', places: soft, seen, isSoft: true };
}

/** A swarm's first combs: the rule for new swarms speaks of those. */
function isFirstWeeks({ view, book }: Facts): boolean {
  const hived = lastEvent(view, 'swarm hived');
  return hived !== null && daysBetween(hived.day, view.day) <= value(book, 'new-swarm-days');
}

/** Read while still being drawn, not long ago. */
function areSoft(facts: Facts, places: readonly number[]): boolean {
  const bars = facts.view.bars.filter(({ place }) => places.includes(place));
  const most = value(facts.book, 'unbuilt-share');
  return (
    bars.length > 0 && bars.every(({ built, readOn }) => built > 0 && built <= most && readOn !== null && isSoftOn(facts, readOn))
  );
}

function isSoftOn({ view, book }: Facts, seen: Day): boolean {
  return daysBetween(seen, view.day) <= rangeOf(book, 'soft-comb-days').high;
}

function isHot({ weather, book }: Facts): boolean {
  return weather !== null && weather.highC !== null && weather.highC >= value(book, 'soft-comb-heat');
}

function putRight(facts: Facts, crooked: Crooked, window: Window): Advice {
  const { view, book } = facts;
  const cite = citeOf(view, crooked);
  const at = { window: windowSlot(window, cite) };
  const how = crooked.isSoft ? 'soft' : 'old';
  const say =
    crooked.places.length === 0
      ? saying(`crossed.say-${how}`, at)
      : saying(`crossed.say-${crooked.what}-${how}`, { ...at, places: placesSlot(crooked.places, cite) });
  return {
    ...base(facts, crooked, window),
    verb: 'open',
    act: 'bend comb straight',
    say,
    reasons: [
      saying('crossed.seen', { day: daySlot(crooked.seen.day, fromEntries([crooked.seen.entry], 'soft-comb-days')) }),
      crooked.isSoft ? saying('crossed.soft', { days: figureNumber(book, 'soft-comb-days', 'days') }) : saying('crossed.old'),
      saying('crossed.each-next'),
    ],
    forbids: [],
    weight: crooked.isSoft ? weights.softCrossed : weights.oldCrossed,
  };
}

/** A hot day: warm comb tears by its own weight. */
function notToday(facts: Facts, crooked: Crooked): Advice {
  const window = windowOf(facts.view.day);
  const why = saying('crossed.hot-why');
  return {
    ...base(facts, crooked, window),
    verb: 'no visit',
    act: 'wait',
    say: saying('crossed.not-today'),
    reasons: [
      why,
      saying('crossed.seen', { day: daySlot(crooked.seen.day, fromEntries([crooked.seen.entry], 'soft-comb-heat')) }),
    ],
    forbids: (['bend comb straight', 'move combs', 'take honey'] as const).map((act) => ({ act, window, why })),
    weight: weights.hotComb,
  };
}

function base({ view }: Facts, { places }: Crooked, window: Window) {
  return {
    rule: 'crossed-comb',
    colony: view.colony,
    day: view.day,
    places,
    window,
    chance: null,
    wouldChange: [saying('crossed.change')],
    cautions: ['stings', 'smoker', 'lifting'] as const,
  };
}

function citeOf(view: ColonyView, { seen }: Crooked): Cite {
  return fromEntries([...nestEntries(view), seen.entry], 'soft-comb-days');
}
