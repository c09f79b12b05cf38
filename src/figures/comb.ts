/** Wood and comb: bars, gaps, angles, cell widths, thickness, how much is built. Typical sizes stand in until the keeper measures. */
import { type Basis, figure } from './figure.ts';

const plans: Basis = { kind: 'source', source: 'bfd-journal', where: 'plans of issues 66, 93 and 118', sureness: 'read in the source' };
const nests: Basis = { kind: 'source', source: 'seeley-morse-1976', where: 'table II, as quoted', sureness: 'read in a second source' };
const builders: Basis = { kind: 'common practice', note: 'builders\' and club pages' };

export const combFigures = [
  figure({
    key: 'bar-width', title: 'Width of a top bar', topic: 'comb', value: 35, low: 33, high: 36, unit: 'mm',
    when: 'European bees, brood nest', basis: plans,
    note: 'Natural combs of European bees stand about 35 mm apart; African bees want 32. Honey combs may have 38.',
  }),
  figure({
    key: 'bar-width-african', title: 'Width of a top bar, African bees', topic: 'comb', value: 32, low: 32, high: 33, unit: 'mm',
    when: 'African bees', basis: plans,
  }),
  figure({
    key: 'bee-space', title: 'Space that bees leave between comb and comb or wood', topic: 'comb', value: 8, low: 6, high: 9.5,
    unit: 'mm', when: 'European bees', basis: plans,
    note: 'On wider bars an African race left combs as thick as before and the space wider: 10 mm.',
  }),
  figure({
    key: 'worker-cell-width', title: 'Width of a worker cell, wall to wall', topic: 'comb', value: 5.2, low: 4.9, high: 5.6, unit: 'mm',
    when: 'natural comb of European bees', basis: nests,
    note: 'Keepers measure 5.2 to 5.4, and cells counted on natural nests fit 5.37. Count along 10 cm: your own number is better.',
  }),
  figure({
    key: 'drone-cell-width', title: 'Width of a drone cell, wall to wall', topic: 'comb', value: 6.8, low: 6.2, high: 6.9, unit: 'mm',
    when: 'natural comb of European bees',
    basis: { kind: 'our choice', why: 'three sources disagree (6.2 to 6.9); 6.2 is probably an inner width' },
  }),
  figure({
    key: 'comb-thickness-worker', title: 'Thickness of worker comb', topic: 'comb', value: 22.5, low: 21, high: 24, unit: 'mm',
    when: 'brood comb', basis: nests,
  }),
  figure({
    key: 'comb-thickness-drone', title: 'Thickness of drone comb', topic: 'comb', value: 27, low: 25, high: 29, unit: 'mm',
    when: 'drone brood', basis: nests,
  }),
  figure({
    key: 'comb-thickness-honey', title: 'Thickness of sealed honey comb', topic: 'comb', value: 27, low: 25, high: 40, unit: 'mm',
    when: 'bars of 35 mm; thicker on wider bars',
    basis: { kind: 'derived', from: ['bar-width', 'bee-space'], how: 'width of the bar less one bee space' },
    note: 'Variable in nature.',
  }),
  figure({
    key: 'side-gap', title: 'Gap between comb and side wall, at right angles to the wall', topic: 'comb', value: 8, low: 6, high: 10,
    unit: 'mm', when: 'comb not attached to the wall', basis: { kind: 'derived', from: ['bee-space'], how: 'one bee space' },
  }),
  figure({
    key: 'floor-gap', title: 'Gap between comb and floor', topic: 'comb', value: 20, low: 10, high: 30, unit: 'mm',
    when: 'comb built to the full depth', basis: builders,
  }),
  figure({
    key: 'wall-angle', title: 'Slope of the side walls from the vertical', topic: 'comb', value: 30, low: 10, high: 30, unit: 'deg',
    when: 'trough hives', basis: builders, note: 'One printed plan has 10 degrees; 0 is a hive with upright walls.',
  }),
  figure({
    key: 'hive-depth', title: 'Depth of the hive, bar to floor', topic: 'comb', value: 275, low: 250, high: 300, unit: 'mm',
    when: 'trough hives', basis: builders,
  }),
  figure({
    key: 'hive-top-width', title: 'Width of the hive at the bars, inside', topic: 'comb', value: 440, low: 300, high: 500, unit: 'mm',
    when: 'trough hives', basis: builders,
  }),
  figure({
    key: 'hive-bars', title: 'Bars of a hive', topic: 'comb', value: 27, low: 25, high: 30, unit: 'bars', when: 'trough hives',
    basis: plans,
  }),
  figure({
    key: 'expansion-allowance', title: 'Length left for bars to swell', topic: 'comb', value: 10, low: 5, high: 15, unit: 'mm',
    when: 'wooden bars', basis: { kind: 'source', source: 'bfd-journal', where: 'plan of issue 93', sureness: 'read in the source' },
    note: 'The range is ours.',
  }),
  figure({
    key: 'rounded-comb-share', title: 'Area of a comb that is not built out, as a share of the straight-edged outline of its depth',
    topic: 'comb', value: 0.925, low: 0.9, high: 0.95, unit: 'share', when: 'free-hanging comb with a rounded lower edge',
    basis: { kind: 'common practice' },
  }),
  figure({
    key: 'comb-built-per-day', title: 'Comb a strong swarm builds in a day, one face counted', topic: 'comb', value: 2, low: 1, high: 3,
    unit: 'dm2/d', when: 'first two to three weeks, nectar or syrup coming in',
    basis: { kind: 'our choice', why: 'no published rate was found; measure it weekly' },
    note: 'Later comb is built only in a nectar flow and where the nest is short of room.',
  }),
  figure({
    key: 'drone-comb-share', title: 'Share of comb that is drone comb', topic: 'comb', value: 0.17, low: 0.1, high: 0.24, unit: 'share',
    when: 'natural nests', basis: nests, note: 'Printed as 0.17 with a standard deviation of 0.03.',
  }),
  figure({
    key: 'comb-depth-limit', title: 'Depth to which a free-hanging comb is handled without trouble', topic: 'comb', value: 300,
    low: 250, high: 300, unit: 'mm', when: 'no frame, no wire', basis: builders,
    note: 'Not a promise: a new comb of any depth can fall.',
  }),
  figure({
    key: 'nest-volume', title: 'Room of a natural nest', topic: 'comb', value: 42, low: 30, high: 60, unit: 'L', when: 'hollow trees',
    basis: { kind: 'source', source: 'seeley-morse-1976', where: 'abstract: 30 to 60', sureness: 'read in the abstract' },
  }),
  figure({
    key: 'wax-per-dm2', title: 'Wax of a new comb, both faces', topic: 'comb', value: 0.0112, low: 0.009, high: 0.0115, unit: 'kg/dm2',
    when: 'new comb',
    basis: {
      kind: 'source', source: 'bogdanov-beeswax', where: '100 000 cells, 2.5 m² of face, 1.4 kg', sureness: 'read in a second source',
    },
    note: 'Old framed comb weighed three times as much.',
  }),
  figure({
    key: 'cappings-share', title: 'Wax of cappings, as a share of the honey under them', topic: 'comb', value: 0.018, low: 0.01,
    high: 0.025, unit: 'kg/kg', when: 'sealed honey',
    basis: { kind: 'source', source: 'crude-cappings', where: '18 kg a tonne', sureness: 'read in a second source' },
    note: 'The range is ours.',
  }),
  figure({
    key: 'honey-per-wax', title: 'Honey eaten for a kilogram of wax', topic: 'comb', value: 8.4, low: 6, high: 8.8, unit: 'kg/kg',
    when: 'building in a flow',
    basis: { kind: 'source', source: 'whitcomb-1946', where: 'as quoted', sureness: 'read in a second source' },
  }),
] as const;
