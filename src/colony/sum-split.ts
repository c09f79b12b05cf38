/** The sum "split": both halves of a split, by where the queen is and how the other half comes by one. */
import { type FigureBook, rangeOf, value } from '../figures/book.ts';
import type { NumberField } from '../figures/field.ts';
import type { FigureKey } from '../figures/list.ts';
import { choiceOf, dayOf, type Given, numberOf } from '../figures/read-input.ts';
import { type Answer, sum } from '../figures/sum.ts';
import { addDays, type Day } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';
import { good, type Result } from '../numbers/result.ts';
import { type Colony, courseFigures, courseOf, type Half, halves, storyOf } from './split-outcome.ts';
import { survivalField, survivalSetOf } from './survival-choice.ts';
import { survivalFigures, survivalOf } from './survival.ts';

const queenPlaces = ['moved', 'stayed', 'unknown'] as const;
const newQueens = ['own-cells', 'ripe-cell', 'virgin', 'mated'] as const;
type NewQueen = (typeof newQueens)[number];

const mostBees = 100000;
const mostCells = 100000;

const count = (name: string, unit: string, high: number, about: string): NumberField => {
  return { kind: 'number', name, unit, low: 0, high, about };
};
const share = (name: string, about: string): NumberField => ({ kind: 'number', name, unit: 'share', low: 0, high: 1, about });

const layings: Readonly<Record<NewQueen, readonly FigureKey[]>> = {
  'own-cells': [
    'emergency-first-eggs',
    'queen-chain-emergency-share',
    'queen-chain-cells-fail',
    'queen-chain-virgin-lost',
    'queen-chain-never-mates',
  ],
  'ripe-cell': [
    'split-ripe-cell-days',
    'queen-first-egg-age',
    'queen-chain-cells-fail',
    'queen-chain-virgin-lost',
    'queen-chain-never-mates',
  ],
  virgin: ['queen-first-egg-age', 'queen-chain-virgin-lost', 'queen-chain-never-mates'],
  mated: ['introduced-laying-days', 'queen-chain-introduced-accepted'],
};

const always: readonly FigureKey[] = [...courseFigures, 'house-bee-days'];

export const splitSum = sum({
  key: 'split',
  title: 'A colony split in two',
  line: 'bees and brood of both halves day by day, first eggs, the fewest bees and when they are as many as on the day of the split',
  formula:
    'bees of all ages as in a steady colony; the share moved goes, and of its bees over house-bee-days driftShare flies back ' +
    '(0 where the new stand is far). Each day: brood a day older, survival-… lost where a stage ends; bees by age, ' +
    'die by the set of survival (left out: benign); eggs = sealed/worker-sealed-days/survival-to-sealed of the whole colony ' +
    '× season × N/(w + N) over the same before, ' +
    'w = engine-half-bees, at most the high end of laying-peak. First eggs without the queen: own cells emergency-first-eggs ' +
    '(null without eggs and larvae), ripe cell ' +
    'split-ripe-cell-days + queen-first-egg-age, virgin queen-first-egg-age, mated introduced-laying-days; layingChance that it comes ' +
    'to that. cases: earliest, likely, latest first eggs; lowestBees within split-horizon-days; recoversOn: as many bees as on the ' +
    'evening of the split, null within those days. course: the likely case. queen unknown: both ways told for both halves. Northern season',
  fields: [
    { kind: 'day', name: 'on', about: 'day of the split' },
    count('bees', 'bees', mostBees, 'bees before the split'),
    count('eggs', 'cells', mostCells, 'eggs before the split'),
    count('larvae', 'cells', mostCells, 'open larvae before the split'),
    count('sealed', 'cells', mostCells, 'sealed worker brood before the split'),
    share('movedBees', 'share of the bees that is moved'),
    share('movedEggs', 'share of the eggs that is moved'),
    share('movedLarvae', 'share of the larvae that is moved'),
    share('movedSealed', 'share of the sealed brood that is moved'),
    { kind: 'choice', name: 'queen', choices: queenPlaces, about: 'where the queen is' },
    { kind: 'choice', name: 'newQueen', choices: newQueens, about: 'how the half without her comes by a queen' },
    {
      ...share('driftShare', 'of the flying bees moved, the share that goes back'),
      without: { kind: 'figure', figure: 'split-drift-share' },
    },
    survivalField,
  ],
  uses: [...always, ...new Set([...Object.values(layings).flat(), ...Object.values(survivalFigures).flat()])].filter(
    (key, index, all) => all.indexOf(key) === index,
  ),
  usesFor: (given) => [...always, ...layings[choiceOf(given, 'newQueen', newQueens)], ...survivalFigures[survivalSetOf(given)]],
  answer,
});

