/**
 * The rooms in the order in which they may import: each may use those named before it. The walls
 * (dependency cruiser, project references) and docs/rooms.md are held against this one list.
 */
export const rooms = [
  ['numbers', 'maths without bees: units, results, civil days, ranges, intervals'],
  ['figures', 'what was published: one home for every number that a person could dispute'],
  ['journal', 'entries that never change: envelope, order, merge, correction, fold, stores'],
  ['weather', 'what is known of a day: later sun, degree days, hours, season'],
  ['hive', 'wood and comb: trough, bays, bars, combs, outlines, what cells hold'],
  ['colony', 'bees and brood: readings, ageing, totals, dates, what a colony is on a day'],
  ['queens', 'queens: marks now; pedigree and breeding later'],
  ['advice', 'rules with reasons, weighing, the order of the round'],
  ['words', 'the only place where sentences are made: one catalogue a language'],
  ['sheets', 'marks, strips, film, charts and paper as strings'],
];

export const shells = ['disk', 'server', 'web', 'cli'];
