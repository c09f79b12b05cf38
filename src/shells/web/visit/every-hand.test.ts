/** What the Visit shows of the row after any moves is what the journal folds its entries to. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { readJournal } from '../../../apiary.ts';
import { awayWhere, joinedHow, type Move } from '../../../apiary/visit-terms.ts';
import { sampleYard } from '../../../colony/for-tests.ts';
import type { Entry, Id } from '../../../journal/entry.ts';
import { arrangementOf, barsHung, placeOf } from './arrangement.ts';
import { beginDraft, type Draft } from './draft.ts';
import { beginningOf, stamp, uuid } from './for-tests.ts';
import { joinedThen } from './joined-bars.ts';
import { nothingExpected } from './ports.ts';
import { type BodyMade } from './tap-body.ts';
import { type Tap, tap } from './tap.ts';
import { barsExpected, rowEnd } from './to-entries.ts';

const start = '2014-05-01';
const bars = 12;

type Thumb = (draft: Draft, n: number) => Draft;

const place = fc.integer({ min: 1, max: 8 });
const moves: fc.Arbitrary<(draft: Draft) => Move> = fc.oneof(
  fc.record({ do: fc.constant('take' as const), place, to: fc.constantFrom(...awayWhere) }).map((move) => () => move),
  fc.record({ do: fc.constant('swap' as const), place, with: place }).map((move) => () => move),
  fc.record({ do: fc.constant('turn' as const), place }).map((move) => () => move),
  fc.record({ do: fc.constant('shift' as const), place, by: fc.constantFrom(-1, 1) }).map((move) => () => move),
  fc.record({ do: fc.constant('follower' as const), place }).map((move) => () => move),
  fc
    .record({ at: place, room: fc.constantFrom('free' as const, 'make way' as const), which: fc.nat(3) })
    .map(({ at, room, which }) => (draft: Draft): Move => {
      const taken = arrangementOf(draft).handed[which];
      const what = taken === undefined ? ({ kind: 'bare' } as const) : ({ kind: 'taken', entry: taken.entry } as const);
      return { do: 'put', place: at, what, room };
    }),
);
const thumbs: fc.Arbitrary<Thumb> = fc.oneof(
  {
    weight: 5,
    arbitrary: moves.map(
      (make): Thumb =>
        (draft, n) =>
          tap(draft, { kind: 'move', entry: uuid(n), move: make(draft), stamp: at(n), next: uuid(n + 50) }),
    ),
  },
  {
    weight: 2,
    arbitrary: fc.nat(8).map(
      (eighths): Thumb =>
        (draft, n) =>
          readBar(draft, eighths, n),
    ),
  },
  {
    weight: 2,
    arbitrary: fc
      .record({ at: place, many: fc.integer({ min: 2, max: 3 }), how: fc.constantFrom(...joinedHow) })
      .map(({ at: first, many, how }): Thumb => (draft, n) => {
        const places = Array.from({ length: many }, (_, i) => first + i);
        return bodyTap(draft, n, { kind: 'joined', how, places, combs: places.map((_, i) => uuid(n + 60 + i)) });
      }),
  },
  fc.record({ which: fc.nat(2), many: fc.nat(2) }).map(({ which, many }): Thumb => (draft, n) => {
    const set = joinedThen(draft.joined, draft.moves.length)[which];
    if (set === undefined) return draft;
    const hung = arrangementOf(draft);
    const places = set.bars.flatMap((bar) => placeOf(hung, bar) ?? []).slice(0, many);
    return bodyTap(draft, n, { kind: 'parted', joined: set.id, places, stopped: 'no time' });
  }),
  fc.record({ from: place, to: place }).map(({ from, to }): Thumb => (draft, n) => {
    const { at: hung } = arrangementOf(draft).row;
    const [parent, onto] = [hung.get(from), hung.get(to)];
    if (parent === undefined || parent.bare || from === to) return draft;
    const where = onto?.bare === true ? { kind: 'place' as const, place: to } : { kind: 'away' as const, where: 'tub' as const };
    return bodyTap(draft, n, { kind: 'piece', place: from, comb: uuid(n + 70), share8: 2, to: where });
  }),
  fc.constant((draft: Draft, n: number) =>
    tap(draft, { kind: 'body back', id: uuid(n), stamp: at(n), why: 'back', next: uuid(n + 50) }),
  ),
  fc.constantFrom('last' as const, 'all' as const).map(
    (which): Thumb =>
      (draft, n) =>
        tap(draft, {
          kind: 'moves back',
          which,
          ids: draft.moves.map((_, i) => uuid(n + 1 + i)),
          stamp: at(n),
          words: { why: 'back' },
        }),
  ),
);

/** Each tap a second after the last, so that the journal has them in their order. */
function at(n: number): typeof stamp {
  const seconds = Math.floor(n / 100);
  return { ...stamp, noted: `2014-05-16T18:${two(5 + Math.floor(seconds / 60))}:${two(seconds % 60)}Z` as typeof stamp.noted };
}

