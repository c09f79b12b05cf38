/** The sum "colony-balance-food": the published balance with open brood and stored food. */
import { type Given, numberOf, numberOrNull } from '../../figures/read-input.ts';
import { type Answer, fieldIssue, sum } from '../../figures/sum.ts';
import { bad, good, type Result } from '../../numbers/result.ts';
import { startField } from './start-field.ts';
import { foodBalance, foodBorders, foodCoefficients, foodCourse } from './with-food.ts';

const k = foodCoefficients;
const starts = ['brood', 'houseBees', 'foragers', 'foodG'] as const;

export const colonyBalanceFoodSum = sum({
  key: 'colony-balance-food',
  title: 'A colony as a balance of brood, bees and food',
  line: 'whether food grows, all settles or the colony dies, for a death rate of foragers: a published model without season',
  formula:
    'Khoury, Barron and Myerscough 2013 (doi 10.1371/journal.pone.0059084): S = f²/(f² + b²) · H/(H + v); ' +
    'R = a + a′ b²/(b² + f²) − σ F/(F + H); dB/dt = L S − φ B; dH/dt = φ B(t − τ) − R H; dF/dt = R H − m F; ' +
    'df/dt = c F − γA (F + H) − γB B, no brood before day 0; ' +
    `L ${k.laying} a day, 1/φ ${k.openDays} d, τ ${k.sealedDays} d, v ${k.halfHouseBees} bees, b ${k.halfFoodG} g, a ${k.recruitment}, ` +
    `a′ ${k.recruitmentOfWant}, σ ${k.inhibition} a day, c ${k.broughtByForager}, γA ${k.eatenByBee}, γB ${k.eatenByBrood} g a day. ` +
    'With a start: each whole day, by Runge and Kutta at 20 steps a day',
  fields: [
    {
      kind: 'number',
      name: 'foragerDeathPerDay',
      unit: '1/d',
      low: 0,
      high: 2,
      aboveLow: true,
      about: 'foragers that die in a day',
    },
    startField('brood', 'cells', 'open brood on day 0'),
    startField('houseBees', 'bees', 'house bees on day 0'),
    startField('foragers', 'bees', 'foragers on day 0'),
    startField('foodG', 'g', 'stored food on day 0'),
    {
      kind: 'integer',
      name: 'days',
      unit: 'days',
      low: 1,
      high: 200,
      without: { kind: 'nothing' },
      about: 'days to follow from the start; left out, none',
    },
  ],
  answer,
});

function answer(given: Given): Result<Answer> {
  const death = numberOf(given, 'foragerDeathPerDay');
  const days = numberOrNull(given, 'days');
  const missing = starts.filter((name) => numberOrNull(given, name) === null);
  if (days !== null && missing.length > 0) {
    return bad(fieldIssue('days', `${days} without ${missing.join(', ')}`, `left out, or with ${starts.join(', ')}`));
  }
  const rows =
    days === null
      ? null
      : foodCourse(
          death,
          starts.map((name) => numberOf(given, name)),
          days,
        );
  return good({
    ...foodBalance(death),
    ...foodBorders(),
    course: rows?.map(([brood, houseBees, foragers, foodG], day) => ({ day, brood, houseBees, foragers, foodG })) ?? null,
  });
}
