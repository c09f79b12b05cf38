/** The sum "colony-balance": the published balance of house bees and foragers. */
import { type Given, numberOf, numberOrNull } from '../../figures/read-input.ts';
import { type Answer, fieldIssue, sum } from '../../figures/sum.ts';
import { bad, good, type Result } from '../../numbers/result.ts';
import { startField } from './start-field.ts';
import { twoClassBalance, twoClassCoefficients, twoClassCollapse, twoClassCourse } from './two-classes.ts';

const { laying, halfBees, recruitment, inhibition } = twoClassCoefficients;

export const colonyBalanceSum = sum({
  key: 'colony-balance',
  title: 'A colony as a balance of house bees and foragers',
  line: 'where bees settle for a death rate of foragers, and above which rate a colony dies: a published model without food or season',
  formula:
    'Khoury, Myerscough and Barron 2011 (doi 10.1371/journal.pone.0018491): dH/dt = L N/(w + N) − H R, dF/dt = H R − m F, ' +
    `R = α − σ F/N, N = H + F; L ${laying} a day, w ${halfBees}, α ${recruitment}, σ ${inhibition} a day. ` +
    'Standing still: m J² − (α − σ − m) J − α = 0, N = (L/m)(1 + J)/J − w; recruitedAfterDays 1/(m J); ' +
    'collapsesAbove where N = 0. With a start: each whole day, by Runge and Kutta at 10 steps a day',
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
    startField('houseBees', 'bees', 'house bees on day 0'),
    startField('foragers', 'bees', 'foragers on day 0'),
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
  const [house, foragers, days] = [
    numberOrNull(given, 'houseBees'),
    numberOrNull(given, 'foragers'),
    numberOrNull(given, 'days'),
  ];
  const missing = days !== null && (house === null || foragers === null);
  if (missing) return bad(fieldIssue('days', `${days} without a start`, 'left out, or with houseBees and foragers'));
  const balance = twoClassBalance(death);
  const rows = days === null ? null : twoClassCourse(death, [house ?? 0, foragers ?? 0], days);
  return good({
    bees: balance.houseBees + balance.foragers,
    ...balance,
    collapsesAbove: twoClassCollapse(),
    course: rows?.map(([houseBees, fieldBees], day) => ({ day, houseBees, foragers: fieldBees })) ?? null,
  });
}
