/** Published counts of cells and bees against our densities and the arithmetic of hexagons. */
import type { Check } from '../check.ts';

const sum = (input: Readonly<Record<string, unknown>>, read: string) => ({ kind: 'sum', sum: 'cells-per-area', input, read } as const);
const eighths = { kind: 'published', source: 'zander-eighths', where: 'worked side', sureness: 'read in a second source' } as const;

export const cellChecks: readonly Check[] = [
  {
    id: 'cells-table-end', topic: 'cells and bees', what: 'cells a dm² of both faces, 12.8 cells along 10 cm',
    origin: { kind: 'published', source: 'betts-1938', where: 'end of the table', sureness: 'read in a second source' },
    ask: sum({ cellsPer10cm: 12.8 }, 'bothSidesPerDm2'), expected: 378.3, unit: 'cells', tolerance: 0.1,
    why: 'the table rounds its factor, 2.309, to four digits', circular: false,
  },
  {
    id: 'cells-5-4-mm', topic: 'cells and bees', what: 'cells a dm² of one face, cells of 5.4 mm',
    origin: { kind: 'published', source: 'swiss-strength-page', where: 'up to 400 at 5.4 mm', sureness: 'read in a second source' },
    ask: sum({ cellWidthMm: 5.4 }, 'perSidePerDm2'), expected: 400, unit: 'cells', tolerance: 5,
    why: 'the page gives a round number, "up to 400"', circular: false,
  },
  {
    id: 'cells-african-measured', topic: 'cells and bees', what: 'cells a dm² of both faces of an African race, cells of 4.64 mm',
    origin: {
      kind: 'published', source: 'ethiopia-spacing-2019', where: 'counted: 1060.9, standard deviation 14.2', sureness: 'read in the source',
    },
    ask: sum({ cellWidthMm: 4.64 }, 'bothSidesPerDm2'), expected: 1060.9, unit: 'cells', tolerance: 14.2,
    why: 'one standard deviation of their counts; the width is an inner one', circular: false,
  },
  {
    id: 'cells-natural-nest', topic: 'cells and bees', what: 'our density against a natural nest: 100 000 cells on 27 square feet of face',
    origin: { kind: 'published', source: 'nova-nest', where: '100 000 cells, 27 square feet', sureness: 'read in a second source' },
    ask: { kind: 'figure', figure: 'worker-cells-per-dm2' }, expected: 398.66, unit: 'cells/dm2', tolerance: 8,
    why: 'both numbers of the nest are rounded: 2 of 100', circular: false,
  },
  {
    id: 'cells-wax-book', topic: 'cells and bees', what: 'our density against the book on wax: about 800 on both faces',
    origin: {
      kind: 'published', source: 'bogdanov-beeswax', where: 'about 800, natural range 750 to 950', sureness: 'read in a second source',
    },
    ask: { kind: 'figure', figure: 'worker-cells-per-dm2' }, expected: 400, unit: 'cells/dm2', tolerance: 25,
    why: 'their own low end, 750 on both faces', circular: false,
  },
  {
    id: 'cells-on-720-inches', topic: 'cells and bees', what: 'worker cells on 720 square inches of sealed brood',
    origin: { kind: 'published', source: 'illinois-queens', where: 'worked example: 720 × 25', sureness: 'read in the source' },
    ask: { kind: 'worked', name: 'worker cells on square inches', input: [720] }, expected: 18000, unit: 'cells', tolerance: 900,
    why: '5 of 100: their rule and ours are for cells of other width', circular: false,
  },
  {
    id: 'cells-american-rule', topic: 'cells and bees', what: '25 cells a square inch lie in our range',
    origin: { kind: 'published', source: 'illinois-queens', where: '25 a square inch', sureness: 'read in the source' },
    ask: { kind: 'range', figure: 'worker-cells-per-dm2' }, expected: 387.5, unit: 'cells/dm2', tolerance: 0, why: 'in the range',
    circular: false,
  },
  {
    id: 'drone-cells-eighths', topic: 'cells and bees', what: '230 drone cells an eighth lie in our range',
    origin: eighths, ask: { kind: 'range', figure: 'drone-cells-per-dm2' }, expected: 230, unit: 'cells/dm2', tolerance: 0,
    why: 'in the range', circular: false,
  },
  {
    id: 'drone-cells-inch', topic: 'cells and bees', what: 'our drone density against 16 cells a square inch',
    origin: { kind: 'published', source: 'illinois-queens', where: '16 a square inch', sureness: 'read in the source' },
    ask: { kind: 'figure', figure: 'drone-cells-per-dm2' }, expected: 248, unit: 'cells/dm2', tolerance: 5, why: 'both are round numbers',
    circular: false,
  },
  {
    id: 'side-workers', topic: 'cells and bees', what: 'one eighth of a side of 8 dm² sealed: worker cells', origin: eighths,
    ask: { kind: 'worked', name: 'worker cells of eighths', input: [1, 8] }, expected: 400, unit: 'cells', tolerance: 0,
    why: 'same factor', circular: true,
  },
  {
    id: 'side-workers-full', topic: 'cells and bees', what: 'a full side of 8 dm²: worker cells', origin: eighths,
    ask: { kind: 'worked', name: 'worker cells of eighths', input: [8, 8] }, expected: 3200, unit: 'cells', tolerance: 0,
    why: 'same factor', circular: true,
  },
  {
    id: 'side-drones-full', topic: 'cells and bees', what: 'a full side of 8 dm²: drone cells', origin: eighths,
    ask: { kind: 'worked', name: 'drone cells of eighths', input: [8, 8] }, expected: 1840, unit: 'cells', tolerance: 184,
    why: '10 of 100: three sources disagree on drone cells and ours is the middle', circular: false,
  },
  {
    id: 'side-food', topic: 'food', what: 'four eighths of a side of 8 dm² with food: grams', origin: eighths,
    ask: { kind: 'worked', name: 'food grams of eighths', input: [4, 8] }, expected: 500, unit: 'g', tolerance: 0, why: 'same factor',
    circular: true,
  },
  {
    id: 'side-bees', topic: 'cells and bees', what: 'two eighths of a side of 8 dm² covered, our density', origin: eighths,
    ask: { kind: 'sum', sum: 'bees-on-face', input: { faceDm2: 8, coveredFraction: 0.25 }, read: 'bees' },
    expected: 250, unit: 'bees', tolerance: 0, why: 'same factor', circular: true,
  },
  {
    id: 'bees-swiss', topic: 'cells and bees', what: 'our bees a dm² against the Swiss page',
    origin: { kind: 'published', source: 'swiss-strength-page', where: '130 a dm²', sureness: 'read in a second source' },
    ask: { kind: 'figure', figure: 'bees-per-dm2' }, expected: 130, unit: 'bees/dm2', tolerance: 6.5,
    why: '5 of 100 between two countries\' rules',
    circular: false,
  },
  {
    id: 'bees-single-layer', topic: 'cells and bees', what: '1900 bees in a single layer on both faces of 883 cm²',
    origin: { kind: 'published', source: 'kauffeld', where: '1900 a deep comb', sureness: 'read in a second source' },
    ask: { kind: 'range', figure: 'bees-per-dm2' }, expected: 107.6, unit: 'bees/dm2', tolerance: 0, why: 'in the range', circular: false,
  },
  {
    id: 'bees-occupied', topic: 'cells and bees', what: '1400 bees on a deep comb as found',
    origin: { kind: 'published', source: 'simpson-1969', where: 'mean over occupied combs', sureness: 'read in the abstract' },
    ask: { kind: 'range', figure: 'bees-per-dm2' }, expected: 79.3, unit: 'bees/dm2', tolerance: 0, why: 'in the range', circular: false,
    differs: 'theirs is a mean over combs that bees merely occupied, ours is for comb that they cover',
  },
  {
    id: 'bees-swarm-trade', topic: 'cells and bees', what: 'the trade\'s 3500 bees a pound',
    origin: { kind: 'common practice' }, ask: { kind: 'range', figure: 'bees-per-kg-swarm' }, expected: 7716, unit: 'bees/kg', tolerance: 0,
    why: 'in the range', circular: false,
  },
  {
    id: 'bees-kg-pound', topic: 'cells and bees', what: 'grown workers: 5159 a pound',
    origin: { kind: 'published', source: 'mitchell-1970', where: '5159 a pound', sureness: 'read in a second source' },
    ask: { kind: 'figure', figure: 'bees-per-kg' }, expected: 11373.6, unit: 'bees/kg', tolerance: 25,
    why: 'their two columns round apart by 2 of 1000', circular: true,
  },
  {
    id: 'bees-kg-winter-rule', topic: 'cells and bees', what: 'a winter rule: 4000 bees a pound',
    origin: { kind: 'common practice' }, ask: { kind: 'range', figure: 'bees-per-kg' }, expected: 8818, unit: 'bees/kg', tolerance: 0,
    why: 'in the range', circular: false, differs: 'winter bees carry more in the gut; ours is for grown summer bees with crops not full',
  },
  {
    id: 'combs-of-bees', topic: 'cells and bees', what: 'combs covered by the bees of one sealed comb', origin: { kind: 'common practice' },
    ask: { kind: 'worked', name: 'combs of bees from a sealed comb', input: [] }, expected: 3, unit: 'combs', tolerance: 0.5,
    why: 'keepers say two and a half to three', circular: false,
  },
];
