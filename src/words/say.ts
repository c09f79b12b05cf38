/** How the program speaks to one person: language, units, clock. Given to everything that makes text. */
export interface Manner {
  readonly language: 'en';
  readonly units: 'metric' | 'US';
  readonly hours: 24 | 12;
}

export const plainManner: Manner = { language: 'en', units: 'metric', hours: 24 };
