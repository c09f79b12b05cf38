/** The sum "missed-cell". */
import { numberOf } from '../figures/read-input.ts';
import { sum } from '../figures/sum.ts';
import { good } from '../numbers/result.ts';
import { missedCell } from './missed-cell.ts';

export const missedCellSum = sum({
  key: 'missed-cell',
  title: 'A queen cell missed',
  line: 'chance that a search missed all queen cells, or one of them',
  formula: 'missAll = (1 − s L)^n; missAny = 1 − (s L)^n, for n cells, a share s looked at and a chance L to see one',
  fields: [
    { kind: 'integer', name: 'cells', unit: 'cells', low: 1, high: 1000, about: 'queen cells that are there' },
    { kind: 'number', name: 'shareLooked', unit: '', low: 0, high: 1, about: 'share of the brood faces that was looked at' },
    {
      kind: 'number',
      name: 'seeChance',
      unit: '',
      low: 0,
      high: 1,
      without: { kind: 'figure', figure: 'cell-seen-chance' },
      about: 'chance to see a cell on a face that is looked at',
    },
  ],
  answer: (given) =>
    good({
      ...missedCell(numberOf(given, 'cells'), numberOf(given, 'shareLooked'), numberOf(given, 'seeChance')),
    }),
});
