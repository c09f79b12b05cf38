/** The day of a round, at the front door: the hours that suit opening, and what fits the minutes that the keeper has. */
export { type MinutesDay, planMinutes } from '../advice/minutes.ts';
export { type OpeningHours, type Stretch, suitsOpening } from '../advice/suits-opening.ts';
