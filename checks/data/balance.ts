/** The two published balances of a colony: closed forms and courses, against an arithmetic apart from this code and what the papers say. */
import type { Check, Origin } from '../check.ts';

const apart: Origin = { kind: 'worked apart', how: 'closed form by another program, met by its Runge–Kutta steps of .01 day' };
const apartFood: Origin = {
  kind: 'worked apart',
  how: 'closed form by another program, met by its Runge–Kutta steps of .05 day',
};
const paper = (where: string): Origin => ({ kind: 'published', source: 'khoury-2011', where, sureness: 'from memory' });
const paperFood = (where: string): Origin => ({
  kind: 'published',
  source: 'khoury-2013',
  where,
  sureness: 'read in the abstract',
});
const scripts = (where: string): Origin => ({
  kind: 'published',
  source: 'balance-scripts',
  where,
  sureness: 'read in a second source',
});

interface Asked {
  readonly id: string;
  readonly what: string;
  readonly sum: 'colony-balance' | 'colony-balance-food';
  readonly input: Readonly<Record<string, unknown>>;
  readonly read: string;
  readonly expected: number | string;
  readonly tolerance: number;
  readonly origin?: Origin;
  readonly unit?: string;
  readonly why?: string;
  readonly differs?: string;
}

function asked({ id, what, sum, input, read, expected, tolerance, differs, ...rest }: Asked): Check {
  return {
    id,
    topic: 'colony balances',
    what,
    origin: rest.origin ?? (sum === 'colony-balance' ? apart : apartFood),
    ask: { kind: 'sum', sum, input, read },
    expected,
    unit: rest.unit ?? 'bees',
    tolerance,
    why: rest.why ?? 'half of the last printed digit',
    circular: false,
    ...(differs === undefined ? {} : { differs }),
  };
}

const name = (value: number): string => String(value).replace('.', '-');

/** m, J, house bees, foragers, 1/R as printed, and half of the last digit of the bees. */
const standing = [
  [0.1, 0.3912, 31721.126, 12408.194, 25.565, 5e-4],
  [0.154, 0.3529, 16840.827, 5943.669, 18.399, 5e-4],
  [0.2, 0.3267, 10261.325, 3351.923, 15.307, 5e-4],
  [0.24, 0.3072, 6470.042, 1987.763, 13.562, 5e-4],
  [0.3, 0.2826, 2542.166, 718.314, 11.797, 6e-4],
  [0.35, 0.2652, 208.811, 55.369, 10.775, 5e-4],
  [0.355, 0.2636, 7.805, 2.057, 10.688, 5e-4],
] as const;

const standingChecks = standing.flatMap(([death, ratio, house, foragers, days, half]): Check[] => {
  const common = { sum: 'colony-balance', input: { foragerDeathPerDay: death } } as const;
  const at = `at ${death} a day`;
  return [
    asked({
      ...common,
      id: `balance-ratio-${name(death)}`,
      what: `foragers for each house bee ${at}`,
      read: 'foragersPerHouseBee',
      expected: ratio,
      tolerance: 5e-5,
      unit: 'ratio',
    }),
    asked({
      ...common,
      id: `balance-house-${name(death)}`,
      what: `house bees ${at}`,
      read: 'houseBees',
      expected: house,
      tolerance: half,
    }),
    asked({
      ...common,
      id: `balance-field-${name(death)}`,
      what: `foragers ${at}`,
      read: 'foragers',
      expected: foragers,
      tolerance: half,
    }),
    asked({
      ...common,
      id: `balance-recruited-${name(death)}`,
      what: `days in the house ${at}`,
      read: 'recruitedAfterDays',
      expected: days,
      tolerance: 5e-4,
      unit: 'd',
    }),
  ];
});

/** m, house bees and foragers at the start, day, and on it; half of the last printed digit. */
const courses = [
  [0.24, 16000, 8000, 10, 15070.03, 4735.63, 5e-3],
  [0.24, 16000, 8000, 25, 12467.7, 3895.1, 0.05],
  [0.24, 16000, 8000, 50, 10010.5, 3108.29, 5e-3],
  [0.24, 16000, 8000, 100, 7911.19, 2441.74, 5e-3],
  [0.24, 16000, 8000, 200, 6773.84, 2083.19, 5e-3],
  [0.4, 16000, 8000, 10, 12155.09, 3169.66, 5e-3],
  [0.4, 16000, 8000, 25, 7631.3, 1970.4, 0.05],
  [0.4, 16000, 8000, 50, 4285.92, 1096.37, 5e-3],
  [0.4, 16000, 8000, 100, 1946.86, 494.09, 5e-3],
  [0.4, 16000, 8000, 200, 682.76, 172.43, 5e-3],
  [0.24, 4500, 1500, 100, 5922.5, 1816.2, 0.05],
  [0.4, 4500, 1500, 100, 1148.4, 290.6, 0.05],
] as const;

