/**
 * The twin: every cell of a comb by itself, a day at a time, written to be read. A cell that may live
 * or die is split in two, so that nothing is left to chance.
 */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../figures/book.ts';
import { contents, type Content } from '../hive/contents.ts';
import { aged } from './ageing.ts';
import { calendarOf } from './calendar.ts';
import { sharesOf } from './comb-cells.ts';
import { combRead } from './comb-read.ts';
import { type BarSeen, reading } from './for-tests.ts';
import { cellsOf, splitContents } from './split-contents.ts';

const calendar = calendarOf(printedBook);

type Cell =
  | { readonly kind: 'brood'; readonly caste: 'worker' | 'drone'; readonly age: number; readonly size: number }
  | { readonly kind: 'rest'; readonly caste: 'worker' | 'drone'; readonly days: number; readonly size: number }
  | { readonly kind: 'still'; readonly content: Content; readonly size: number };

/** Ages at which a bee hatches, is sealed, and is about to be a bee. */
const steps = {
  worker: { hatch: calendar.eggEnd, seal: calendar.sealedFrom, end: calendar.workerDays },
  drone: { hatch: calendar.droneEggEnd, seal: calendar.droneSealedFrom, end: calendar.droneDays },
};

function nextDay(cell: Cell, laying: number): Cell[] {
  if (cell.kind === 'still') return [cell];
  if (cell.kind === 'rest') {
    if (cell.days + 1 < calendar.relayDays) return [{ ...cell, days: cell.days + 1 }];
    const laid: Cell = { kind: 'brood', caste: cell.caste, age: 0, size: cell.size * laying };
    return [laid, { ...cell, days: cell.days + 1, size: cell.size * (1 - laying) }];
  }
  const at = steps[cell.caste];
  const age = cell.age + 1;
  const left = (size: number): Cell => ({ kind: 'rest', caste: cell.caste, days: 0, size });
  if (age === at.end) return [left(cell.size)];
  const lives =
    age === at.hatch
      ? calendar.survive.hatch
      : age === at.seal
        ? calendar.survive.seal
        : age === at.end - 1
          ? calendar.survive.emerge
          : 1;
  return [{ ...cell, age, size: cell.size * lives }, left(cell.size * (1 - lives))];
}

function count(cells: readonly Cell[]): Record<Content, number> {
  const found = Object.fromEntries(contents.map((content) => [content, 0])) as Record<Content, number>;
  for (const cell of cells) {
    if (cell.kind === 'still') found[cell.content] += cell.size;
    else if (cell.kind === 'rest') found.empty += cell.size;
    else if (cell.caste === 'drone') found.drone += cell.size;
    else if (cell.age < calendar.eggEnd) found.egg += cell.size;
    else if (cell.age < calendar.sealedFrom) found.larva += cell.size;
    else found[cell.age < calendar.emergingFrom ? 'sealed' : 'emerging'] += cell.size;
  }
  return found;
}

const combs: readonly BarSeen[] = [
  { brood: 6, food: 1, eggs: 'seen' },
  { brood: 3, food: 4, eggs: 'none seen', youngest: 'larva' },
  { brood: 5, food: 1, eggs: 'none seen', youngest: 'sealed', face: { drone8: 2 } },
  { brood: 0, food: 6, eggs: 'none seen' },
];
const layings: readonly ((i: number) => number)[] = [() => 1, () => 0, (i) => (i % 5 === 0 ? 0.5 : 1), (i) => (i < 10 ? 0 : 1)];

test('C12 a comb by days of age equals the same comb cell by cell, for sixty days, however she lays', () => {
  for (const seen of combs) {
    const split = splitContents(combRead(reading('v', 'h', 1, seen)), () => true, calendar, printedBook);
    assert.ok(split);
    const start = cellsOf(split, calendar);
    for (const laying of layings) {
      let cells: Cell[] = [
        ...[...start.worker].map((size, age): Cell => ({ kind: 'brood', caste: 'worker', age, size })),
        ...[...start.drone].map((size, age): Cell => ({ kind: 'brood', caste: 'drone', age, size })),
        ...[...start.resting].map((size, days): Cell => ({ kind: 'rest', caste: 'worker', days, size })),
        ...(['honey', 'nectar', 'bread', 'empty'] as const).map((content): Cell => ({
          kind: 'still',
          content,
          size: start[content],
        })),
      ];
      for (let day = 1; day <= 60; day += 1) {
        cells = cells.flatMap((cell) => nextDay(cell, laying(day - 1))).filter((cell) => cell.size > 1e-15);
        const twin = count(cells);
        const shares = sharesOf(aged(start, day, calendar, laying), calendar);
        for (const content of contents)
          assert.ok(
            Math.abs(shares[content] - twin[content]) < 1e-9,
            `${content} on day ${day}: ${shares[content]} and ${twin[content]}`,
          );
      }
    }
  }
});
