/**
 * A bee escape that is in: when it is to be taken out again, because combs that no bees guard are robbed, get wax moth and
 * soften in heat. It leaves out whether the bees have gone; the keeper sees.
 */
import type { ColonyView } from '../colony/view.ts';
import { rangeOf } from '../figures/book.ts';
import { addDays, later } from '../numbers/day.ts';
import { windowOf } from '../numbers/window.ts';
import type { Advice } from './advice.ts';
import { byEntry, byFigure, daySlot, figureRange, saying, windowSlot, workedOut } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { weights } from './weights.ts';

export const beeEscape: Rule = {
  key: 'bee-escape',
  about: 'Reminds of a bee escape that is in, until it is written down as taken out.',
  advise: (facts) => {
    const since = escapeIn(facts.view);
    return since === null ? [] : [takeOut(facts, since)];
  },
};

type Escape = ColonyView['events'][number] & { readonly event: { readonly kind: 'bee escape' } };

/** The one that was set and not taken out; null when none is in. */
function escapeIn({ events, day }: ColonyView): Escape | null {
  const last = events.findLast((one): one is Escape => one.event.kind === 'bee escape' && one.day <= day) ?? null;
  return last?.event.what === 'set' ? last : null;
}

function takeOut({ view, book }: Facts, since: Escape): Advice {
  const days = rangeOf(book, 'bee-escape-days');
  const latest = later(view.day, addDays(since.day, Math.round(days.high)));
  const window = windowOf(later(view.day, addDays(since.day, Math.round(days.low))), latest);
  const { after } = since.event;
  return {
    rule: 'bee-escape',
    colony: view.colony,
    day: view.day,
    verb: 'glance',
    act: 'glance',
    places: after === null ? [] : [after],
    window,
    say: saying('escape.out', { window: windowSlot(window, workedOut(byEntry(since.entry), byFigure('bee-escape-days'))) }),
    reasons: [
      saying('escape.since', { day: daySlot(since.day, byEntry(since.entry)) }),
      saying('escape.why', { days: figureRange(book, 'bee-escape-days', 'days') }),
    ],
    chance: null,
    wouldChange: [saying('escape.change')],
    forbids: [],
    cautions: ['stings', 'smoker', 'lifting'],
    weight: weights.escapeOut,
  };
}