const courseChecks = courses.flatMap(([death, houseBees, foragers, day, house, field, tolerance]): Check[] =>
  (
    [
      ['houseBees', house],
      ['foragers', field],
    ] as const
  ).map(([which, expected]) =>
    asked({
      id: `balance-course-${name(death)}-${houseBees}-${day}-${which.toLowerCase()}`,
      what: `${which === 'foragers' ? 'foragers' : 'house bees'} after ${day} days at ${death} a day from ${houseBees} and ${foragers}`,
      sum: 'colony-balance',
      input: { foragerDeathPerDay: death, houseBees, foragers, days: day },
      read: `course.${day}.${which}`,
      expected,
      tolerance,
    }),
  ),
);

/** m, brood, house bees, foragers, then food gain a day or food kept, 1/R; half of the last printed digits. */
const fed = [
  [0.1, 'food grows', 16239.76, 46129.32, 18044.18, 'foodGainG', 1062.9, 25.57],
  [0.24, 'food grows', 14681.96, 22124.47, 6797.21, 'foodGainG', 213.0, 13.56],
  [0.3, 'food grows', 14185.44, 18593.81, 5253.87, 'foodGainG', 103.1, 11.8],
  [0.35, 'food grows', 13823.65, 16549.89, 4388.46, 'foodGainG', 43.5, 10.78],
  [0.42, 'settles', 10391.47, 9802.38, 2749.07, 'foodG', 1303.7, 8.49],
  [0.45, 'settles', 3715.84, 2634.51, 917.49, 'foodG', 610.12, 6.38],
  [0.46, 'settles', 778.47, 496.42, 188.04, 'foodG', 479.3, 5.74],
] as const;

const fedChecks = fed.flatMap(([death, fate, brood, house, foragers, food, foodG, days]): Check[] => {
  const common = { sum: 'colony-balance-food', input: { foragerDeathPerDay: death } } as const;
  const each = (id: string, what: string, read: string, expected: number | string, tolerance: number, unit: string): Check =>
    asked({ ...common, id: `food-${id}-${name(death)}`, what: `${what} at ${death} a day`, read, expected, tolerance, unit });
  return [
    each('fate', 'what becomes of the colony', 'fate', fate, 0, 'word'),
    each('brood', 'open brood', 'brood', brood, 5.1e-3, 'cells'),
    each('house', 'house bees', 'houseBees', house, 5e-3, 'bees'),
    each('field', 'foragers', 'foragers', foragers, 5.1e-3, 'bees'),
    each('food', food === 'foodG' ? 'food kept' : 'food gained a day', food, foodG, 0.05, 'g'),
    each('recruited', 'days in the house', 'recruitedAfterDays', days, 6e-3, 'd'),
  ];
});

const foodStart = { brood: 0, houseBees: 16000, foragers: 8000, foodG: 1000 };

const foodCourses = (
  [
    [0.24, 20, [9844.5, 7691.8, 2348.0, 3893.9]],
    [0.24, 100, [14299.8, 20282.8, 6218.1, 11857.1]],
    [0.45, 100, [7987.0, 6762.1, 2043.3, 894.2]],
    [0.5, 100, [5612.7, 4362.6, 1397.7, 664.2]],
  ] as const
).flatMap(([death, day, values]): Check[] =>
  (['brood', 'houseBees', 'foragers', 'foodG'] as const).map((which, index) =>
    asked({
      id: `food-course-${name(death)}-${day}-${which.toLowerCase()}`,
      what: `${which} after ${day} days at ${death} a day`,
      sum: 'colony-balance-food',
      input: { foragerDeathPerDay: death, ...foodStart, days: day },
      read: `course.${day}.${which}`,
      expected: values[index] ?? NaN,
      tolerance: 0.06,
      unit: which === 'foodG' ? 'g' : 'bees or cells',
      why: 'half of the last printed digit, and steps of integration',
    }),
  ),
);

