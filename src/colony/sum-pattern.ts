/** The sum "pattern". */
import { numberOf } from '../figures/read-input.ts';
import { fieldIssue, sum } from '../figures/sum.ts';
import { bad, good } from '../numbers/result.ts';
import { pattern } from './pattern.ts';

export const patternSum = sum({
  key: 'pattern',
  title: 'Brood pattern',
  line: 'percent of a counted patch that holds brood, with its range',
  formula: 'percent = 100 × occupied / cells; lo95 and hi95 by the score interval of Wilson',
  fields: [
    { kind: 'integer', name: 'occupied', unit: 'cells', low: 0, high: 1e6, about: 'cells of the patch that hold brood' },
    { kind: 'integer', name: 'cells', unit: 'cells', low: 1, high: 1e6, about: 'cells of the patch' },
  ],
  answer: (given) => {
    const occupied = numberOf(given, 'occupied');
    const cells = numberOf(given, 'cells');
    if (occupied > cells) return bad(fieldIssue('occupied', `${occupied}`, `at most cells, ${cells}`));
    return good({ ...pattern(occupied, cells) });
  },
});
