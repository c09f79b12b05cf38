/** The sum "turnover". */
import { type FigureBook, rangeOf, value } from '../figures/book.ts';
import { choiceOrNull, type Given, numberOf, numberOrNull } from '../figures/read-input.ts';
import { type Answer, sum } from '../figures/sum.ts';
import { assert } from '../numbers/assert.ts';
import { good, type Result } from '../numbers/result.ts';
import { allLive, type Survival, survivalFigures, survivalOf, survivalSets } from './survival.ts';
import { turnover } from './turnover.ts';

const longestLife = 400;
const latestLaying = 200;
/** Bees of this age and older guard and forage: temper follows them. */
const guardAge = 14;
/** The shares of the bees that are asked for. */
const shares = { day10: 0.1, day50: 0.5, day90: 0.9, day99: 0.99 } as const;

export const turnoverSum = sum({
  key: 'turnover',
  title: 'Whose daughters the bees are',
  line: 'after a change of queens: first daughters, a tenth, half, nine tenths, and the same of bees old enough to guard',
  formula:
    'F(t) = ∫ l from 0 to t−21−g / (that + ∫ l from t−21 on), l the share of bees alive at an age, g = layingStartsDay, ' +
    'day 0 the last egg of the old queen, both laying alike; a bee counts from the day she emerges. ' +
    'olderThan14: both integrals from age 14 on, null where no bee lives so long. ' +
    'share: each whole day up to day99, and at least to the high end of requeened-full-days; fraction null while there is no bee at all. ' +
    'Benign, average and rfid: l = (1−h)^min(x, A) · (1−f)^max(0, x−A)',
  fields: [
    {
      kind: 'number',
      name: 'adultLifeDays',
      unit: 'days',
      low: 0,
      high: longestLife,
      aboveLow: true,
      oneOf: 'life',
      about: 'days that every worker lives after she emerges',
    },
    { kind: 'choice', name: 'survival', choices: survivalSets, oneOf: 'life', about: 'how workers die' },
    {
      kind: 'number',
      name: 'layingStartsDay',
      unit: 'days',
      low: 0,
      high: latestLaying,
      without: { kind: 'figure', figure: 'turnover-laying-starts' },
      about: "days from the old queen's last egg to the new one's first",
    },
  ],
  uses: ['worker-total-days', 'requeened-full-days', ...new Set(Object.values(survivalFigures).flat())],
  usesFor: (given) => {
    const set = choiceOrNull(given, 'survival', survivalSets);
    return ['worker-total-days', 'requeened-full-days', ...(set === null ? [] : survivalFigures[set])];
  },
  answer,
});

function answer(given: Given, book: FigureBook): Result<Answer> {
  const { firstDaughterDay, dayOf, shareOn } = turnover(
    lifeOf(given, book),
    value(book, 'worker-total-days'),
    numberOf(given, 'layingStartsDay'),
  );
  const days = Object.fromEntries(Object.entries(shares).map(([name, share]) => [name, dayOf(share)]));
  const last = Math.ceil(Math.max(dayOf(shares.day99) ?? 0, rangeOf(book, 'requeened-full-days').high));
  return good({
    firstDaughterDay,
    ...days,
    olderThan14: { day50: dayOf(shares.day50, guardAge), day90: dayOf(shares.day90, guardAge) },
    share: Array.from({ length: last + 1 }, (_, day) => ({ day, fraction: shareOn(day) })),
  });
}

function lifeOf(given: Given, book: FigureBook): Survival {
  const life = numberOrNull(given, 'adultLifeDays');
  if (life !== null) return allLive(life);
  const set = choiceOrNull(given, 'survival', survivalSets);
  assert(set !== null, 'one of the two was given');
  return survivalOf(set, book);
}
