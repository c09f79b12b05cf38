/** The hours of the day that suit opening, and a plan for each number of minutes that the keeper can choose. */
import type { Apiary, Picture } from '../../../apiary.ts';
import { planMinutes, suitsOpening } from '../../../apiary/round-day.ts';
import { minuteChoices, type RoundDay } from '../model/shown.ts';

export function roundDayOf({ book }: Apiary, { weather, round, colonies }: Picture): RoundDay {
  return {
    hours: suitsOpening(weather, book),
    plans: minuteChoices.map((minutes) => ({ minutes, ...planMinutes(round, colonies, minutes, book) })),
  };
}
