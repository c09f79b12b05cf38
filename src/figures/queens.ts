/** A queen's own dates: from cell to first egg, what a colony can still raise after a loss, and how long a queen serves. */
import { type Basis, figure } from './figure.ts';

const pages: Basis = { kind: 'source', source: 'queen-pages', where: 'timetables', sureness: 'read in a second source' };

export const queensFigures = [
  figure({
    key: 'queens-per-colony', title: 'Queens in a colony', topic: 'queens', value: 1, low: 1, high: 2, unit: 'queens', when: 'any time',
    basis: { kind: 'common practice' }, note: 'Mother and daughter may lay side by side for weeks when a queen is superseded.',
  }),
  figure({
    key: 'queen-life-years', title: 'Life of a queen', topic: 'queens', value: 2, low: 1, high: 3, unit: 'years',
    when: 'colonies kept by people', basis: { kind: 'source', source: 'page-peng-2001', where: 'text', sureness: 'read in the source' },
    note: 'The longest on record is 8 to 9 years.',
  }),
  figure({
    key: 'queen-useful-years', title: 'Years for which a queen is useful', topic: 'queens', value: 3, low: 1, high: 4, unit: 'years',
    when: 'a keeper who lets queens grow old', basis: { kind: 'common practice' },
  }),
  figure({
    key: 'drones-per-queen', title: 'Drones a queen mates with', topic: 'queens', value: 12, low: 10, high: 20, unit: 'drones',
    when: 'mated in flight', basis: pages,
  }),
  figure({
    key: 'queen-mate-ready-age', title: 'Age of a queen, after emerging, when she is ready to mate', topic: 'queens', value: 6, low: 5,
    high: 7, unit: 'd', when: 'fair weather', basis: pages, note: 'One worked timetable takes 7.',
  }),
  figure({
    key: 'queen-mated-to-egg', title: 'From mating to the first egg', topic: 'queens', value: 3, low: 2, high: 5, unit: 'd',
    when: 'mated in flight',
    basis: { kind: 'source', source: 'connor-colony-development', where: 'worked sum', sureness: 'read in a second source' },
  }),
  figure({
    key: 'queen-first-egg-age', title: 'Age of a queen, after emerging, at her first egg', topic: 'queens', value: 10.6, low: 4,
    high: 22, unit: 'd', when: 'mated in flight',
    basis: { kind: 'source', source: 'szabo-1987', where: 'mean and extremes', sureness: 'read in a second source' },
  }),
  figure({
    key: 'queen-to-egg', title: 'From a queen\'s own egg to the first egg that she lays', topic: 'queens', value: 28, low: 24, high: 45,
    unit: 'd', when: 'fair weather at the low end',
    basis: { kind: 'source', source: 'connor-colony-development', where: '16 + 7 + 2 + 3', sureness: 'read in a second source' },
    note: '16 days and the first-egg age give 26.6; the high end is bad weather.',
  }),
  figure({
    key: 'queen-mating-deadline', title: 'Age of a queen, after emerging, by which she must have mated', topic: 'queens', value: 24,
    low: 21, high: 28, unit: 'd', when: 'any', basis: pages, note: 'Later she lays drones only.',
  }),
  figure({
    key: 'drone-mature-age', title: 'Age of a drone, after emerging, when he can mate', topic: 'queens', value: 12, low: 10, high: 16,
    unit: 'd', when: 'summer', basis: pages,
  }),
  figure({
    key: 'virgin-emerges-after-sealing', title: 'From the sealing of a queen cell to the virgin', topic: 'queens', value: 8, low: 7,
    high: 9, unit: 'd', when: 'cell in a warm nest',
    basis: { kind: 'derived', from: ['queen-total-days', 'queen-sealing-age'], how: '16 less the age at sealing' },
    note: 'A page says 7.',
  }),
  figure({
    key: 'oldest-larva-for-queen', title: 'Age of a larva, after hatching, up to which a queen can be raised', topic: 'queens',
    value: 3, low: 2, high: 3, unit: 'd', when: 'emergency cells',
    basis: {
      kind: 'source', source: 'page-peng-2001', where: 'trajectory fixed after the third larval day', sureness: 'read in the source',
    },
    note: 'Good queens come from larvae of a day or less.',
  }),
  figure({
    key: 'emergency-queen-emerges', title: 'From the loss of a queen to a virgin of an emergency cell', topic: 'queens', value: 13.5,
    low: 10, high: 16, unit: 'd', when: 'a colony with eggs or young larvae',
    basis: { kind: 'derived', from: ['queen-total-days', 'oldest-larva-for-queen'], how: '16 less the age of the brood that was used' },
    note: 'Most cells are begun within 48 hours on eggs about to hatch or young larvae.',
  }),
  figure({
    key: 'emergency-first-eggs', title: 'From the loss of a queen to the first eggs of her daughter', topic: 'queens', value: 24,
    low: 14, high: 38, unit: 'd', when: 'a colony with eggs or young larvae',
    basis: { kind: 'derived', from: ['emergency-queen-emerges', 'queen-first-egg-age'], how: '10 to 16 days and 4 to 22 days added' },
  }),
  figure({
    key: 'no-eggs-after', title: 'From the last egg laid to a nest without eggs', topic: 'queens', value: 3, low: 3, high: 4, unit: 'd',
    when: 'warm nest', basis: { kind: 'derived', from: ['worker-egg-days'], how: 'the egg stage' },
  }),
  figure({
    key: 'no-open-brood-after', title: 'From the last egg laid to a nest without open brood', topic: 'queens', value: 9, low: 8.5,
    high: 9, unit: 'd', when: 'warm nest',
    basis: { kind: 'derived', from: ['worker-egg-days', 'worker-larva-days'], how: 'egg and larva stages added, up to whole days' },
  }),
  figure({
    key: 'no-sealed-brood-after', title: 'From the last egg laid to a nest without sealed worker brood', topic: 'queens', value: 21,
    low: 20, high: 22, unit: 'd', when: 'warm nest',
    basis: { kind: 'derived', from: ['worker-total-days', 'worker-total-measured-days'], how: 'the whole development' },
  }),
  figure({
    key: 'rescue-window', title: 'From the last egg laid to the day on which no larva is young enough for a queen', topic: 'queens',
    value: 6, low: 5, high: 6, unit: 'd', when: 'no eggs or young larvae given',
    basis: { kind: 'derived', from: ['worker-egg-days', 'oldest-larva-for-queen'], how: 'egg stage and oldest larva added' },
  }),
  figure({
    key: 'hopeless-after-days', title: 'From the last egg laid to the day from which no cells and no open brood mean no queen',
    topic: 'queens', value: 9, low: 9, high: 10, unit: 'd', when: 'no queen cells in the nest',
    basis: { kind: 'common practice', note: 'confirmed with a comb of eggs: queen cells on it in 3 to 4 days tell' },
  }),
  figure({
    key: 'test-comb-days', title: 'Days after which a comb of eggs shows queen cells, when there is no queen', topic: 'queens',
    value: 4, low: 3, high: 5, unit: 'd', when: 'comb of eggs and young larvae given', basis: { kind: 'common practice' },
  }),
  figure({
    key: 'laying-workers-onset', title: 'From the loss of a queen to laying workers', topic: 'queens', value: 21, low: 14, high: 35,
    unit: 'd', when: 'no queen raised; open brood delays it', basis: pages,
    note: 'Pages say about three weeks; a study followed ovaries, eggs and the loss of policing over four.',
  }),
  figure({
    key: 'give-up-waiting', title: 'From the loss of a queen to the end of waiting for her daughter\'s eggs', topic: 'queens',
    value: 38, low: 38, high: 44, unit: 'd', when: 'emergency queen',
    basis: {
      kind: 'derived', from: ['emergency-queen-emerges', 'queen-first-egg-age'],
      how: '16 and 22 days; 28 for bad weather at the high end',
    },
  }),
  figure({
    key: 'requeened-first-workers', title: 'From a change of queen to the first workers of the new one', topic: 'queens', value: 24,
    low: 21, high: 33, unit: 'd', when: 'laying queen given; the high end is a ripe cell',
    basis: { kind: 'derived', from: ['worker-total-days', 'queen-mated-to-egg'], how: '21 days after she begins to lay' },
  }),
  figure({
    key: 'requeened-half-days', title: 'From a change of queen to half of the workers being hers', topic: 'queens', value: 40, low: 35,
    high: 45, unit: 'd', when: 'summer, steady laying',
    basis: {
      kind: 'derived', from: ['requeened-first-workers', 'summer-life-days'], how: 'all workers living 35 days, laying from day 3',
    },
  }),
  figure({
    key: 'requeened-full-days', title: 'From a change of queen to nearly all workers being hers', topic: 'queens', value: 56, low: 50,
    high: 60, unit: 'd', when: 'summer, steady laying; months in late summer and winter',
    basis: { kind: 'derived', from: ['requeened-first-workers', 'summer-life-days'], how: 'all workers living 35 days' },
  }),
] as const;
