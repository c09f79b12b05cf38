/** How much a queen lays, through a year, and how strong a colony comes out of winter. Northern hemisphere. */
import { figure } from './figure.ts';

/** Laying in a month as a share of the queen's own peak: 1 is the height of the season. */
function season<const K extends string>(key: K, month: string, value: number) {
  return figure({
    key,
    title: `Laying in ${month}, as a share of the peak`,
    topic: 'brood',
    value,
    low: Math.max(0, value - 0.2),
    high: Math.min(1, value + 0.2),
    unit: 'share',
    when: 'temperate, northern hemisphere, middle of the month',
    basis: { kind: 'common practice', note: "a plain curve without a published source; the keeper's own sealed brood is better" },
  });
}

export const layingFigures = [
  figure({
    key: 'laying-peak',
    title: 'Eggs a good queen lays in a day at the height of the season',
    topic: 'brood',
    value: 1500,
    low: 1000,
    high: 2000,
    unit: 'eggs/d',
    when: 'height of the season',
    basis: { kind: 'common practice', note: 'extension and club pages agree' },
    note: 'One counted queen of 1925 reached about 1590, from memory.',
  }),
  season('laying-season-01', 'January', 0.02),
  season('laying-season-02', 'February', 0.08),
  season('laying-season-03', 'March', 0.25),
  season('laying-season-04', 'April', 0.6),
  season('laying-season-05', 'May', 0.9),
  season('laying-season-06', 'June', 1),
  season('laying-season-07', 'July', 0.85),
  season('laying-season-08', 'August', 0.6),
  season('laying-season-09', 'September', 0.4),
  season('laying-season-10', 'October', 0.15),
  season('laying-season-11', 'November', 0.03),
  season('laying-season-12', 'December', 0),
  figure({
    key: 'winter-bee-onset',
    title: 'Day of the year from which the workers that emerge are mostly winter bees',
    topic: 'adults',
    value: 240,
    low: 219,
    high: 261,
    unit: 'day of year',
    when: 'cold-temperate, northern hemisphere',
    basis: {
      kind: 'common practice',
      note: 'middle of August to September in the literature, read second-hand; the exact day is from memory',
    },
    note: 'Three weeks either way; 240 is 28 August.',
  }),
  figure({
    key: 'spring-weak-bees',
    title: 'Bees out of winter, below which a colony is weak',
    topic: 'adults',
    value: 5000,
    low: 4000,
    high: 6000,
    unit: 'bees',
    when: 'first warm days of the year',
    basis: { kind: 'source', source: 'imdorf-2008', where: 'table 5, page 73', sureness: 'read in a second source' },
    note: 'The range is ours.',
  }),
] as const;
