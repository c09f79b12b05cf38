/** Two colonies made one, against sums on paper and against each of them left alone. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { runSum } from '../apiary/sums.ts';
import { printedBook, value } from '../figures/book.ts';

const weak = { bees: 3000, eggs: 0, larvae: 0, sealed: 1200 };
const strong = { bees: 15000, eggs: 3000, larvae: 6000, sealed: 12000 };
const usual = { on: '2025-08-10', from: weak, into: strong, queen: 'into', otherQueen: 'none' };

interface Told {
  readonly lowestBees: number;
  readonly recoversOn: string | null;
  readonly moreThanBothOn?: string | null;
  readonly course: readonly {
    readonly day: string;
    readonly bees: number;
    readonly eggs: number;
    readonly larvae: number;
    readonly sealed: number;
  }[];
}
type Answered = Readonly<Record<'united' | 'fromAlone' | 'intoAlone', Told>>;

function unite(change: Readonly<Record<string, unknown>> = {}): Answered {
  const result = runSum('unite', { ...usual, ...change }, printedBook);
  assert.ok(result.ok, JSON.stringify(result));
  return result.value as unknown as Answered;
}

const close = (a: number, b: number, to: number): void => assert.ok(Math.abs(a - b) <= to, `${a} ${b}`);

test('E167 on the first evening both are there, less those of the first colony that are lost', () => {
  const [first] = unite({ lostShare: 0.1 }).united.course;
  close(first!.bees, 0.9 * 3000 + 15000, 1e-6);
  close(first!.sealed, 13200, 1e-6);
  close(unite({ lostShare: 1 }).united.course[0]!.bees, 15000, 1e-6);
});

test('E167 without a queen in either, both together are what they were alone, on every day', () => {
  const { united, fromAlone, intoAlone } = unite({ queen: 'none', lostShare: 0 });
  for (const [i, row] of united.course.entries()) {
    const alone = [fromAlone.course[i]!, intoAlone.course[i]!];
    for (const what of ['bees', 'eggs', 'larvae', 'sealed'] as const) close(row[what], alone[0]![what] + alone[1]![what], 1e-6);
  }
  assert.equal(united.moreThanBothOn, null, 'never fewer');
  assert.equal(united.course.at(-1)!.eggs, 0);
});

test('E167 a colony left alone is the undivided one of "split", and one without a queen only shrinks', () => {
  const { intoAlone, fromAlone } = unite();
  const shares = { movedBees: 0, movedEggs: 0, movedLarvae: 0, movedSealed: 0 };
  const split = runSum('split', { on: usual.on, ...strong, ...shares, queen: 'stayed', newQueen: 'mated' }, printedBook);
  assert.ok(split.ok);
  const whole = (split.value['stayed'] as { withQueen: Told }).withQueen;
  assert.deepEqual(intoAlone.course, whole.course);
  assert.ok(fromAlone.course[60]!.bees < 1500 && fromAlone.recoversOn === null);
});

test('E167 more bees rear more brood: the queen lays more than alone, by N/(w + N)', () => {
  const { united, intoAlone } = unite({ lostShare: 0 });
  const laid = (told: Told): number => told.course[1]!.eggs - told.course[0]!.eggs * (2 / 3);
  const half = value(printedBook, 'engine-half-bees');
  const crowd = (bees: number): number => bees / (half + bees);
  close(laid(united) / laid(intoAlone), crowd(18000) / crowd(15000), 1e-9);
});

test('E167 two that both lay have more bees apart than together; the day of catching up is that of the rows', () => {
  const both = unite({ from: { ...strong, bees: 9000 }, otherQueen: 'laying', lostShare: 0.03 });
  const apart = (i: number): number => both.fromAlone.course[i]!.bees + both.intoAlone.course[i]!.bees;
  assert.ok(both.united.course[60]!.bees < apart(60));
  const gained = unite({ lostShare: 0.03 });
  const day = gained.united.moreThanBothOn;
  assert.ok(day !== null && day !== undefined);
  const i = gained.united.course.findIndex((row) => row.day === day);
  const alone = (k: number): number => gained.fromAlone.course[k]!.bees + gained.intoAlone.course[k]!.bees;
  assert.ok(gained.united.course[i]!.bees >= alone(i) && gained.united.course[i - 1]!.bees < alone(i - 1));
});

test('E167 what no colony can have is refused by its field', () => {
  const result = runSum('unite', { ...usual, from: { ...weak, bees: -1 } }, printedBook);
  assert.ok(!result.ok);
  assert.deepEqual(
    result.issues.map(({ path }) => path),
    ['from.bees'],
  );
});
