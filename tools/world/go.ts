/** The keeper goes to a hive of the made-up yard: the temperature is typed, the visit made, the next one planned. */
import type { Day } from '../../src/numbers/day.ts';
import { chanceOf } from './chance.ts';
import { nextDue, visit, type Visited, type VisitPlan } from './keeper.ts';
import { chargeOf, skyOf, writeWeather, type Yard } from './yard.ts';

/** Something that befalls the yard on a day, before the usual round. */
export interface Fate {
  readonly day: Day;
  readonly does: (yard: Yard, day: Day) => void;
}

export type Plan = Omit<VisitPlan, 'by'> & { readonly by?: VisitPlan['by'] };

export function goTo(yard: Yard, name: string, plan: Plan): Visited {
  const charge = chargeOf(yard, name);
  if (!charge.society.alive) throw new Error(`${name} cannot be visited on ${plan.clock.day}: it is dead`);
  writeWeather(yard, plan.clock.day);
  const done = visit(yard.scribe, charge, { by: yard.people.keeper, ...plan }, skyOf(yard, plan.clock.day), yard.seed);
  if (plan.kind !== 'glance') charge.due = nextDue(charge, plan.clock.day, chanceOf(yard.seed, `due|${name}|${plan.clock.day}`));
  return done;
}