function two(n: number): string {
  return String(n).padStart(2, '0');
}

function bodyTap(draft: Draft, n: number, made: BodyMade): Draft {
  return tap(draft, { ...made, entry: uuid(n), stamp: at(n), next: uuid(n + 50) });
}

function readBar(draft: Draft, eighths: number, n: number): Draft {
  const seen = tap(draft, { kind: 'brood', eighths });
  return tap(seen, {
    kind: 'down',
    entry: seen.bar?.entry ?? '',
    next: uuid(n + 1),
    noteId: uuid(n + 2),
    stamp: at(n),
    words: { why: 'again' },
    expected: nothingExpected,
    far: null,
  });
}

/** A hive with a bay from 2 to 6 whose combs were all read, and a draft of a visit to it. */
function opened(): {
  readonly entries: readonly Entry[];
  readonly draft: Draft;
  readonly combs: ReadonlyMap<Id, number>;
  readonly hive: Id;
} {
  const yard = sampleYard();
  const hive = yard.hive(start, bars);
  const bay = yard.id();
  yard.add('bay', start, { bay, hive, from: 2, to: 6 });
  const colony = yard.colony(start, hive, { bay });
  const comb = { brood: 3, food: 2 };
  yard.visit('2014-05-05', colony, hive, { 2: comb, 3: comb, 4: comb, 5: comb, 6: comb });
  const placed = readJournal(yard.entries).state.placed.get(hive) ?? new Map<number, Id>();
  const [first] = yard.entries;
  const draft = beginDraft(
    beginningOf({
      visit: uuid(90_001),
      entry: uuid(90_002),
      yard: first?.yard ?? '',
      by: first?.by ?? '',
      colony,
      hive,
      bay: { from: 2, to: 6, follower: 'last' },
      hiveBars: bars,
    }),
  );
  return { entries: yard.entries, draft, combs: new Map([...placed].map(([where, id]) => [id, where])), hive };
}

/** What the journal calls the bars: combs by their ids, wood that nobody had read by the entry that read it or took it. */
function namesIn(draft: Draft, combs: ReadonlyMap<Id, number>): ReadonlyMap<Id, number | Id> {
  const read = draft.read.map(({ reading, place: found }) => [reading, found] as const);
  const taken = draft.moves.flatMap(({ entry, move }, i): (readonly [Id, number])[] => {
    const before = arrangementOf({ ...draft, moves: draft.moves.slice(0, i) });
    const bar = move.do === 'take' ? before.row.at.get(move.place)?.what : undefined;
    return typeof bar === 'number' && ![...combs.values()].includes(bar) ? [[entry, bar]] : [];
  });
  const joined = draft.outbox.flatMap(({ id, kind, body }) => {
    const bars = kind === 'combs-joined' ? draft.joined.find((set) => set.id === id)?.bars : undefined;
    return (bars ?? []).map((bar, i) => [(body as { bars: { comb: Id }[] }).bars[i]!.comb, bar] as const);
  });
  const pieces = draft.acts.flatMap(({ entry, onto }) => (onto === undefined ? [] : [[entry, onto] as const]));
  return new Map<Id, number | Id>([...taken, ...joined, ...parents(draft, combs), ...read, ...pieces, ...combs]);
}

