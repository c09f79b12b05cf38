/**
 * A patchy sheet of sealed brood, counted: worth a second look, and why the queen may not be to blame.
 * It never asks for a new queen.
 */
import { value } from '../figures/book.ts';
import { addDays, later } from '../numbers/day.ts';
import { type Window, windowOf } from '../numbers/window.ts';
import { figureNumber, fromEntries, numberSlot, saying, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { lastOpening, outsideHarm } from './view-facts.ts';
import { weights } from './weights.ts';

const whole = 100;

export const poorPattern: Rule = {
  key: 'poor-pattern',
  about: 'Says when counted sealed brood is patchy, and what else than the queen may be behind it.',
  advise: (facts) => {
    const { view, book } = facts;
    const { solid } = view;
    if (solid === null || solid.hi95 >= whole - value(book, 'good-pattern')) return [];
    const window = outsideHarm(facts, secondLook(facts));
    if (window === null) return [];
    const cite = fromEntries(solid.from, 'good-pattern');
    const percent = (value: number): ReturnType<typeof numberSlot> => numberSlot(value, 'percent', cite);
    return [
      {
        rule: 'poor-pattern',
        colony: view.colony,
        day: view.day,
        verb: 'open',
        act: 'open',
        places: [],
        window,
        say: saying('pattern.again', { window: windowSlot(window, cite), percent: percent(solid.percent) }),
        reasons: [
          saying('pattern.counted', {
            low: percent(solid.lo95),
            high: percent(solid.hi95),
            open: figureNumber(book, 'good-pattern', 'percent'),
          }),
          saying('pattern.normal', { open: figureNumber(book, 'normal-open-cells', 'percent') }),
          saying('pattern.not-queen'),
          saying('pattern.emerged', { days: figureNumber(book, 'worker-sealed-days', 'days') }),
        ],
        chance: null,
        wouldChange: [saying('pattern.change-better'), saying('pattern.change-signs')],
        forbids: [{ act: 'requeen', window, why: saying('pattern.dont-requeen') }],
        cautions: ['stings', 'smoker'],
        weight: weights.poorPattern,
      },
    ];
  },
};

/** After the rest that a colony is given, until the sheet that was counted has been filled anew. */
function secondLook({ view, book }: Facts): Window {
  const last = lastOpening(view)?.day ?? view.day;
  const earliest = later(view.day, addDays(last, value(book, 'visit-rest-days')));
  return windowOf(earliest, later(earliest, addDays(last, value(book, 'worker-sealed-days'))));
}
