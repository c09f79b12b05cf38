/** All sums, in the order in which they are shown; the one way to run one, and what a page about one needs. */
import { beesOnFaceSum } from '../hive/sum-bees-on-face.ts';
import { cellsPerAreaSum } from '../hive/sum-cells-per-area.ts';
import { combFaceSum } from '../hive/sum-comb-face.ts';
import { hiveBoxSum } from '../hive/sum-hive-box.ts';
import { colonyBalanceSum } from '../colony/balance/sum-colony-balance.ts';
import { colonyBalanceFoodSum } from '../colony/balance/sum-colony-balance-food.ts';
import { broodDatesSum } from '../colony/sum-brood-dates.ts';
import { combMatchSum } from '../colony/sum-comb-match.ts';
import { layingRateSum } from '../colony/sum-laying-rate.ts';
import { missedCellSum } from '../colony/sum-missed-cell.ts';
import { patternSum } from '../colony/sum-pattern.ts';
import { queenLossSum } from '../colony/sum-queen-loss.ts';
import { queenStateSum } from '../colony/sum-queen-state.ts';
import { roomSum } from '../colony/sum-room.ts';
import { splitSum } from '../colony/sum-split.ts';
import { turnoverSum } from '../colony/sum-turnover.ts';
import { uniteSum } from '../colony/sum-unite.ts';
import { type FigureBook, printed, value } from '../figures/book.ts';
import type { Figure } from '../figures/figure.ts';
import type { Answer, Field, Sum } from '../figures/sum.ts';
import { bad, type Result } from '../numbers/result.ts';
import { markColourSum } from '../queens/sum-mark-colour.ts';

export type { Answer, Field, Sum } from '../figures/sum.ts';

export const sums: readonly Sum[] = [
  cellsPerAreaSum,
  hiveBoxSum,
  combFaceSum,
  beesOnFaceSum,
  layingRateSum,
  broodDatesSum,
  queenLossSum,
  queenStateSum,
  turnoverSum,
  splitSum,
  uniteSum,
  colonyBalanceSum,
  colonyBalanceFoodSum,
  missedCellSum,
  roomSum,
  patternSum,
  combMatchSum,
  markColourSum,
];

export function runSum(key: string, input: unknown, book: FigureBook): Result<Answer> {
  const found = sums.find((sum) => sum.key === key);
  return found === undefined ? bad(unknownSum(key)) : found.run(input, book);
}

export interface SumHelp {
  readonly key: string;
  readonly title: string;
  readonly line: string;
  readonly formula: string;
  readonly fields: readonly HelpField[];
  readonly sources: readonly Figure[];
}

export interface HelpField {
  readonly field: Field;
  /** Must be given, alone or as one of its group. */
  readonly required: boolean;
  /** What takes its place when it is left out; null when nothing does. */
  readonly standIn: { readonly value: number; readonly figure: string } | null;
}

/** What a page about a sum shows, with the values of the book in force; null for a sum that does not exist. */
export function sumHelp(key: string, book: FigureBook): SumHelp | null {
  const found = sums.find((sum) => sum.key === key);
  if (found === undefined) return null;
  const { title, line, formula, fields, sources } = found;
  return { key, title, line, formula, fields: fields.map((field) => helpField(field, book)), sources: sources.map(printed) };
}

function helpField(field: Field, book: FigureBook): HelpField {
  const stand = field.without;
  return {
    field,
    required: stand === undefined,
    standIn: stand?.kind === 'figure' ? { value: value(book, stand.figure), figure: stand.figure } : null,
  };
}

function unknownSum(key: string) {
  return { code: 'unknown-sum', path: 'name', found: key, expected: `one of ${sums.map((sum) => sum.key).join(', ')}` };
}
