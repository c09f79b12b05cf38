/**
 * After a comb fell: whether the queen is still there is asked once, when eggs tell; where honey ran, the entrance is
 * watched for robbers. It leaves out what was broken; the keeper knows.
 */
import type { ColonyView } from '../colony/view.ts';
import { rangeOf, value } from '../figures/book.ts';
import { addDays, daysBetween, later } from '../numbers/day.ts';
import { type Window, windowOf } from '../numbers/window.ts';
import type { Advice } from './advice.ts';
import { byEntry, byFigure, daySlot, figureRange, placesSlot, saying, windowSlot, workedOut } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { lastOpening, outsideHarm } from './view-facts.ts';
import { weights } from './weights.ts';

type Fall = ColonyView['events'][number] & { readonly event: { readonly kind: 'comb fell' } };

export const combFell: Rule = {
  key: 'comb-fell',
  about: 'After a comb fell, asks for eggs when they tell, and has the entrance watched where honey ran.',
  advise: (facts) => {
    const fall = lastFall(facts);
    if (fall === null) return [];
    return [watchEntrance(facts, fall), lookForEggs(facts, fall)].filter((advice) => advice !== null);
  },
};

function lastFall({ view, book }: Facts): Fall | null {
  const found = view.events.findLast((one): one is Fall => one.event.kind === 'comb fell' && one.day <= view.day) ?? null;
  return found !== null && daysBetween(found.day, view.day) <= value(book, 'comb-fell-days') ? found : null;
}

/** Eggs of that very day are eggs for three days: only later ones were laid since. */
function lookForEggs(facts: Facts, fall: Fall): Advice | null {
  const { view, book } = facts;
  const days = rangeOf(book, 'comb-fell-look-days');
  const opened = lastOpening(view)?.day ?? fall.day;
  // Somebody looked since: what was found is another rule's.
  if (opened >= addDays(fall.day, days.low) && view.queen.eggs !== 'not looked') return null;
  const cite = workedOut(byEntry(fall.entry), byFigure('comb-fell-look-days'));
  const due = outsideHarm(facts, windowOf(addDays(fall.day, days.low), addDays(fall.day, days.high)));
  if (due === null) return null;
  return {
    ...common(facts, fall, due),
    verb: 'open',
    act: 'open',
    say: saying('fell.eggs', { window: windowSlot(due, cite) }),
    reasons: [
      saying('fell.on', {
        day: daySlot(fall.day, byEntry(fall.entry)),
        places: placesSlot([fall.event.place], byEntry(fall.entry)),
      }),
      saying('fell.tells', { days: figureRange(book, 'comb-fell-look-days', 'days') }),
    ],
    wouldChange: [saying('fell.change-queen')],
    cautions: ['stings', 'smoker'],
    weight: weights.lookForEggs,
  };
}

function watchEntrance(facts: Facts, fall: Fall): Advice | null {
  const { view, book } = facts;
  const until = addDays(fall.day, value(book, 'robbing-watch-days'));
  if (fall.event.what !== 'honey' || view.day > until) return null;
  const window = windowOf(later(view.day, fall.day), until);
  const cite = workedOut(byEntry(fall.entry), byFigure('robbing-watch-days'));
  return {
    ...common(facts, fall, window),
    verb: 'no visit',
    act: 'look from outside',
    say: saying('fell.watch', { window: windowSlot(window, cite) }),
    reasons: [saying('fell.honey', { day: daySlot(fall.day, byEntry(fall.entry)) })],
    wouldChange: [saying('fell.change-quiet')],
    forbids: [{ act: 'feed', window, why: saying('fell.no-feed') }],
    cautions: ['stings'],
    weight: weights.watchRobbing,
  };
}

function common({ view }: Facts, fall: Fall, window: Window) {
  return { rule: 'comb-fell', colony: view.colony, day: view.day, places: [fall.event.place], window, chance: null, forbids: [] };
}
