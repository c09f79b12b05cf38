/** The sum "bees-on-face". */
import { numberOf } from '../figures/read-input.ts';
import { sum } from '../figures/sum.ts';
import { good } from '../numbers/result.ts';
import { beesOnFace } from './bees-on-face.ts';

export const beesOnFaceSum = sum({
  key: 'bees-on-face',
  title: 'Bees on a face',
  line: 'bees on one face of comb, from its area and how much of it they cover',
  formula: 'bees = faceDm2 × coveredFraction × beesPerDm2',
  fields: [
    { kind: 'number', name: 'faceDm2', unit: 'dm²', low: 0, high: 1000, about: 'area of one face' },
    { kind: 'number', name: 'coveredFraction', unit: '', low: 0, high: 1, about: 'share of it that bees cover' },
    {
      kind: 'number',
      name: 'beesPerDm2',
      unit: 'bees a dm²',
      low: 0,
      high: 1000,
      without: { kind: 'figure', figure: 'bees-per-dm2' },
      about: 'bees on a square decimetre where they cover it fully',
    },
  ],
  answer: (given) =>
    good({
      bees: beesOnFace(numberOf(given, 'faceDm2'), numberOf(given, 'coveredFraction'), numberOf(given, 'beesPerDm2')),
    }),
});
