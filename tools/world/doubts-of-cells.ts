/** What cannot be true of queen cells and swarms: cells out of their order in days, a swarm from a hive without cells. */
import { daysBetween } from '../../src/numbers/day.ts';
import { type CaseFile, type CaseVisit, mainSheets, pairs } from './case-notes.ts';
import { type Doubt, doubt } from './doubt.ts';

function cellsOf(visit: CaseVisit): { open: number; sealed: number; torn: number; emerged: number } {
  const all = { open: 0, sealed: 0, torn: 0, emerged: 0 };
  for (const { body } of mainSheets(visit))
    for (const key of ['open', 'sealed', 'torn', 'emerged'] as const) all[key] += body.cells?.[key] ?? 0;
  return all;
}

/** An open cell is sealed within 6 days of being seen, and none has emerged sooner than 7 days after the first sealed one could be. */
export function cellOrder(file: CaseFile): readonly Doubt[] {
  return pairs(file, 8).flatMap(({ before, after, days }) => {
    const was = cellsOf(before);
    const is = cellsOf(after);
    const none =
      was.open + was.sealed + was.torn + was.emerged === 0 &&
      before.whole &&
      before.sheets.some((sheet) => sheet.body.cellsLooked !== 'not looked');
    const doubts: Doubt[] = [];
    if (is.emerged > 0 && none) doubts.push(doubt('cells out of order', after, `emerged ${days} days after none was there`));
    if (is.emerged > 0 && was.open > 0 && was.sealed === 0 && days < 6)
      doubts.push(doubt('cells out of order', after, `open, and emerged ${days} days later`));
    if (was.open > 2 && was.sealed === 0 && is.open >= was.open && is.sealed === 0 && days > 6)
      doubts.push(doubt('cells out of order', after, `still open after ${days} days`));
    return doubts;
  });
}

/** A prime swarm goes when the first cell is sealed: there were cells shortly before, and sealed ones just after. */
export function swarms(file: CaseFile): readonly Doubt[] {
  return file.swarmsLeft.flatMap(({ entry, day }) => {
    const before = file.visits.filter((visit) => visit.day < day && daysBetween(visit.day, day) <= 10).at(-1);
    const after = file.visits.find((visit) => visit.day > day && daysBetween(day, visit.day) <= 5);
    const bare = before !== undefined && cellsOf(before).open + cellsOf(before).sealed === 0;
    const unsealed = after !== undefined && cellsOf(after).sealed + cellsOf(after).emerged === 0;
    return bare || unsealed
      ? [
          {
            code: 'swarm without cells' as const,
            entry: entry.id,
            day,
            found: bare ? 'none before' : 'none sealed after',
          },
        ]
      : [];
  });
}
