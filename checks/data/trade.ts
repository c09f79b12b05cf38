/**
 * What every keeper knows: facts of the trade without a source, which the program must not contradict. Where our
 * figure is that very fact, the check is circular.
 */
import type { Check } from '../check.ts';

export const tradeChecks: readonly Check[] = [
  {
    id: 'one-queen', topic: 'the trade', what: 'a colony has one queen', origin: { kind: 'common practice' },
    ask: { kind: 'figure', figure: 'queens-per-colony' }, expected: 1, unit: 'queens', tolerance: 0, why: 'a count', circular: true,
  },
  {
    id: 'nineteen-workers', topic: 'the trade', what: 'about nineteen bees of twenty are workers', origin: { kind: 'common practice' },
    ask: { kind: 'figure', figure: 'workers-in-twenty-bees' }, expected: 19, unit: 'bees', tolerance: 1, why: '"about"', circular: true,
  },
  {
    id: 'worker-caps-flat', topic: 'the trade', what: 'sealed worker brood is flat: our word for what a mated queen\'s brood shows',
    origin: { kind: 'common practice' }, ask: { kind: 'wording', text: 'advice.layers.change-worker', words: ['flat', 'domed'] },
    expected: 'flat', unit: 'word', tolerance: 0, why: 'a word', circular: false,
  },
  {
    id: 'drone-caps-domed', topic: 'the trade', what: 'sealed drone brood is domed: our word for drones in worker cells',
    origin: { kind: 'common practice' }, ask: { kind: 'wording', text: 'sign.domed caps on worker cells', words: ['flat', 'domed'] },
    expected: 'domed', unit: 'word', tolerance: 0, why: 'a word', circular: false,
  },
  {
    id: 'summer-month', topic: 'the trade', what: 'a summer worker lives about a month', origin: { kind: 'common practice' },
    ask: { kind: 'figure', figure: 'summer-life-days' }, expected: 30, unit: 'd', tolerance: 7, why: '"about": a week', circular: false,
  },
  {
    id: 'queen-three-years', topic: 'the trade', what: 'a queen is useful about three years', origin: { kind: 'common practice' },
    ask: { kind: 'figure', figure: 'queen-useful-years' }, expected: 3, unit: 'years', tolerance: 1, why: '"about": a year',
    circular: true,
  },
  {
    id: 'queen-life-two-years', topic: 'the trade', what: 'the queens of a review live about two years: within what is called useful',
    origin: { kind: 'published', source: 'page-peng-2001', where: '1 to 3 years', sureness: 'read in the source' },
    ask: { kind: 'range', figure: 'queen-useful-years' }, expected: 2, unit: 'years', tolerance: 0, why: 'in the range', circular: false,
  },
];
