/**
 * Robbers were seen: the hive stays shut, its entrance narrow, and nothing sweet stands open, for as long as they come
 * back. It leaves out why they came; in a dearth every opened hive draws them.
 */
import type { ColonyView } from '../colony/view.ts';
import { value } from '../figures/book.ts';
import { addDays, type Day } from '../numbers/day.ts';
import { windowOf } from '../numbers/window.ts';
import type { Id } from '../journal/entry.ts';
import { byEntry, byFigure, daySlot, figureNumber, saying, workedOut } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { weights } from './weights.ts';

export const robbers: Rule = {
  key: 'robbers',
  about: 'After robbers were seen, keeps the hive shut and narrow, and nothing sweet about.',
  advise: ({ view, book }: Facts) => {
    const seen = lastSeen(view);
    const until = seen === null ? null : addDays(seen.day, value(book, 'robbing-watch-days'));
    if (seen === null || until === null || until < view.day) return [];
    const window = windowOf(view.day, until);
    const why = saying('robbers.why');
    return [
      {
        rule: 'robbers',
        colony: view.colony,
        day: view.day,
        verb: 'leave shut',
        act: 'wait',
        places: [],
        window,
        say: saying('robbers.say', { day: daySlot(until, workedOut(byEntry(seen.entry), byFigure('robbing-watch-days'))) }),
        reasons: [
          saying('robbers.seen', { day: daySlot(seen.day, byEntry(seen.entry)) }),
          why,
          saying('robbers.days', { days: figureNumber(book, 'robbing-watch-days', 'days') }),
        ],
        chance: null,
        wouldChange: [saying('robbers.change')],
        forbids: (['open', 'glance', 'take honey', 'feed', 'split', 'unite', 'give a bare bar'] as const).map((act) => ({
          act,
          window,
          why,
        })),
        cautions: ['stings'],
        weight: weights.robbers,
      },
    ];
  },
};

interface Seen {
  readonly day: Day;
  readonly entry: Id;
}

/** The last visit or look from outside that told of robbers. */
function lastSeen({ visits, events, day }: ColonyView): Seen | null {
  const inside = visits.findLast(
    (visit) =>
      visit.day <= day && (visit.temperNotes.includes('robbing about') || visit.signs.some(({ code }) => code === 'robbing')),
  );
  const outside = events.findLast((one) => one.day <= day && one.event.kind === 'look' && one.event.seen.includes('robbing'));
  const found: readonly Seen[] = [inside ?? [], outside ?? []].flat();
  return found.reduce<Seen | null>((last, one) => (last === null || one.day > last.day ? one : last), null);
}
