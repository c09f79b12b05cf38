/** The hours of the day that suit opening, and a plan for each number of minutes that the keeper can choose. */
import type { Apiary, Picture } from '../../../apiary.ts';
import { fitMinutes, suitsOpening } from '../../../apiary/round-day.ts';
import { type DayPlan, minuteChoices, type RoundDay } from '../model/shown.ts';

export function roundDayOf({ book }: Apiary, picture: Picture): RoundDay {
  return {
    hours: suitsOpening(picture.weather, book),
    plans: minuteChoices.map((minutes): DayPlan => {
      const { chosen, left, used } = fitMinutes(picture.round, minutes, book);
      const items = chosen.map(({ stop: { colony, verb, first } }) => ({
        colony,
        verb: verb === 'leave shut' ? ('no visit' as const) : verb,
        places: first?.places ?? [],
      }));
      return { minutes, items, used, left: left.length };
    }),
  };
}
