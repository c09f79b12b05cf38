/** The sum "comb-match": which comb of last time hangs at which place today, where bars bear no mark, and how sure that is. */
import type { FigureBook } from '../figures/book.ts';
import type { Field } from '../figures/field.ts';
import { type Given, numberOf, numberOrNull, recordsOf, textOrNull } from '../figures/read-input.ts';
import { type Answer, fieldIssue, sum } from '../figures/sum.ts';
import { eighthsInWhole } from '../hive/shapes.ts';
import { bad, good, type Issue, type Result } from '../numbers/result.ts';
import { combMatchFigures, type CombBefore, type CombToday, matchCombs } from './comb-match.ts';
import { barPartOf } from './engine/surprise/bar-seen.ts';

const mostPlaces = 60;
const longestMark = 12;
const mostDays = 1000;
const optional = { without: { kind: 'nothing' } } as const;
const eighths = { kind: 'number', unit: 'eighths', low: 0, high: eighthsInWhole, ...optional } as const;

const barFields: readonly Field[] = [
  { kind: 'integer', name: 'place', unit: 'place', low: 1, high: mostPlaces, about: 'place, counted from the fixed end' },
  { ...eighths, name: 'brood8', about: 'brood of the comb, both faces; left out: not read' },
  { ...eighths, name: 'food8', about: 'honey, nectar and bee bread of the comb; left out: not read' },
  { kind: 'text', name: 'mark', longest: longestMark, ...optional, about: 'mark of the bar, if it bears one' },
];

export const combMatchSum = sum({
  key: 'comb-match',
  title: 'Which comb hangs where',
  line: 'combs of last time matched to the bars of today, the cheapest way for all together, and how sure each match is',
  formula:
    'cost = comb-match-place × log2(1 + places between) + for brood and food, where it was read today, −2 log of the density of ' +
    'the reading over that of the best there can be: normal around the share of last time, standard deviation as the surprises ' +
    'of a bar have it (surprise-bar-eighths; surprise-bar-spread and carried-error-per-day, at most carried-error-most, of the ' +
    'share; of its empty cells surprise-bar-fills a day), mixed with engine-outlier-share of any share; any share where it was ' +
    'not read last time. A new or a gone comb: comb-match-apart. ' +
    'The matching with the least sum is taken; bars of one mark are matched beforehand. gapToNextBest: by how much the cheapest ' +
    'matching is dearer in which this bar is matched otherwise; sure = 1/Σ e^(−d/2) over all that the bar could be, d by how much ' +
    'the cheapest matching with it is dearer; null where nothing was read today. last null: a new comb',
  fields: [
    { kind: 'records', name: 'last', of: barFields, most: mostPlaces, about: 'bars as they hung and were read last time' },
    { kind: 'records', name: 'today', of: barFields, most: mostPlaces, about: 'bars as they hang today' },
    { kind: 'number', name: 'daysBetween', unit: 'd', low: 0, high: mostDays, about: 'days from the one to the other' },
  ],
  uses: [...combMatchFigures],
  answer,
});

function answer(given: Given, book: FigureBook): Result<Answer> {
  const days = numberOf(given, 'daysBetween');
  const [last, today] = (['last', 'today'] as const).map((name) => recordsOf(given, name));
  const issues = [...faultsOf('last', last!), ...faultsOf('today', today!)];
  if (issues.length > 0) return bad(...issues);
  return good({
    ...matchCombs(
      last!.map((bar) => combOf(bar, days, book)),
      today!.map(barOf),
      book,
    ),
  });
}

/** A place, or a mark, that two bars have; more on a comb than it holds. */
function faultsOf(name: string, bars: readonly Given[]): readonly Issue[] {
  return bars.flatMap((bar, at) => {
    const [before, path] = [bars.slice(0, at), `${name}.${at}`];
    const place = numberOf(bar, 'place');
    const { mark, brood, food } = barOf(bar);
    const issues: Issue[] = [];
    if (before.some((other) => numberOf(other, 'place') === place))
      issues.push(fieldIssue(`${path}.place`, String(place), 'a place that no other bar has'));
    if (mark !== null && before.some((other) => textOrNull(other, 'mark') === mark))
      issues.push(fieldIssue(`${path}.mark`, JSON.stringify(mark), 'a mark that no other bar has'));
    if ((brood ?? 0) + (food ?? 0) > 1)
      issues.push(fieldIssue(`${path}.food8`, String(numberOf(bar, 'food8')), `with brood8 at most ${eighthsInWhole}`));
    return issues;
  });
}

function barOf(bar: Given): CombToday {
  const share = (name: string): number | null => {
    const found = numberOrNull(bar, name);
    return found === null ? null : found / eighthsInWhole;
  };
  return { place: numberOf(bar, 'place'), mark: textOrNull(bar, 'mark'), brood: share('brood8'), food: share('food8') };
}

/** Where one of the two was not read, as much as the other leaves may have been empty. */
function combOf(bar: Given, days: number, book: FigureBook): CombBefore {
  const { brood, food, ...rest } = barOf(bar);
  const empty = 1 - (brood ?? 0) - (food ?? 0);
  const part = (share: number | null) => (share === null ? null : barPartOf(share, empty, null, days, book));
  return { ...rest, brood: part(brood), food: part(food) };
}
