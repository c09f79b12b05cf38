/** The sum "laying-rate". */
import { numberOf } from '../figures/read-input.ts';
import { sum } from '../figures/sum.ts';
import { good } from '../numbers/result.ts';
import { layingRate } from './laying-rate.ts';

export const layingRateSum = sum({
  key: 'laying-rate',
  title: 'Laying rate',
  line: 'eggs a day and bees a day, from the sealed worker brood',
  formula: 'emergingPerDay = cells / sealedDays; laidPerDay = emergingPerDay / survivalToSealed',
  fields: [
    {
      kind: 'number',
      name: 'sealedWorkerCells',
      unit: 'cells',
      low: 0,
      high: 1e6,
      about: 'sealed worker cells in the whole nest',
    },
    {
      kind: 'number',
      name: 'sealedDays',
      unit: 'days',
      low: 1,
      high: 40,
      without: { kind: 'figure', figure: 'worker-sealed-days' },
      about: 'days that a worker is sealed',
    },
    {
      kind: 'number',
      name: 'survivalToSealed',
      unit: '',
      low: 0,
      high: 1,
      aboveLow: true,
      without: { kind: 'figure', figure: 'survival-to-sealed' },
      about: 'share of the eggs alive in the cells that are sealed now',
    },
  ],
  answer: (given) =>
    good({
      ...layingRate(numberOf(given, 'sealedWorkerCells'), numberOf(given, 'sealedDays'), numberOf(given, 'survivalToSealed')),
    }),
});
