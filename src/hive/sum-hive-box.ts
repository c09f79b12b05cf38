/** The sum "hive-box": the room of a trough from the dimensions a builder knows. */
import { numberOf } from '../figures/read-input.ts';
import { sum } from '../figures/sum.ts';
import { good } from '../numbers/result.ts';
import { hiveBox } from './hive-box.ts';

export const hiveBoxSum = sum({
  key: 'hive-box',
  title: 'Room of a hive',
  line: 'width at the bars, cross-section, length and litres of a trough',
  formula:
    'topWidthMm = floor + 2 h tan a; crossSectionDm2 = mean width × h; innerLengthMm = bars × width + expansion; ' +
    'volumeL = cross-section × length; litresPerBar = cross-section × one bar',
  fields: [
    { kind: 'number', name: 'floorWidthMm', unit: 'mm', low: 0, high: 2000, about: 'inside width at the floor' },
    { kind: 'number', name: 'heightMm', unit: 'mm', low: 0, high: 2000, aboveLow: true, about: 'floor to bars, upright' },
    {
      kind: 'number',
      name: 'wallAngleDeg',
      unit: 'degrees',
      low: 0,
      high: 60,
      about: 'slope of the side walls from the vertical',
    },
    { kind: 'integer', name: 'bars', unit: 'bars', low: 1, high: 200, about: 'how many bars lie on it' },
    { kind: 'number', name: 'barWidthMm', unit: 'mm', low: 10, high: 100, about: 'width of one bar' },
    {
      kind: 'number',
      name: 'expansionMm',
      unit: 'mm',
      low: 0,
      high: 200,
      without: { kind: 'figure', figure: 'expansion-allowance' },
      about: 'length left for bars to swell',
    },
  ],
  answer: (given) =>
    good({
      ...hiveBox({
        floorWidthMm: numberOf(given, 'floorWidthMm'),
        heightMm: numberOf(given, 'heightMm'),
        wallAngleDeg: numberOf(given, 'wallAngleDeg'),
        bars: numberOf(given, 'bars'),
        barWidthMm: numberOf(given, 'barWidthMm'),
        expansionMm: numberOf(given, 'expansionMm'),
      }),
    }),
});
