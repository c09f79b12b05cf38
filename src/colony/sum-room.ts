/** The sum "room". */
import { numberOf, numbersOf } from '../figures/read-input.ts';
import { sum } from '../figures/sum.ts';
import { good } from '../numbers/result.ts';
import { roomLeft } from './room-left.ts';

const cells = { unit: 'cells', low: 0, high: 1e6 } as const;

export const roomSum = sum({
  key: 'room',
  title: 'Room for the queen',
  line: 'empty cells in the brood nest day by day, and the day they run out',
  formula:
    'free[0] = empty; free[d] = free[d − 1] + emerging[d − 1] − laid − nectar; fullOnDay = first d with free[d] ≤ 0, or null',
  fields: [
    { kind: 'number', name: 'emptyWorkerCellsInBrood', ...cells, about: 'empty worker cells inside the brood nest today' },
    { kind: 'numbers', name: 'emergingPerDay', ...cells, about: 'cells that bees leave on each coming day, today first' },
    { kind: 'number', name: 'laidPerDay', ...cells, about: 'eggs laid in a day' },
    { kind: 'number', name: 'nectarCellsPerDay', ...cells, about: 'cells of the brood nest filled with nectar in a day' },
  ],
  answer: (given) =>
    good({
      ...roomLeft(
        numberOf(given, 'emptyWorkerCellsInBrood'),
        numbersOf(given, 'emergingPerDay'),
        numberOf(given, 'laidPerDay'),
        numberOf(given, 'nectarCellsPerDay'),
      ),
    }),
});
