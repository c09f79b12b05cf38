/** How the program speaks to one person: language, units, clock. Given to everything that makes text. */
import type { Day } from '../numbers/day.ts';

export interface Manner {
  readonly language: 'en';
  readonly units: 'metric' | 'US';
  readonly hours: 24 | 12;
  /** Days of this year are said without their year; left out, every day is said with its year. */
  readonly today?: Day;
}

export const plainManner: Manner = { language: 'en', units: 'metric', hours: 24 };
