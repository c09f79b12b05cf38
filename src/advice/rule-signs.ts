/**
 * Signs on brood, bees or comb: some mean stop, some mean ask. The sign is described, never named as an
 * illness; what it is, the authority and its laboratory say.
 */
import { type Sign, type SignLevel, signs } from '../colony/signs.ts';
import { value } from '../figures/book.ts';
import type { Id } from '../journal/entry.ts';
import { addDays, type Day, daysBetween, later } from '../numbers/day.ts';
import { windowOf } from '../numbers/window.ts';
import type { Act, Advice, Saying } from './advice.ts';
import { byEntry, daySlot, figureNumber, fromEntries, nameSlot, saying, term, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { soon } from './view-facts.ts';
import { weights } from './weights.ts';

/** What is not done to a colony with a sign that means stop. Feeding without opening stays possible. */
const stopped: readonly Act[] = [
  'open',
  'glance',
  'lift brood',
  'give a bare bar',
  'give several bare bars',
  'spread the brood',
  'cut queen cells',
  'split',
  'unite',
  'requeen',
  'take honey',
  'move combs',
  'test with a comb of eggs',
  'bend comb straight',
  'mark the queen',
];

interface Seen {
  readonly code: string;
  readonly day: Day;
  readonly entry: Id;
}

export const stopSign: Rule = {
  key: 'stop-sign',
  about: 'Stops everything when a sign was seen that the authority must judge.',
  advise: (facts) => {
    const [first, ...rest] = seenSigns(facts, 'stop', value(facts.book, 'sign-stop-days'));
    return first === undefined ? [] : [stop(facts, first, rest)];
  },
};

export const askSign: Rule = {
  key: 'ask-sign',
  about: 'Asks for a second pair of eyes on a sign that the keeper cannot judge alone.',
  advise: (facts) => {
    const [first, ...rest] = seenSigns(facts, 'ask', value(facts.book, 'sign-ask-days'));
    return first === undefined ? [] : [ask(facts, first, rest)];
  },
};

function stop(facts: Facts, first: Seen, rest: readonly Seen[]): Advice {
  const { view, book, authority } = facts;
  const window = windowOf(view.day, later(view.day, addDays(first.day, value(book, 'sign-stop-days'))));
  const slots = { sign: term(`sign.${first.code}`), day: daySlot(first.day, byEntry(first.entry)) };
  const call =
    authority === null
      ? saying('sign.stop', slots)
      : saying('sign.stop-call', { ...slots, name: nameSlot(authority.name), phone: nameSlot(authority.phone) });
  return {
    rule: 'stop-sign',
    colony: view.colony,
    day: view.day,
    verb: 'leave shut',
    act: 'call the authority',
    places: [],
    window,
    say: call,
    reasons: [
      ...rest.map(seenSaying),
      saying('sign.no-diagnosis'),
      saying('sign.nothing-leaves'),
      saying('sign.stands', {
        days: figureNumber(book, 'sign-stop-days', 'days'),
      }),
    ],
    chance: null,
    wouldChange: [saying('sign.change-authority')],
    forbids: stopped.map((act) => ({ act, window, why: saying('sign.stop-why', slots) })),
    cautions: ['suspected illness', 'label and law'],
    weight: weights.stop,
  };
}

function ask(facts: Facts, first: Seen, rest: readonly Seen[]): Advice {
  const { view, book } = facts;
  const window = soon(view.day, value(book, 'act-soon-days'));
  const slots = { sign: term(`sign.${first.code}`), day: daySlot(first.day, byEntry(first.entry)) };
  return {
    rule: 'ask-sign',
    colony: view.colony,
    day: view.day,
    verb: 'no visit',
    act: 'ask someone',
    places: [],
    window,
    say: saying('sign.ask', { ...slots, window: windowSlot(window, fromEntries([first.entry], 'act-soon-days')) }),
    reasons: [...rest.map(seenSaying), saying('sign.ask-why')],
    chance: null,
    wouldChange: [saying('sign.change-gone')],
    forbids: (['move combs', 'unite'] as const).map((act) => ({ act, window, why: saying('sign.ask-first', slots) })),
    cautions: ['suspected illness'],
    weight: weights.askSign,
  };
}

function seenSaying(seen: Seen): Saying {
  return saying('sign.seen', { sign: term(`sign.${seen.code}`), day: daySlot(seen.day, byEntry(seen.entry)) });
}

/** Each sign of a level once, at the last day it was seen, the newest first. */
function seenSigns({ view }: Facts, level: SignLevel, within: number): readonly Seen[] {
  const codes = new Set((signs as readonly Sign[]).filter((sign) => sign.level === level).map((sign) => sign.code));
  const found = new Map<string, Seen>();
  for (const visit of view.visits) {
    if (visit.day > view.day || daysBetween(visit.day, view.day) > within) continue;
    for (const { code, entry } of visit.signs) if (codes.has(code)) found.set(code, { code, day: visit.day, entry });
  }
  return [...found.values()].sort((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : a.code < b.code ? -1 : 1));
}
