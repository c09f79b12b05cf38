/** The sum "mark-colour". */
import { numberOf } from '../figures/read-input.ts';
import { sum } from '../figures/sum.ts';
import { good } from '../numbers/result.ts';
import { markColour } from './mark-colour.ts';

export const markColourSum = sum({
  key: 'mark-colour',
  title: 'Colour of the year',
  line: 'the colour that marks queens of a year',
  formula: 'by the last digit: 0 or 5 blue, 1 or 6 white, 2 or 7 yellow, 3 or 8 red, 4 or 9 green',
  fields: [{ kind: 'integer', name: 'year', unit: '', low: 1900, high: 2999, about: 'year in which the queen emerged' }],
  answer: (given) => good({ colour: markColour(numberOf(given, 'year')) }),
});