function answer(given: Given, book: FigureBook): Result<Answer> {
  const number = (name: string): number => numberOf(given, name);
  const colony: Colony = {
    on: dayOf(given, 'on'),
    bees: number('bees'),
    brood: { eggs: number('eggs'), larvae: number('larvae'), sealed: number('sealed') },
    survival: survivalOf(survivalSetOf(given), book),
  };
  const [moved, stayed] = halves(
    colony,
    {
      bees: number('movedBees'),
      eggs: number('movedEggs'),
      larvae: number('movedLarvae'),
      sealed: number('movedSealed'),
      driftsBack: number('driftShare'),
    },
    value(book, 'house-bee-days'),
  );
  const queen = choiceOf(given, 'queen', queenPlaces);
  const newQueen = choiceOf(given, 'newQueen', newQueens);
  const told = (half: Half, place: 'moved' | 'stayed') => ({
    bees: half.bees.reduce((a, b) => a + b, 0),
    eggs: half.eggs,
    larvae: half.larvae,
    sealed: half.sealed,
    withQueen: queen === place || queen === 'unknown' ? queenright(half, colony, book) : null,
    withoutQueen: queen !== place ? queenless(half, colony, newQueen, book) : null,
  });
  return good({ moved: told(moved, 'moved'), stayed: told(stayed, 'stayed') });
}

function queenright(half: Half, colony: Colony, book: FigureBook) {
  const rows = courseOf(half, colony, colony.on, value(book, 'split-horizon-days'), book);
  return { layingChance: 1, cases: [{ firstEggs: colony.on, firstDaughters: null, ...storyOf(rows) }], course: rows };
}

function queenless(half: Half, colony: Colony, newQueen: NewQueen, book: FigureBook) {
  const raises = newQueen !== 'own-cells' || half.eggs + half.larvae > 0;
  const lays = raises ? firstEggs(newQueen, colony.on, book) : [null];
  const courses = lays.map((day) => courseOf(half, colony, day, value(book, 'split-horizon-days'), book));
  const cases = courses.map((rows, index) => {
    const day = lays[index] ?? null;
    return {
      firstEggs: day,
      firstDaughters: day === null ? null : addDays(day, value(book, 'worker-total-days')),
      ...storyOf(rows),
    };
  });
  const likely = courses[raises ? 1 : 0] ?? [];
  return { layingChance: raises ? chanceOf(newQueen, book) : 0, cases, course: likely };
}

/** Earliest, likely and latest day. */
function firstEggs(newQueen: NewQueen, on: Day, book: FigureBook): readonly Day[] {
  const { low, likely, high } = daysTo(newQueen, book);
  return [low, likely, high].map((days) => addDays(on, days));
}

function daysTo(newQueen: NewQueen, book: FigureBook): Range {
  const virgin = rangeOf(book, 'queen-first-egg-age');
  const cell = rangeOf(book, 'split-ripe-cell-days');
  switch (newQueen) {
    case 'own-cells':
      return rangeOf(book, 'emergency-first-eggs');
    case 'ripe-cell':
      return { low: virgin.low + cell.low, likely: virgin.likely + cell.likely, high: virgin.high + cell.high };
    case 'virgin':
      return virgin;
    case 'mated':
      return rangeOf(book, 'introduced-laying-days');
  }
}

function chanceOf(newQueen: NewQueen, book: FigureBook): number {
  const mates = 1 - value(book, 'queen-chain-virgin-lost') - value(book, 'queen-chain-never-mates');
  const cells = 1 - value(book, 'queen-chain-cells-fail');
  switch (newQueen) {
    case 'own-cells':
      return value(book, 'queen-chain-emergency-share') * cells * mates;
    case 'ripe-cell':
      return cells * mates;
    case 'virgin':
      return mates;
    case 'mated':
      return value(book, 'queen-chain-introduced-accepted');
  }
}
