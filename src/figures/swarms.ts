/** Swarms and the cells before them: when they leave, how many bees go, how many cells each kind of raising has, when to look again. */
import { type Basis, figure } from './figure.ts';

const pages: Basis = { kind: 'source', source: 'queen-pages', where: 'pages on swarming', sureness: 'read in a second source' };

export const swarmsFigures = [
  figure({
    key: 'swarm-leaves-at-sealing', title: 'Age of the first queen cell, from its egg, when a prime swarm leaves', topic: 'swarms',
    value: 8.5, low: 8, high: 9, unit: 'd', when: 'weather fit for flight; queen not clipped', basis: pages,
    note: 'Bad weather delays it; it can come earlier where cells were cut before.',
  }),
  figure({
    key: 'swarm-share', title: 'Share of the workers that leave with a prime swarm', topic: 'swarms', value: 0.75, low: 0.6, high: 0.9,
    unit: 'share', when: 'first swarm of a colony',
    basis: { kind: 'source', source: 'rangel-seeley-2012', where: 'mean', sureness: 'read in the abstract' },
    note: 'The range is from memory; keepers\' rules of half or 60 of 100 are lower.',
  }),
  figure({
    key: 'swarm-cells-count', title: 'Queen cells of a colony that prepares to swarm', topic: 'swarms', value: 10, low: 4, high: 40,
    unit: 'cells', when: 'mixed ages, mostly at edges and holes of the combs',
    basis: { kind: 'source', source: 'beebook-behaviour-2013', where: 'about ten queens', sureness: 'read in the source' },
    note: 'Pages give 4 to 20 and 5 to 40.',
  }),
  figure({
    key: 'supersedure-cells-count', title: 'Queen cells of a colony that replaces its queen in peace', topic: 'swarms', value: 2,
    low: 1, high: 6, unit: 'cells', when: 'of one age, often on the face', basis: pages,
    note: 'Where the cells hang does not tell for certain.',
  }),
  figure({
    key: 'emergency-cells-count', title: 'Queen cells of a colony that lost its queen', topic: 'swarms', value: 8, low: 1, high: 20,
    unit: 'cells', when: 'built over worker cells on the face, wide spread of ages', basis: pages,
    note: 'The middle is our reading of 1 to 20.',
  }),
  figure({
    key: 'after-swarm-days', title: 'From the prime swarm to an after-swarm', topic: 'swarms', value: 8, low: 3, high: 16, unit: 'd',
    when: 'a colony left with several cells',
    basis: { kind: 'derived', from: ['virgin-emerges-after-sealing'], how: 'the first virgin is out' },
    note: 'Mostly 7 to 10; bad weather before the prime swarm shortens it.',
  }),
  figure({
    key: 'check-interval-swarm', title: 'Days between looks in the swarm season', topic: 'swarms', value: 7, low: 7, high: 9, unit: 'd',
    when: 'no cells were cut at the last look',
    basis: { kind: 'derived', from: ['swarm-leaves-at-sealing'], how: 'an egg of a day in a cup is sealed a week later' },
  }),
  figure({
    key: 'recheck-after-cutting', title: 'Days after cutting queen cells within which new ones can be sealed', topic: 'swarms',
    value: 3, low: 3, high: 4, unit: 'd', when: 'young larvae left in the nest',
    basis: {
      kind: 'derived', from: ['queen-sealing-age', 'oldest-larva-for-queen'], how: 'new cells are begun over larvae of a day or two',
    },
  }),
  figure({
    key: 'swarm-shortening', title: 'Days before the swarm on which laying all but stops', topic: 'swarms', value: 3, low: 1, high: 7,
    unit: 'd', when: 'prime swarm', basis: { kind: 'common practice' },
  }),
  figure({
    key: 'cell-seen-chance', title: 'Chance to see a queen cell on a face that is looked at', topic: 'swarms', value: 0.7, low: 0.5,
    high: 0.9, unit: 'share', when: 'comb not brushed free of bees',
    basis: { kind: 'our choice', why: 'no trial was found; bees hide cells in corners and along edges, and a brushed comb hides few' },
  }),
  figure({
    key: 'drone-comb-start-bees', title: 'Workers from which a colony begins drone comb', topic: 'swarms', value: 4000, low: 3000,
    high: 6000, unit: 'bees', when: 'a new colony',
    basis: { kind: 'source', source: 'smith-2014', where: 'via a news page', sureness: 'read in a second source' },
    note: 'The range is ours.',
  }),
  figure({
    key: 'swarm-first-combs', title: 'Combs that a swarm begins in its first week', topic: 'swarms', value: 3, low: 2, high: 4,
    unit: 'combs', when: 'strong swarm, nectar or syrup coming in', basis: { kind: 'common practice', note: 'two keepers\' accounts' },
  }),
] as const;
