/** Turnover after a change of queens, and colonies that stand still, against sums on paper. */
import type { Check, Origin } from '../check.ts';

const paper: Origin = { kind: 'worked apart', how: 'integrals of the survival curves on paper, printed to a tenth of a day' };
const model: Origin = { kind: 'worked apart', how: 'a day-by-day model of cohorts, with bees counted on the day they emerge' };

function days(
  id: string,
  what: string,
  input: Readonly<Record<string, unknown>>,
  read: string,
  expected: number,
  tolerance = 0.06,
): Check {
  return {
    id: `turnover-${id}`,
    topic: 'queens and swarms',
    what,
    origin: tolerance > 0.5 ? model : paper,
    ask: { kind: 'sum', sum: 'turnover', input, read },
    expected,
    unit: 'd',
    tolerance,
    why: tolerance > 0.5 ? 'whole days of a model against a smooth curve' : 'half of the last printed digit',
    circular: false,
  };
}

const table = [
  [3, [24, 27.2, 40.0, 52.8, 55.7]],
  [0, [21, 24.5, 38.5, 52.5, 55.6]],
  [12, [33, 35.3, 44.5, 53.7, 55.8]],
  [28, [49, 49.7, 52.5, 55.3, 55.9]],
] as const;
const read = ['firstDaughterDay', 'day10', 'day50', 'day90', 'day99'] as const;

const boxed = table.flatMap(([layingStartsDay, row]) =>
  read.map((name, index) =>
    days(
      `${layingStartsDay}-${name.toLowerCase()}`,
      `${name} where all workers live 35 days, laying from day ${layingStartsDay}`,
      { adultLifeDays: 35, layingStartsDay },
      name,
      row[index] ?? NaN,
    ),
  ),
);

const guards = (
  [
    [3, 47.0, 54.2],
    [0, 45.5, 53.9],
    [12, 51.5, 55.1],
  ] as const
).flatMap(([layingStartsDay, half, most]) => [
  days(
    `${layingStartsDay}-guards-half`,
    `half of the bees over 14 days, laying from day ${layingStartsDay}`,
    { adultLifeDays: 35, layingStartsDay },
    'olderThan14.day50',
    half,
  ),
  days(
    `${layingStartsDay}-guards-most`,
    `nine tenths of the bees over 14 days, laying from day ${layingStartsDay}`,
    { adultLifeDays: 35, layingStartsDay },
    'olderThan14.day90',
    most,
  ),
]);

const modelled = (
  [
    [{ adultLifeDays: 30 }, 'box30', 36.5, 47.3],
    [{ adultLifeDays: 35 }, 'box35', 39.0, 51.8],
    [{ survival: 'benign' }, 'benign', 36.5, 52.1],
    [{ survival: 'average' }, 'average', 33.4, 44.0],
    [{ survival: 'rfid' }, 'rfid', 30.4, 38.4],
  ] as const
).flatMap(([input, id, half, most]) => [
  days(`model-${id}-half`, `half of the bees, ${id}, laying from day 3`, { ...input, layingStartsDay: 3 }, 'day50', half, 1),
  days(
    `model-${id}-most`,
    `nine tenths of the bees, ${id}, laying from day 3`,
    { ...input, layingStartsDay: 3 },
    'day90',
    most,
    1,
  ),
]);

const shares = (
  [
    [28, 0.125],
    [35, 0.344],
    [42, 0.562],
    [49, 0.781],
    [56, 1],
  ] as const
).map(([day, expected]): Check => ({
  ...days(
    `share-${day}`,
    `her share on day ${day}, all living 35 days`,
    { adultLifeDays: 35 },
    `share.${day}.fraction`,
    expected,
  ),
  unit: 'share',
  tolerance: 6e-4,
}));

const steady = (
  [
    [0, 'eggs', 3000],
    [1, 'larvae', 5652],
    [2, 'sealed brood', 10365.8],
    [3, 'bees', 25525.7],
  ] as const
).map(([which, what, expected]): Check => ({
  id: `steady-${what.replace(' ', '-')}`,
  topic: 'brood',
  what: `${what} of a colony with 1000 eggs a day and bees that live 30 days`,
  origin: { kind: 'worked apart', how: '3, 6 and 12 days at 1000, 942, 863.8 a day; 30 days at 850.9' },
  ask: { kind: 'worked', name: 'steady colony', input: [1000, 30, which] },
  expected,
  unit: 'cells or bees',
  tolerance: 0.06,
  why: 'half of the last printed digit',
  circular: false,
}));

/** Bees that stand still at so many emerging a day and a life of so many days. */
const apparent = (
  [
    [1500, 25, 37500],
    [1000, 18, 18000],
  ] as const
).map(([emerging, life, expected]): Check => ({
  id: `steady-${emerging}-for-${life}-days`,
  topic: 'brood',
  what: `bees at ${emerging} emerging a day that live ${life} days`,
  origin: {
    kind: 'published',
    source: 'yamada-2019',
    where: 'apparent longevity, our reading',
    sureness: 'read in the abstract',
  },
  ask: { kind: 'worked', name: 'bees that stand still', input: [emerging, life] },
  expected,
  unit: 'bees',
  tolerance: 0,
  why: 'a product',
  circular: false,
}));

export const turnoverChecks: readonly Check[] = [...boxed, ...guards, ...modelled, ...shares, ...steady, ...apparent];
