/**
 * What the model refuses: counts that no colony can have or that are no numbers, shares beyond the whole, visits
 * before the colony was there or out of order. Each is an issue with its field; the other fields and visits stand.
 */
import { type FigureBook, value } from '../../../figures/book.ts';
import { type Day, dayFromNumber } from '../../../numbers/day.ts';
import type { Issue } from '../../../numbers/result.ts';
import { perCombDm2 } from '../../../hive/hive-measures.ts';
import { cellKinds } from '../../queen-chain/cells-there.ts';
import type { Seen, Visited } from '../run.ts';
import type { Count } from '../seen/counts.ts';

/** `first`: number of the first day on which the colony may have been there. */
export function soundVisits(
  visits: readonly Visited[],
  first: number,
  book: FigureBook,
): { readonly visits: readonly Visited[]; readonly issues: readonly Issue[] } {
  const issues: Issue[] = [];
  const sound: Visited[] = [];
  let last: number | null = null;
  visits.forEach((visited, index) => {
    const at = `visits.${index}`;
    const fault = dayFault(visited.day, first, last, at);
    if (fault !== null) {
      issues.push({ ...fault, entry: visited.visit });
      return;
    }
    last = visited.day;
    const { seen, faults } = soundSeen(visited.seen, at, book);
    issues.push(...faults.map((one) => ({ ...one, entry: visited.visit })));
    sound.push({ ...visited, seen });
  });
  return { visits: sound, issues };
}

function dayFault(day: number, first: number, last: number | null, at: string): Issue | null {
  const path = `${at}.day`;
  if (!Number.isInteger(day)) return { code: 'not-a-day', path, found: String(day), expected: 'a whole number of days' };
  if (day < first) return { code: 'before-the-colony', path, found: on(day), expected: `a day from ${on(first)} on` };
  if (last !== null && day < last) return { code: 'out-of-order', path, found: on(day), expected: `a day from ${on(last)} on` };
  return null;
}

function on(day: number): Day {
  return dayFromNumber(day);
}

const counted = ['bees', 'bars', 'sealed', 'open', 'honeyKg'] as const;

function soundSeen(seen: Seen, at: string, book: FigureBook): { readonly seen: Seen; readonly faults: readonly Issue[] } {
  const faults: Issue[] = [];
  const kept: { -readonly [K in keyof Seen]: Seen[K] } = { ...seen };
  const most = value(book, 'engine-most-count');
  const per = perCombDm2(book);
  // As much honey as so many cells can hold.
  const mostKg = (most * per.honeyKg.high) / per.workerCells.low;
  for (const what of counted) {
    const count = seen[what];
    if (count === undefined) continue;
    const fault = countFault(count, what === 'honeyKg' ? mostKg : most, `${at}.${what}`);
    if (fault === null) continue;
    faults.push(fault);
    delete kept[what];
  }
  if (seen.built !== undefined && !within(seen.built.cells, most)) {
    faults.push(beyond(`${at}.built.cells`, seen.built.cells, most));
    delete kept.built;
  }
  for (const what of ['brood', 'cells', 'queen'] as const) {
    const look = seen[what];
    if (look === undefined || within(look.share, 1)) continue;
    faults.push(beyond(`${at}.${what}.share`, look.share, 1));
    delete kept[what];
  }
  const odd = cellKinds.find((kind) => seen.cells !== undefined && !isCount(seen.cells.cells[kind]));
  if (odd !== undefined) {
    const found = String(seen.cells?.cells[odd]);
    faults.push({ code: 'impossible-count', path: `${at}.cells.${odd}`, found, expected: 'a whole number from 0' });
    delete kept.cells;
  }
  return { seen: kept, faults };
}

function countFault({ count, share = 1, rounding = 0 }: Count, most: number, at: string): Issue | null {
  if (!within(count, most)) return beyond(`${at}.count`, count, most);
  if (!within(share, 1) || share === 0) return beyond(`${at}.share`, share, 1);
  return rounding >= 0 && Number.isFinite(rounding) ? null : beyond(`${at}.rounding`, rounding, most);
}

/** Null: nobody looked for this kind. */
function isCount(n: number | null): boolean {
  return n === null || (Number.isInteger(n) && n >= 0);
}

function within(count: number, most: number): boolean {
  return count >= 0 && count <= most;
}

function beyond(path: string, found: number, most: number): Issue {
  return { code: 'impossible-count', path, found: String(found), expected: `a number from 0 to ${String(most)}` };
}
