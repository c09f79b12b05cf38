/**
 * How long brood takes: egg, open larva, sealed cell, by caste, in days from laying; and the ages, in
 * whole days, at which a stage can be met. Rival totals stand side by side.
 */
import { type Basis, figure } from './figure.ts';

const pages: Basis = {
  kind: 'source', source: 'development-pages', where: 'tables of days by caste', sureness: 'read in a second source',
};
const warm = 'brood nest at 33 to 36 °C';

/** Whole-day ages at which a stage can be met: low and high are the window's ends. */
function ages<const K extends string>(
  key: K, title: string, low: number, high: number, from: readonly string[],
) {
  return figure({
    key, title, topic: 'brood', value: (low + high) / 2, low, high, unit: 'd', when: warm,
    basis: {
      kind: 'derived', from, how: 'whole days after laying, wide enough for the calendar rule and for the spread that was measured',
    },
  });
}

/** One part of what the cells of a brood area hold; the five parts sum to 1. The range is ours: half to one and a half times. */
function mix<const K extends string>(key: K, title: string, value: number) {
  return figure({
    key, title, topic: 'brood', value, low: value / 2, high: Math.min(1, value * 1.5), unit: 'share',
    when: 'brood area in summer, steady laying',
    basis: { kind: 'source', source: 'nest-section-page', where: 'table of cell contents', sureness: 'read in a second source' },
    note: 'The source gives no spread; the range is ours.',
  });
}

const worker = ['worker-egg-days', 'worker-larva-days', 'worker-sealed-days', 'worker-total-days'];
const drone = ['drone-egg-days', 'drone-larva-days', 'drone-sealed-days', 'drone-total-days'];
const queen = ['queen-egg-days', 'queen-larva-days', 'queen-sealed-days', 'queen-total-days'];

