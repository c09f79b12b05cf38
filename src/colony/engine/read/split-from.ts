/**
 * What a split got from its parent, by what was counted there before: the parent's bees in the part that covered
 * the combs that went, the brood and the honey of those combs. Null where nobody wrote down which combs went.
 */
import { addDays, type Day } from '../../../numbers/day.ts';
import { beesCounted } from '../../adults.ts';
import type { SplitFrom } from '../constants.ts';
import { type AmountName, amountsExpected } from './bar-amounts.ts';
import { partOfNest } from './part-of-nest.ts';
import { lastReading, type RecordBook, recordBook, troughOn } from './record-book.ts';

export function splitFrom({ state, colony, book }: RecordBook): SplitFrom | null {
  const dated = (state.events.get(colony.id) ?? []).find(({ event }) => event.kind === 'split from');
  if (dated?.event.kind !== 'split from') return null;
  const { parent: id, combs } = dated.event;
  const parent = state.colonies.get(id);
  if (parent === undefined) return null;
  const records = recordBook(state, id, dated.day, book);
  const before = beesCounted(state, parent, dated.day, book);
  const { bees } = partOfNest(records, dated.day, combs);
  const sealed = sumOf(records, combs, dated.day, 'sealed');
  const open = sumOf(records, combs, dated.day, 'open');
  return {
    bees: before === null ? null : before * bees,
    broodCells: sealed === null || open === null ? null : sealed + open,
    honeyKg: sumOf(records, combs, dated.day, 'honeyKg'),
  };
}

/** Over the combs that went; null as soon as one of them was never read. */
function sumOf(records: RecordBook, combs: readonly string[], day: Day, what: AmountName): number | null {
  const trough = troughOn(records, addDays(day, -1));
  let sum = 0;
  for (const comb of combs) {
    const reading = lastReading(records, comb, day);
    const amount = trough === null || reading === null ? null : amountsExpected(records, trough, reading, day)[what];
    if (amount === null) return null;
    sum += amount;
  }
  return sum;
}