/** Wood that nobody had read, from which a piece was cut. */
function parents(draft: Draft, combs: ReadonlyMap<Id, number>): readonly (readonly [Id, number | Id])[] {
  return draft.acts.flatMap(({ entry, moves: made }, i) => {
    const body = draft.outbox.find(({ id }) => id === entry)?.body as { place: number; comb?: Id } | undefined;
    if (draft.acts[i]?.what !== 'piece' || body?.comb === undefined) return [];
    const bar = arrangementOf({ ...draft, moves: draft.moves.slice(0, made) }).row.at.get(body.place)?.what;
    return bar === undefined || (typeof bar === 'number' && [...combs.values()].includes(bar)) ? [] : [[body.comb, bar] as const];
  });
}

test('V23 whatever is moved, read and moved back, the row on the screen is the row of the journal, and nothing is refused there', () => {
  fc.assert(
    fc.property(fc.array(thumbs, { maxLength: 14 }), (row) => {
      const { entries, draft: begun, combs, hive } = opened();
      const draft = row.reduce((before, thumb, i) => thumb(before, 1000 + i * 100), begun);
      const { state, faults } = readJournal([...entries, ...draft.outbox]);
      assert.deepEqual(faults, []);
      const now = arrangementOf(draft);
      const names = namesIn(draft, combs);
      const known = new Set<number | Id>(names.values());
      // Which way wood faced that nobody had read is not kept.
      const unread = new Set([...known].filter((bar) => typeof bar === 'number' && ![...combs.values()].includes(bar)));
      const turnedOf = (bar: number | Id, turned: boolean): boolean => turned && !unread.has(bar);
      // Wood that nobody has read is no comb of the journal.
      const shown = [...now.row.at].flatMap(([where, { what, turned }]) =>
        typeof what === 'string' || known.has(what) ? [[where, what, turnedOf(what, turned)]] : [],
      );
      const folded = [...(state.placed.get(hive) ?? [])].map(([where, id]) => {
        const spot = state.combs.get(id)?.at;
        const what = names.get(id) ?? id;
        return [where, what, turnedOf(what, spot?.kind === 'place' && spot.facing === 'turned')];
      });
      const byPlace = (a: unknown[], b: unknown[]): number => Number(a[0]) - Number(b[0]);
      assert.deepEqual(folded.sort(byPlace), shown.sort(byPlace));
      const [bay] = [...state.bays.values()];
      assert.deepEqual([bay?.from, bay?.to], [now.row.from, now.row.to]);
      assert.deepEqual([rowEnd(draft), barsExpected(draft)], [now.row.to, barsHung(now)]);
      assert.equal(draft.read.length, new Set(draft.read.map(({ place: was }) => was)).size);
    }),
    { seed: 713, numRuns: 400 },
  );
});

test('V23 a bar that was moved is read where it hangs, keeps the place at which it was found, and is corrected where it was read', () => {
  const { draft: begun } = opened();
  const swapped = tap(begun, {
    kind: 'move',
    entry: uuid(50),
    move: { do: 'swap', place: 6, with: 5 },
    stamp,
    next: uuid(49),
  });
  const read = readBar(swapped, 4, 1000);
  const [row] = read.read;
  assert.deepEqual([row?.place, row?.readAt], [6, 5]);
  const back: Tap = { kind: 'moves back', which: 'all', ids: [uuid(51)], stamp, words: { why: 'back' } };
  assert.equal(tap(read, back), read, 'a bar was read where the move had left it');
  assert.deepEqual(tap(swapped, back).moves, []);
  const again = readBar(tap(read, { kind: 'go', place: 6, next: uuid(52) }), 2, 2000);
  const places = again.outbox.flatMap(({ kind, body }) => {
    const of = (kind === 'correction' ? (body as { body: unknown }).body : body) as { place?: number };
    return kind === 'move' ? [] : [[kind, of.place]];
  });
  assert.deepEqual(places, [
    ['reading', 5],
    ['correction', 5],
  ]);
});

test('V23 with something read of the bar in the hand nothing is moved', () => {
  const { draft } = opened();
  const touched = tap(draft, { kind: 'brood', eighths: 3 });
  assert.equal(tap(touched, { kind: 'move', entry: uuid(60), move: { do: 'turn', place: 3 }, stamp, next: uuid(61) }), touched);
});
