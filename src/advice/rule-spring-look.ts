/**
 * The first look of the year, on the first day that lets brood be lifted: what it is for, in the order in which it is
 * found. When the next visit is due later in the year is another rule's.
 */
import { value } from '../figures/book.ts';
import { byEntry, daySlot, figureNumber, fromEntries, saying, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { inVisitSeason, winterBetween } from './season.ts';
import { lastOpening, outsideHarm, soon } from './view-facts.ts';
import { weights } from './weights.ts';

export const springLook: Rule = {
  key: 'spring-look',
  about: 'Asks for the first look of the year on a mild day, and says what it is for.',
  advise: (facts) => {
    const { view, book } = facts;
    const last = lastOpening(view);
    if (last === null || !isFirstOfYear(facts)) return [];
    const window = outsideHarm(facts, soon(view.day, value(book, 'check-interval-rest')));
    if (window === null) return [];
    const cite = fromEntries([last.entry], 'check-interval-rest');
    return [
      {
        rule: 'spring-look',
        colony: view.colony,
        day: view.day,
        verb: 'open',
        act: 'open',
        places: [],
        window,
        say: saying('spring.say', { window: windowSlot(window, cite), last: daySlot(last.day, byEntry(last.entry)) }),
        reasons: [
          saying('spring.why', { least: figureNumber(book, 'open-brood-least-temp', 'degC') }),
          saying('spring.food'),
          saying('spring.eggs'),
          saying('spring.floor'),
          saying('spring.board'),
        ],
        chance: null,
        wouldChange: [saying('spring.change')],
        forbids: [{ act: 'spread the brood', window, why: saying('spring.no-spread') }],
        cautions: ['stings', 'smoker'],
        weight: weights.springLook,
      },
    ];
  },
};

/** The cold months lie between the last opening and today. */
export function isFirstOfYear(facts: Facts): boolean {
  const last = lastOpening(facts.view);
  return last !== null && inVisitSeason(facts) && winterBetween(last.day, facts.view.day, facts.latitude, facts.book);
}