export const developmentFigures = [
  figure({
    key: 'worker-egg-days', title: 'A worker is an egg', topic: 'brood', value: 3, low: 2.7, high: 3.3, unit: 'd', when: warm,
    basis: pages,
  }),
  figure({
    key: 'worker-larva-days', title: 'A worker is an open larva', topic: 'brood', value: 5.5, low: 5, high: 6, unit: 'd', when: warm,
    basis: pages, note: 'Pages put sealing at day 8 to 9 after laying; some print 6 days of larva.',
  }),
  figure({
    key: 'worker-sealed-days', title: 'A worker is sealed in her cell', topic: 'brood', value: 12, low: 11, high: 12.5, unit: 'd',
    when: warm, basis: pages,
  }),
  figure({
    key: 'worker-total-days', title: 'From laying to a worker emerging, calendar rule', topic: 'brood', value: 21, low: 19, high: 22,
    unit: 'd', when: warm, basis: pages, note: 'Measured: 20 days in 87 of 100 workers; see the rival figure.',
  }),
  figure({
    key: 'worker-total-measured-days', title: 'From laying to a worker emerging, as measured', topic: 'brood', value: 20, low: 19,
    high: 22, unit: 'd', when: 'centre of the brood area',
    basis: {
      kind: 'source', source: 'fukuda-sakagami-1968', where: '87.1 % took 20 days, 8.3 % took 21', sureness: 'read in the abstract',
    },
    note: 'The calendar rule of handbooks says 21.',
  }),
  figure({
    key: 'drone-egg-days', title: 'A drone is an egg', topic: 'brood', value: 3, low: 2.7, high: 3.3, unit: 'd', when: warm,
    basis: pages,
  }),
  figure({
    key: 'drone-larva-days', title: 'A drone is an open larva', topic: 'brood', value: 6.5, low: 6, high: 7, unit: 'd', when: warm,
    basis: pages,
  }),
  figure({
    key: 'drone-sealed-days', title: 'A drone is sealed in his cell', topic: 'brood', value: 14.5, low: 14, high: 15, unit: 'd',
    when: warm, basis: pages,
  }),
  figure({
    key: 'drone-total-days', title: 'From laying to a drone emerging', topic: 'brood', value: 24, low: 23, high: 25, unit: 'd',
    when: warm, basis: pages,
  }),
  figure({
    key: 'queen-egg-days', title: 'A queen is an egg', topic: 'queens', value: 3, low: 2.7, high: 3.3, unit: 'd', when: warm,
    basis: pages,
  }),
  figure({
    key: 'queen-larva-days', title: 'A queen is an open larva', topic: 'queens', value: 5, low: 4.6, high: 5.5, unit: 'd', when: warm,
    basis: pages, note: 'Pages put sealing between day 7.5 and day 9 after laying.',
  }),
  figure({
    key: 'queen-sealed-days', title: 'A queen is sealed in her cell', topic: 'queens', value: 8, low: 7.5, high: 8, unit: 'd',
    when: warm, basis: pages,
  }),
  figure({
    key: 'queen-total-days', title: 'From laying to a queen emerging', topic: 'queens', value: 16, low: 15, high: 17, unit: 'd',
    when: warm, basis: pages, note: 'Measured at 34.5 °C: 16 days and 1 hour; at 32 °C a day more.',
  }),
  figure({
    key: 'queen-total-cool-days', title: 'From laying to a queen emerging, cells kept at 32 °C', topic: 'queens', value: 17.17, low: 17,
    high: 17.5, unit: 'd', when: 'cells at 32 °C after sealing',
    basis: {
      kind: 'source', source: 'chuda-samborski-2015', where: '412 hours, against 385 at 34.5 °C', sureness: 'read in the abstract',
    },
  }),
  ages('worker-egg-age', 'Age of a worker egg', 0, 3, worker),
  ages('worker-larva-age', 'Age of a worker larva', 3, 9, worker),
  ages('worker-sealed-age', 'Age of sealed worker brood', 8, 22, worker),
  ages('worker-emerging-age', 'Age of a worker that is emerging', 19, 22, worker),
  ages('worker-sealing-age', 'Age of a worker when her cell is sealed', 8, 9, worker),
  ages('drone-egg-age', 'Age of a drone egg', 0, 3, drone),
  ages('drone-larva-age', 'Age of a drone larva', 3, 10, drone),
  ages('drone-sealed-age', 'Age of sealed drone brood', 9, 25, drone),
  ages('drone-emerging-age', 'Age of a drone that is emerging', 23, 25, drone),
  ages('drone-sealing-age', 'Age of a drone when his cell is sealed', 9, 10, drone),
  ages('queen-egg-age', 'Age of an egg in a queen cell', 0, 3, queen),
  ages('queen-larva-age', 'Age of a larva in a queen cell', 3, 9, queen),
  ages('queen-sealed-age', 'Age of a queen in a sealed cell', 7, 17, queen),
  ages('queen-emerging-age', 'Age of a queen that is emerging', 15, 17, queen),
  ages('queen-sealing-age', 'Age of a queen when her cell is sealed', 7, 9, queen),
  mix('brood-mix-egg', 'Eggs, of the cells of the brood area', 0.14),
  mix('brood-mix-larva', 'Open larvae, of the cells of the brood area', 0.21),
  mix('brood-mix-sealed', 'Sealed brood, of the cells of the brood area', 0.51),
  mix('brood-mix-empty', 'Empty cells, of the cells of the brood area', 0.09),
  mix('brood-mix-food', 'Food, of the cells of the brood area', 0.05),
  figure({
    key: 'good-pattern', title: 'Open cells in a patch of sealed brood, below which the pattern is called good', topic: 'brood',
    value: 20, low: 15, high: 20, unit: 'percent', when: 'sealed worker brood in summer',
    basis: {
      kind: 'source', source: 'lee-2019', where: 'criterion as an extension service states it', sureness: 'read in a second source',
    },
    note: 'Queens blamed for a poor pattern improved it in a good colony within three weeks: the pattern alone does not condemn a queen.',
  }),
  figure({
    key: 'normal-open-cells', title: 'Cells without brood inside the brood area of a sound colony', topic: 'brood', value: 14, low: 5,
    high: 14, unit: 'percent', when: 'brood area of normal colonies',
    basis: { kind: 'derived', from: ['brood-mix-empty', 'brood-mix-food'], how: 'empty and food cells of the brood area added' },
    note: 'Bees that heat the brood use empty cells.',
  }),
  figure({
    key: 'viability-winter', title: 'Share of brood that lives, above which all colonies of a trial came through winter',
    topic: 'brood', value: 72, low: 67, high: 77, unit: 'percent', when: 'colonies of queens with known mates',
    basis: { kind: 'source', source: 'tarpy-page-2002', where: 'abstract', sureness: 'read in the abstract' },
    note: 'Below it, 37.5 of 100 colonies came through. The range is ours.',
  }),
  figure({
    key: 'breeder-pattern', title: 'Sealed cells of a patch, filled, that queen producers ask of a mother', topic: 'brood', value: 85,
    low: 85, high: 95, unit: 'percent', when: 'choosing a mother of queens',
    basis: { kind: 'common practice', note: 'producers ask 85, better 95' },
  }),
] as const;
