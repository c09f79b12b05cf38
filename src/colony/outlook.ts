/**
 * The seam between what was read and what is believed: everything about a colony that a model may
 * know better than plain rules. A model takes the place of `plainOutlook` by being given to `viewOf`;
 * nothing else has to change.
 */
import type { FigureBook } from '../figures/book.ts';
import type { Day } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';
import { adultsOn } from './adults.ts';
import { cellsReading } from './cells-reading.ts';
import { type EvidenceRow, evidenceRow } from './evidence-row.ts';
import type { Foreseen } from './foreseen.ts';
import { queenStory } from './queen-breaks.ts';
import { layingChance, queenReading } from './queen-reading.ts';
import type { Colony, ColonyState } from './state.ts';
import type { CellsReading, QueenReading, Total } from './view.ts';

export interface Believed {
  readonly adults: Total;
  readonly queen: QueenReading;
  readonly cells: CellsReading | null;
  /** Chance, 0…1, that the queen laid on a day: what combs are carried forward with. */
  readonly laying: (day: Day) => number;
  /** Eggs a day where the model knows better than the sealed brood tells; else null. */
  readonly layingPerDay: Range | null;
  /** What each visit says of the queen, oldest first. */
  readonly evidence: readonly EvidenceRow[];
  /** The whole of what a model tells; null without one. */
  readonly foreseen: Foreseen | null;
}

export type Outlook = (state: ColonyState, colony: Colony, day: Day, book: FigureBook) => Believed;

export const plainOutlook: Outlook = (state, colony, day, book) => {
  const evidence = evidenceRow(state, colony.id, day, book);
  const story = queenStory(state, colony.id, evidence, day, book);
  const cells = cellsReading(evidence, story.open, day, book);
  return {
    adults: adultsOn(state, colony, day, book),
    queen: queenReading(evidence, story, cells, day, book),
    cells,
    laying: layingChance(story, book),
    layingPerDay: null,
    evidence,
    foreseen: null,
  };
};
