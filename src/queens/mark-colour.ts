/** The colour that marks the queens of a year: the international row of five, by the last digit of the year. */

export const markColours = ['blue', 'white', 'yellow', 'red', 'green'] as const;
export type MarkColour = (typeof markColours)[number];

/** Years ending in 0 or 5 blue, 1 or 6 white, 2 or 7 yellow, 3 or 8 red, 4 or 9 green. `year` is a whole number from 1. */
export function markColour(year: number): MarkColour {
  return markColours[year % markColours.length] ?? 'blue';
}
