/** Days of development, survival and laying: several sources each, with those that disagree. */
import type { FigureKey } from '../../src/figures/list.ts';
import type { Check, Origin } from '../check.ts';

const learners: Origin = {
  kind: 'published',
  source: 'learners-table',
  where: 'table by caste',
  sureness: 'read in a second source',
};
const fukuda = (where: string): Origin => ({
  kind: 'published',
  source: 'fukuda-sakagami-1968',
  where,
  sureness: 'read in the abstract',
});
const illinois: Origin = {
  kind: 'published',
  source: 'illinois-queens',
  where: 'worked example',
  sureness: 'read in the source',
};

/** A published number of days that must lie in our range. */
function days(id: string, what: string, figure: FigureKey, expected: number, origin: Origin, differs?: string): Check {
  return {
    id,
    topic: 'brood',
    what,
    origin,
    ask: { kind: 'range', figure },
    expected,
    unit: 'd',
    tolerance: 0,
    why: 'in the range',
    circular: false,
    ...(differs === undefined ? {} : { differs }),
  };
}

const table = { worker: [3, 6, 12, 21], drone: [3, 6.5, 14.5, 24], queen: [3, 5.5, 7.5, 16] } as const;
const parts = ['egg', 'larva', 'sealed', 'total'] as const;

const tableChecks: readonly Check[] = (['worker', 'drone', 'queen'] as const).flatMap((caste) =>
  parts.map((part, at) =>
    days(
      `learners-${caste}-${part}`,
      `${caste}: days ${part === 'total' ? 'in all' : part}`,
      `${caste}-${part}-days`,
      table[caste][at] ?? 0,
      learners,
    ),
  ),
);

export const broodChecks: readonly Check[] = [
  ...tableChecks,
  {
    id: 'worker-20-days',
    topic: 'brood',
    what: 'workers that were timed: 87 of 100 took 20 days',
    origin: fukuda('87.1 % took 20 days'),
    ask: { kind: 'figure', figure: 'worker-total-days' },
    expected: 20,
    unit: 'd',
    tolerance: 0.5,
    why: 'half a day',
    circular: false,
    differs: 'handbooks count 21 calendar days; timed workers in the warm middle of the nest took 20. Our windows hold both.',
  },
  days('worker-20-in-range', 'the timed 20 days lie in our range', 'worker-total-days', 20, fukuda('87.1 % took 20 days')),
  days(
    'worker-emerging-window',
    'the timed 20 days lie in the window used for dates',
    'worker-emerging-age',
    20,
    fukuda('87.1 % took 20 days'),
  ),
  days('queen-timed', 'queens timed at 34.5 °C: 385 hours after laying', 'queen-total-days', 385 / 24, {
    kind: 'published',
    source: 'chuda-samborski-2015',
    where: '385 hours',
    sureness: 'read in the abstract',
  }),
  days(
    'queen-timed-cool',
    'queens timed at 32 °C: 412 hours after laying',
    'queen-total-days',
    412 / 24,
    { kind: 'published', source: 'chuda-samborski-2015', where: '412 hours', sureness: 'read in the abstract' },
    'cells kept two degrees cooler than a brood nest; ours is for a warm nest',
  ),
  {
    id: 'survive-to-larva',
    topic: 'brood',
    what: 'larvae from 100 eggs',
    origin: fukuda('94.2'),
    circular: true,
    ask: { kind: 'worked', name: 'survivors of 100 eggs', input: [1] },
    expected: 94.2,
    unit: 'of 100',
    tolerance: 0.05,
    why: 'last digit',
  },
  {
    id: 'survive-to-sealed',
    topic: 'brood',
    what: 'sealed cells from 100 eggs',
    origin: fukuda('86.4'),
    circular: true,
    ask: { kind: 'worked', name: 'survivors of 100 eggs', input: [2] },
    expected: 86.4,
    unit: 'of 100',
    tolerance: 0.05,
    why: 'last digit',
  },
  {
    id: 'survive-to-adult',
    topic: 'brood',
    what: 'bees from 100 eggs',
    origin: fukuda('85.1'),
    circular: true,
    ask: { kind: 'worked', name: 'survivors of 100 eggs', input: [3] },
    expected: 85.1,
    unit: 'of 100',
    tolerance: 0.05,
    why: 'last digit',
  },
  {
    id: 'laying-720-inches',
    topic: 'brood',
    what: 'bees a day from 18 000 sealed cells',
    origin: illinois,
    circular: false,
    ask: { kind: 'sum', sum: 'laying-rate', input: { sealedWorkerCells: 18000 }, read: 'emergingPerDay' },
    expected: 1500,
    unit: 'a day',
    tolerance: 0,
    why: 'whole days, whole cells',
  },
  {
    id: 'laying-no-losses',
    topic: 'brood',
    what: 'eggs a day from 18 000 sealed cells, as the example takes them: nothing dies',
    origin: illinois,
    ask: { kind: 'sum', sum: 'laying-rate', input: { sealedWorkerCells: 18000 }, read: 'laidPerDay' },
    expected: 1500,
    unit: 'a day',
    tolerance: 75,
    why: '5 of 100',
    circular: false,
    differs:
      'the example takes no losses before sealing; with the survival that was measured about 1750 eggs a day stand behind it',
  },
  {
    id: 'laying-swarm-example',
    topic: 'brood',
    what: 'a colony with 18 000 sealed cells and a queen of 1500 a day',
    origin: { kind: 'published', source: 'school-swarm-sum', where: 'day of the swarm', sureness: 'read in a second source' },
    ask: { kind: 'sum', sum: 'laying-rate', input: { sealedWorkerCells: 18000, survivalToSealed: 1 }, read: 'laidPerDay' },
    expected: 1500,
    unit: 'a day',
    tolerance: 0,
    why: 'whole days, whole cells',
    circular: false,
  },
  {
    id: 'summer-life-worked',
    topic: 'brood',
    what: 'mean summer life under our two rates of loss',
    origin: { kind: 'published', source: 'yamada-2019', where: 'summer 25 to 30 days', sureness: 'read in the source' },
    ask: { kind: 'worked', name: 'mean summer life', input: [] },
    expected: 27.5,
    unit: 'd',
    tolerance: 2.5,
    why: 'the range printed; our rates were chosen to give it',
    circular: true,
  },
  days('summer-life-three-weeks', 'a summer worker lives three weeks at least', 'summer-life-days', 21, {
    kind: 'published',
    source: 'page-peng-2001',
    where: '3 to 6 weeks',
    sureness: 'read in the source',
  }),
  days(
    'summer-life-six-weeks',
    'a summer worker lives six weeks at most',
    'summer-life-days',
    42,
    { kind: 'published', source: 'page-peng-2001', where: '3 to 6 weeks', sureness: 'read in the source' },
    'the longest of one review; the list of lifespans ends at 38 days for summer',
  ),
  days('winter-life-four-months', 'a winter worker lives about four months', 'winter-life-days', 122, {
    kind: 'published',
    source: 'page-peng-2001',
    where: 'about 4 months',
    sureness: 'read in the source',
  }),
  days('forage-age', 'workers begin to forage at two to three weeks', 'house-bee-days', 17.5, {
    kind: 'published',
    source: 'page-peng-2001',
    where: '2 to 3 weeks',
    sureness: 'read in the source',
  }),
  days('drone-life', 'a drone lives 21 to 32 days', 'drone-life-days', 26.5, {
    kind: 'published',
    source: 'winston-1987',
    where: 'quoted on a page',
    sureness: 'read in a second source',
  }),
];
