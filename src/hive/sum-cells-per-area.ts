/** The sum "cells-per-area": from a cell width, or from cells counted along 10 cm. */
import { numberOf, numberOrNull } from '../figures/read-input.ts';
import { sum } from '../figures/sum.ts';
import { good } from '../numbers/result.ts';
import { cellsPerDm2, cellWidthMm } from './cells-per-area.ts';

export const cellsPerAreaSum = sum({
  key: 'cells-per-area',
  title: 'Cells on an area of comb',
  line: 'cells on a square decimetre, from the width of a cell or from cells counted along 10 cm',
  formula: 'perSidePerDm2 = 20000 / (√3 w²); bothSidesPerDm2 is twice that; w = 100 / k for k cells along 10 cm',
  fields: [
    {
      kind: 'number',
      name: 'cellWidthMm',
      unit: 'mm',
      low: 1,
      high: 20,
      oneOf: 'width',
      about: 'width of a cell between parallel walls, wall middle to wall middle',
    },
    {
      kind: 'number',
      name: 'cellsPer10cm',
      unit: 'cells',
      low: 5,
      high: 100,
      oneOf: 'width',
      about: 'cells counted along 10 cm of a row',
    },
  ],
  answer: (given) => {
    const width = numberOrNull(given, 'cellWidthMm') ?? cellWidthMm(numberOf(given, 'cellsPer10cm'));
    const perSide = cellsPerDm2(width);
    return good({ perSidePerDm2: perSide, bothSidesPerDm2: 2 * perSide });
  },
});
