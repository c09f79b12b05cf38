/** What weighing a look takes from the figures, as plain numbers; the reasons to open have their own in `choice.ts`. */
import { type FigureBook, value } from '../../../figures/book.ts';
import type { Question } from '../../foreseen.ts';
import { type ChoiceConstants, choiceConstants } from '../choice.ts';

export interface LookConstants {
  readonly choice: ChoiceConstants;
  /** What is lost by being late, beside a swarm. */
  readonly cost: Readonly<Record<Question, number>>;
  readonly roomDays: number;
  readonly horizonDays: number;
  /** From which share with brood, or with food, a comb counts as one. */
  readonly broodComb: number;
  /** Chance of finding what is there, from which so many bars are enough. */
  readonly answers: number;
  readonly outerCells: number;
  readonly cellCount: number;
  readonly cellSeen: number;
  readonly eggCombs: number;
  readonly hiveMinutes: number;
  readonly barMinutes: number;
}

export function lookConstants(book: FigureBook): LookConstants {
  return {
    choice: choiceConstants(book),
    cost: {
      cells: value(book, 'look-cost-cells'),
      eggs: value(book, 'look-cost-eggs'),
      stores: value(book, 'look-cost-stores'),
      room: value(book, 'look-cost-room'),
    },
    roomDays: value(book, 'look-room-days'),
    horizonDays: Math.round(value(book, 'engine-open-latest')),
    broodComb: value(book, 'brood-comb-share'),
    answers: value(book, 'look-answers'),
    outerCells: value(book, 'look-outer-cells'),
    cellCount: value(book, 'swarm-cells-count'),
    cellSeen: value(book, 'cell-seen-chance'),
    eggCombs: value(book, 'queen-look-egg-combs'),
    hiveMinutes: value(book, 'look-hive-minutes'),
    barMinutes: value(book, 'look-bar-minutes'),
  };
}
