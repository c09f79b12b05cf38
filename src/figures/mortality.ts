/** What dies and when: brood by stage, workers by work and season, drones. Rival death rates stand side by side. */
import { type Basis, figure } from './figure.ts';

const centre = 'centre of the brood area; lower at its edge and where few bees cover it';
const ours = 'The source gives no spread; the range is ours.';
const fukuda = (where: string): Basis => ({ kind: 'source', source: 'fukuda-sakagami-1968', where, sureness: 'read in the abstract' });

export const mortalityFigures = [
  figure({
    key: 'survival-egg-to-larva', title: 'Worker eggs that become larvae', topic: 'brood', value: 0.942, low: 0.85, high: 0.97,
    unit: 'share', when: centre, basis: fukuda('94.2 of 100 eggs'), note: ours,
  }),
  figure({
    key: 'survival-larva-to-sealed', title: 'Worker larvae that are sealed', topic: 'brood', value: 0.917, low: 0.82, high: 0.96,
    unit: 'share', when: centre, basis: fukuda('86.4 of 94.2'), note: ours,
  }),
  figure({
    key: 'survival-sealed-to-adult', title: 'Sealed workers that emerge', topic: 'brood', value: 0.985, low: 0.94, high: 0.995,
    unit: 'share', when: centre, basis: fukuda('85.1 of 86.4'), note: ours,
  }),
  figure({
    key: 'survival-to-sealed', title: 'Worker eggs alive in the cells that are sealed now, on average', topic: 'brood', value: 0.8575,
    low: 0.75, high: 0.93, unit: 'share', when: centre,
    basis: {
      kind: 'derived', from: ['survival-egg-to-larva', 'survival-larva-to-sealed', 'survival-sealed-to-adult'],
      how: 'mean of the share that is sealed (0.864) and the share that emerges (0.851)',
    },
  }),
  figure({
    key: 'survival-egg-to-adult', title: 'Worker eggs that become bees', topic: 'brood', value: 0.851, low: 0.7, high: 0.93,
    unit: 'share', when: centre, basis: fukuda('85.1 of 100 eggs'), note: ours,
  }),
  figure({
    key: 'summer-life-days', title: 'Life of a worker in summer, after emerging', topic: 'adults', value: 30, low: 15, high: 38,
    unit: 'd', when: 'summer',
    basis: { kind: 'source', source: 'yamada-2019', where: 'list of lifespans', sureness: 'read in the source' },
    note: 'Spring 30 to 40 days, summer 25 to 30 or 15 to 38, autumn 50 to 60.',
  }),
  figure({
    key: 'winter-life-days', title: 'Life of a worker in winter, after emerging', topic: 'adults', value: 150, low: 120, high: 200,
    unit: 'd', when: 'winter bees in a cold-temperate climate',
    basis: { kind: 'source', source: 'yamada-2019', where: 'list of lifespans', sureness: 'read in the source' },
    note: 'Another review says about four months.',
  }),
  figure({
    key: 'house-bee-days', title: 'Age at which a worker begins to forage', topic: 'adults', value: 21, low: 14, high: 21, unit: 'd',
    when: 'a colony with bees of all ages; 5 to 35 where ages are lacking',
    basis: { kind: 'source', source: 'abou-shaara-2014', where: 'review', sureness: 'read in the abstract' },
    note: 'Another review says two to three weeks.',
  }),
  figure({
    key: 'house-bee-loss', title: 'House bees lost in a day, kind summer', topic: 'adults', value: 0.005, low: 0.003, high: 0.028,
    unit: '1/d', when: 'before foraging',
    basis: { kind: 'our choice', why: 'with the losses of foragers it gives the summer life that was measured' },
  }),
  figure({
    key: 'house-bee-loss-tagged', title: 'House bees lost in a day, tagged bees', topic: 'adults', value: 0.028, low: 0.02, high: 0.035,
    unit: '1/d', when: 'tagged bees over 18 days before foraging',
    basis: { kind: 'derived', from: ['before-foraging-death-share'], how: '1 − 0.6^(1/18)' },
    note: 'Tags add risk: read it as an upper end.',
  }),
  figure({
    key: 'before-foraging-death-share', title: 'Workers that die before they forage', topic: 'adults', value: 0.4, low: 0.3, high: 0.45,
    unit: 'share', when: 'tagged bees, several sites and seasons',
    basis: { kind: 'source', source: 'prado-2020', where: 'abstract', sureness: 'read in the abstract' },
    note: `Tags add risk. ${ours}`,
  }),
  figure({
    key: 'forager-loss', title: 'Foragers lost in a day, kind summer', topic: 'adults', value: 0.1, low: 0.1, high: 0.25, unit: '1/d',
    when: 'calendar days in summer', basis: { kind: 'our choice', why: 'with 21 days in the house it gives a summer life of 28 days' },
    note: 'The average of older field studies is 0.154; tagged bees lost 0.36 a foraging day.',
  }),
  figure({
    key: 'forager-loss-average', title: 'Foragers lost in a day, older field studies', topic: 'adults', value: 0.154, low: 0.1,
    high: 0.25, unit: '1/d', when: 'calendar days in summer',
    basis: { kind: 'common practice', note: 'a foraging life of 6.5 days, from memory' },
  }),
  figure({
    key: 'forager-loss-tagged', title: 'Foragers lost in a foraging day, tagged bees', topic: 'adults', value: 0.36, low: 0.25,
    high: 0.4, unit: '1/d', when: 'days on which the bee foraged',
    basis: { kind: 'source', source: 'prado-2020', where: 'abstract', sureness: 'read in the abstract' },
    note: 'A foraging day is not a calendar day, and tags add risk: an upper end.',
  }),
  figure({
    key: 'daily-loss-summer', title: 'Adult bees a colony loses in a day of summer', topic: 'adults', value: 0.033, low: 0.026,
    high: 0.067, unit: '1/d', when: 'steady colony in summer',
    basis: { kind: 'derived', from: ['summer-life-days'], how: 'one over the life in days' },
  }),
  figure({
    key: 'daily-loss-winter', title: 'Adult bees a colony loses in a day of winter', topic: 'adults', value: 0.0067, low: 0.003,
    high: 0.012, unit: '1/d', when: 'broodless winter',
    basis: { kind: 'derived', from: ['winter-life-days'], how: 'one over the life in days; the range is ours' },
  }),
  figure({
    key: 'drone-life-days', title: 'Life of a drone, after emerging', topic: 'adults', value: 14, low: 13, high: 35, unit: 'd',
    when: 'summer; longer late in the season and in colonies without a queen',
    basis: { kind: 'source', source: 'drone-life-1988', where: 'abstract: means 13 to 15', sureness: 'read in the abstract' },
    note: 'Marked drones put into colonies; most were lost on the first day, so it is biased low. A handbook gives 21 to 32.',
  }),
  figure({
    key: 'drone-life-handbook-days', title: 'Life of a drone, as a handbook gives it', topic: 'adults', value: 26, low: 21, high: 32,
    unit: 'd', when: 'summer',
    basis: { kind: 'source', source: 'winston-1987', where: 'quoted on a page', sureness: 'read in a second source' },
    note: 'The middle of the printed range.',
  }),
] as const;
