/** How long brood takes: egg, open larva, sealed cell, by caste, in days from laying. */
import { figure } from './figure.ts';

export const developmentFigures = [
  figure({
    key: 'worker-sealed-days', title: 'A worker spends sealed in her cell', topic: 'brood', value: 12, low: 11, high: 12.5, unit: 'd',
    when: 'brood nest at 33 to 36 °C', basis: { kind: 'common practice', note: 'agreed by handbooks' },
  }),
] as const;
