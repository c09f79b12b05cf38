/** What the exact filter must satisfy for any notes: chances sum to 1, order does not matter, more of the same says more of the same. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { printedBook } from '../../figures/book.ts';
import { addDays, type Day } from '../../numbers/day.ts';
import { newStream, nextUnit } from '../../numbers/streams.ts';
import { acts } from './acts.ts';
import { arrivesAt, chainDay, layingShare } from './chain.ts';
import { type Belief, believedLaying, cellOf, dayOn, doubted, eachCell, emptyBelief, reportedChances } from './filter.ts';
import { emptyLook, type QueenLook, stages } from './seen.ts';
import { chainStates, reportedIndex, reportedStates, stateIndex } from './states.ts';
import { believedOn, queenModel, type QueenNote } from './story.ts';
import { harmWhys, lookAhead } from './telling.ts';

const model = queenModel(printedBook);
const { chain } = model;
const noCells = { open: 0, sealed: 0, torn: 0, emerged: 0 };
const look = (part: Partial<QueenLook>): QueenLook => ({ ...emptyLook, ...part });
const told = (notes: readonly QueenNote[], on: Day): readonly number[] => [
  ...reportedChances(chain, believedOn(model, notes, on).belief),
];
const of = (chances: readonly number[], ...names: readonly (typeof reportedStates)[number][]): number =>
  names.reduce((sum, name) => sum + chances[reportedStates.indexOf(name)]!, 0);
const near = (a: readonly number[], b: readonly number[], to = 1e-9): void =>
  a.forEach((one, index) => assert.ok(Math.abs(one - b[index]!) < to, `${reportedStates[index]} ${one} ${b[index]}`));

const anyNote: fc.Arbitrary<QueenNote> = fc.record({
  day: fc.integer({ min: 0, max: 60 }).map((n) => addDays('2025-04-20', n)),
  look: fc.option(
    fc.record({
      eggs: fc.constantFrom('seen' as const, 'none seen' as const, 'not looked' as const),
      youngest: fc.constantFrom(...stages, null),
      cells: fc.option(fc.record({ open: fc.nat(9), sealed: fc.nat(9), torn: fc.nat(3), emerged: fc.nat(1) })),
      queenSeen: fc.option(fc.boolean()),
      shareLooked: fc.double({ min: 0, max: 1, noNaN: true }),
      cellShare: fc.double({ min: 0, max: 1, noNaN: true }),
      manyEggs: fc.constant(null),
      domedCaps: fc.constant(null),
    }),
  ),
  act: fc.option(fc.constantFrom(...acts), { freq: 3 }),
});

test('E53 whatever is noted, chances are 0 to 1 and sum to 1, and the order of the notes does not matter', () => {
  fc.assert(
    fc.property(
      fc
        .array(anyNote, { maxLength: 6 })
        .chain((notes) => fc.tuple(fc.constant(notes), fc.shuffledSubarray(notes, { minLength: notes.length }))),
      ([notes, shuffled]) => {
        const chances = told(notes, '2025-06-25');
        assert.ok(Math.abs(chances.reduce((a, b) => a + b, 0) - 1) < 1e-9);
        assert.ok(chances.every((one) => one >= 0 && one <= 1 + 1e-12));
        near(told(shuffled, '2025-06-25'), chances);
      },
    ),
    { seed: 411, numRuns: 60 },
  );
});

test('E53 a note that says nothing changes nothing, even as the first', () => {
  const notes: QueenNote[] = [{ day: '2025-05-20', look: look({ eggs: 'seen' }), act: null }];
  near(told([{ day: '2025-04-01', look: null, act: null }, ...notes], '2025-06-01'), told(notes, '2025-06-01'));
});

test('E54 each further look without eggs makes a laying queen less likely, and a fuller look more so than a partial one', () => {
  let notes: QueenNote[] = [];
  for (let visit = 0; visit < 4; visit += 1) {
    const day = addDays('2025-06-01', 5 * visit);
    const before = of(told(notes, day), 'laying', 'new queen laying', 'failing');
    const half: QueenNote[] = [...notes, { day, look: look({ eggs: 'none seen', shareLooked: 0.3 }), act: null }];
    notes = [...notes, { day, look: look({ eggs: 'none seen' }), act: null }];
    const after = of(told(notes, day), 'laying', 'new queen laying', 'failing');
    assert.ok(after < before, `${visit}: ${before} ${after}`);
    assert.ok(of(told(half, day), 'laying', 'new queen laying', 'failing') > after);
  }
  assert.ok(of(told(notes, '2025-06-16'), 'laying', 'new queen laying', 'failing') < 0.05);
});

test('E55 the same notes a year later give the same answer: only the season counts, not the year', () => {
  const notes: QueenNote[] = [
    { day: '2025-05-10', look: look({ eggs: 'seen', cells: { ...noCells, open: 4 } }), act: null },
    { day: '2025-05-19', look: look({ eggs: 'none seen', youngest: 'larva' }), act: 'swarmed' },
  ];
  const later = notes.map((note) => ({ ...note, day: note.day.replace('2025', '2026') }));
  near(told(notes, '2025-06-10'), told(later, '2026-06-10'));
});

test('E56 without notes to weigh, days add up: one state left at an even chance a day empties as a power', () => {
  let belief: Belief = emptyBelief(chain);
  belief.chances[cellOf(belief, stateIndex['drone layer'], 0, 24)] = 1;
  for (let day = 0; day < 30; day += 1) belief = dayOn(chain, belief, { urge: 1, season: 1, loss: 10 }, 1);
  const left = 1 - 10 * chain.ways.find(({ from, to }) => from === 'drone layer' && to === 'none')!.hazardByDaysIn[0]!;
  assert.ok(Math.abs(of([...reportedChances(chain, belief)], 'drone layer') - left ** 30) < 1e-12);
});

test('E57 the filter is what a crowd of single colonies comes to', () => {
  const crowd = 12000;
  const days = 45;
  const drives = { urge: 0.6, season: 0.9, loss: 1 };
  let belief = believedLaying(chain);
  for (let day = 0; day < days; day += 1) belief = dayOn(chain, belief, drives, 1);
  const counts = new Float64Array(reportedStates.length);
  const stream = newStream(7, 2, 0, 0);
  for (let one = 0; one < crowd; one += 1) {
    let [state, daysIn, since] = [stateIndex.laying as number, 90, 0];
    for (let day = 0; day < days; day += 1) {
      const way = chainDay(chain, state, daysIn, drives.urge, nextUnit(stream), drives.season, drives.loss);
      state = way === -1 ? state : arrivesAt(chain, chain.to[way]!, since);
      daysIn = way === -1 ? daysIn + 1 : 0;
      since = layingShare(chain, state, daysIn) >= 0.5 ? 0 : since + 1;
    }
    counts[reportedIndex[state]!]! += 1 / crowd;
  }
  reportedChances(chain, belief).forEach((chance, index) => {
    const error = Math.sqrt((chance * (1 - chance)) / crowd) + 1e-4;
    assert.ok(Math.abs(counts[index]! - chance) < 4 * error, `${reportedStates[index]} ${chance} ${counts[index]}`);
  });
});

test('E58 doubt is a share of the whole, spread over all that comes by itself', () => {
  const belief = doubted(chain, believedLaying(chain), 0.3);
  let sum = 0;
  const states = new Set<number>();
  eachCell(chain, belief, (state, _, __, chance) => {
    sum += chance;
    states.add(state);
  });
  assert.ok(Math.abs(sum - 1) < 1e-12);
  assert.equal(states.size, chainStates.filter(({ byKeeper }) => !byKeeper).length);
});

test('E59 what a keeper would say of plain cases is what is believed most', () => {
  const seen = (eggs: QueenLook['eggs'], cells: Partial<typeof noCells> = {}): QueenLook =>
    look({ eggs, cells: { ...noCells, ...cells } });
  const cases: readonly (readonly [readonly QueenNote[], Day, (typeof reportedStates)[number]])[] = [
    [[{ day: '2025-06-01', look: seen('seen'), act: null }], '2025-06-01', 'laying'],
    [[{ day: '2025-05-20', look: seen('seen', { open: 6 }), act: null }], '2025-05-20', 'cells open'],
    [[{ day: '2025-05-20', look: seen('seen', { open: 6 }), act: null }], '2025-05-27', 'cells sealed'],
    [[{ day: '2025-05-20', look: null, act: 'swarmed' }], '2025-05-21', 'cells sealed'],
    [[{ day: '2025-05-20', look: null, act: 'swarmed' }], '2025-05-31', 'virgin'],
    [[{ day: '2025-05-20', look: null, act: 'swarmed' }], '2025-06-15', 'new queen laying'],
    [[{ day: '2025-05-20', look: null, act: 'removed' }], '2025-05-20', 'none'],
    [[{ day: '2025-05-20', look: null, act: 'removed' }], '2025-05-24', 'cells open'],
    [[{ day: '2025-05-20', look: null, act: 'removed' }], '2025-06-04', 'virgin'],
    [
      [
        { day: '2025-05-20', look: null, act: 'swarmed' },
        { day: '2025-06-28', look: look({ eggs: 'none seen', youngest: 'none', cells: noCells }), act: null },
      ],
      '2025-06-28',
      'none',
    ],
    [[{ day: '2025-12-15', look: look({ eggs: 'none seen', youngest: 'none' }), act: null }], '2025-12-15', 'laying'],
  ];
  for (const [notes, on, most] of cases) {
    const chances = told(notes, on);
    assert.equal(reportedStates[chances.indexOf(Math.max(...chances))], most, `${JSON.stringify(notes)} on ${on}`);
  }
});

test('E60 the next telling day is never a harmful one, and the virgin of a swarm is left alone in her days', () => {
  const after = (notes: readonly QueenNote[], on: Day) => lookAhead(model, believedOn(model, notes, on).belief, on, false);
  const swarmed = after([{ day: '2025-05-20', look: null, act: 'swarmed' }], '2025-05-20');
  const virgin = swarmed.harmfulDays.find(({ why }) => why === 'virgin');
  assert.ok(
    virgin &&
      virgin.from >= '2025-05-24' &&
      virgin.from <= '2025-05-29' &&
      virgin.to >= '2025-06-02' &&
      virgin.to <= '2025-06-10',
  );
  assert.ok(swarmed.nextTellingDay !== null && swarmed.nextTellingDay > virgin.to && swarmed.nextTellingDay <= '2025-06-20');
  fc.assert(
    fc.property(fc.array(anyNote, { maxLength: 3 }), (notes) => {
      const { nextTellingDay: telling, harmfulDays } = after(notes, '2025-06-22');
      assert.ok(harmfulDays.every(({ from, to, why }) => from <= to && from >= '2025-06-22' && harmWhys.includes(why)));
      assert.ok(telling === null || !harmfulDays.some(({ from, to }) => from <= telling && telling <= to));
    }),
    { seed: 412, numRuns: 25 },
  );
});
