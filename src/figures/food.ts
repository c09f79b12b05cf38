/** Honey, bee bread and syrup: kilograms from comb area, and what a colony eats. Nothing here is a dose of anything. */
import { figure } from './figure.ts';

export const foodFigures = [
  figure({
    key: 'honey-kg-per-dm2-cm', title: 'Honey in a square decimetre of sealed comb, both faces, for each centimetre of thickness',
    topic: 'food', value: 0.128, low: 0.1, high: 0.135, unit: 'kg/dm2/cm', when: 'fully sealed honey comb',
    basis: { kind: 'derived', from: ['honey-share'], how: 'share of the comb that is honey, times 1.417 kg a litre, times 0.1 L' },
    note: 'Combs weighed in the trade give 0.130 to 0.135; the eighth rule gives 0.10.',
  }),
  figure({
    key: 'honey-share', title: 'Share of sealed honey comb that is honey, by volume', topic: 'food', value: 0.9, low: 0.7, high: 0.95,
    unit: 'share', when: 'fully sealed honey comb',
    basis: { kind: 'our choice', why: 'three routes to the weight of full combs agree with it within 6 %' },
  }),
  figure({
    key: 'honey-share-eighths', title: 'Share of food comb that is honey, by volume, eighth rule', topic: 'food', value: 0.7, low: 0.5,
    high: 0.9, unit: 'share', when: 'food as found, not all sealed',
    basis: { kind: 'derived', from: ['food-kg-per-dm2-face'], how: '0.25 kg a dm² of both faces on a comb 25 mm thick' },
  }),
  figure({
    key: 'food-kg-per-dm2-face', title: 'Food on a square decimetre of one face, eighth rule', topic: 'food', value: 0.125, low: 0.05,
    high: 0.125, unit: 'kg/dm2', when: 'food as found',
    basis: { kind: 'source', source: 'zander-eighths', where: '125 g an eighth', sureness: 'read in a second source' },
  }),
  figure({
    key: 'nectar-share', title: 'Stores that open nectar will make, as a share of the same area of sealed honey', topic: 'food',
    value: 0.5, low: 0.25, high: 0.75, unit: 'share', when: 'cells partly filled, not ripe',
    basis: { kind: 'our choice', why: 'no measurement was found; half full on average' },
  }),
  figure({
    key: 'bread-kg-per-dm2', title: 'Bee bread on a square decimetre of comb, both faces', topic: 'food', value: 0.12, low: 0.06,
    high: 0.2, unit: 'kg/dm2', when: 'cells of bee bread as found, about three quarters full',
    basis: { kind: 'our choice', why: '800 cells of about 0.15 g each, the weight of a cell from memory; no source was read' },
  }),
  figure({
    key: 'winter-need', title: 'Honey for a winter, cold', topic: 'food', value: 20, low: 15, high: 25, unit: 'kg',
    when: 'winters like New York\'s',
    basis: { kind: 'source', source: 'seeley-2019', where: 'pages 116–117', sureness: 'read in the source' },
  }),
  figure({
    key: 'winter-need-maritime', title: 'Honey for a winter, mild and wet', topic: 'food', value: 15.6, low: 14.1, high: 17.7,
    unit: 'kg', when: 'cluster of 2 kg, October to March, brood from January',
    basis: { kind: 'derived', from: ['winter-honey-2c', 'food-per-bee-reared'], how: 'cluster and brood month by month' },
  }),
  figure({
    key: 'winter-need-cold', title: 'Honey for a winter, cold, worked out', topic: 'food', value: 23.1, low: 20.6, high: 26.2,
    unit: 'kg', when: 'months well below freezing',
    basis: { kind: 'derived', from: ['winter-honey-2c', 'food-per-bee-reared'], how: 'cluster and brood month by month' },
  }),
  figure({
    key: 'winter-use-per-day', title: 'Honey a broodless colony uses in a winter day', topic: 'food', value: 0.045, low: 0.035,
    high: 0.06, unit: 'kg/d', when: 'broodless winter, cluster of 1.5 to 2.5 kg',
    basis: {
      kind: 'our choice',
      why: 'two routes agree: colonies on scales lost 33 to 56 g a day, and the law of cluster mass gives 40 to 60 g',
    },
  }),
  figure({
    key: 'winter-honey-2c', title: 'Honey a cluster of one kilogram uses in a day at 2 °C', topic: 'food', value: 0.0328, low: 0.025,
    high: 0.04, unit: 'kg/d', when: 'broodless; grows with mass to the power 0.521',
    basis: {
      kind: 'source', source: 'southwick-1985', where: 'law in the abstract; its units are our reading',
      sureness: 'read in the abstract',
    },
    note: 'The range is ours.',
  }),
  figure({
    key: 'food-per-bee-day', title: 'Honey a bee eats in a winter day', topic: 'food', value: 4.5, low: 4.2, high: 6.7, unit: 'mg/d',
    when: 'winter; most in small colonies',
    basis: { kind: 'source', source: 'louisiana-winter', where: 'abstract', sureness: 'read in the abstract' },
  }),
  figure({
    key: 'food-per-bee-reared', title: 'Honey spent on rearing one bee', topic: 'food', value: 0.22, low: 0.2, high: 0.25, unit: 'g',
    when: 'whole year',
    basis: { kind: 'source', source: 'debnam', where: '43.7 kg a year for 200 000 bees', sureness: 'read in the abstract' },
    note: 'The count of bees reared is from another source.',
  }),
  figure({
    key: 'pollen-per-bee', title: 'Pollen spent on rearing one bee', topic: 'food', value: 100, low: 100, high: 140, unit: 'mg',
    when: 'whole year', basis: { kind: 'source', source: 'moeller-1977', where: 'text', sureness: 'read in the source' },
  }),
  figure({
    key: 'summer-food-per-day', title: 'Honey a strong colony uses in a day without nectar', topic: 'food', value: 0.25, low: 0.1,
    high: 0.5, unit: 'kg/d', when: 'summer dearth with brood',
    basis: {
      kind: 'our choice', why: '1000 bees reared a day at 0.22 g, and a little for the grown bees; no field measurement was read',
    },
  }),
  figure({
    key: 'least-stores', title: 'Honey below which a colony is short of food', topic: 'food', value: 10, low: 5, high: 10, unit: 'kg',
    when: 'any time of the season; less for a small colony',
    basis: { kind: 'source', source: 'beebook-queens-2013', where: 'keeping of test colonies', sureness: 'read in the source' },
    note: 'The low end is ours, for the smaller colonies of a trough.',
  }),
  figure({
    key: 'syrup-yield', title: 'Stores made from a kilogram of sugar', topic: 'food', value: 1.016, low: 0.8255, high: 1.2065,
    unit: 'kg/kg', when: 'syrup taken down and ripened',
    basis: { kind: 'derived', from: ['syrup-conversion', 'syrup-kept-share'], how: 'the two multiplied' },
  }),
  figure({
    key: 'syrup-conversion', title: 'Stores that a kilogram of sugar would make without loss', topic: 'food', value: 1.27, low: 1.22,
    high: 1.284, unit: 'kg/kg', when: 'ripened to 18 % water',
    basis: { kind: 'our choice', why: 'mass balance gives 1.284 when all sugar is split and 1.22 when none is; some is left whole' },
  }),
  figure({
    key: 'syrup-kept-share', title: 'Share of fed sugar that ends as stores', topic: 'food', value: 0.8, low: 0.65, high: 0.95,
    unit: 'share', when: 'thick syrup in warm autumn at the high end',
    basis: { kind: 'common practice', note: 'no published efficiency of a whole colony was read' },
  }),
] as const;