/** m, day, which of brood, house bees, foragers, food, and its value. */
const long = (
  [
    [0.3, 1500, 1, 18593.2],
    [0.45, 8000, 1, 2634.6],
    [0.45, 8000, 3, 610.1],
    [0.5, 3000, 3, 428.6],
  ] as const
).map(([death, days, which, expected]): Check => {
  return {
    id: `food-long-${name(death)}-${days}-${which}`,
    topic: 'colony balances',
    what: `${['brood', 'house bees', 'foragers', 'food'][which]} after ${days} days at ${death} a day`,
    origin: apartFood,
    ask: { kind: 'worked', name: 'food balance after', input: [death, days, which] },
    expected,
    unit: which === 3 ? 'g' : 'bees or cells',
    tolerance: 0.06,
    why: 'half of the last printed digit',
    circular: false,
  };
});

const borders: readonly Check[] = [
  asked({
    id: 'balance-collapse-paper',
    what: 'death rate above which a colony without food stores dies, as the paper prints it',
    sum: 'colony-balance',
    input: { foragerDeathPerDay: 0.2 },
    read: 'collapsesAbove',
    expected: 0.355,
    tolerance: 5e-4,
    unit: '1/d',
    origin: paper('critical death rate of foragers'),
  }),
  asked({
    id: 'balance-collapse',
    what: 'death rate above which a colony without food stores dies',
    sum: 'colony-balance',
    input: { foragerDeathPerDay: 0.2 },
    read: 'collapsesAbove',
    expected: 0.3551966886,
    tolerance: 5e-11,
    unit: '1/d',
  }),
  asked({
    id: 'balance-near-collapse',
    what: 'house bees at .355 a day as an integration over 60000 days has them',
    sum: 'colony-balance',
    input: { foragerDeathPerDay: 0.355 },
    read: 'houseBees',
    expected: 9.458,
    tolerance: 0.5,
    differs: 'so near to the collapse settling takes longer than any integration: the closed form is where it is bound',
  }),
  asked({
    id: 'food-grows-below',
    what: 'death rate below which food grows for ever',
    sum: 'colony-balance-food',
    input: { foragerDeathPerDay: 0.2 },
    read: 'growsBelow',
    expected: 0.401032,
    tolerance: 5e-7,
    unit: '1/d',
  }),
  asked({
    id: 'food-dies-above',
    what: 'death rate above which the colony dies',
    sum: 'colony-balance-food',
    input: { foragerDeathPerDay: 0.2 },
    read: 'diesAbove',
    expected: 0.462406,
    tolerance: 6e-7,
    unit: '1/d',
  }),
  asked({
    id: 'food-dies-with-food',
    what: 'what becomes of a colony whose foragers die at .5 a day',
    sum: 'colony-balance-food',
    input: { foragerDeathPerDay: 0.5 },
    read: 'fate',
    expected: 'dies',
    tolerance: 0,
    unit: 'word',
    origin: paperFood('three fates, the last with food left over'),
    why: 'a word',
  }),
  asked({
    id: 'food-script-border',
    what: 'death rate above which the colony dies, as a script reckons it',
    sum: 'colony-balance-food',
    input: { foragerDeathPerDay: 0.2 },
    read: 'diesAbove',
    expected: 0.5741,
    tolerance: 0.01,
    unit: '1/d',
    origin: scripts('(c − γA) φ / γB'),
    differs: 'that is where the food could feed house bees no longer; the colony dies sooner, for want of reared brood',
  }),
  asked({
    id: 'food-script-foragers',
    what: 'foragers at .45 a day, as a script reckons them',
    sum: 'colony-balance-food',
    input: { foragerDeathPerDay: 0.45 },
    read: 'foragers',
    // L f²/(m (f² + b²)) with f 610.1158 g: 2000 / .45 × .598215.
    expected: 2658.7,
    tolerance: 50,
    origin: scripts('F = L f² / (m (f² + b²))'),
    differs: 'a slip of that script: it leaves out the bees that rear the brood, and does not solve the equations',
  }),
];

export const balanceChecks: readonly Check[] = [
  ...standingChecks,
  ...courseChecks,
  ...fedChecks,
  ...foodCourses,
  ...long,
  ...borders,
];
