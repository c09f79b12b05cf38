/**
 * What a colony is owed after it was parted, united or given a queen: one look when it tells, and rest until then. After
 * a swarm, cut cells or a fallen comb other rules speak.
 */
import type { ColonyView } from '../colony/view.ts';
import { rangeOf } from '../figures/book.ts';
import type { FigureKey } from '../figures/list.ts';
import { addDays } from '../numbers/day.ts';
import { windowOf } from '../numbers/window.ts';
import type { Advice } from './advice.ts';
import { byEntry, byFigure, daySlot, figureRange, saying, windowSlot, workedOut } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { lastOpening, outsideHarm } from './view-facts.ts';
import { weights } from './weights.ts';

export const afterChange: Rule = {
  key: 'after-change',
  about: 'Asks for the one look that a colony is owed after it was split, united or given a queen.',
  advise: (facts) => {
    const change = lastChange(facts.view);
    const owed = change === null ? null : owedBy(change);
    if (change === null || owed === null) return [];
    return [look(facts, change, owed)].filter((advice) => advice !== null);
  },
};

type Change = ColonyView['events'][number];

/** The last of the changes; what came before it is overtaken. */
function lastChange({ events, day }: ColonyView): Change | null {
  const kinds = ['split off', 'split from', 'took in', 'queen began', 'swarm left', 'swarm hived'];
  return events.findLast((one) => one.day <= day && kinds.includes(one.event.kind)) ?? null;
}

interface Owed {
  /** Key of the sentence. */
  readonly what: 'sides' | 'cells' | 'united' | 'introduced';
  readonly days: FigureKey;
}

/** Which look tells after it; null where none is owed, or another rule asks for it. */
function owedBy({ event }: Change): Owed | null {
  if (event.kind === 'took in') return { what: 'united', days: 'union-look-days' };
  if (event.kind === 'queen began' && event.how === 'introduced') return { what: 'introduced', days: 'introduced-look-days' };
  if (event.kind !== 'split off' && event.kind !== 'split from') return null;
  if (event.queenSide === 'unknown') return { what: 'sides', days: 'comb-fell-look-days' };
  const withoutQueen = event.queenSide === (event.kind === 'split off' ? 'went' : 'stayed');
  return withoutQueen ? { what: 'cells', days: 'split-cells-look-days' } : null;
}

function look(facts: Facts, change: Change, { what, days }: Owed): Advice | null {
  const { view, book } = facts;
  const range = rangeOf(book, days);
  const asked = windowOf(addDays(change.day, range.low), addDays(change.day, range.high));
  const opened = lastOpening(view)?.day ?? change.day;
  if (asked.latest < view.day || opened >= asked.earliest) return null;
  const window = outsideHarm(facts, asked);
  if (window === null) return null;
  const cite = workedOut(byEntry(change.entry), byFigure(days));
  return {
    rule: 'after-change',
    colony: view.colony,
    day: view.day,
    verb: 'open',
    act: 'open',
    places: [],
    window,
    say: saying(`owed.${what}`, { window: windowSlot(window, cite) }),
    reasons: [
      saying(`owed.${what}-on`, { day: daySlot(change.day, byEntry(change.entry)) }),
      saying(`owed.${what}-why`, { days: figureRange(book, days, 'days') }),
    ],
    chance: null,
    wouldChange: [saying(`owed.${what}-change`)],
    forbids: [],
    cautions: ['stings', 'smoker'],
    weight: weights.owedLook,
  };
}
