/**
 * Whether a look is worth it by what the model foresees: on which day, what for and on which bars; or that nothing
 * a look could change is likely yet. It takes the place of the usual days between visits where the model has
 * spoken; every need that something seen has raised stands above it.
 */
import type { Look } from '../colony/foreseen.ts';
import { value } from '../figures/book.ts';
import type { FigureKey } from '../figures/list.ts';
import { addDays, daysBetween } from '../numbers/day.ts';
import { windowOf } from '../numbers/window.ts';
import type { Advice, Cite } from './advice.ts';
import { byEntry, daySlot, figureNumber, fromEntries, placesSlot, saying, term, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { inVisitSeason, winterBetween } from './season.ts';
import { lastEvent, lastOpening, outsideHarm, soon } from './view-facts.ts';
import { weights } from './weights.ts';

export const worthALook: Rule = {
  key: 'worth-a-look',
  about: 'Says when a look is worth it by what the model foresees, and which bars tell.',
  advise: (facts) => {
    const look = lookToday(facts);
    if (look === null || look.openOn === null || look.harms) return [];
    const ahead = daysBetween(facts.view.day, look.openOn);
    if (ahead <= value(facts.book, 'due-warn-days')) return [open(facts, look)].filter((advice) => advice !== null);
    return [look.changesAct >= value(facts.book, 'look-glance-chance') ? glance(facts, look) : leave(facts, look)];
  },
};

/** What the model says of a look on the view's day; null where it has not spoken, or other rules speak of the season. */
export function lookToday(facts: Facts): Look | null {
  const { view, book, latitude } = facts;
  const last = lastOpening(view);
  if (view.foreseen === null || view.foreseen.day !== view.day || last === null || !inVisitSeason(facts)) return null;
  if (last.cellsCut && daysBetween(last.day, view.day) <= value(book, 'check-interval-swarm')) return null;
  const hived = lastEvent(view, 'swarm hived');
  if (hived !== null && daysBetween(hived.day, view.day) <= value(book, 'new-swarm-days')) return null;
  return winterBetween(last.day, view.day, latitude, book) ? null : view.foreseen.look;
}

function open(facts: Facts, look: Look): Advice | null {
  const { view, book } = facts;
  const from = look.openOn ?? view.day;
  const window = outsideHarm(facts, windowOf(from, addDays(from, value(book, 'act-soon-days'))));
  const asked = look.questions.find(({ ask }) => ask === look.openFor);
  const last = lastOpening(view);
  if (window === null || last === null) return null;
  const cite = citeOf(facts);
  const lastDay = daySlot(last.day, byEntry(last.entry));
  const slots = { window: windowSlot(window, cite) };
  // Nothing is likely: it is only that nobody looked for long.
  if (asked === undefined) {
    const days = figureNumber(book, 'engine-open-latest', 'days');
    return {
      ...base(facts, 'open', []),
      window,
      say: saying('look.long', { ...slots, last: lastDay }),
      reasons: [saying('look.long-why', { days })],
      weight: weights.worthALook,
    };
  }
  const { ask, chance, places } = asked;
  const told = { places: placesSlot(places, cite) };
  const what = { ...slots, ask: term(`advice.look.ask-${ask}`) };
  return {
    ...base(facts, 'open', places),
    window,
    say: places.length === 0 ? saying('look.open-all', what) : saying('look.open', { ...what, ...told }),
    reasons: [saying(`look.why-${ask}`), saying('look.last', { last: lastDay })],
    chance: { chance, of: saying(`look.of-${ask}`) },
    weight: weights.worthALook + (weights.holdBar - weights.worthALook) * chance,
  };
}

/**
 * Cells, eggs and stores would have it opened; what is left to change today is room, and that is judged at the end
 * of the nest, without lifting brood.
 */
function glance(facts: Facts, look: Look): Advice {
  const { view, book } = facts;
  const places = look.questions.find(({ ask }) => ask === 'room')?.places ?? [];
  const window = soon(view.day, value(book, 'act-soon-days'));
  return {
    ...base(facts, 'glance', places),
    window,
    say: saying('look.glance', { window: windowSlot(window, citeOf(facts)) }),
    reasons: [saying('look.why-room')],
    chance: { chance: look.changesAct, of: saying('look.of-room') },
    weight: weights.notWorthALook,
  };
}

function leave(facts: Facts, look: Look): Advice {
  const { view } = facts;
  const latest = addDays(look.openOn ?? view.day, -1);
  const window = windowOf(view.day, latest);
  const day = daySlot(latest, citeOf(facts));
  return {
    ...base(facts, 'leave shut', []),
    act: 'wait',
    window,
    say: saying('look.leave', { day }),
    reasons: [saying('look.leave-why', { most: figureNumber(facts.book, 'engine-open-latest', 'days') })],
    chance: { chance: look.changesAct, of: saying('look.of-any') },
    forbids: [{ act: 'open', window, why: saying('look.leave', { day }) }],
    cautions: [],
    weight: weights.notWorthALook,
  };
}

type Common = Omit<Advice, 'say' | 'reasons' | 'weight' | 'window'>;

function base({ view }: Facts, verb: Advice['verb'], places: readonly number[]): Common {
  return {
    rule: 'worth-a-look',
    colony: view.colony,
    day: view.day,
    verb,
    act: verb === 'glance' ? 'glance' : 'open',
    places,
    chance: null,
    wouldChange: [saying('look.change-outside'), saying('look.change-swarm')],
    forbids: [],
    cautions: verb === 'open' ? ['stings', 'smoker'] : [],
  };
}

/** The model is worked out from every visit; the last one and the chance from which it opens stand for them. */
function citeOf({ view }: Facts): Cite {
  const last = lastOpening(view);
  const from: FigureKey = 'engine-open-chance';
  return fromEntries(last === null ? [] : [last.entry], from);
}
