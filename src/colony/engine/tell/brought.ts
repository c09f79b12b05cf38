/**
 * Whose daughters came in from elsewhere: of the brood and bees laid on a day, the share that another colony's queen
 * laid, by the combs and bees that the journal says were joined. Nothing is carried in the particles: those laid on
 * one day are lost alike, whoever laid them, so that their share stays what it was when they came in. It is taken
 * from what was believed of the colony before, brood of a stage spread evenly over its days. That the same combs may
 * have gone out again is left out; where nothing was believed before, what came is not told apart.
 */
import type { DayBelief } from '../../foreseen.ts';
import { dayNumber } from '../../../numbers/day.ts';
import type { EngineConstants } from '../constants.ts';
import type { Happening } from '../happening.ts';
import { adultDays, broodDays } from '../particle.ts';

/** Share, 0 … 1, that came from elsewhere of those laid on a day, in a cloud that stands on `day`; both are day numbers. */
export type Brought = (day: number, laidOn: number) => number;

export const nothingBrought: Brought = () => 0;

interface Coming {
  readonly day: number;
  /** By the day on which they were laid. */
  readonly shares: ReadonlyMap<number, number>;
}

/** `behind`: what was believed so far, ascending; on the day of a visit the last row is the one after it. */
export function broughtTo(c: EngineConstants, behind: readonly DayBelief[]): Brought {
  const comings = [...c.ground.told].flatMap(([day, list]): readonly Coming[] => {
    const joined = list.filter((one) => one.kind === 'joined');
    const before = behind.findLast((row) => dayNumber(row.day) <= day);
    return joined.length === 0 || before === undefined ? [] : [{ day, shares: sharesOf(c, day, joined, before) }];
  });
  if (comings.length === 0) return nothingBrought;
  // What is done on a day is in the cloud of the next one.
  return (day, laidOn) =>
    1 - comings.reduce((own, coming) => (coming.day < day ? own * (1 - (coming.shares.get(laidOn) ?? 0)) : own), 1);
}

type Joined = Happening & { readonly kind: 'joined' };

function sharesOf(c: EngineConstants, day: number, joined: readonly Joined[], before: DayBelief): ReadonlyMap<number, number> {
  const cells = joined.reduce((sum, one) => sum + one.broodCells, 0);
  const bees = joined.reduce((sum, one) => sum + one.bees, 0);
  const shares = new Map<number, number>();
  c.start.broodShares.forEach((part, age) => shares.set(day - 1 - age, shareOf(cells * part, ownOfAge(c, age, before))));
  const ofBees = shareOf(bees, before.values.bees.likely);
  for (let age = 0; age < adultDays; age += 1) shares.set(day - 1 - broodDays - age, ofBees);
  return shares;
}

function shareOf(came: number, own: number): number {
  return came > 0 ? came / (came + own) : 0;
}

/** The colony's own brood of one day's eggs, as it was believed before. */
function ownOfAge({ hatchAge, sealAge }: EngineConstants, age: number, { values }: DayBelief): number {
  if (age < hatchAge) return values.eggs.likely / hatchAge;
  if (age < sealAge) return values.larvae.likely / (sealAge - hatchAge);
  return values.sealed.likely / (broodDays - sealAge);
}
