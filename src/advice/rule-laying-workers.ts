/**
 * Several eggs in a cell, or domed caps on worker cells: laying workers or a queen that lays drone. One sign
 * alone may be a young queen's first days, so a second look comes first; the state decides what follows.
 */
import { value } from '../figures/book.ts';
import type { Id } from '../journal/entry.ts';
import { addDays, type Day, daysBetween } from '../numbers/day.ts';
import { windowOf } from '../numbers/window.ts';
import type { Advice, Cite, Saying } from './advice.ts';
import { byEntry, daySlot, figureNumber, figureRange, fromEntries, saying, term, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { inVisitSeason } from './season.ts';
import { outsideHarm, soon } from './view-facts.ts';
import { weights } from './weights.ts';

const tellingSigns: readonly string[] = ['several eggs in a cell', 'domed caps on worker cells'];

interface Seen {
  readonly code: string;
  readonly day: Day;
  readonly entry: Id;
}

export const layingWorkers: Rule = {
  key: 'laying-workers',
  about: 'Acts on signs of laying workers or of a queen that lays drone, after a second look.',
  advise: (facts) => {
    const { view, book } = facts;
    if (!inVisitSeason(facts)) return [];
    const seen = signsSeen(facts);
    if (seen.length === 0 && view.queen.state !== 'laying workers' && view.queen.state !== 'drone layer') return [];
    const window = outsideHarm(facts, soon(view.day, value(book, 'act-soon-days')));
    if (window === null) return [];
    if (view.queen.state === 'laying workers') return [advice(facts, window, seen, 'workers', 'test with a comb of eggs')];
    if (view.queen.state === 'drone layer') return [advice(facts, window, seen, 'drone', 'requeen')];
    return [advice(facts, window, seen, 'again', 'open')];
  },
};

function advice(
  facts: Facts,
  window: Advice['window'],
  seen: readonly Seen[],
  key: 'workers' | 'drone' | 'again',
  act: Advice['act'],
): Advice {
  const { view, book } = facts;
  const cite = fromEntries(view.queen.from, 'laying-workers-onset');
  const until = windowOf(view.day, addDays(window.latest, value(book, 'requeen-think-days')));
  return {
    rule: 'laying-workers',
    colony: view.colony,
    day: view.day,
    verb: 'open',
    act,
    places: [],
    window,
    say: saying(`layers.${key}`, { window: windowSlot(window, cite) }),
    reasons: [...seen.map(seenSaying), ...(key === 'again' ? laid(facts, cite) : []), ...why(facts, key)],
    chance: null,
    wouldChange: [saying('layers.change-single'), saying('layers.change-worker')],
    forbids: key === 'drone' ? [] : [{ act: 'requeen', window: until, why: saying(`layers.dont-requeen-${key}`) }],
    cautions: ['stings', 'smoker', ...(key === 'workers' ? (['suspected illness'] as const) : [])],
    weight: key === 'again' ? weights.lookForEggs : weights.layingWorkers,
  };
}

function why({ book }: Facts, key: 'workers' | 'drone' | 'again'): readonly Saying[] {
  const onset = saying('layers.onset', { days: figureRange(book, 'laying-workers-onset', 'days') });
  if (key === 'workers') return [onset, saying('layers.open-brood')];
  if (key === 'drone') return [saying('layers.drone-why', { days: figureNumber(book, 'queen-mating-deadline', 'days') })];
  return [saying('layers.young'), onset];
}

function laid({ view }: Facts, cite: Cite): readonly Saying[] {
  return view.queen.lastLaid === null ? [] : [saying('layers.worker-brood', { window: windowSlot(view.queen.lastLaid, cite) })];
}

function seenSaying(seen: Seen): Saying {
  return saying('sign.seen', { sign: term(`sign.${seen.code}`), day: daySlot(seen.day, byEntry(seen.entry)) });
}

/** The telling signs of the last weeks, each at its last day. */
function signsSeen({ view, book }: Facts): readonly Seen[] {
  const days = value(book, 'sign-ask-days');
  return tellingSigns.flatMap((code) => {
    const visit = view.visits.findLast((each) => each.day <= view.day && each.signs.some((sign) => sign.code === code));
    if (visit === undefined || daysBetween(visit.day, view.day) > days) return [];
    const sign = visit.signs.find((each) => each.code === code);
    return sign === undefined ? [] : [{ code, day: visit.day, entry: sign.entry }];
  });
}
