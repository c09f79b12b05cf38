/** The sum "unite": two colonies made one, beside what becomes of each if it is left alone. Health comes first, and is not its matter. */
import { type FigureBook, value } from '../figures/book.ts';
import type { Field } from '../figures/field.ts';
import type { FigureKey } from '../figures/list.ts';
import { choiceOf, dayOf, type Given, numberOf, recordOf } from '../figures/read-input.ts';
import { type Answer, sum } from '../figures/sum.ts';
import { good, type Result } from '../numbers/result.ts';
import { type Colony, courseFigures, courseOf, type DayOfHalf, type Half, storyOf, united, wholeOf } from './split-outcome.ts';
import { survivalField, survivalSetOf } from './survival-choice.ts';
import { survivalFigures, survivalOf } from './survival.ts';

const queens = ['into', 'from', 'none'] as const;
const others = ['laying', 'none'] as const;
const mostBees = 100000;
const mostCells = 100000;

const count = (name: string, unit: string, high: number, about: string): Field => {
  return { kind: 'number', name, unit, low: 0, high, about };
};

const colonyFields: readonly Field[] = [
  count('bees', 'bees', mostBees, 'bees'),
  count('eggs', 'cells', mostCells, 'eggs'),
  count('larvae', 'cells', mostCells, 'open larvae'),
  count('sealed', 'cells', mostCells, 'sealed worker brood'),
];

const always: readonly FigureKey[] = ['unite-lost-share', ...courseFigures];

export const uniteSum = sum({
  key: 'unite',
  title: 'Two colonies united',
  line: 'bees and brood of the united colony day by day, and of both had they been left alone; for healthy colonies only',
  formula:
    'united: bees and brood of both, less lostShare of the bees of from (0 and up; they may fight). Each day as in split: brood ages, ' +
    'bees die by the set of survival (left out: benign), eggs = sealed/worker-sealed-days/survival-to-sealed of the colony whose queen ' +
    'goes on × season × N/(w + N) over the same before. queen: whose goes on; otherQueen: whether the other colony’s would lay if both ' +
    'were left alone (queen none: neither has one, and none is raised). lowestBees within split-horizon-days; recoversOn: as many bees ' +
    'as on the first evening; moreThanBothOn: first day on which it has at least as many bees as both alone, after a day with fewer; ' +
    'null within those days, or where it never has fewer. Northern season',
  fields: [
    { kind: 'day', name: 'on', about: 'day on which they are united' },
    { kind: 'record', name: 'from', of: colonyFields, about: 'the colony that ends' },
    { kind: 'record', name: 'into', of: colonyFields, about: 'the colony that stays' },
    { kind: 'choice', name: 'queen', choices: queens, about: 'whose queen goes on' },
    { kind: 'choice', name: 'otherQueen', choices: others, about: 'of the other colony' },
    {
      ...{ kind: 'number', name: 'lostShare', unit: 'share', low: 0, high: 1 },
      about: 'of the bees of from, those that are lost',
      without: { kind: 'figure', figure: 'unite-lost-share' },
    },
    survivalField,
  ],
  uses: [...always, ...new Set(Object.values(survivalFigures).flat())],
  usesFor: (given) => [...always, ...survivalFigures[survivalSetOf(given)]],
  answer,
});

function answer(given: Given, book: FigureBook): Result<Answer> {
  const on = dayOf(given, 'on');
  const days = value(book, 'split-horizon-days');
  const survival = survivalOf(survivalSetOf(given), book);
  const colony = (name: 'from' | 'into'): Colony => {
    const of = recordOf(given, name);
    const brood = { eggs: numberOf(of, 'eggs'), larvae: numberOf(of, 'larvae'), sealed: numberOf(of, 'sealed') };
    return { on, bees: numberOf(of, 'bees'), brood, survival };
  };
  const [from, into] = [colony('from'), colony('into')];
  const queen = choiceOf(given, 'queen', queens);
  const lays = (name: 'from' | 'into'): boolean =>
    queen !== 'none' && (queen === name || choiceOf(given, 'otherQueen', others) === 'laying');
  const rowsOf = (half: Half, hers: Colony, laying: boolean) => courseOf(half, hers, laying ? on : null, days, book);
  const fromAlone = rowsOf(wholeOf(from), from, lays('from'));
  const intoAlone = rowsOf(wholeOf(into), into, lays('into'));
  const together = united(wholeOf(from), wholeOf(into), numberOf(given, 'lostShare'));
  const rows = rowsOf(together, queen === 'from' ? from : into, queen !== 'none');
  return good({
    united: { ...storyOf(rows), moreThanBothOn: moreThanBoth(rows, fromAlone, intoAlone), course: rows },
    fromAlone: { ...storyOf(fromAlone), course: fromAlone },
    intoAlone: { ...storyOf(intoAlone), course: intoAlone },
  });
}

type Rows = readonly DayOfHalf[];

/** First day on which the united colony has caught up with both alone; null where it never fell behind, or does not. */
function moreThanBoth(rows: Rows, from: Rows, into: Rows): string | null {
  const ahead = (i: number): number => rows[i]!.bees - from[i]!.bees - into[i]!.bees;
  const behind = rows.findIndex((_, i) => ahead(i) < -1);
  return behind < 0 ? null : (rows.find((_, i) => i > behind && ahead(i) >= 0)?.day ?? null);
}
