/**
 * Which comb hangs where after a visit whose readings fit combs that were moved better than combs that hang as the
 * journal has them. Combs on marked bars, and those that the reading itself names, are known and take no part; nor
 * do bare bars.
 */
import { value } from '../../../figures/book.ts';
import type { Id } from '../../../journal/entry.ts';
import { type Day, dayFromNumber } from '../../../numbers/day.ts';
import { type CombBefore, type CombToday, matchCombs } from '../../comb-match.ts';
import { combRead } from '../../comb-read.ts';
import type { MovedComb, Surprise } from '../../foreseen.ts';
import type { Reading } from '../../reading.ts';
import type { Visited } from '../run.ts';
import { movedFitOf } from '../surprise/bar-pattern.ts';
import type { SurpriseContext } from '../surprise/surprises-of.ts';
import { builtOf, combsBefore, lastReading, type RecordBook } from './record-book.ts';
import { barForeseen } from './surprise-context.ts';

/** A surprise is laid to moved combs, among others, and the pattern of the bars speaks for it. */
export function mayBeMoved(surprises: readonly Surprise[], { bars, surprise }: SurpriseContext): boolean {
  const isNamed = surprises.some(({ because }) => because.some(({ cause }) => cause === 'combs moved'));
  return isNamed && (movedFitOf(bars, surprise.outliers) ?? 0) > 0;
}

/** Those that probably hang elsewhere, by place. */
export function movedCombs(records: RecordBook, { day, visit }: Pick<Visited, 'day' | 'visit'>): readonly MovedComb[] {
  const on = dayFromNumber(day);
  const hung = combsBefore(records, on);
  const rows = (records.byVisit.get(visit) ?? []).map(({ row }) => row);
  const open = rows.filter(({ comb, body }) => body.comb === undefined && body.combClass !== 'bare' && isUnmarked(records, comb));
  const [places, read] = [new Set(rows.map(({ body }) => body.place)), new Set(rows.map(({ comb }) => comb))];
  const shut = [...hung].filter(([place, { id }]) => !read.has(id) && !places.has(place) && isUnmarked(records, id));
  const wasThere = new Set([...hung.values()].map(({ id }) => id));
  // Of two read at one place the later one hangs there.
  const opened = [...new Map(open.map((row) => [row.body.place, row])).values()];
  const combs = [
    ...opened.filter(({ comb }) => wasThere.has(comb)).map(({ comb, body }) => ({ comb, place: body.place })),
    ...shut.map(([place, { id }]) => ({ comb: id, place })),
  ].filter(({ comb }) => !wasBare(records, comb, visit, on));
  const before = combs.map(({ comb, place }): CombBefore => {
    const bar = barForeseen(records, comb, place, visit, on);
    return { place, mark: null, brood: bar?.brood ?? null, food: bar?.food ?? null };
  });
  const bars = [...opened.map(({ body }) => barToday(body)), ...shut.map(([place]) => ({ ...unread, place }))];
  const { matches } = matchCombs(before, bars, records.book);
  const least = value(records.book, 'comb-match-least-sure');
  return matches.flatMap(({ today, last, sure }) =>
    last === null || last === today || sure === null || sure < least ? [] : [{ today, last, chance: sure }],
  );
}

const unread = { mark: null, brood: null, food: null } as const;

function barToday(body: Reading): CombToday {
  const { brood, food } = body.method === 'as expected' ? unread : combRead(body);
  return { place: body.place, mark: null, brood, food };
}

function wasBare(records: RecordBook, comb: Id, visit: Id, on: Day): boolean {
  const before = lastReading(records, comb, on, visit);
  return before === null ? records.state.combs.get(comb)?.built === 0 : builtOf(before, records.book) === 0;
}

function isUnmarked({ state }: RecordBook, comb: Id): boolean {
  const bar = state.bars.get(state.combs.get(comb)?.bar ?? '');
  return (bar?.mark ?? null) === null;
}
