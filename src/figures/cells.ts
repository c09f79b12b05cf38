/** Cells and bees on a face of comb, bees in a kilogram, and how far an eye errs. All densities are for one face. */
import { type Basis, figure } from './figure.ts';

const eighths: Basis = { kind: 'source', source: 'zander-eighths', where: 'factors an eighth', sureness: 'read in a second source' };
const weights = (where: string): Basis => ({ kind: 'source', source: 'mitchell-1970', where, sureness: 'read in a second source' });
const noTrial = 'no published spread of such estimates was found; the keeper\'s own counts replace it';

export const cellsFigures = [
  figure({
    key: 'worker-cells-per-dm2', title: 'Worker cells on a square decimetre of one face', topic: 'cells and bees', value: 400, low: 366,
    high: 427, unit: 'cells/dm2', when: 'European bees', basis: eighths,
    note: 'A natural nest of 100 000 cells on 27 square feet gives 399; cells 5.2 mm wide would give 427; an American rule gives 388.',
  }),
  figure({
    key: 'worker-cells-per-dm2-american', title: 'Worker cells on a square decimetre of one face, American rule',
    topic: 'cells and bees', value: 387.5, low: 366, high: 427, unit: 'cells/dm2', when: 'framed comb',
    basis: { kind: 'source', source: 'illinois-queens', where: '25 cells a square inch', sureness: 'read in the source' },
  }),
  figure({
    key: 'worker-cells-per-dm2-natural', title: 'Worker cells on a square decimetre of one face, by cell width',
    topic: 'cells and bees', value: 427, low: 368, high: 481, unit: 'cells/dm2', when: 'natural comb',
    basis: { kind: 'derived', from: ['worker-cell-width'], how: 'hexagons: 20 000 / (√3 w²)' },
  }),
  figure({
    key: 'drone-cells-per-dm2', title: 'Drone cells on a square decimetre of one face', topic: 'cells and bees', value: 250, low: 230,
    high: 300, unit: 'cells/dm2', when: 'European bees',
    basis: { kind: 'our choice', why: 'three sources disagree: 230 by eighths, 248 by the inch, 300 by a width of 6.2 mm' },
  }),
  figure({
    key: 'bees-per-dm2', title: 'Bees on a square decimetre of one face, fully covered', topic: 'cells and bees', value: 125, low: 80,
    high: 138, unit: 'bees/dm2', when: 'bees close together in one layer, before flight', basis: eighths,
    note: 'A Swiss page gives 130; combs merely occupied held 79.',
  }),
  figure({
    key: 'bees-per-dm2-swiss', title: 'Bees on a square decimetre of one face, Swiss page', topic: 'cells and bees', value: 130,
    low: 108, high: 138, unit: 'bees/dm2', when: 'fully covered',
    basis: { kind: 'source', source: 'swiss-strength-page', where: 'factor a dm²', sureness: 'read in a second source' },
    note: 'A comb at its holding capacity gave 138 (Burgett and Burikam, from memory).',
  }),
  figure({
    key: 'bees-per-dm2-occupied', title: 'Bees on a square decimetre of one face, comb occupied as found', topic: 'cells and bees',
    value: 79, low: 60, high: 100, unit: 'bees/dm2', when: 'average over occupied combs',
    basis: { kind: 'source', source: 'simpson-1969', where: '1400 a deep comb', sureness: 'read in the abstract' },
    note: 'The range is ours.',
  }),
  figure({
    key: 'bees-per-dm2-capacity', title: 'Bees on a square decimetre of one face, comb that holds no more', topic: 'cells and bees',
    value: 137.6, low: 125, high: 145, unit: 'bees/dm2', when: 'holding capacity',
    basis: { kind: 'source', source: 'burgett-burikam-1985', where: '2430 on a deep comb', sureness: 'from memory' },
  }),
  figure({
    key: 'workers-in-twenty-bees', title: 'Workers among twenty bees of a summer colony', topic: 'cells and bees', value: 19, low: 17,
    high: 20, unit: 'bees', when: 'early summer', basis: { kind: 'common practice' },
  }),
  figure({
    key: 'bees-per-kg', title: 'Workers in a kilogram', topic: 'cells and bees', value: 11360, low: 9800, high: 12500, unit: 'bees/kg',
    when: 'grown workers, crops not full', basis: weights('88 mg'),
  }),
  figure({
    key: 'bees-per-kg-new', title: 'Newly emerged workers in a kilogram', topic: 'cells and bees', value: 9804, low: 9300, high: 10300,
    unit: 'bees/kg', when: 'first day', basis: weights('102 mg'), note: 'The range is ours.',
  }),
  figure({
    key: 'bees-per-kg-swarm', title: 'Bees of a swarm in a kilogram', topic: 'cells and bees', value: 7690, low: 6660, high: 7720,
    unit: 'bees/kg', when: 'crops full of honey', basis: weights('130 mg, heavily smoked'),
    note: 'The rule for bees sold by weight is 3500 a pound: 7716 a kilogram.',
  }),
  figure({
    key: 'drones-per-kg', title: 'Drones in a kilogram', topic: 'cells and bees', value: 4400, low: 4000, high: 4800, unit: 'bees/kg',
    when: 'summer', basis: weights('227 mg'), note: 'The range is ours.',
  }),
  figure({
    key: 'combs-of-bees-per-sealed-comb', title: 'Combs covered by the bees from one comb of sealed brood', topic: 'cells and bees',
    value: 3, low: 2.5, high: 3.2, unit: 'combs', when: 'both faces full',
    basis: { kind: 'common practice', note: '400 cells against 130 bees gives 3.1' },
  }),
  figure({
    key: 'reader-error-adults', title: 'Error of one reader on the bees of a colony', topic: 'cells and bees', value: 0.15, low: 0.1,
    high: 0.3, unit: 'share', when: 'practised reader; standard deviation as a share', basis: { kind: 'our choice', why: noTrial },
    note: 'A beginner may err by 0.30; the error of one reader is steady and can be corrected.',
  }),
  figure({
    key: 'reader-error-sealed', title: 'Error of one reader on sealed brood', topic: 'cells and bees', value: 0.1, low: 0.05, high: 0.2,
    unit: 'share', when: 'practised reader; standard deviation as a share', basis: { kind: 'our choice', why: noTrial },
    note: 'Worst on spotty brood.',
  }),
  figure({
    key: 'reader-error-open', title: 'Error of one reader on eggs and larvae', topic: 'cells and bees', value: 0.2, low: 0.1,
    high: 0.35, unit: 'share', when: 'practised reader; standard deviation as a share', basis: { kind: 'our choice', why: noTrial },
  }),
  figure({
    key: 'reader-error-food', title: 'Error of one reader on food', topic: 'cells and bees', value: 0.15, low: 0.1, high: 0.3,
    unit: 'share', when: 'practised reader; standard deviation as a share', basis: { kind: 'our choice', why: noTrial },
  }),
  figure({
    key: 'eighth-rounding', title: 'Error from rounding to half eighths, as a share of the face', topic: 'cells and bees',
    value: 0.01804, low: 0.01804, high: 0.03609, unit: 'share', when: 'standard deviation; the high end is rounding to whole eighths',
    basis: { kind: 'our choice', why: 'a reading is equally likely anywhere between two marks: half an eighth over √12' },
  }),
] as const;
